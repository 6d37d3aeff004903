package everyblade.core.surface;

import static everyblade.core.surface.Shapes.annulus;
import static everyblade.core.surface.Shapes.section;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.spi.Shape;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** How far a place lies from what an airfoil sweeps. */
class MeridianTest {

    private final Mesh blade;
    private final Meridian swept;

    MeridianTest() throws UnusableShape {
        Shape shape = new Shape.Axial(List.of(
                section(0, 40, 15, 30, 0.09, -20),
                section(0.5, 38, 30, 20, 0.07, -15),
                section(1, 36, 48, 8, 0.05, -10)));
        Shapes annulus = annulus();
        blade = Surfaces.of(annulus.model(shape), annulus.row(shape), Optional.empty(), Fineness.STANDARD, Map.of())
                .orElseThrow();
        swept = Meridian.of(blade);
    }

    /** Asked of each edge of each triangle, none passed over. */
    private double ofEveryEdge(double x, double r) {
        double least = Double.POSITIVE_INFINITY;
        int[] corners = blade.triangles();
        for (int i = 0; i < corners.length; i++) {
            int a = corners[i];
            int b = corners[i % 3 == 2 ? i - 2 : i + 1];
            double dx = blade.x(b) - blade.x(a);
            double dr = radius(b) - radius(a);
            double square = dx * dx + dr * dr;
            double share = ((x - blade.x(a)) * dx + (r - radius(a)) * dr) / square;
            double held = square == 0 ? 0 : Math.max(0, Math.min(1, share));
            least = Math.min(least, Math.hypot(blade.x(a) + held * dx - x, radius(a) + held * dr - r));
        }
        return least;
    }

    private double radius(int corner) {
        return Math.hypot(blade.y(corner), blade.z(corner));
    }

    @Test
    void isThatOfTheNearestEdgeWhereverAPlaceOutsideLies() {
        SplittableRandom random = new SplittableRandom(3);
        int outside = 0;
        for (int i = 0; i < 2000; i++) {
            double x = random.nextDouble(-60, 90);
            double r = random.nextDouble(40, 220);
            double distance = swept.distance(x, r);
            if (distance > 0) {
                outside++;
                assertThat(distance).as("%s, %s", x, r).isEqualTo(ofEveryEdge(x, r));
            }
        }
        assertThat(outside).isBetween(1000, 1990);
    }

    @Test
    void isNothingWithinATriangle() {
        int[] corners = blade.triangles();
        for (int triangle = 0; triangle < corners.length; triangle += 3) {
            double x = 0;
            double r = 0;
            for (int k = 0; k < 3; k++) {
                int corner = corners[triangle + k];
                x += blade.x(corner) / 3;
                r += radius(corner) / 3;
            }
            assertThat(swept.distance(x, r)).as("triangle %d", triangle / 3).isLessThan(1e-9);
        }
    }
}
