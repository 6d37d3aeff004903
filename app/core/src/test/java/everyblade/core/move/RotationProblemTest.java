package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Settings;
import everyblade.core.move.RotationProblem.Course;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.move.Sweeping.Stretch;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Twelve blades 30° apart, told by blade 2, before two views of which the references are 90° and 200°. */
class RotationProblemTest {

    private static final Prices PRICES = Prices.of(Settings.USUAL);
    private static final Slack SLACK = new Slack(1, 2);

    private static Job job(double aim) {
        return new Job(new Engines()
                .pad("pad", Ratio.ONE, 1, 0, 0)
                .landmark(2)
                .rotor("r", 12)
                .aim(aim)
                .view("v", "r", 90, 2)
                .view("w", "r", 200, 2)
                .built());
    }

    private static RotationProblem problem(Slack slack, double aim) throws Exception {
        Job job = job(aim);
        RemainingState state = new RemainingState(Trial.of(job.fold()), job.coverage());
        Row row = job.fold().situation().engine().rows().get("r");
        return RotationProblem.of(state, row, options(job.coverage()), slack, false, option -> 0, PRICES);
    }

    private static List<ViewOption> options(Coverage coverage) {
        return ViewOption.of(coverage, coverage.row("r"));
    }

    private static ViewOption option(int number) {
        return options(job(1).coverage()).get(number);
    }

    /** One that takes a sweep of so many degrees, with what it may be off by. */
    private static Stay sweptBy(double degrees, Slack slack) {
        double own = degrees - slack.below() - slack.above();
        return new Stay(option(0), List.of(new VisibilityWindow(0, own)));
    }

    @Test
    void aTurnThatMustBeWholeIsARoundFromALandmark() throws Exception {
        List<Work> works = problem(SLACK, 1).works(new Stay(option(0), List.of(), true));
        assertThat(works).hasSize(1);
        assertThat(works.get(0).how()).isEqualTo(How.ROUND);
        assertThat(works.get(0).landmark()).isEqualTo(OptionalInt.of(2));
        assertThat(works.get(0).minutes()).isCloseTo(0.5 + 0.25 + 4, within(1e-12));
    }

    /** Half of 30° is 15°: whoever may be off by as much cannot tell a blade from the next. */
    @ParameterizedTest
    @CsvSource({"14.9, ROUND", "15, WHOLE", "20, WHOLE"})
    void whereNoBladeCanBeToldItGoesAsMuchFurther(double aim, How how) throws Exception {
        ViewOption there = options(job(aim).coverage()).get(0);
        Work work = problem(SLACK, aim).works(new Stay(there, List.of(), true)).get(0);
        assertThat(work.how()).isEqualTo(how);
        if (how == How.WHOLE) {
            assertThat(work.minutes()).isCloseTo(0.25 + 4 * 363 / 360.0, within(1e-12));
        }
    }

    @ParameterizedTest
    @CsvSource({"299.9, SWEEP", "300, ROUND", "359.9, ROUND"})
    void whereMovesHaveErrorsWhatIsNearlyWholeIsMadeWhole(double degrees, How how) throws Exception {
        assertThat(problem(SLACK, 1).works(sweptBy(degrees, SLACK)))
                .extracting(Work::how)
                .containsOnly(how);
    }

    @Test
    void whereMovesHaveNoneOnlyWhatIsWholeIs() throws Exception {
        RotationProblem exact = problem(Slack.NONE, 1);
        assertThat(exact.works(sweptBy(359.9, Slack.NONE)))
                .extracting(Work::how)
                .containsOnly(How.SWEEP);
        assertThat(exact.works(sweptBy(360, Slack.NONE))).extracting(Work::how).containsExactly(How.ROUND, How.WHOLE);
        assertThat(exact.works(new Stay(option(0), List.of(), true)))
                .extracting(Work::how)
                .containsExactly(How.ROUND);
    }

