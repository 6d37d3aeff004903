package everyblade.practice.eye;

import everyblade.core.sight.Pose;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Draws frames by a depth buffer, tile by tile on all processors. Faces hide from either side. What lies wholly outside the
 * cone or beyond {@code farthest} is not drawn, nor is the inside of an airfoil that nothing was cut from. Keeps its arrays from one frame to the next; for one thread at a time.
 */
public final class Raster {

    private static final int TILE = 64;
    private static final float CUT = 0.02f;
    private static final int CORNERS = 9;

    private final int size;
    private final int across;
    private final int[][] bins;
    private final int[] filled;
    private float[] corners = new float[CORNERS * 1024];
    private int[] ofPlaced = new int[1024];
    private int[] ofTriangle = new int[1024];
    private int count;
    private boolean closed;
    private float[] seen = new float[1024];
    private final float[] clipped = new float[12];

    /** @param size picture elements across the round field */
    public Raster(int size) {
        this.size = size;
        this.across = (size + TILE - 1) / TILE;
        this.bins = new int[across * across][64];
        this.filled = new int[across * across];
    }

    /**
     * The frame from a pose.
     *
     * @param farthest mm from the scope tip
     */
    public EyeFrame draw(List<PlacedMesh> stage, Pose pose, double farthest) {
        Camera camera = new Camera(pose, size);
        double[] cone = camera.halfCone();
        count = 0;
        Arrays.fill(filled, 0);
        PlacedMesh[] kept = new PlacedMesh[stage.size()];
        float[][] matrices = new float[stage.size()][];
        int drawn = 0;
        for (PlacedMesh one : stage) {
            float[] matrix = camera.of(one.clock());
            if (shows(one.solid(), matrix, cone, farthest)) {
                kept[drawn] = one;
                matrices[drawn] = matrix;
                closed = one.solid().finish != Finish.WALL && !one.isCut();
                collect(camera, one.solid(), matrix, drawn);
                drawn++;
            }
        }
        List<PlacedMesh> placed = List.of(Arrays.copyOf(kept, drawn));
        int[] slots = new int[size * size];
        Arrays.fill(slots, EyeFrame.NOTHING);
        EyeFrame frame = new EyeFrame(camera, placed, matrices, slots, new float[size * size], ofPlaced, ofTriangle);
        boolean[] cut = new boolean[drawn];
        for (int i = 0; i < drawn; i++) {
            cut[i] = placed.get(i).isCut();
        }
        IntStream.range(0, bins.length).parallel().forEach(tile -> fill(frame, cut, tile));
        // What a frame holds stays as it is: the next one gets arrays of its own.
        ofPlaced = Arrays.copyOf(ofPlaced, ofPlaced.length);
        ofTriangle = Arrays.copyOf(ofTriangle, ofTriangle.length);
        return frame;
    }

    private static boolean shows(Solid solid, float[] m, double[] cone, double farthest) {
        float[] c = solid.middle;
        double x = m[0] * c[0] + m[1] * c[1] + m[2] * c[2] + m[3];
        double y = m[4] * c[0] + m[5] * c[1] + m[6] * c[2] + m[7];
        double z = m[8] * c[0] + m[9] * c[1] + m[10] * c[2] + m[11];
        double off = Math.sqrt(x * x + y * y);
        return z + solid.radius > CUT
                && Math.sqrt(off * off + z * z) - solid.radius < farthest
                && off * cone[1] - z * cone[0] < solid.radius;
    }

    private void collect(Camera camera, Solid solid, float[] m, int index) {
        float[] points = solid.points;
        if (seen.length < points.length) {
            seen = new float[2 * points.length];
        }
        for (int at = 0; at < points.length; at += 3) {
            float x = points[at];
            float y = points[at + 1];
            float z = points[at + 2];
            seen[at] = m[0] * x + m[1] * y + m[2] * z + m[3];
            seen[at + 1] = m[4] * x + m[5] * y + m[6] * z + m[7];
            seen[at + 2] = m[8] * x + m[9] * y + m[10] * z + m[11];
        }
        int[] triangles = solid.triangles;
        for (int triangle = 0; triangle < solid.faces.length; triangle++) {
            int a = 3 * triangles[3 * triangle];
            int b = 3 * triangles[3 * triangle + 1];
            int c = 3 * triangles[3 * triangle + 2];
            boolean ahead = seen[a + 2] > CUT && seen[b + 2] > CUT && seen[c + 2] > CUT;
            if (ahead) {
                add(camera, index, triangle, seen, a, b, c);
            } else if (seen[a + 2] > CUT || seen[b + 2] > CUT || seen[c + 2] > CUT) {
                clip(camera, index, triangle, a, b, c);
            }
        }
    }

