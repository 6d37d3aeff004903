package everyblade.core.surface;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Which faces of a mesh lie beside which. */
public final class Neighbours {

    private Neighbours() {}

    /** Of each face, the faces that share a point with it, itself not among them. */
    public static int[][] atPoints(Mesh mesh) {
        int[][] facesAt = new int[mesh.pointCount()][0];
        for (int face = 0; face < mesh.faceCount(); face++) {
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                int point = mesh.corner(face, k);
                facesAt[point] = Arrays.copyOf(facesAt[point], facesAt[point].length + 1);
                facesAt[point][facesAt[point].length - 1] = face;
            }
        }
        return IntStream.range(0, mesh.faceCount())
                .mapToObj(face -> {
                    TreeSet<Integer> beside = new TreeSet<>();
                    for (int k = 0; k < mesh.cornerCount(face); k++) {
                        Arrays.stream(facesAt[mesh.corner(face, k)]).forEach(beside::add);
                    }
                    beside.remove(face);
                    return beside.stream().mapToInt(Integer::intValue).toArray();
                })
                .toArray(int[][]::new);
    }

    /** Of each face and each of its edges in turn, the face beyond; −1 where the surface ends. */
    public static int[][] beyondEdges(Mesh mesh) {
        int[][] beyond = new int[mesh.faceCount()][];
        Map<Long, int[]> open = new HashMap<>();
        for (int face = 0; face < beyond.length; face++) {
            int corners = mesh.cornerCount(face);
            beyond[face] = new int[corners];
            for (int k = 0; k < corners; k++) {
                int a = mesh.corner(face, k);
                int b = mesh.corner(face, (k + 1) % corners);
                int[] other = open.put((long) Math.min(a, b) << Integer.SIZE | Math.max(a, b), new int[] {face, k});
                beyond[face][k] = -1;
                if (other != null) {
                    beyond[face][k] = other[0];
                    beyond[other[0]][other[1]] = face;
                }
            }
        }
        return beyond;
    }
}
