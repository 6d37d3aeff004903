package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.entry.ZoneSet;
import everyblade.core.move.Ticked.How;
import everyblade.core.move.Ticked.Stop;
import everyblade.spi.Ratio;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A rotor through two ports, and a row that stands still through the second, by which both are done: one port with two views. */
class TickedTest {

    private static final int BLADES = 12;
    private static final int VANES = 8;

    private final Job job = new Job(new Engines()
            .pad("pad", Ratio.ONE, 1, 0, 0)
            .landmark(1)
            .rotor("c1", BLADES)
            .stator("s1", VANES)
            .port("a")
            .port("b")
            .viewThrough("a", "va", "c1")
            .viewThrough("b", "vc", "c1")
            .viewThrough("b", "vb", "s1")
            .built());

    private final Plan plan = PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));
    private final Outline list = Outline.of(plan);

    private Ticked ticked() {
        return Ticked.of(list, job.coverage());
    }

    private List<Stop> stops() {
        return ticked().visits().stream()
                .flatMap(visit -> visit.stops().stream())
                .toList();
    }

    private void doMoves(int from, int to) {
        plan.moves().subList(from, to).stream()
                .flatMap(move -> move.entries().stream())
                .forEach(entry -> job.enter(EntryText.of(entry)));
    }

    @Test
    void ofAJobThatNobodyBeganAllIsOpen() {
        assertThat(stops())
                .extracting(stop -> stop.planned().view().id())
                .hasSize(2)
                .contains("vb");
        assertThat(stops()).extracting(Stop::how).containsOnly(How.OPEN);
        assertThat(ticked().visits()).extracting(Ticked.Visit::how).containsOnly(How.OPEN);
        assertThat(stops()).extracting(Stop::cells).containsExactlyInAnyOrder(BLADES, VANES);
        assertThat(ticked().views()).isEqualTo(2);
        assertThat(ticked().minutes()).isCloseTo(plan.minutes(), within(1e-9));
        assertThat(ticked().beside()).isZero();
    }

    @Test
    void aViewIsDoneWhenItsMovesAreAndItsMinutesAreNoLongerLeft() {
        doMoves(0, 1);

        assertThat(stops()).extracting(Stop::how).containsExactly(How.DONE, How.OPEN);
        assertThat(ticked().views()).isEqualTo(1);
        assertThat(ticked().minutes())
                .isCloseTo(plan.minutes() - plan.moves().get(0).minutes(), within(1e-9));

        doMoves(1, plan.moves().size());

        assertThat(ticked().visits()).extracting(Ticked.Visit::how).containsOnly(How.DONE);
        assertThat(ticked().views()).isZero();
        assertThat(ticked().minutes()).isZero();
    }

    @Test
    void aViewThatIsDoneInPartSaysHowManyCellsAreLeftAndTakesItsMinutesStill() {
        job.enter("view va", "datum c1 1", "look");

        Stop rotor = stops().get(0);
        assertThat(rotor.how()).isEqualTo(How.BEGUN);
        assertThat(rotor.left()).isEqualTo(BLADES - 1);
        assertThat(ticked().views()).isEqualTo(2);
        assertThat(ticked().minutes()).isCloseTo(plan.minutes(), within(1e-9));
    }

    /** Who did it by other ways than the plan has done it all the same. */
    @Test
    void whatWasSeenThroughAnotherViewIsTickedToo() {
        String planned = stops().get(0).planned().view().id();
        job.enter("view " + (planned.equals("va") ? "vc" : "va"), "datum c1 1", "round 1");

        assertThat(stops().get(0).how()).isEqualTo(How.DONE);
    }

    @Test
    void whatSomebodyAcceptedAsNotSeenIsDone() {
        job.enter("noaccess c1 all all because the blades are out");

        assertThat(stops().get(0).how()).isEqualTo(How.DONE);
    }

    /** A pass that turned out to have been miscounted shows nothing surely, so the tick goes as it came. */
    @Test
    void whatIsLostWithACountIsOpenAgain() {
        job.enter("view va", "datum c1 1", "turn 360");
        assertThat(stops().get(0).how()).isEqualTo(How.DONE);

        job.enter("here 5");

        assertThat(stops().get(0).how()).isNotEqualTo(How.DONE);
        assertThat(stops().get(0).left()).isGreaterThan(BLADES / 2);
    }

    @Test
    void anEntryThatDoesNotCountTicksNothing() {
        job.enter("view va", "datum c1 1", "turn 360", "void 3 because the scope was out");

        assertThat(stops()).extracting(Stop::how).containsOnly(How.OPEN);
    }

    @Test
    void aPortIsDoneWithTheLastOfItsViews() {
        doMoves(0, 1);

        assertThat(ticked().visits()).hasSize(1);
        assertThat(ticked().visits().get(0).how()).isEqualTo(How.BEGUN);
        assertThat(ticked().visits().get(0).left()).isEqualTo(1);
    }

    @Test
    void cellsThatNothingOfTheListClosesAreToldBesideIt() {
        Outline rotorOnly = only(list.visits().get(0).stops().get(0));
        assertThat(Ticked.of(rotorOnly, job.coverage()).beside()).isEqualTo(VANES);

        doMoves(0, 1);

        assertThat(Ticked.of(rotorOnly, job.coverage()).views()).isZero();
        assertThat(Ticked.of(rotorOnly, job.coverage()).beside()).isEqualTo(VANES);
    }

    private Outline only(Outline.Stop stop) {
        return new Outline(List.of(new Outline.Visit(stop.view().port(), List.of(stop))));
    }

    /** It begins what others close, so it is there until its row needs nothing more. */
    @Test
    void aViewThatClosesNothingByItselfIsDoneWithItsRow() {
        Outline.Stop planned = list.visits().get(0).stops().get(0);
        assertThat(planned.closes()).hasSize(BLADES).containsEntry(1, new ZoneSet(1));
        Outline.Stop nothing = new Outline.Stop(
                planned.view(),
                planned.row(),
                planned.stations(),
                planned.turning(),
                planned.drawing(),
                planned.identified(),
                planned.minutes(),
                new TreeMap<>());
        Outline begins = only(nothing);

        assertThat(Ticked.of(begins, job.coverage()).visits().get(0).how()).isEqualTo(How.OPEN);
        doMoves(0, 1);
        assertThat(Ticked.of(begins, job.coverage()).visits().get(0).how()).isEqualTo(How.DONE);
    }
}