    @Test
    void aSweepGoesEitherWayAndALookNone() throws Exception {
        List<Work> sweeps = problem(SLACK, 1).works(sweptBy(90, SLACK));
        assertThat(sweeps).extracting(Work::rising).containsExactlyInAnyOrder(true, false);
        assertThat(sweeps).allSatisfy(work -> assertThat(work.minutes()).isCloseTo(0.25 + 1, within(1e-12)));
        List<Work> look = problem(SLACK, 1).works(new Stay(option(0), List.of()));
        assertThat(look).extracting(Work::how).containsExactly(How.LOOK);
        assertThat(look.get(0).minutes()).isEqualTo(0.25);
    }

    @Test
    void aBladeIsAtTheReferenceWhileBlade1IsAsMuchBehind() throws Exception {
        assertThat(problem(SLACK, 1).atReference(option(0), 3)).isEqualTo(90 - 60);
        assertThat(problem(SLACK, 1).atReference(option(1), 12)).isEqualTo(200 - 330);
    }

    @ParameterizedTest
    @CsvSource({
        "10, 350, -20, 340, -20",
        "350, 10, 20, 20, -340",
        "0, 180, 180, 180, -180",
        "0, 181, -179, 181, -179",
        "5, 365, 0, 0, 0",
        "5, 4.99999999, 0, 0, 0",
    })
    void theShorterWayIsGoneOfThoseAllowed(double from, double to, double either, double on, double back) {
        Set<Direction> both = EnumSet.allOf(Direction.class);
        assertThat(RotationProblem.way(from, to, both)).isCloseTo(either, within(1e-9));
        assertThat(RotationProblem.way(from, to, Set.of(Direction.CW))).isCloseTo(on, within(1e-9));
        assertThat(RotationProblem.way(from, to, Set.of(Direction.CCW))).isCloseTo(back, within(1e-9));
    }

    /**
     * From the first view to the second it is 110°: three blades and 20° further. Nobody knows where it stands at first, so a
     * landmark is looked for; then blade 2 is brought from 90° to 200°.
     */
    @Test
    void aCourseAddsWhatLeadsToItsWorks() throws Exception {
        RotationProblem problem = problem(SLACK, 1);
        List<Work> first = problem.works(new Stay(option(0), List.of(), true));
        List<Work> second = problem.works(new Stay(option(1), List.of(), true));
        double turn = 0.5 + 0.25 + 4;
        Course course = problem.course(List.of(first, second));
        assertThat(course.minutes()).isCloseTo(2 * (2 + turn) + (0.25 + 0.5) + (0.25 + 110 / 360.0), within(1e-9));
        assertThat(course.works()).extracting(work -> work.option().view().id()).containsExactly("v", "w");
    }

    /** Where other turns may have ended up to four blades elsewhere, blade 1 may stand 10° before the reference, aim and all. */
    @Test
    void aBoundTakesNoMoreForAWayThanItMustCost() throws Exception {
        RotationProblem problem = problem(SLACK, 1);
        List<Work> first = problem.works(new Stay(option(0), List.of(), true));
        List<Work> second = problem.works(new Stay(option(1), List.of(), true));
        double turn = 0.5 + 0.25 + 4;
        assertThat(problem.loosely().course(List.of(first, second)).minutes())
                .isCloseTo(2 * (2 + turn) + (0.25 + 0.5) + (0.25 + 9 / 360.0), within(1e-6));
    }

    @Test
    void withoutRoundsEveryWholeTurnGoesAsMuchFurther() throws Exception {
        assertThat(problem(SLACK, 1).withoutRounds().works(new Stay(option(0), List.of(), true)))
                .extracting(Work::how)
                .containsExactly(How.WHOLE);
    }

    private static Work sweep(boolean rising, double below, Stretch... stretches) {
        Sweeping sweeping = new Sweeping(List.of(stretches), below, 0);
        return new Work(
                new Stay(option(0), List.of(new VisibilityWindow(0, 0))),
                How.SWEEP,
                Optional.of(sweeping),
                rising,
                OptionalInt.empty(),
                sweeping.minutes(PRICES));
    }

