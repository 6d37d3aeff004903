package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.Refusal;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 36 blades that rock by 0.4° and are put to the reference to ± 0.5°, others on their shaft and on another one, and vanes. */
class RemainingStateTest {

    private static final double PLAY = 3;

    private static Engines engines() {
        return new Engines()
                .pad("pad", Ratio.ONE, PLAY, 0, 0)
                .landmark(1)
                .aim(0.5)
                .row("c1", RowKind.ROTOR, 36, Direction.CW, 1, List.of(), false, 0.4)
                .rotor("c2", 12)
                .stator("s1", 12)
                .onSpool("second")
                .rotor("t", 12)
                .view("v1", "c1", 90, 3)
                .view("v2", "c2", 90, 3)
                .view("vs", "s1", 90, 3)
                .view("vt", "t", 90, 3);
    }

    private static RemainingState after(String... lines) throws Refusal {
        Job job = new Job(engines().built()).enter(lines);
        return new RemainingState(Trial.of(job.fold()), job.coverage());
    }

    private static Row row(RemainingState state, String id) {
        return state.now().engine().rows().get(id);
    }

    private static OptionalInt counted(RemainingState state) {
        return state.countedByEye(state.now().seat().orElseThrow());
    }

    @Test
    void anAirfoilIsPutToTheReferenceAsExactlyAsTheViewTellsAndItRocks() throws Refusal {
        RemainingState state = after();
        ViewOption option =
                ViewOption.of(state.coverage(), state.coverage().row("c1")).get(0);
        assertThat(state.aim(row(state, "c1"), option)).isCloseTo(0.5 + 0.4, within(1e-9));
    }

    @Test
    void aWholeTurnWasTheLastThatWasDoneWhateverWasSaidSince() throws Refusal {
        assertThat(after().turnedWhole()).isFalse();
        assertThat(after("view v1").turnedWhole()).isFalse();
        assertThat(after("view v1", "round 1").turnedWhole()).isTrue();
        assertThat(after("view v1", "round 1", "heat 30 C", "note all clean").turnedWhole())
                .isTrue();
        assertThat(after("view v1", "round 1", "turn on 5").turnedWhole()).isFalse();
        assertThat(after("view v1", "round 1", "view v2").turnedWhole()).isFalse();
    }

    /** The next blade, and the one after that, are told by the landmark; so is the one before. */
    @ParameterizedTest
    @CsvSource({"1, 36", "2, 35", "-1, 2", "-2, 3"})
    void bladesBesideALandmarkAreToldByIt(int turned, int blade) throws Refusal {
        RemainingState state = after("view v1", "datum c1 1 ± 0", "skip " + turned + " blades");
        assertThat(state.beside(row(state, "c1"), 1)).hasValue(blade);
        assertThat(counted(state)).hasValue(blade);
    }

    @ParameterizedTest
    @CsvSource({"skip 3 blades", "skip 0 blades", "skip on 5"})
    void noOtherIs(String move) throws Refusal {
        RemainingState state = after("view v1", "datum c1 1 ± 0", move);
        assertThat(state.beside(row(state, "c1"), 1)).isEmpty();
    }

    /** The next blade is 10° on; one move by angle is exact enough to tell it, if it ends within what a blade is put there to. */
    @Test
    void aBladeBesideALandmarkIsToldAfterOneMoveByAngleToo() throws Refusal {
        String[] before = {"view v1", "datum c1 1 ± 0"};
        RemainingState exact = after(before[0], before[1], "skip on 10");
        assertThat(exact.beside(row(exact, "c1"), 1)).hasValue(36);
        RemainingState nearly = after(before[0], before[1], "skip on 10.8");
        assertThat(nearly.beside(row(nearly, "c1"), 1)).hasValue(36);
        RemainingState off = after(before[0], before[1], "skip on 11");
        assertThat(off.beside(row(off, "c1"), 1)).isEmpty();
    }

