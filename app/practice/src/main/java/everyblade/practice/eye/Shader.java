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

        Line(Shader shader) {
            this.shader = shader;
            this.frame = shader.frame;
        }

        void shade(int line) {
            int size = frame.size();
            for (int element = line * size; element < (line + 1) * size; element++) {
                if (frame.slots[element] >= 0) {
                    shade(element, line);
                }
            }
        }

        private void shade(int element, int line) {
            Camera camera = frame.camera;
            int slot = frame.slots[element];
            int index = frame.ofPlaced[slot];
            PlacedMesh placed = frame.placed.get(index);
            float[] m = frame.matrices[index];
            float ahead = 1 / frame.nearness[element];
            float across = (element % camera.size + 0.5f - camera.radius) / camera.scale * ahead;
            float up = (camera.radius - line - 0.5f) / camera.scale * ahead;
            EyeFrame.back(m, across, up, ahead, place);
            spot.x = place[0];
            spot.y = place[1];
            spot.z = place[2];
            spot.grain = ahead / camera.scale;
            facing(placed.solid(), frame.ofTriangle[slot]);
            // From the spot towards the lens, in the frame of the solid: the lens is the origin of right, up, ahead.
            float distance = (float) Math.sqrt(across * across + up * up + ahead * ahead);
            float vx = -(m[0] * across + m[4] * up + m[8] * ahead) / distance;
            float vy = -(m[1] * across + m[5] * up + m[9] * ahead) / distance;
            float vz = -(m[2] * across + m[6] * up + m[10] * ahead) / distance;
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
            float lx = vx + m[4] * shader.lamp / distance;
            float ly = vy + m[5] * shader.lamp / distance;
            float lz = vz + m[6] * shader.lamp / distance;
            float l = (float) Math.sqrt(lx * lx + ly * ly + lz * lz);
            lit(element, distance, vx, vy, vz, lx / l, ly / l, lz / l);
        }

        /** The smooth normal at the spot, by its shares of the triangle's corners. */
        private void facing(Solid solid, int triangle) {
            float[] p = solid.points;
            int a = 3 * solid.triangles[3 * triangle];
            int b = 3 * solid.triangles[3 * triangle + 1];
            int c = 3 * solid.triangles[3 * triangle + 2];
            float ux = p[b] - p[a];
            float uy = p[b + 1] - p[a + 1];
            float uz = p[b + 2] - p[a + 2];
            float vx = p[c] - p[a];
            float vy = p[c + 1] - p[a + 1];
            float vz = p[c + 2] - p[a + 2];
            float wx = spot.x - p[a];
            float wy = spot.y - p[a + 1];
            float wz = spot.z - p[a + 2];
            float uu = ux * ux + uy * uy + uz * uz;
            float uv = ux * vx + uy * vy + uz * vz;
            float vv = vx * vx + vy * vy + vz * vz;
            float wu = wx * ux + wy * uy + wz * uz;
            float wv = wx * vx + wy * vy + wz * vz;
            float whole = uu * vv - uv * uv;
            float shareB = whole == 0 ? 0 : (vv * wu - uv * wv) / whole;
            float shareC = whole == 0 ? 0 : (uu * wv - uv * wu) / whole;
            float shareA = 1 - shareB - shareC;
            float[] n = solid.normals;
            spot.nx = shareA * n[a] + shareB * n[b] + shareC * n[c];
            spot.ny = shareA * n[a + 1] + shareB * n[b + 1] + shareC * n[c + 1];
            spot.nz = shareA * n[a + 2] + shareB * n[b + 2] + shareC * n[c + 2];
            spot.tilt(0, 0, 0);
        }

        private void turnTowards(float vx, float vy, float vz) {
            if (spot.nx * vx + spot.ny * vy + spot.nz * vz < 0) {
                spot.nx = -spot.nx;
                spot.ny = -spot.ny;
                spot.nz = -spot.nz;
            }
        }

        private void lit(int element, float distance, float vx, float vy, float vz, float lx, float ly, float lz) {
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
            float fall = 1 / (distance * distance);
            float back = spot.gloss * shine * 1.6f;
            float[] light = shader.light;
            light[3 * element] = fall * (spot.red * square + back);
            light[3 * element + 1] = fall * (spot.green * square + back);
            light[3 * element + 2] = fall * (spot.blue * square + back * 1.03f);
        }
    }
}
