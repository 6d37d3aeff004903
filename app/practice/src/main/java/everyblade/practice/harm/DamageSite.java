package everyblade.practice.harm;

import everyblade.core.surface.Mesh;
import everyblade.practice.eye.EyeSurface;
import everyblade.practice.eye.Trace;

/** What tells an airfoil from the others of its row: bright pins near its root, on both faces, as many as its place in the list. */
public final class DamageSite implements Trace {

    private static final float PIN = 0.8f;
    private static final float RIM = 1.15f;

    private final float x;
    private final float r;
    private final float apart;
    private final int pins;

    /**
     * The pins of an airfoil.
     *
     * @param airfoil standing at clock 0
     * @param place 0 for the first landmark of the row, which has two pins; each further one has one more
     */
    public DamageSite(Mesh airfoil, int place) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double root = airfoil.leastRadius();
        double height = airfoil.mostRadius() - root;
        for (int point = 0; point < airfoil.pointCount(); point++) {
            double radius = StrictMath.hypot(airfoil.y(point), airfoil.z(point));
            if (radius < root + 0.3 * height) {
                least = Math.min(least, airfoil.x(point));
                most = Math.max(most, airfoil.x(point));
            }
        }
        this.x = (float) ((least + most) / 2);
        this.r = (float) (root + Math.max(0.15 * height, 2));
        this.pins = place + 2;
        this.apart = (float) Math.min(3, (most - least) / (pins + 1));
    }

    @Override
    public void on(EyeSurface spot) {
        float up = (float) Math.sqrt(spot.y * spot.y + spot.z * spot.z) - r;
        if (Math.abs(up) > RIM) {
            return;
        }
        for (int pin = 0; pin < pins; pin++) {
            float along = spot.x - x - (pin - (pins - 1) / 2f) * apart;
            float off = (float) Math.sqrt(along * along + up * up) / Math.min(1, apart / 2.6f);
            if (off < PIN) {
                spot.colour(0.72f, 0.66f, 0.45f);
                spot.gloss = 0.7f;
                spot.polish = 20;
            } else if (off < RIM) {
                spot.colour(0.05f, 0.05f, 0.05f);
                spot.gloss = 0.1f;
            }
        }
    }
}
