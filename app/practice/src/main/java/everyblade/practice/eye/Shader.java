package everyblade.practice.eye;

import java.util.stream.IntStream;

/**
 * Lights a frame from beside the lens: light falls off with the square of the distance, metal throws it back dully and as a
 * mirror does. Gives red, green and blue of each picture element, linear and without bounds. Works on all processors.
 */
final class Shader {

    private static final float DULL_INSIDE = 0.28f;

    private final EyeFrame frame;
    private final float lamp;
    private final float[] light;

    private Shader(EyeFrame frame, float lamp) {
        this.frame = frame;
        this.lamp = lamp;
        this.light = new float[3 * frame.size() * frame.size()];
    }

    /** Red, green and blue of each element in turn. */
    static float[] light(EyeFrame frame, Optics optics) {
        Shader shader = new Shader(frame, (float) optics.lamp());
        IntStream.range(0, frame.size()).parallel().forEach(line -> new Line(shader).shade(line));
        return shader.light;
    }

    /** Works on one line of the picture. */
    private static final class Line {

        private final EyeFrame frame;
        private final Shader shader;
        private final EyeSurface spot = new EyeSurface();
        private final float[] place = new float[3];
        private final Corners triangle = new Corners();
        private int triangleOf = EyeFrame.NOTHING;

        Line(Shader shader) {
            this.shader = shader;
            this.frame = shader.frame;
        }

        void shade(int line) {
            int size = frame.size();
            for (int column = 0; column < size; column++) {
                int element = line * size + column;
                if (frame.slots[element] >= 0) {
                    shade(element, column, line);
                }
            }
        }

        private void shade(int element, int column, int line) {
            Camera camera = frame.camera;
            int slot = frame.slots[element];
            int index = frame.ofPlaced[slot];
            PlacedMesh placed = frame.placed.get(index);
            float[] m = frame.matrices[index];
            float ahead = 1 / frame.nearness[element];
            spot.grain = ahead / camera.scale;
            float across = (column + 0.5f - camera.radius) * spot.grain;
            float up = (camera.radius - line - 0.5f) * spot.grain;
            EyeFrame.back(m, across, up, ahead, place);
            spot.x = place[0];
            spot.y = place[1];
            spot.z = place[2];
            if (slot != triangleOf) {
                triangleOf = slot;
                triangle.take(placed.solid(), frame.ofTriangle[slot]);
            }
            triangle.facing(spot);
            // From the spot towards the lens, in the frame of the solid: the lens is the origin of right, up, ahead.
            float distance = (float) Math.sqrt(across * across + up * up + ahead * ahead);
            float nearness = 1 / distance;
            float vx = -(m[0] * across + m[4] * up + m[8] * ahead) * nearness;
            float vy = -(m[1] * across + m[5] * up + m[9] * ahead) * nearness;
            float vz = -(m[2] * across + m[6] * up + m[10] * ahead) * nearness;
            spot.inner = spot.nx * vx + spot.ny * vy + spot.nz * vz < 0 && placed.isCut();
            turnTowards(vx, vy, vz);
            placed.solid().finish.on(spot, placed.seed(), placed.grime());
            for (Trace trace : placed.traces()) {
                trace.on(spot);
            }
            if (spot.inner) {
                spot.colour(DULL_INSIDE, DULL_INSIDE, DULL_INSIDE * 1.04f);
                spot.gloss = 0.5f;
            }
            // The lamp stands above the lens.
            float above = shader.lamp * nearness;
            float lx = vx + m[4] * above;
            float ly = vy + m[5] * above;
            float lz = vz + m[6] * above;
            float one = 1 / (float) Math.sqrt(lx * lx + ly * ly + lz * lz);
            lit(element, nearness, vx, vy, vz, lx * one, ly * one, lz * one);
        }

        private void turnTowards(float vx, float vy, float vz) {
            if (spot.nx * vx + spot.ny * vy + spot.nz * vz < 0) {
                spot.nx = -spot.nx;
                spot.ny = -spot.ny;
                spot.nz = -spot.nz;
            }
        }

        private void lit(int element, float nearness, float vx, float vy, float vz, float lx, float ly, float lz) {
            float square = Math.max(0, spot.nx * lx + spot.ny * ly + spot.nz * lz);
            float hx = lx + vx;
            float hy = ly + vy;
            float hz = lz + vz;
            float h = (float) Math.sqrt(hx * hx + hy * hy + hz * hz);
            float mirror = Math.max(0, (spot.nx * hx + spot.ny * hy + spot.nz * hz) / h);
            // (1 − (1 − m) / k)^… by repeated squaring is near enough to a power, and far cheaper.
            float shine = Math.max(0, 1 - (1 - mirror) * spot.polish / 4);
            shine *= shine;
            shine *= shine;
            float fall = nearness * nearness;
            float back = spot.gloss * shine * 1.6f;
            float[] light = shader.light;
            light[3 * element] = fall * (spot.red * square + back);
            light[3 * element + 1] = fall * (spot.green * square + back);
            light[3 * element + 2] = fall * (spot.blue * square + back * 1.03f);
        }
    }
}
