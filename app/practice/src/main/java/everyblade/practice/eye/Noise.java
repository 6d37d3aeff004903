package everyblade.practice.eye;

/** Grain without a pattern: a smooth value between 0 and 1 for each place, the same each time. */
public final class Noise {

    private static final int BITS = 8;
    private static final int MASK = (1 << BITS) - 1;
    private static final float[] CORNERS = corners();

    private Noise() {}

    private static float[] corners() {
        float[] corners = new float[1 << 2 * BITS];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = corner(i & MASK, i >> BITS, 1);
        }
        return corners;
    }

    /** Rises and falls about once a unit of length; the same again after 256 of them. */
    public static float at(float x, float y, int seed) {
        int column = floor(x);
        int line = floor(y);
        float u = smooth(x - column);
        float v = smooth(y - line);
        column += seed * 37;
        int above = (line + (seed >> 5) * 11 & MASK) << BITS;
        int below = (line + 1 + (seed >> 5) * 11 & MASK) << BITS;
        int left = column & MASK;
        int right = column + 1 & MASK;
        float near = mix(CORNERS[above | left], CORNERS[above | right], u);
        float far = mix(CORNERS[below | left], CORNERS[below | right], u);
        return mix(near, far, v);
    }

    /** A value between 0 and 1 for a whole number, without likeness to those of its neighbours. */
    static float corner(int x, int y, int seed) {
        int h = x * 0x27d4eb2d ^ y * 0x165667b1 ^ seed * 0x9e3779b1;
        h ^= h >>> 15;
        h *= 0x85ebca6b;
        h ^= h >>> 13;
        h *= 0xc2b2ae35;
        h ^= h >>> 16;
        return (h >>> 8) * 0x1p-24f;
    }

    private static int floor(float value) {
        int whole = (int) value;
        return value < whole ? whole - 1 : whole;
    }

    private static float smooth(float share) {
        return share * share * (3 - 2 * share);
    }

    private static float mix(float a, float b, float share) {
        return a + (b - a) * share;
    }
}
