package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Lens;
import everyblade.core.surface.Facets;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.EngineModel;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
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
        int coveredWithinOne;
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
        assertThat(count.hidden).isGreaterThan(500);
        assertAgrees(count);
    }

    @Test
    void vanes_in_a_known_place_hide_where_they_stand() throws UnusableShape {
        EngineModel engine = Vantages.changed("tansy-a1", "\"id\": \"d1\",", "\"id\": \"d1\", \"phase\": 4,");
        Vantage vantage = Vantages.of(engine, "in-i1", "high", Criteria.USUAL);
        Vantage anywhere = Vantages.of("tansy-a1", "in-i1", "high", Criteria.USUAL);
        Turn first = Turn.ofDegrees(31);
        Count count = new Count();

        count(vantage, first, count);

        assertThat(roles(vantage, first)).contains(Body.Role.FIXED).doesNotContain(Body.Role.SWEPT);
        assertThat(roles(anywhere, first)).contains(Body.Role.SWEPT).doesNotContain(Body.Role.FIXED);
        assertThat(count.inSight).isPositive();
        assertThat(count.hidden).isPositive();
        assertAgrees(count);
    }

    /** The scope tip between two vanes of a row, which leave it its room wherever else they may stand. */
    @Test
    void vanes_among_which_the_scope_tip_stands_hide_wherever_they_may_stand() throws UnusableShape {
        EngineModel engine = Vantages.changed("larkspur-4", "\"x\": 73.7", "\"x\": 90");
        Vantage vantage = Vantages.of(engine, "p1-c1", "low", Criteria.USUAL);
        Turn first = Turn.ofDegrees(11);
        Count count = new Count();

        count(vantage, first, count);

        assertThat(new Bodies(vantage, first).all())
                .filteredOn(body -> body.name().equals("Compressor stator 1"))
                .isNotEmpty()
                .allMatch(body -> body.role() == Body.Role.SWEPT);
        assertThat(count.inSight).isPositive();
        assertThat(count.hidden).isPositive();
        assertAgrees(count);
    }

    /**
     * The picture knows only the middles of its elements: in a few of a thousand an edge passes between such a middle and that
     * of the facet, and then the other answer is found right beside.
     */
    private static void assertAgrees(Count count) {
        assertThat(count.inFrontWithinOne).as("%s", count.others).isEqualTo(count.inSight);
        assertThat(count.inFront).isGreaterThanOrEqualTo(count.inSight * 995 / 1000);
        assertThat(count.coveredWithinOne).as("%s", count.others).isEqualTo(count.hidden);
        assertThat(count.covered).isGreaterThanOrEqualTo(count.hidden * 995 / 1000);
    }

    private static List<Body.Role> roles(Vantage vantage, Turn first) throws UnusableShape {
        return new Bodies(vantage, first).all().stream().map(Body::role).toList();
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
                Optional<Hindrance> why = judge.why(airfoil, facet, clock);
                boolean inCone = seen[2] > 0 && column >= 0 && line >= 0 && column < size && line < size;
                int number = front.number(bodies.get(0), airfoil, facet);
                String name = vantage.view().id() + " " + (airfoil + 1) + "/" + facet + " ";
                if (why.isEmpty()) {
                    count.inSight++;
                    boolean exact = front.at(column, line) == number;
                    count.inFront += exact ? 1 : 0;
                    boolean within = isWithinOne(front, size, column, line, shown -> shown == number);
                    count.inFrontWithinOne += within ? 1 : 0;
                    count.others.append(within ? "" : name + "is not in front; ");
                } else if (why.get() == Hindrance.HIDDEN && inCone) {
                    count.hidden++;
                    boolean covered = front.at(column, line) != number || front.facing(column, line) < 0;
                    count.covered += covered ? 1 : 0;
                    boolean within = covered || isWithinOne(front, size, column, line, shown -> shown != number);
                    count.coveredWithinOne += within ? 1 : 0;
                    count.others.append(within ? "" : name + "is in front; ");
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

    private static boolean isWithinOne(Frontmost front, int size, int column, int line, IntPredicate wanted) {
        for (int x = Math.max(0, column - 1); x <= Math.min(size - 1, column + 1); x++) {
            for (int y = Math.max(0, line - 1); y <= Math.min(size - 1, line + 1); y++) {
                if (wanted.test(front.at(x, y))) {
                    return true;
                }
            }
        }
        return false;
    }
}
