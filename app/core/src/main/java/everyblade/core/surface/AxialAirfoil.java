package everyblade.core.surface;

import everyblade.spi.Shape;
import everyblade.spi.Shape.Section;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * An axial blade or vane. Chord, stagger, camber, thickness and leading edge of a section between two given ones follow
 * along straight lines; below the lowest and above the highest they stay.
 *
 * <p>A section is wound round the axis: at every x it lies at its share of the annulus, and its offset from the axial
 * plane through its mid-chord is length along the circle there, so that mid-chord stands at clock 0.
 */
final class AxialAirfoil implements Airfoil {

    private final Annulus annulus;
    private final double turned;
    private final double[] spans;
    private final List<Section> sections;

    /** @param turned added to the stagger of every section, degrees */
    AxialAirfoil(Shape.Axial shape, Annulus annulus, double turned) {
        this.annulus = annulus;
        this.turned = turned;
        this.sections = shape.sections();
        this.spans = values(Section::span);
    }

    @Override
    public Slice slice(double span) {
        Section section = new Section(
                span,
                Between.linear(spans, values(Section::chord), span),
                Between.linear(spans, values(Section::stagger), span) + turned,
                Between.linear(spans, values(Section::camber), span),
                Between.linear(spans, values(Section::thickness), span),
                Between.linear(spans, values(Section::x), span));
        return new Wound(section, new Profile(section.camber(), section.thickness()));
    }

    private double[] values(ToDoubleFunction<Section> of) {
        return sections.stream().mapToDouble(of).toArray();
    }

    @Override
    public boolean rightHanded() {
        return true;
    }

    private final class Wound implements Slice {

        private final Section section;
        private final Profile profile;
        private final double sin;
        private final double cos;

        Wound(Section section, Profile profile) {
            this.section = section;
            this.profile = profile;
            this.sin = StrictMath.sin(StrictMath.toRadians(section.stagger()));
            this.cos = StrictMath.cos(StrictMath.toRadians(section.stagger()));
        }

        @Override
        public double[] at(int side, double chord) throws UnusableShape {
            double[] unit = profile.at(side, chord);
            double x = section.x() + section.chord() * (unit[0] * cos - unit[1] * sin);
            double clockwise = section.chord() * ((unit[0] - 0.5) * sin + unit[1] * cos);
            double r = annulus.radius(x, section.span());
            return MeshBuilder.polar(x, r, clockwise / r);
        }

        @Override
        public int suction() {
            if (section.camber() != 0) {
                return section.camber() > 0 ? 1 : -1;
            }
            return cos >= 0 ? 1 : -1;
        }
    }
}
