package everyblade.core.surface;

import everyblade.spi.EngineModel;
import everyblade.spi.Wall;
import java.util.Optional;

/**
 * The channel between the walls {@code hub} and {@code casing} in which axial airfoils stand; their tips end short of the
 * casing by a clearance.
 */
final class Annulus {

    static final String HUB = "hub";
    static final String CASING = "casing";

    private final Curve hub;
    private final Curve casing;
    private final double clearance;

    private Annulus(Curve hub, Curve casing, double clearance) {
        this.hub = hub;
        this.casing = casing;
        this.clearance = clearance;
    }

    /**
     * The channel of a model.
     *
     * @param clearance mm
     * @throws UnusableShape if a wall is missing
     */
    static Annulus of(EngineModel model, double clearance) throws UnusableShape {
        return new Annulus(curve(model, HUB), curve(model, CASING), clearance);
    }

    private static Curve curve(EngineModel model, String id) throws UnusableShape {
        Optional<Wall> wall =
                model.walls().stream().filter(one -> one.id().equals(id)).findFirst();
        if (wall.isEmpty()) {
            throw new UnusableShape(new ShapeFault.NoWall(id));
        }
        return new Curve(wall.get().curve(), new CurveName.OfWall(id));
    }

    /**
     * The radius at this x and share of the way from hub to tip.
     *
     * @throws UnusableShape if there is no room for an airfoil
     */
    double radius(double x, double span) throws UnusableShape {
        double root = hub.radiusAt(x);
        double tip = casing.radiusAt(x) - clearance;
        if (!(root > 0 && tip > root)) {
            throw new UnusableShape(new ShapeFault.NoRoom(x, tip + clearance, root, clearance));
        }
        return Between.mix(root, tip, span);
    }
}
