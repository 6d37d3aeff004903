package everyblade.practice.harm;

import everyblade.practice.eye.EyeSurface;
import everyblade.practice.eye.Noise;
import everyblade.practice.eye.Trace;

/** What a harm looks like. */
public final class DamageLook {

    private DamageLook() {}

    /** The trace that a harm leaves on its airfoil. */
    public static Trace of(Harm harm) {
        return switch (harm.kind()) {
            case NICK -> new Notch(harm, 0.75f, 1, 0.22f);
            case MISSING -> new Notch(harm, 1.1f, 0.9f, 0.35f);
            case CRACK -> new Crack(harm);
            case DENT -> new Dent(harm);
            case BURN -> new Patch(harm, true, DamageLook::burn);
            case RUB -> new Rub(harm);
            case COATING -> new Patch(harm, false, DamageLook::bare);
            case MARK -> new Pen(harm);
            case DEPOSIT -> new Patch(harm, false, DamageLook::deposit);
            case GLINT -> new Patch(harm, false, DamageLook::glint);
        };
    }

    /** @param depth 0 at the rim of the patch, 1 in its middle */
    private static void burn(EyeSurface spot, float depth) {
        float black = Math.min(1, 2.2f * depth);
        float blue = Math.max(0, 1 - Math.abs(depth - 0.22f) * 7);
        spot.towards(0.5f * Math.min(1, 6 * depth), 0.34f, 0.24f, 0.12f);
        spot.towards(0.55f * blue, 0.15f, 0.18f, 0.33f);
        spot.towards(0.92f * black * black, 0.035f, 0.03f, 0.028f);
        spot.gloss *= 1 - 0.9f * black;
    }

    private static void bare(EyeSurface spot, float depth) {
        float rim = Math.max(0, 1 - depth * 9);
        spot.colour(0.60f, 0.585f, 0.55f);
        spot.towards(0.75f * rim, 0.12f, 0.11f, 0.10f);
        spot.gloss = 0.55f;
        spot.polish = 30;
    }

    private static void deposit(EyeSurface spot, float depth) {
        float share = Math.min(0.8f, 1.6f * depth);
        spot.towards(share, 0.19f, 0.135f, 0.085f);
        spot.gloss *= 1 - share;
    }

    private static void glint(EyeSurface spot, float depth) {
        float share = Math.min(1, 2 * depth);
        spot.gloss += share * (1.1f - spot.gloss);
        spot.polish += share * (16 - spot.polish);
    }

    /** Coordinates about a harm: along, into, out of the surface. */
    abstract static class Local implements Trace {

        final Harm harm;
        final float size;
        private final float reach;
        private final float[] at;
        private final float[] along;
        private final float[] into;
        private final float[] out;

        Local(Harm harm) {
            this.harm = harm;
            this.size = (float) harm.size();
            this.reach = (float) (1.2 * harm.reach());
            this.at = floats(harm.at());
            this.along = floats(harm.along());
            this.into = floats(harm.into());
            this.out = floats(harm.into().cross(harm.along()));
        }

        static float[] floats(Vector v) {
            return new float[] {(float) v.x(), (float) v.y(), (float) v.z()};
        }

        private static float dot(float[] axis, float x, float y, float z) {
            return axis[0] * x + axis[1] * y + axis[2] * z;
        }

        /** Along, into and out in mm; null where the harm does not reach. */
        float[] seenFrom(float x, float y, float z) {
            float dx = x - at[0];
            float dy = y - at[1];
            float dz = z - at[2];
            return dx * dx + dy * dy + dz * dz > reach * reach
                    ? null
                    : new float[] {dot(along, dx, dy, dz), dot(into, dx, dy, dz), dot(out, dx, dy, dz)};
        }

        /** Whether a spot lies on the same face of the airfoil as the harm. */
        boolean sameFace(EyeSurface spot) {
            Vector n = harm.normal();
            return spot.nx * n.x() + spot.ny * n.y() + spot.nz * n.z() > 0;
        }

        /** Tilts a spot by slopes along and into. */
        void tilt(EyeSurface spot, float alongSlope, float intoSlope) {
            spot.tilt(
                    along[0] * alongSlope + into[0] * intoSlope,
                    along[1] * alongSlope + into[1] * intoSlope,
                    along[2] * alongSlope + into[2] * intoSlope);
        }

        float noise(float u, float v) {
            return Noise.at(u, v, harm.seed());
        }
    }

    /** Metal gone from an edge or corner. */
    private static final class Notch extends Local {

        private final float length;
        private final float depth;
        private final float rough;

        Notch(Harm harm, float length, float depth, float rough) {
            super(harm);
            this.length = length * size;
            this.depth = depth * size;
            this.rough = rough;
        }

        /** Below 1 within. */
        private float measure(float[] p) {
            float ragged = 1 + rough * (noise(3 * p[0] / length + 7, 3 * p[1] / depth) - 0.5f) * 2;
            return ((p[0] / length) * (p[0] / length) + (p[1] / depth) * (p[1] / depth)) * ragged;
        }

        @Override
        public boolean gone(float x, float y, float z) {
            float[] p = seenFrom(x, y, z);
            return p != null && measure(p) < 1;
        }

        @Override
        public boolean cuts() {
            return true;
        }

