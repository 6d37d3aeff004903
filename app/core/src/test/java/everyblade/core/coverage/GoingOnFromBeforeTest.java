package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.Settings;
import everyblade.core.sight.Reach;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Patches;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Situation;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Coverage from stations that goes on from an earlier one is what is added up anew, and adds up no more than it must. */
class GoingOnFromBeforeTest {

    /** Blades behind vanes of which somebody must say where they stand. */
    private final Engine engine = new ShapedEngine()
            .row("g", RowKind.STATOR, 12, 0, -40)
            .row("r", RowKind.ROTOR, 20, 35, 0)
            .play(2)
            .view(
                    "v",
                    "r",
                    ShapedEngine.station("far", -15, 135, new Heading(1, 0.3, -0.3), 1, 3),
                    ShapedEngine.station("near", -12, 118, new Heading(1, 0.5, -0.3), 0, 0))
            .view("b", "r", ShapedEngine.station("b", -50, 130, new Heading(1, 0, -0.1), 0, 0))
            .view("u", "g", ShapedEngine.station("u", -60, 130, new Heading(1, 0.3, -0.2), 0, 0))
            .built();

    /** Blades before exact stations. */
    private final Engine plain = new ShapedEngine()
            .row("g", RowKind.STATOR, 12, 0, -40)
            .row("r", RowKind.ROTOR, 20, 35, 0)
            .view("v", "r", ShapedEngine.station("near", -12, 118, new Heading(1, 0.5, -0.3), 0, 0))
            .built();

    private static List<Object> told(Coverage coverage) {
        List<Object> told = new ArrayList<>();
        for (RowCoverage row : coverage.rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                told.add(row.surely(n));
                told.add(row.wholly(n));
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    told.add(List.of(row.state(n, zone), row.why(n, zone), row.areas(n, zone)));
                }
            }
        }
        return told;
    }

    @Test
    void eachEntryLeavesWhatIsAddedUpAnew() {
        Job job = new Job(engine);
        Coverage grown = job.coverage();
        List<Situation> before = new ArrayList<>();
        for (String line : List.of(
                "view v",
                "datum r 1",
                "turn 40",
                "turn 30",
                "note nothing",
                "watch tip",
                "turn 30",
                "watch all",
                "look through far near",
                "at near",
                "turn 50",
                "here 10",
                "view b",
                "turn 60",
                "view u",
                "datum g 1",
                "draw 40",
                "view v",
                "slip",
                "turn 30",
                "void 11 because it was wrong")) {
            job.enter(line);
            grown = grown.after(job.fold().situation());
            assertThat(told(grown)).as(line).isEqualTo(told(job.coverage()));
            before.add(job.fold().situation());
        }
        for (int entry : new int[] {2, 5, 11, 17}) {
            Situation earlier = before.get(entry);
            assertThat(told(grown.after(earlier)))
                    .as("back to entry %d", entry + 1)
                    .isEqualTo(told(Coverage.of(earlier, Settings.USUAL, grown.sights())));
        }
    }

    @Test
    void theRowThatWasWatchedAloneIsAddedUpFurtherWhereOnlyThatIsSo() {
        Job job = new Job(engine).enter("view v", "datum r 1", "turn 40");
        Coverage grown = job.coverage();
        RowCoverage other = grown.row("g");
        job.enter("turn 50");
        Coverage after = grown.afterWatching(grown.row("r").row(), job.fold().situation());
        assertThat(told(after)).isEqualTo(told(job.coverage()));
        assertThat(after.row("g")).isSameAs(other);
        job.enter("view u", "datum g 1", "draw 40");
        assertThat(told(after.afterWatching(grown.row("g").row(), job.fold().situation())))
                .as("where vanes were found to stand, blades are seen otherwise")
                .isEqualTo(told(job.coverage()));
    }

    /** Counts how often cells are computed. */
    private static final class Counted implements RowCoverage.CellsFrom {
        int computed;

        @Override
        public Cells cells(Grounds on, Supplier<ComputedCells> computing) {
            computed++;
            return computing.get();
        }
    }

    @Test
    void cellsAreComputedAgainOnlyWhereWhatTheyRestOnIsAnother() {
        Job job = new Job(plain).enter("view v", "datum r 1", "turn 40");
        Coverage coverage = job.coverage();
        Counted counted = new Counted();
        RowCoverage row = coverage.row("r");
        row = row.after(job.fold().situation(), coverage.sights(), counted);
        assertThat(counted.computed).as("nothing new").isZero();
        row = row.after(job.enter("skip 40").fold().situation(), coverage.sights(), counted);
        assertThat(counted.computed).as("turned unwatched").isZero();
        row = row.after(job.enter("turn 40").fold().situation(), coverage.sights(), counted);
        assertThat(counted.computed).as("watched").isEqualTo(1);
        row = row.after(job.enter("vanes g open").fold().situation(), coverage.sights(), counted);
        assertThat(counted.computed).as("vanes moved").isEqualTo(2);
        row.after(job.enter("proof 0.3 mm at 10 mm").fold().situation(), coverage.sights(), counted);
        assertThat(counted.computed).as("a target looked at").isEqualTo(3);
    }

    @Test
    void aTallyToWhichNothingWasAddedIsTheSame() {
        Situation situation =
                new Job(plain).enter("view v", "datum r 1", "turn 40").fold().situation();
        Coverage coverage = Coverage.of(situation, Settings.USUAL);
        SightTally tally = SightTally.start(coverage.row("r").row(), coverage.sights(), OptionalDouble.empty())
                .after(situation, coverage.sights());
        assertThat(tally.after(situation, coverage.sights())).isSameAs(tally);
        RowTally declared = RowTally.start(coverage.row("r").row(), 12, Map.of(), OptionalDouble.empty())
                .after(situation);
        assertThat(declared.after(situation)).isSameAs(declared);
    }

    /** From an exact station, a whole turn: what was seen of a facet and what was not make what it shows of it. */
    @Test
    void aFacetIsSeenAndUnseenByItsPatches() {
        Coverage coverage =
                new Job(plain).enter("view v", "datum r 1 ± 0", "turn 100").coverage();
        RowCoverage row = coverage.row("r");
        Patches patches = coverage.sights().grain(row.row()).patches();
        StationSight near = row.reach().orElseThrow().stations().stream()
                .filter(from -> from.station().equals("near"))
                .map(Reach.FromStation::sight)
                .findFirst()
                .orElseThrow();
        double[] sums = new double[2];
        for (int n : new int[] {1, 15, 18, 20}) {
            for (int facet = 0; facet < patches.facetCount(); facet++) {
                double seen = 0;
                double unseen = 0;
                for (int patch = patches.first(facet); patch < patches.first(facet) + patches.count(facet); patch++) {
                    double area = patches.facets().area(patch);
                    seen += row.surely(n).get(patch) ? area : 0;
                    unseen += near.reaches(0, facet, patch - patches.first(facet))
                                    && !row.surely(n).get(patch)
                            ? area
                            : 0;
                }
                assertThat(row.seen(n, facet)).isCloseTo(seen, within(1e-9));
                assertThat(row.unseen(near, n, facet)).isCloseTo(unseen, within(1e-9));
                sums[0] += seen;
                sums[1] += unseen;
            }
        }
        assertThat(sums[0]).isPositive();
        assertThat(sums[1]).isPositive();
    }
}
