package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which findings of the last record are asked for again: those at places that were not looked at. */
class LastTimeTest {

    /** Roots, middles and tips of two rows; no view shows a root. */
    private static Engine engine(int count, int bands) {
        return new Engines()
                .row("a", RowKind.ROTOR, 12, Direction.CW, bands, List.of(), false, 0)
                .row("b", RowKind.ROTOR, count, Direction.CW, bands, List.of(), false, 0)
                .view("middles", "b", 0, 2, "s2")
                .view("tips", "b", 0, 2, "s" + bands)
                .built();
    }

    private static List<OpenItem> items(String then, Engine now, String... lines) {
        Job before = new Job(engine(12, 3)).enter("note first", then);
        Job after = new Job(now).enter(lines);
        return new LastTime(after.fold(), after.coverage(), before.fold()).items();
    }

    private static List<OpenItem> items(String then, String... lines) {
        return items(then, engine(12, 3), lines);
    }

    @Test
    void itIsToldWithItsPlaceAndWhenItWasEntered() {
        assertThat(items("b crack 5 s3 2", "note nothing yet")).singleElement().satisfies(item -> {
            assertThat(item.open()).isTrue();
            assertThat(item.where())
                    .hasValueSatisfying(where -> assertThat(where).isInstanceOfSatisfying(Where.OnAirfoil.class, on -> {
                        assertThat(on.row()).isEqualTo("b");
                        assertThat(on.airfoil()).isEqualTo(5);
                    }));
            assertThat(item.what()).isInstanceOfSatisfying(FindingProblem.NotLookedAgain.class, problem -> {
                assertThat(problem.entry()).isEqualTo(2);
                assertThat(problem.date()).isEqualTo("2026-03-01");
                assertThat(problem.accepted()).isFalse();
            });
        });
    }

    @Test
    void itIsNotAskedForWhereItWasFoundAgainOrItsPlaceWasSeen() {
        assertThat(items("b crack 5 s3 2", "b crack 5 s3 3")).isEmpty();
        assertThat(items("b crack 5 s3 2", "view tips", "round 1")).isEmpty();
    }

    @Test
    void seeingAnotherPlaceOrAnotherBladeIsNotLookingThere() {
        assertThat(items("b crack 5 s2 2", "view tips", "round 1")).hasSize(1);
        assertThat(items("b crack 5 s3 2", "view tips", "datum b 1", "turn on 60"))
                .hasSize(1);
    }

    /** A finding that was said to lie anywhere: middle and tip are to be seen, the root that no view shows is not. */
    @Test
    void ofAPlaceOfManyPartsAllMustBeSeenThatAnyViewShows() {
        assertThat(items("b crack 5 all 2", "view tips", "round 1")).hasSize(1);
        assertThat(items("b crack 5 all 2", "view tips", "round 1", "view middles", "round 1"))
                .isEmpty();
        assertThat(items("b crack 5 s1 2", "view tips", "round 1"))
                .as("a place of which no view shows anything")
                .hasSize(1);
    }

    @Test
    void anAcceptedPlaceIsToldAndNotOpen() {
        String[] seen = {"view tips", "round 1", "b noaccess s2 5 because the light was broken"};
        assertThat(items("b crack 5 s2 2", seen)).singleElement().satisfies(item -> {
            assertThat(item.open()).isFalse();
            assertThat(item.what())
                    .isInstanceOfSatisfying(
                            FindingProblem.NotLookedAgain.class,
                            problem -> assertThat(problem.accepted()).isTrue());
        });
        assertThat(items("b crack 5 all 2", seen))
                .singleElement()
                .satisfies(item -> assertThat(item.open())
                        .as("the root of it is neither seen nor accepted")
                        .isTrue());
    }

    @Test
    void anEngineThatLacksThePlaceIsNotAskedForIt() {
        assertThat(items("b crack 11 s3 2", engine(11, 3))).hasSize(1);
        assertThat(items("b crack 12 s3 2", engine(11, 3))).isEmpty();
        assertThat(items("b crack 5 s3 2", engine(12, 4)))
                .as("divided otherwise")
                .isEmpty();
    }
}