    /** Leaves of a triangle what lies ahead: a triangle, or a four-sided part. */
    private void clip(Camera camera, int index, int triangle, int... corner) {
        int kept = 0;
        for (int k = 0; k < 3; k++) {
            int here = corner[k];
            int next = corner[(k + 1) % 3];
            if (seen[here + 2] > CUT) {
                System.arraycopy(seen, here, clipped, 3 * kept++, 3);
            }
            if (seen[here + 2] > CUT != seen[next + 2] > CUT) {
                float share = (CUT - seen[here + 2]) / (seen[next + 2] - seen[here + 2]);
                clipped[3 * kept] = seen[here] + share * (seen[next] - seen[here]);
                clipped[3 * kept + 1] = seen[here + 1] + share * (seen[next + 1] - seen[here + 1]);
                clipped[3 * kept++ + 2] = CUT;
            }
        }
        for (int k = 2; k < kept; k++) {
            add(camera, index, triangle, clipped, 0, 3 * k - 3, 3 * k);
        }
    }

    private void add(Camera camera, int index, int triangle, float[] from, int a, int b, int c) {
        if (count == ofPlaced.length) {
            ofPlaced = Arrays.copyOf(ofPlaced, 2 * count);
            ofTriangle = Arrays.copyOf(ofTriangle, 2 * count);
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        int to = CORNERS * count;
        put(camera, from, a, to);
        put(camera, from, b, to + 3);
        put(camera, from, c, to + 6);
        float low = Math.min(corners[to], Math.min(corners[to + 3], corners[to + 6]));
        float high = Math.max(corners[to], Math.max(corners[to + 3], corners[to + 6]));
        float top = Math.min(corners[to + 1], Math.min(corners[to + 4], corners[to + 7]));
        float bottom = Math.max(corners[to + 1], Math.max(corners[to + 4], corners[to + 7]));
        if (closed && turnedAway(to)) {
            return;
        }
        if (high < 0 || low > size || bottom < 0 || top > size || passes(low, high) || passes(top, bottom)) {
            return;
        }
        ofPlaced[count] = index;
        ofTriangle[count] = triangle;
        int lastLine = Math.min(across - 1, (int) bottom / TILE);
        int lastColumn = Math.min(across - 1, (int) high / TILE);
        for (int line = Math.max(0, (int) top / TILE); line <= lastLine; line++) {
            for (int column = Math.max(0, (int) low / TILE); column <= lastColumn; column++) {
                bin(line * across + column);
            }
        }
        count++;
    }

    /** Whether a face's outer side is turned away: its corners then run clockwise in the picture, where down is positive. */
    private boolean turnedAway(int at) {
        return (corners[at + 3] - corners[at]) * (corners[at + 7] - corners[at + 1])
                        - (corners[at + 4] - corners[at + 1]) * (corners[at + 6] - corners[at])
                >= 0;
    }

    /** Whether what lies between here and there passes between the middles of two picture elements. */
    private static boolean passes(float from, float to) {
        return to - from < 1 && Math.floor(from - 0.5) == Math.floor(to - 0.5) && from - 0.5 != Math.floor(from - 0.5);
    }

    private void put(Camera camera, float[] from, int at, int to) {
        float nearness = 1 / from[at + 2];
        corners[to] = camera.radius + camera.scale * from[at] * nearness;
        corners[to + 1] = camera.radius - camera.scale * from[at + 1] * nearness;
        corners[to + 2] = nearness;
    }

    private void bin(int tile) {
        if (filled[tile] == bins[tile].length) {
            bins[tile] = Arrays.copyOf(bins[tile], 2 * bins[tile].length);
        }
        bins[tile][filled[tile]++] = count;
    }

    private void fill(EyeFrame frame, boolean[] cut, int tile) {
        int left = tile % across * TILE;
        int top = tile / across * TILE;
        int right = Math.min(size, left + TILE) - 1;
        int bottom = Math.min(size, top + TILE) - 1;
        TileFiller filler = new TileFiller(frame, corners, left, right);
        for (int i = 0; i < filled[tile]; i++) {
            int slot = bins[tile][i];
            filler.triangle(slot, cut[ofPlaced[slot]], top, bottom);
        }
    }
}
