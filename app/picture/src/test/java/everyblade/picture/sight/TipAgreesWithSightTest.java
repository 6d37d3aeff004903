package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Hindrance;
import everyblade.core.surface.Facets;
import everyblade.core.surface.UnusableShape;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The picture and the sight arcs find out on different ways what is hidden: by a depth buffer at one angle, and in closed form
 * for all angles.
 */
class TipAgreesWithSightTest {

    /** Facets asked about, and how the picture answers. */
    private static final class Count {
        int inSight;
        int inFront;
        int inFrontWithinOne;
        int hidden;
        int covered;
        final StringBuilder others = new StringBuilder();
    }

    @ParameterizedTest
    @CsvSource({"larkspur-4, 5", "tansy-a1, 3", "corncrake-12, 9"})
    void a_facet_in_sight_is_in_front_in_the_picture_and_one_that_is_hidden_is_not(String model, int step)
            throws UnusableShape {
        SplittableRandom random = new SplittableRandom(5);
        Count count = new Count();
        List<Vantage> vantages = Vantages.each(model, step);
        for (Vantage vantage : vantages) {
            count(vantage, Turn.ofDegrees(random.nextInt(360_000) / 1000.0), count);
        }

        assertThat(vantages).hasSizeGreaterThan(7);
        assertThat(count.inSight).isGreaterThan(500);
        // In a thousandth of them the middle lies within rounding of the edge of what hides it or of its own facet.
        assertThat(count.inFrontWithinOne).as("%s", count.others).isEqualTo(count.inSight);
        assertThat(count.inFront).as("%s", count.others).isGreaterThan(count.inSight * 999 / 1000);
        assertThat(count.hidden).isGreaterThan(500);
        assertThat(count.covered).as("%s", count.others).isGreaterThan(count.hidden * 995 / 1000);
    }

    private static void count(Vantage vantage, Turn first, Count count) throws UnusableShape {
        int size = vantage.pose().pixels();
        Lens lens = new Lens(vantage.pose(), size);
        Frontmost front = new Frontmost(lens, size);
        List<Body> bodies = new Bodies(vantage, first).all();
        bodies.forEach(front::draw);
        FacetJudge judge = new FacetJudge(vantage);
        Facets facets = vantage.scene().facets();
        for (int airfoil = 0; airfoil < vantage.row().count(); airfoil++) {
            Turn clock = vantage.clock(airfoil, first);
            for (int facet = 0; facet < facets.count(); facet++) {
                double[] seen = seen(lens, facets, facet, clock);
                int column = (int) Math.floor(lens.across(seen));
                int line = (int) Math.floor(lens.down(seen));
                Optional<Hindrance> why = judge.why(facet, clock);
                boolean inCone = seen[2] > 0 && column >= 0 && line >= 0 && column < size && line < size;
                int number = front.number(bodies.get(0), airfoil, facet);
                String name = vantage.view().id() + " " + (airfoil + 1) + "/" + facet + " ";
                if (why.isEmpty()) {
                    count.inSight++;
                    boolean exact = front.at(column, line) == number;
                    count.inFront += exact ? 1 : 0;
                    boolean within = isWithinOne(front, size, column, line, number);
                    count.inFrontWithinOne += within ? 1 : 0;
                    count.others.append(within ? "" : name + "is not in front; ");
                } else if (why.get() == Hindrance.HIDDEN && inCone) {
                    count.hidden++;
                    boolean covered = front.at(column, line) != number || front.facing(column, line) < 0;
                    count.covered += covered ? 1 : 0;
                    count.others.append(covered ? "" : name + "is in front; ");
                }
            }
        }
    }

    private static double[] seen(Lens lens, Facets facets, int facet, Turn clock) {
        double turned = Math.toRadians(clock.wrapped().degrees());
        double y = facets.centroid(facet, 1);
        double z = facets.centroid(facet, 2);
        return lens.seen(
                facets.centroid(facet, 0),
                y * Math.cos(turned) + z * Math.sin(turned),
                z * Math.cos(turned) - y * Math.sin(turned));
    }

    private static boolean isWithinOne(Frontmost front, int size, int column, int line, int number) {
        for (int x = Math.max(0, column - 1); x <= Math.min(size - 1, column + 1); x++) {
            for (int y = Math.max(0, line - 1); y <= Math.min(size - 1, line + 1); y++) {
                if (front.at(x, y) == number) {
                    return true;
                }
            }
        }
        return false;
    }
}
