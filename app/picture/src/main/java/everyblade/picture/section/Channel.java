package everyblade.picture.section;

import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Places in the plane through the axis by the airfoils that stand there: how far up the span, and how far along the way of
 * the air.
 */
interface Channel {

    /** The share of the way from root to tip, 0 to 1 on the airfoil. */
    double share(double x, double r);

    /** How far along the way of the air at this share of the span, mm from anywhere. */
    double along(double x, double r, double share);

    /** The channel of a row: between its walls, along its own curves, or between cylinders where neither is stated. */
    static Channel of(EngineModel model, RowSurface surface) {
        Shape shape = surface.row().shape().orElseThrow();
        if (shape instanceof Shape.Radial radial) {
            return new Curved(new SectionCurve(radial.hub()), new SectionCurve(radial.shroud()));
        }
        if (shape instanceof Shape.Axial axial) {
            SectionCurve hub = new SectionCurve(wall(model, "hub"));
            SectionCurve casing = new SectionCurve(wall(model, "casing"));
            return new Straight(hub::radiusAt, x -> casing.radiusAt(x) - axial.clearance());
        }
        double least = surface.leastRadius();
        double most = surface.mostRadius();
        return new Straight(x -> least, x -> most);
    }

    private static List<MeridionalPoint> wall(EngineModel model, String id) {
        return model.walls().stream()
                .filter(wall -> wall.id().equals(id))
                .findFirst()
                .orElseThrow()
                .curve();
    }

    /** Between an inner and an outer radius at every x. */
    record Straight(DoubleUnaryOperator inner, DoubleUnaryOperator outer) implements Channel {

        @Override
        public double share(double x, double r) {
            double root = inner.applyAsDouble(x);
            return (r - root) / (outer.applyAsDouble(x) - root);
        }

        @Override
        public double along(double x, double r, double share) {
            return x;
        }
    }

    /** Between two curves that may turn outward; a share of the span is told by the distances from both. */
    record Curved(SectionCurve hub, SectionCurve shroud) implements Channel {

        private static final int STEPS = 200;

        @Override
        public double share(double x, double r) {
            double up = hub.distance(x, r);
            return up / (up + shroud.distance(x, r));
        }

        @Override
        public double along(double x, double r, double share) {
            List<MeridionalPoint> points = new ArrayList<>();
            for (int i = 0; i <= STEPS; i++) {
                MeridionalPoint root = hub.at((double) i / STEPS);
                MeridionalPoint tip = shroud.at((double) i / STEPS);
                points.add(new MeridionalPoint(
                        root.x() + share * (tip.x() - root.x()), root.r() + share * (tip.r() - root.r())));
            }
            return new SectionCurve(points).nearest(x, r);
        }
    }
}
