package everyblade.core.surface;

import everyblade.spi.Shape;
import everyblade.spi.Shape.Section;
import java.util.List;

/**
 * An axial blade or vane: sections with a circular-arc camber line, and the thickness of the NACA four-digit family set
 * off square to it. Chord, stagger, camber, thickness and leading edge of a section between two given ones follow along
 * straight lines; below the lowest and above the highest they stay.
 *
 * <p>A section is wound round the axis: at every x it lies at its share of the annulus, and its offset from the axial
 * plane through its mid-chord is length along the circle there, so that mid-chord stands at clock 0.
 */
final class AxialAirfoil implements Airfoil {

    private final Annulus annulus;
    private final double turned;
    private final double[] span;
    private final List<Section> sections;

    /** @param turned added to the stagger of every section, degrees */
    AxialAirfoil(Shape.Axial shape, Annulus annulus, double turned) {
        this.annulus = annulus;
        this.turned = turned;
        this.sections = shape.sections();
        this.span = sections.stream().mapToDouble(Section::span).toArray();
    }

    @Override
    public double[] at(int side, double chord, double span) throws UnusableShape {
        Section section = section(span);
        double[] unit = Profile.at(section.camber(), section.thickness(), side, chord);
        double stagger = Math.toRadians(section.stagger());
        double axial = unit[0] * Math.cos(stagger) - unit[1] * Math.sin(stagger);
        double clockwise = (unit[0] - 0.5) * Math.sin(stagger) + unit[1] * Math.cos(stagger);
        double x = section.x() + section.chord() * axial;
        double r = annulus.radius(x, span);
        return MeshBuilder.polar(x, r, section.chord() * clockwise / r);
    }

    /** The convex side; without camber the clockwise one. */
    @Override
    public int suction(double span) {
        Section section = section(span);
        if (section.camber() != 0) {
            return section.camber() > 0 ? 1 : -1;
        }
        return Math.cos(Math.toRadians(section.stagger())) >= 0 ? 1 : -1;
    }

    @Override
    public boolean rightHanded() {
        return true;
    }

    private Section section(double at) {
        return new Section(
                at,
                between(sections.stream().mapToDouble(Section::chord).toArray(), at),
                between(sections.stream().mapToDouble(Section::stagger).toArray(), at) + turned,
                between(sections.stream().mapToDouble(Section::camber).toArray(), at),
                between(sections.stream().mapToDouble(Section::thickness).toArray(), at),
                between(sections.stream().mapToDouble(Section::x).toArray(), at));
    }

    private double between(double[] values, double at) {
        return Between.linear(span, values, at);
    }
}
