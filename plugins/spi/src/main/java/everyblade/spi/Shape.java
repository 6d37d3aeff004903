package everyblade.spi;

import java.util.List;
import java.util.OptionalDouble;

/** The surface of one airfoil of a row, or of a liner. */
public sealed interface Shape {

    /**
     * Blade sections stacked from root to tip between the walls {@code hub} and {@code casing}.
     *
     * @param sections in rising order of span, at least two
     * @param clearance how far the tips stay from the casing, mm, not negative
     */
    record Axial(List<Section> sections, double clearance) implements Shape {

        /** The clearance unless it is stated, mm. */
        public static final double USUAL_CLEARANCE = 0.5;

        public Axial {
            sections = List.copyOf(sections);
        }

        /** With tips {@value #USUAL_CLEARANCE} mm inside the casing. */
        public Axial(List<Section> sections) {
            this(sections, USUAL_CLEARANCE);
        }
    }

    /**
     * One section of an axial airfoil.
     *
     * @param span share of the way from hub to tip, 0 to 1; the tip lies inside the casing by the clearance
     * @param chord mm
     * @param stagger angle of the chord from the axial direction, degrees, positive when the trailing edge lies
     *     clockwise of the leading edge
     * @param camber turning of the circular-arc camber line, degrees, positive when it bulges clockwise; the side to which
     *     it bulges is the suction side
     * @param thickness greatest thickness as a share of the chord
     * @param x leading edge, mm
     */
    record Section(double span, double chord, double stagger, double camber, double thickness, double x) {}

    /**
     * A blade of a radial impeller.
     *
     * @param hub meridional curve at the root
     * @param shroud meridional curve at the tip
     * @param hubWrap clock angle along the hub by share of its meridional length
     * @param shroudWrap the same along the shroud
     * @param hubThickness mm
     * @param shroudThickness mm
     * @param splitterFrom share of the meridional length at which a splitter begins, empty for a full blade
     */
    record Radial(
            List<MeridionalPoint> hub,
            List<MeridionalPoint> shroud,
            List<WrapPoint> hubWrap,
            List<WrapPoint> shroudWrap,
            double hubThickness,
            double shroudThickness,
            OptionalDouble splitterFrom)
            implements Shape {
        public Radial {
            hub = List.copyOf(hub);
            shroud = List.copyOf(shroud);
            hubWrap = List.copyOf(hubWrap);
            shroudWrap = List.copyOf(shroudWrap);
        }
    }

    /**
     * A point of a wrap curve.
     *
     * @param m share of the meridional length, 0 to 1
     * @param angle clock angle relative to the start, degrees
     */
    record WrapPoint(double m, double angle) {}

    /**
     * Two walls of revolution, seen from between them.
     *
     * @param outer meridional curve of the outer liner
     * @param inner meridional curve of the inner liner
     */
    record Liner(List<MeridionalPoint> outer, List<MeridionalPoint> inner) implements Shape {
        public Liner {
            outer = List.copyOf(outer);
            inner = List.copyOf(inner);
        }
    }

    /**
     * A surface from a file beside the model.
     *
     * @param file relative to the model's folder
     */
    record Mesh(String file) implements Shape {}
}
