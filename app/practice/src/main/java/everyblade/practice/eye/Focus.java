package everyblade.practice.eye;

import java.util.stream.IntStream;

/** Blurs what is nearer or farther than the lens is sharp for: between three pictures, sharp, soft and quite out of focus. */
final class Focus {

    /** Blur of something infinitely far beyond, and how it grows ahead of the nearest sharp distance, in picture elements. */
    private static final float BEYOND = 5;

    private static final float BEFORE = 7;
    private static final float SOFT = 3;

    /** Nothing is quite sharp: fibres, lens and sensor each take a little. */
    private static final float SENSOR = 0.7f;

    private static final float OUT = 9;

    private final int size;
    private final int half;

    private Focus(int size) {
        this.size = size;
        this.half = (size + 1) / 2;
    }

    /** The picture through a lens. */
    static float[] through(Optics optics, EyeFrame frame, float[] light) {
        Focus focus = new Focus(frame.size());
        float[] blur = focus.blur(optics, frame);
        float[] small = focus.halved(light);
        float[] soft = focus.box(focus.box(small, 1, true), 1, false);
        float[] out = most(blur) > SOFT ? focus.box(focus.box(soft, 3, true), 3, false) : soft;
        float[] seen = new float[light.length];
        IntStream.range(0, frame.size()).parallel().forEach(line -> focus.mix(line, blur, light, soft, out, seen));
        return seen;
    }

    private static float most(float[] blur) {
        float most = 0;
        for (float each : blur) {
            most = Math.max(most, each);
        }
        return most;
    }

    private float[] blur(Optics optics, EyeFrame frame) {
        float[] blur = new float[size * size];
        float near = (float) optics.near();
        float far = (float) optics.far();
        float scale = size / 640f;
        IntStream.range(0, size).parallel().forEach(line -> {
            for (int element = line * size; element < (line + 1) * size; element++) {
                float ahead = frame.slots[element] < 0 ? Float.MAX_VALUE : frame.ahead(element);
                float beyond = ahead > far ? BEYOND * (1 - far / ahead) : 0;
                blur[element] = SENSOR + scale * (ahead < near ? Math.min(OUT, BEFORE * (near / ahead - 1)) : beyond);
            }
        });
        return blur;
    }

    private float[] halved(float[] light) {
        float[] small = new float[3 * half * half];
        IntStream.range(0, half).parallel().forEach(line -> {
            for (int column = 0; column < half; column++) {
                int below = Math.min(size - 1, 2 * line + 1);
                int beside = Math.min(size - 1, 2 * column + 1);
                for (int i = 0; i < 3; i++) {
                    small[3 * (line * half + column) + i] = (light[3 * (2 * line * size + 2 * column) + i]
                                    + light[3 * (2 * line * size + beside) + i]
                                    + light[3 * (below * size + 2 * column) + i]
                                    + light[3 * (below * size + beside) + i])
                            / 4;
                }
            }
        });
        return small;
    }

    /** The mean over so many elements to either side, along lines or down columns. */
    private float[] box(float[] from, int reach, boolean along) {
        float[] to = new float[from.length];
        int step = along ? 3 : 3 * half;
        IntStream.range(0, half).parallel().forEach(track -> {
            int start = along ? 3 * track * half : 3 * track;
            for (int i = 0; i < 3; i++) {
                float sum = 0;
                for (int k = -reach; k <= reach; k++) {
                    sum += from[start + i + step * Math.max(0, k)];
                }
                for (int k = 0; k < half; k++) {
                    to[start + i + step * k] = sum / (2 * reach + 1);
                    sum += from[start + i + step * Math.min(half - 1, k + reach + 1)]
                            - from[start + i + step * Math.max(0, k - reach)];
                }
            }
        });
        return to;
    }

    private void mix(int line, float[] blur, float[] light, float[] soft, float[] out, float[] seen) {
        float down = Math.max(0, (line - 0.5f) / 2);
        int top = (int) down;
        int above = 3 * top * half;
        int below = 3 * Math.min(half - 1, top + 1) * half;
        float v = down - top;
        for (int column = 0; column < size; column++) {
            int element = line * size + column;
            float radius = blur[element];
            float beside = Math.max(0, (column - 0.5f) / 2);
            int left = (int) beside;
            int right = 3 * Math.min(half - 1, left + 1);
            left *= 3;
            float u = beside - (int) beside;
            boolean sharp = radius < SOFT;
            float share =
                    sharp ? Math.max(0, (radius - 0.3f) / (SOFT - 0.3f)) : Math.min(1, (radius - SOFT) / (OUT - SOFT));
            for (int i = 0; i < 3; i++) {
                float near =
                        between(soft, above + left + i, above + right + i, below + left + i, below + right + i, u, v);
                float here = sharp
                        ? light[3 * element + i]
                        : between(out, above + left + i, above + right + i, below + left + i, below + right + i, u, v);
                seen[3 * element + i] = sharp ? here + share * (near - here) : near + share * (here - near);
            }
        }
    }

    /** A value of a halved picture between four of its elements. */
    private static float between(
            float[] small, int aboveLeft, int aboveRight, int belowLeft, int belowRight, float u, float v) {
        float above = small[aboveLeft] * (1 - u) + small[aboveRight] * u;
        float below = small[belowLeft] * (1 - u) + small[belowRight] * u;
        return above * (1 - v) + below * v;
    }
}
