package everyblade.core.surface;

import everyblade.core.surface.MeshFile.Damaged;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.StringTokenizer;

/** Reads triangles from STL; the normals in the file are not used, for the order of the corners says the same. */
final class StlReader {

    private static final int HEADER = 84;
    private static final int NORMAL = 3 * Float.BYTES;

    private final MeshGatherer mesh = new MeshGatherer();
    private final Map<List<Double>, Integer> known = new HashMap<>();

    private StlReader() {}

    /** The length of the content must fit the number of triangles that it states. */
    static Mesh binary(byte[] content) throws Damaged, UnusableShape {
        ByteBuffer bytes =
                ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN).position(HEADER);
        StlReader reader = new StlReader();
        while (bytes.hasRemaining()) {
            bytes.position(bytes.position() + NORMAL);
            int[] corners = new int[3];
            for (int k = 0; k < 3; k++) {
                corners[k] = reader.point(bytes.getFloat(), bytes.getFloat(), bytes.getFloat());
            }
            bytes.getShort();
            reader.mesh.face(corners);
        }
        return reader.mesh.built();
    }

    static Mesh ascii(String content) throws Damaged, UnusableShape {
        StlReader reader = new StlReader();
        StringTokenizer words = new StringTokenizer(content);
        int[] corners = new int[3];
        int k = 0;
        while (words.hasMoreTokens()) {
            String word = words.nextToken();
            if (word.equalsIgnoreCase("vertex")) {
                if (k == 3) {
                    throw new Damaged(FileDamage.Plain.MANY_CORNERS);
                }
                corners[k++] = reader.point(number(words), number(words), number(words));
            } else if (word.equalsIgnoreCase("endloop")) {
                if (k != 3) {
                    throw new Damaged(FileDamage.Plain.FEW_CORNERS_OF_FACET);
                }
                reader.mesh.face(corners);
                k = 0;
            }
        }
        return reader.mesh.built();
    }

    private static double number(StringTokenizer words) throws Damaged {
        if (!words.hasMoreTokens()) {
            throw new Damaged(FileDamage.Plain.ENDS_WITHIN_POINT);
        }
        return MeshGatherer.number(words.nextToken());
    }

    private int point(double x, double y, double z) throws Damaged {
        List<Double> place = List.of(x + 0.0, y + 0.0, z + 0.0);
        Integer there = known.get(place);
        if (there != null) {
            return there;
        }
        int added = mesh.point(x, y, z);
        known.put(place, added);
        return added;
    }
}