    /** Then it may be 4.6° off, and is put to the reference to 0.9°: more than half of what lies between two. */
    @Test
    void noneIsToldAfterTwo() throws Refusal {
        RemainingState state = after("view v1", "datum c1 1 ± 0", "skip on 4", "skip on 6");
        assertThat(state.place(row(state, "c1"))).isPresent();
        assertThat(state.beside(row(state, "c1"), 1)).isEmpty();
    }

    @Test
    void noneIsToldWhereItMayBeTheOneBesideIt() throws Refusal {
        RemainingState state = after("view v1", "datum c1 1", "skip on 20", "skip back 10", "skip on 30");
        assertThat(state.place(row(state, "c1"))).isEmpty();
        assertThat(state.likely(row(state, "c1"))).isPresent();
        assertThat(state.beside(row(state, "c1"), 1)).isEmpty();
    }

    /** Degrees by hand are not as exact as a blade at the reference. */
    @Test
    void bladesAreCountedByEyeAndNotByAngles() throws Refusal {
        assertThat(counted(after("view v1", "datum c1 1", "skip on 4 blades"))).hasValue(33);
        assertThat(counted(after("view v1", "datum c1 1", "skip on 40"))).isEmpty();
        assertThat(counted(after("view v1"))).isEmpty();
    }

    @Test
    void rowsOfOneShaftAreKnownTogether() throws Refusal {
        RemainingState state = after("view v1", "datum c1 1");
        assertThat(state.anyKnown(row(state, "c1"))).isTrue();
        assertThat(state.anyKnown(row(state, "c2"))).isTrue();
        assertThat(state.anyKnown(row(state, "t"))).isFalse();
    }

    @Test
    void aRotorOfWhichNothingIsAskedNeedNotBeFound() throws Refusal {
        assertThat(after("view v1", "datum c1 1").anyUnknown()).isTrue();
        assertThat(after("ask c2 none", "view v1", "datum c1 1").anyUnknown()).isTrue();
        assertThat(after("ask c2 none", "ask t none", "view v1", "datum c1 1").anyUnknown())
                .isFalse();
        RemainingState state = after("ask c2 none");
        assertThat(state.anyLeft(row(state, "c1"))).isTrue();
        assertThat(state.anyLeft(row(state, "c2"))).isFalse();
    }

    /** A row that stands still is where it was from the scope tip as newly seated, a rotor where it is now. */
    @Test
    void whereTheFirstAirfoilStandsIsToldOfBoth() throws Refusal {
        RemainingState turned = after("view v1", "datum c1 1 ± 0", "skip on 2 blades");
        assertThat(turned.setBackOrClock(row(turned, "c1")).getAsDouble()).isCloseTo(110, within(1e-6));
        assertThat(turned.setBack(row(turned, "c1"))).isEmpty();
        RemainingState drawn = after("view vs", "datum s1 1 ± 0", "feed 60");
        assertThat(wrapped(drawn.setBackOrClock(row(drawn, "s1")).getAsDouble()))
                .isCloseTo(90, within(1e-6));
        assertThat(wrapped(drawn.clock(row(drawn, "s1")).getAsDouble())).isCloseTo(30, within(1e-6));
    }

    private static double wrapped(double degrees) {
        return degrees - 360 * Math.floor(degrees / 360);
    }

    /** Two moves, the one to where watching begins and the watched one, each with its play; and the blade rocks. */
    @Test
    void aPlannedMoveMayBeOffByThePlayOfTwo() throws Refusal {
        RemainingState state = after("view v1", "datum c1 1 ± 0");
        Row row = row(state, "c1");
        ViewOption option =
                ViewOption.of(state.coverage(), state.coverage().row("c1")).get(0);
        VisibilityWindow.Slack slack = state.slack(row, option);
        assertThat(slack.below()).isCloseTo(PLAY * Math.sqrt(2) + 0.4, within(1e-4));
        assertThat(slack.above()).isCloseTo(slack.below(), within(1e-9));
    }
}
