package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;
import everyblade.core.sight.Progress;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever asks for the next move again and again, and logs what it says, comes to the end of the job. */
class GoingOnTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 2_000 : 15;
    private static final int MOST = 400;

    /** Three rotors and a stator through two ports, turned at a pad that is as coarse as they come. */
    private static Engine engine(Direction... ways) {
        return new Engines()
                .normal(ways.length == 0 ? Direction.CW : ways[0])
                .pad("pad", new Ratio(29, 77), 2, 0, 0.2, ways)
                .rotor("c1", 19)
                .stator("s1", 28)
                .rotor("c2", 50)
                .rotor("t", 67)
                .port("p1")
                .port("p2")
                .viewThrough("p1", "p1-c1", "c1")
                .viewThrough("p1", "p1-s1", "s1")
                .viewThrough("p2", "p2-c2", "c2")
                .viewThrough("p2", "p2-t", "t")
                .built();
    }

    private static Optional<Move> next(Job job) {
        return PlanBuilder.next(job.fold(), job.coverage(), Prices.of(Settings.USUAL), Progress.NONE);
    }

    private static long open(Coverage coverage) {
        return Gaps.of(coverage).stream()
                .filter(gap -> gap.why() != Why.NO_ACCESS)
                .count();
    }

    private static void enter(Job job, List<Entry> entries) {
        entries.forEach(entry -> job.enter(EntryText.of(entry)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "open p2;view p2-t;datum t 1;turn on 100",
                "open p1;view p1-c1;datum c1 4;skip on 3 blades;turn on 200;skip back 17",
                "open p2;view p2-c2;round 1;open p1;view p1-s1;datum s1 5;draw 120",
                "open p1;view p1-c1;round 1;watch all;slip;view p1-s1",
                "open p1;view p1-c1;datum c1 1;turn on 100;pause;takeover Ann",
                "open p1;view p1-c1;round 1;skip on 100 ± 4;view p1-s1;datum s1 1;draw 90 ± 3",
                "open p1;view p1-s1;datum s1 1;draw 90 ± 7;feed 10 ± 7"
            })
    void isNeverWarnedAndClosesWhatEachMoveSays(String before) {
        Job job = new Job(engine());
        job.enter(before.isEmpty() ? new String[0] : before.split(";"));
        int warned = job.warnings().size();
        int moves = 0;
        for (Optional<Move> next = next(job); next.isPresent(); next = next(job)) {
            Move move = next.get();
            enter(job, move.entries());
            RowCoverage row = job.coverage().row(move.row().id());
            for (Move.Closing closing : move.closes()) {
                assertThat(closing.airfoils())
                        .allMatch(n -> Gaps.within(row, n)
                                .intersection(closing.zones())
                                .isEmpty());
            }
            assertThat(moves++).isLessThan(MOST);
        }
        assertThat(job.warnings().subList(warned, job.warnings().size())).isEmpty();
        assertThat(open(job.coverage())).isZero();
    }

    /** Whoever said that his hands are good to ± 4° is not asked for more; where that is too coarse airfoils are counted. */
    @Test
    void takesTheErrorThatWasSaidForThoseToCome() {
        Job job = new Job(engine()).enter("open p1", "view p1-c1", "round 1", "skip on 100 ± 4");
        List<String> said = new ArrayList<>();
        for (Optional<Move> next = next(job); next.isPresent(); next = next(job)) {
            next.get().entries().forEach(entry -> said.add(EntryText.of(entry)));
            enter(job, next.get().entries());
        }
        assertThat(said)
                .filteredOn(line -> line.matches("(turn|skip) .*") && !line.endsWith("blades"))
                .allMatch(line -> line.endsWith("± 4"));
        String coarse = said.get(said.indexOf("view p2-c2") + 1);
        assertThat(coarse)
                .as("half of what lies between two of 50 blades is 3.6°")
                .isEqualTo("slip");
        assertThat(open(job.coverage())).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"CW", "CCW"})
    void isNotWarnedWhereTheShaftTurnsOneWayOnly(Direction way) {
        Job job = new Job(engine(way)).enter("open p2", "view p2-c2", "datum c2 1", "turn on 100");
        int warned = job.warnings().size();
        for (Optional<Move> next = next(job); next.isPresent(); next = next(job)) {
            enter(job, next.get().entries());
        }
        assertThat(job.warnings().subList(warned, job.warnings().size())).isEmpty();
        assertThat(open(job.coverage())).isZero();
    }

    /** Whatever the model's order is: the port in use, then one that is open. */
    @ParameterizedTest
    @ValueSource(strings = {"open p2", "open p2;view p2-t", "open p1;open p2;view p2-c2"})
    void beginsWhereThePortIsOpen(String before) {
        Job job = new Job(engine()).enter(before.split(";"));
        assertThat(next(job).orElseThrow().view().port()).contains("p2");
    }

    /** Whoever shut the port is not sent to watch through it before it is open again. */
    @Test
    void opensAPortThatWasShutBeforeItIsUsed() {
        Job job = new Job(engine()).enter("open p1", "view p1-c1", "datum c1 1", "turn on 100", "shut p1");
        assertThat(next(job).orElseThrow().entries().stream().map(EntryText::of))
                .startsWith("open p1", "view p1-c1");
    }

    /** What is planned anew after each move comes to what was planned before the first: rounding of angles apart. */
    @Test
    void takesNoLongerThanThePlan() throws Exception {
        List<Job> jobs = new ArrayList<>();
        for (int play = 0; play <= 1; play++) {
            Job fresh = AnyJob.computed(play);
            jobs.add(fresh.another());
            for (int seed = 0; seed < 3; seed++) {
                jobs.add(AnyJob.computed(fresh, seed));
            }
        }
        for (int seed : AnyJob.numbers(60)) {
            jobs.add(AnyJob.declared(seed));
        }
        jobs.add(MidJob.fresh("larkspur-4", "c1").enter("heat 20 C"));
        for (Job job : jobs) {
            Coverage coverage = job.coverage();
            Prices prices = Prices.of(Settings.USUAL);
            double left = PlanBuilder.of(job.fold(), coverage, prices).minutes() + 0.05;
            while (open(coverage) > 0) {
                Move next = PlanBuilder.next(job.fold(), coverage, prices, Progress.NONE)
                        .orElseThrow();
                enter(job, next.entries());
                Coverage after = coverage.after(job.fold().situation());
                assertThat(closed(next)).isEqualTo(closed(coverage, after, next.row()));
                coverage = after;
                left -= next.minutes();
            }
            assertThat(left).as("%s", job.fold().entries()).isPositive();
        }
    }

    /** By airfoil, the zones that a move says it closes. */
    private static Map<Integer, ZoneSet> closed(Move move) {
        Map<Integer, ZoneSet> closed = new TreeMap<>();
        for (Move.Closing closing : move.closes()) {
            closing.airfoils().forEach(n -> closed.put(n, closing.zones()));
        }
        return closed;
    }

    /** The same that were open before, and are not any more. */
    private static Map<Integer, ZoneSet> closed(Coverage before, Coverage after, Row row) {
        Map<Integer, ZoneSet> closed = new TreeMap<>();
        for (int n = 1; n <= row.count(); n++) {
            closed.put(n, Gaps.within(before.row(row.id()), n).minus(Gaps.within(after.row(row.id()), n)));
        }
        closed.values().removeIf(ZoneSet::isEmpty);
        return closed;
    }

    /** Whatever was logged of a move, what is next goes on from there. */
    @Test
    void goesOnAfterEachEntryByItself() {
        for (int seed = 0; seed < JOBS; seed++) {
            Job job = DoubtTest.random(seed);
            int entries = 0;
            for (Optional<Move> next = next(job); next.isPresent(); next = next(job)) {
                enter(job, next.get().entries().subList(0, 1));
                assertThat(entries++)
                        .as("job %d: %s", seed, job.fold().entries())
                        .isLessThan(MOST);
            }
            assertThat(open(job.coverage())).as("job %d", seed).isZero();
        }
    }
}
