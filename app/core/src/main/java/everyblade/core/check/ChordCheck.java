package everyblade.core.check;

import everyblade.core.surface.Mesh;
import everyblade.spi.Shape;
import java.util.List;
import java.util.Locale;

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
                    String.format(Locale.ROOT, "the chords of %s are %.2g of its pitch", surface.named(), ratio),
                    "airfoils are hardly ever so " + (ratio < LEAST ? "slender" : "long"),
                    "see whether chords and walls are all in millimetres"));
        }
    }

    private static double middleRadius(Mesh mesh) {
        return (mesh.leastRadius() + mesh.mostRadius()) / 2;
    }
}
