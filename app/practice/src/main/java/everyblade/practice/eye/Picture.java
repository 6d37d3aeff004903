package everyblade.practice.eye;

import java.util.stream.IntStream;

/** What a scope tip's camera makes of a frame: exposed for the whole, darker towards the rim, a little grainy. */
public final class Picture {

    private static final int STEPS = 1024;
    /** Mean brightness that the camera goes for. */
    private static final float AIM = 0.24f;

    private static final byte[] BRIGHTNESS = brightness();

    private Picture() {}

    private static byte[] brightness() {
        byte[] values = new byte[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            values[i] = (byte) Math.round(255 * StrictMath.pow((double) i / STEPS, 1 / 2.2));
        }
        return values;
    }

    /**
     * The picture: alpha, red, green and blue of each element, transparent outside the round field.
     *
     * @param moment tells the grain of one picture from that of the next
     */
    public static int[] of(EyeFrame frame, Optics optics, int moment) {
        float[] light = Focus.through(optics, frame, Shader.light(frame, optics));
        float exposure = exposure(frame, light);
        int size = frame.size();
        int[] colours = new int[size * size];
        IntStream.range(0, size).parallel().forEach(line -> develop(light, exposure, size, line, moment, colours));
        return colours;
    }

    /** By the mean of the roots, so that a glint does not darken all the rest. */
    private static float exposure(EyeFrame frame, float[] light) {
        double sum = 0;
        int seen = 0;
        for (int element = 0; element < frame.slots.length; element += 3) {
            if (frame.slots[element] >= 0) {
                sum += Math.sqrt(light[3 * element + 1]);
                seen++;
            }
        }
        double mean = seen == 0 ? 0 : sum / seen;
        return mean == 0 ? 0 : (float) (AIM / (mean * mean));
    }

    private static void develop(float[] light, float exposure, int size, int line, int moment, int[] colours) {
        float radius = size / 2f;
        float y = line + 0.5f - radius;
        for (int column = 0; column < size; column++) {
            float x = column + 0.5f - radius;
            float rim = (x * x + y * y) / (radius * radius);
            if (rim > 1) {
                continue;
            }
            int element = line * size + column;
            float gain = exposure * (1 - 0.45f * rim * rim);
            float grain = 0.006f * (Noise.corner(column, line, moment) - 0.5f);
            colours[element] = 0xff000000
                    | level(light[3 * element] * gain + grain) << 16
                    | level(light[3 * element + 1] * gain + grain) << 8
                    | level(light[3 * element + 2] * gain + grain + 0.001f);
        }
    }

    /** Bright places are pressed together towards white, as film and cameras do. */
    private static int level(float light) {
        float pressed = light <= 0 ? 0 : light * (1 + light / 9) / (1 + light);
        return BRIGHTNESS[Math.min(STEPS, (int) (STEPS * pressed))] & 0xff;
    }
}
