package everyblade.core.check;

import everyblade.core.surface.Mesh;
import everyblade.spi.Shape;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * Judges whether the chords of an axial row can be in millimetres: by chord over pitch at its middle radius, which is
 * between a half and two in most turbomachines, and a few times less or more for struts and inducers.
 */
final class ChordCheck {

    private static final double LEAST = 0.1;
    private static final double MOST = 8;

    private ChordCheck() {}

    static void of(CheckedSurface surface, List<Flaw> flaws) {
        if (!surface.isAirfoil() || !(surface.row().shape().orElseThrow() instanceof Shape.Axial axial)) {
            return;
        }
        double chord = axial.sections().stream()
                .mapToDouble(Shape.Section::chord)
                .average()
                .orElseThrow();
        double ratio = chord / (surface.pitch() * middleRadius(surface.mesh()));
        if (ratio < LEAST || ratio > MOST) {
            flaws.add(new Flaw(
                    Flaw.Kind.UNLIKELY_CHORD,
                    surface.part(),
                    new Wrong.UnlikelyChord(
                            surface.id(), BigDecimal.valueOf(ratio).round(new MathContext(2))),
                    ratio < LEAST ? Wrong.Because.SLENDER : Wrong.Because.LONG,
                    Wrong.Mend.CHECK_UNITS));
        }
    }

    private static double middleRadius(Mesh mesh) {
        return (mesh.leastRadius() + mesh.mostRadius()) / 2;
    }
}