    private static double leading(Work work, double here) throws Exception {
        return problem(SLACK, 1).leading(work, OptionalDouble.of(here), false);
    }

    @Test
    void whoDoesNotKnowWhereItStandsLooksForALandmark() throws Exception {
        Work round =
                problem(SLACK, 1).works(new Stay(option(0), List.of(), true)).get(0);
        assertThat(problem(SLACK, 1).leading(round, OptionalDouble.empty(), true))
                .isEqualTo(0.25 + 0.5);
        assertThat(problem(SLACK, 1).leading(sweep(true, 0, new Stretch(40, 80)), OptionalDouble.empty(), true))
                .isEqualTo(0.25 + 0.5 + 0.5);
        assertThat(leading(round, 90 - 30)).as("blade 2 is at the reference").isZero();
        assertThat(leading(round, 90 - 30 + 1)).as("within the aim").isZero();
        assertThat(leading(round, 90 - 30 + 61)).as("blade 4, two from it").isZero();
        assertThat(leading(round, 90 - 30 + 90)).as("three from it").isEqualTo(0.25 + 90 / 360.0);
        assertThat(leading(round, 90 - 30 + 180)).as("a search is never longer").isEqualTo(0.25 + 0.5);
    }

    /** Twelve degrees are watched sooner than a move is begun and ended for them; ninety are not. */
    @Test
    void aShortWayIsWatchedTooIfItIsOnTheWay() throws Exception {
        Work up = sweep(true, 0, new Stretch(100, 140));
        Work down = sweep(false, 0, new Stretch(100, 140));
        assertThat(leading(up, 88)).isCloseTo(4 * 12 / 360.0, within(1e-12));
        assertThat(leading(up, 10)).isCloseTo(0.25 + 90 / 360.0, within(1e-12));
        assertThat(leading(up, 112)).isCloseTo(0.25 + 12 / 360.0, within(1e-12));
        assertThat(leading(up, 100)).isZero();
        assertThat(leading(down, 152)).isCloseTo(4 * 12 / 360.0, within(1e-12));
        assertThat(leading(down, 128)).isCloseTo(0.25 + 12 / 360.0, within(1e-12));
        assertThat(leading(down, 140)).isZero();
    }

    @Test
    void whoTakesAFirstLookEarlierTurnsFurtherForIt() throws Exception {
        Work looks = sweep(true, 4, new Stretch(10, 10), new Stretch(50, 50));
        assertThat(leading(looks, 10)).isZero();
        assertThat(leading(looks, 7)).isCloseTo(3 / 360.0, within(1e-12));
        assertThat(leading(looks, 0)).isCloseTo(4 * 6 / 360.0 + 4 / 360.0, within(1e-12));
    }

    @Test
    void aSweepEndsWhereItGoesAndARoundWhereItBegan() throws Exception {
        RotationProblem problem = problem(SLACK, 1);
        OptionalDouble here = OptionalDouble.of(100);
        assertThat(problem.after(sweep(true, 0, new Stretch(350, 370)), here)).hasValue(10);
        assertThat(problem.after(sweep(false, 0, new Stretch(350, 370)), here)).hasValue(350);
        assertThat(problem.after(sweep(true, 0, new Stretch(370, 370)), here)).hasValue(10);
        assertThat(problem.after(sweep(false, 0, new Stretch(-5, 20)), here)).hasValue(355);
        Work round = problem.works(new Stay(option(0), List.of(), true)).get(0);
        assertThat(problem.after(round, here)).hasValue(90 - 30);
        assertThat(problem.after(round, OptionalDouble.empty())).hasValue(90 - 30);
        assertThat(problem.after(round, OptionalDouble.of(29.5)))
                .as("blade 3 is at the reference")
                .hasValue(30);
    }
}
