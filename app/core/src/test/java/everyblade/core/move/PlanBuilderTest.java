package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PlanBuilderTest {

    private static Plan plan(Job job) {
        return PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));
    }

    private static List<String> lines(Plan plan) {
        return plan.moves().stream()
                .flatMap(move -> move.entries().stream())
                .map(EntryText::of)
                .toList();
    }

    private static Job followed(Job job, Plan plan) {
        return job.enter(lines(plan).toArray(String[]::new));
    }

    /** Cells in gaps that some view shows. */
    private static int open(Job job) {
        return Gaps.of(job.coverage()).stream()
                .filter(gap -> gap.why() != Why.NO_ACCESS)
                .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                .sum();
    }

    @Nested
    class ByHand {

        private final Engine blades36 =
                new Engines().rotor("c1", 36).view("v", "c1", 118, 2).built();

        /** Blades 27 to 24 are left; watching may begin at 112°, where 27 is about to leave the window, and end with 24 in it. */
        @Test
        void aSkippedSectorIsReachedTheShorterWay() {
            Job job = new Job(blades36).enter("view v", "datum c1 1", "turn on 100", "skip on 50", "turn on 210");
            Plan plan = plan(job);
            assertThat(lines(plan)).containsExactly("skip on to 112", "turn on 26");
            assertThat(plan.turning()).isEqualByComparingTo("138");
            assertThat(plan.minutes()).isCloseTo(0.25 + 112 / 360.0 + 0.25 + 4 * 26 / 360.0, within(1e-9));
            assertThat(plan.proved()).isTrue();
            assertThat(open(followed(job, plan))).isZero();
        }

        /**
         * The last view looks 81° further on than the second, two blades and a degree: blade 4, two from the landmark, stands there
         * within the aim, so nobody turns the landmark there, as 15° would have to be for the first view. A view, a search, an
         * identification and a turn, then the same without search.
         */
        @Test
        void aWholeTurnBeginsAtABladeBesideALandmarkIfThatStandsThere() {
            Job job = new Job(new Engines()
                    .pad("pad", Ratio.ONE, 1, 0, 0)
                    .landmark(2)
                    .row("r", RowKind.ROTOR, 9, Direction.CW, 2, List.of(), false, 0)
                    .aim(1)
                    .view("v0", "r", 1, 3, "root")
                    .view("v1", "r", 16, 7, "tip")
                    .view("v2", "r", 97, 5, "root")
                    .built());
            Plan plan = plan(job);
            assertThat(lines(plan)).containsExactly("view v1", "round 2", "view v2", "round 4");
            assertThat(plan.minutes())
                    .isCloseTo((2 + 0.25 + 0.5 + 0.5 + 0.25 + 4) + (2 + 0.5 + 0.25 + 4), within(1e-9));
            assertThat(plan.proved()).isTrue();
            assertThat(open(followed(job, plan))).isZero();
        }

        @Test
        void nothingIsLeftToDoWhenAllIsSeen() {
            Plan plan = plan(new Job(blades36).enter("view v", "datum c1 1", "turn on 360"));
            assertThat(plan.moves()).isEmpty();
            assertThat(plan.turning()).isZero();
            assertThat(plan.proved()).isTrue();
        }

        @Test
        void whatWasNeverIdentifiedIsIdentifiedFirst() {
            Job job = new Job(blades36).enter("view v", "turn on 360");
            Plan plan = plan(job);
            assertThat(lines(plan)).first().asString().isIn("datum c1 1", "round 1");
            assertThat(plan.moves().get(0).identifies()).hasValue(1);
            assertThat(open(followed(job, plan))).isZero();
        }

        @Test
        void aPartThatIsNotWatchedIsWatchedAgain() {
            Engine engine = new Engines()
                    .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                    .view("v", "c1", 118, 2, "all")
                    .built();
            Job job = new Job(engine).enter("view v", "datum c1 1", "watch tip", "turn on 360");
            Plan plan = plan(job);
            assertThat(lines(plan)).first().isEqualTo("watch all");
            assertThat(open(followed(job, plan))).isZero();
        }

        @Test
        void whatNoViewShowsIsLeft() {
            Engine tips = new Engines()
                    .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                    .view("tips", "c1", 200, 2, "tip")
                    .built();
            Plan plan = plan(new Job(tips).enter("view tips", "datum c1 1", "turn on 300"));
            assertThat(plan.left()).isEqualTo(36);
            assertThat(plan.moves()).hasSize(1);
        }

        @Test
        void whatIsAskedForAloneCounts() {
            Job job = new Job(blades36).enter("view v", "datum c1 1", "noaccess all all because of time");
            assertThat(plan(job).moves()).isEmpty();
        }

        /** On with the roots to where their gap ends, and from there on with the tips. */
        @Test
        void twoViewsAreSeatedOnceEach() {
            Engine engine = new Engines()
                    .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                    .view("roots", "c1", 118, 2, "root")
                    .view("tips", "c1", 118, 2, "tip")
                    .built();
            Job job = new Job(engine).enter("view roots", "datum c1 1", "turn on 270", "view tips", "turn on 10");
            Plan plan = plan(job);
            assertThat(lines(plan)).filteredOn(line -> line.startsWith("view")).containsExactly("view roots");
            assertThat(open(followed(job, plan))).isZero();
        }

        @Test
        void roundARowThatStandsStillTheScopeTipIsDrawn() {
            Engine engine = new Engines().stator("s1", 8).view("v", "s1", 0, 5).built();
            Job job = new Job(engine).enter("view v", "datum s1 1", "draw 90");
            Plan plan = plan(job);
            assertThat(plan.turning()).isZero();
            assertThat(plan.proved()).isTrue();
            assertThat(plan.drawing()).isEqualByComparingTo("220");
            assertThat(lines(plan)).containsExactly("feed 50", "draw 170");
            assertThat(open(followed(job, plan))).isZero();
        }

        @Test
        void aScopeTipAmongTheBladesIsDrawnClearFirst() {
            Job job = new Job(blades36).enter("view v", "datum c1 1", "in");
            Plan plan = plan(job);
            assertThat(lines(plan)).first().isEqualTo("clear");
            assertThat(open(followed(job, plan))).isZero();
        }

        /** Going and turning are good to ± 1° each, so watching begins 1.4° earlier and ends as much later. */
        @Test
        void playIsAllowedForAtBothEnds() {
            Engine engine = new Engines()
                    .rotor("c1", 36)
                    .view("v", "c1", 0, 3)
                    .pad("pad", Ratio.ONE, 1, 0, 0)
                    .built();
            Job job = new Job(engine).enter("view v", "datum c1 1 at 0", "turn on 320");
            Plan plan = plan(job);
            assertThat(plan.unsure()).isZero();
            assertThat(open(followed(job, plan))).isZero();
        }
    }
}