        /** The metal round it is raised and bright. */
        @Override
        public void on(EyeSurface spot) {
            float[] p = seenFrom(spot.x, spot.y, spot.z);
            if (p == null) {
                return;
            }
            float share = Math.max(0, 1 - (measure(p) - 1) / 0.45f);
            spot.towards(0.55f * share, 0.72f, 0.71f, 0.69f);
            tilt(spot, 0.5f * share * Math.signum(p[0]) * Math.abs(p[0]) / length, 0.5f * share * p[1] / depth);
        }
    }

    /** A dark line that runs inward, finer and finer. */
    private static final class Crack extends Local {

        private static final float WIDTH = 0.16f;

        Crack(Harm harm) {
            super(harm);
        }

        @Override
        public void on(EyeSurface spot) {
            float[] p = seenFrom(spot.x, spot.y, spot.z);
            if (p == null || p[1] < -0.05f || p[1] > size) {
                return;
            }
            float way = 0.22f * size * (noise(2.5f * p[1] / size, 3) - noise(0, 3))
                    + 0.05f * size * (noise(11 * p[1] / size, 5) - 0.5f);
            float width = WIDTH * (1.15f - p[1] / size);
            float off = Math.abs(p[0] - way);
            float cover = Math.max(0, Math.min(1, (width / 2 + spot.grain / 2 - off) / Math.max(spot.grain, 0.02f)));
            cover *= Math.min(1, width / spot.grain);
            spot.towards(0.95f * cover, 0.012f, 0.011f, 0.01f);
            spot.gloss *= 1 - cover;
        }
    }

    /** A hollow: seen by how the light lies in it. */
    private static final class Dent extends Local {

        Dent(Harm harm) {
            super(harm);
        }

        @Override
        public void on(EyeSurface spot) {
            float[] p = seenFrom(spot.x, spot.y, spot.z);
            if (p == null || !sameFace(spot)) {
                return;
            }
            float radius = size / 2;
            float off = (float) Math.sqrt(p[0] * p[0] + p[1] * p[1]) / radius;
            if (off < 1.25f && off > 0) {
                float slope = off < 1 ? 1.5f * off * (1 - off * off) : -0.5f * (1.25f - off) * 4 * (off - 1);
                tilt(spot, -slope * p[0] / (off * radius), -slope * p[1] / (off * radius));
                spot.towards(off < 0.9f ? 0.18f : 0, 0.62f, 0.61f, 0.6f);
            }
        }
    }

    /** A spot of another colour with an irregular rim. */
    private static final class Patch extends Local {

        private interface Colouring {
            void on(EyeSurface spot, float depth);
        }

        private final boolean through;
        private final Colouring colouring;

        Patch(Harm harm, boolean through, Colouring colouring) {
            super(harm);
            this.through = through;
            this.colouring = colouring;
        }

        @Override
        public void on(EyeSurface spot) {
            float[] p = seenFrom(spot.x, spot.y, spot.z);
            if (p == null || !through && !sameFace(spot)) {
                return;
            }
            boolean drawnOut = harm.kind() == HarmKind.DEPOSIT;
            float u = p[0] / (drawnOut ? 0.3f : 1);
            float rim = size / 2 * (0.72f + 0.55f * noise(2.5f * p[0] / size + 9, 2.5f * p[1] / size));
            float depth = 1 - (float) Math.sqrt(u * u + p[1] * p[1]) / rim;
            if (depth > 0) {
                colouring.on(spot, depth);
            }
        }
    }

    /** A blade's tip that has touched: bright streaks, and the colours of heat below them. */
    private static final class Rub extends Local {

        Rub(Harm harm) {
            super(harm);
        }

        @Override
        public void on(EyeSurface spot) {
            float[] p = seenFrom(spot.x, spot.y, spot.z);
            if (p == null || Math.abs(p[0]) > size / 2) {
                return;
            }
            float height = 0.12f * size + 0.5f;
            float fade = Math.min(1, 4 * (0.5f - Math.abs(p[0]) / size));
            float ragged = height * (0.6f + 0.7f * noise(6 * p[0] / size, 1)) * fade;
            if (p[1] < ragged) {
                float streak = noise(14 * p[1] / height, 2 * p[0] / size);
                spot.towards(0.8f, 0.5f + 0.3f * streak, 0.48f + 0.3f * streak, 0.46f + 0.28f * streak);
                tilt(spot, 0, 0.4f * (streak - 0.5f));
                spot.gloss = 0.7f;
            } else if (p[1] < 2.2f * ragged) {
                float share = 1 - (p[1] - ragged) / (1.2f * ragged);
                spot.towards(0.5f * share, 0.17f, 0.16f, 0.30f);
            }
        }
    }

    /** Two strokes of a marking pen. */
    private static final class Pen extends Local {

        Pen(Harm harm) {
            super(harm);
        }

        @Override
        public void on(EyeSurface spot) {
            float[] p = seenFrom(spot.x, spot.y, spot.z);
            if (p == null || !sameFace(spot)) {
                return;
            }
            float bend = 0.12f * size * (noise(2 * p[1] / size, 4) - 0.5f);
            boolean first = Math.abs(p[0] - 0.5f * p[1] - bend) < 0.14f && Math.abs(p[1]) < size / 2;
            boolean second = Math.abs(p[0] + 0.8f * p[1] + bend) < 0.14f && Math.abs(p[1]) < size / 3;
            if (first || second) {
                spot.towards(0.75f, 0.06f, 0.09f, 0.26f);
                spot.gloss *= 0.6f;
            }
        }
    }
}
