package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.angle.IndexRun;
import everyblade.core.angle.Turn;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Situation;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a leg swept, told by where blade 1 of 36 stood, degrees; blades stand 10° apart. */
class SweepTest {

    private static Engine engine(double rock) {
        return new Engines()
                .row("r", RowKind.ROTOR, 36, Direction.CW, 1, List.of(), false, rock)
                .view("v", "r", 0, 2)
                .built();
    }

    private static List<Sweep> sweeps(Engine engine, String... lines) {
        Situation situation = new Job(engine)
                .enter("view v", "datum r 1 ± 0")
                .enter(lines)
                .fold()
                .situation();
        Row row = situation.engine().rows().get("r");
        Leg leg = situation.legsOf(row).get(0);
        return Sweep.of(situation.placing(row), row, leg.from(), leg.to(), leg.run());
    }

    private static String told(Sweep sweep) {
        return Math.round(sweep.maybeFrom().degrees()) + ".."
                + Math.round(sweep.maybeTo().degrees())
                + (sweep.sure() ? " sure" : "");
    }

    @Test
    void aTurnIsOneSweep() {
        assertThat(sweeps(engine(0), "turn 90 ± 0").stream().map(SweepTest::told))
                .containsExactly("0..90 sure");
        assertThat(sweeps(engine(0), "turn 90 ± 0").get(0).length()).isEqualTo(Turn.ofDegrees(90));
    }

    /** Blade 25 where 28 was counted: on from where it stood, or back to where it was found. */
    @Test
    void aTurnOnWhichTheCountWasLostMayHaveBeenAsCountedFromEitherEnd() {
        assertThat(sweeps(engine(0), "turn 90 ± 0", "here 25 ± 0").stream().map(SweepTest::told))
                .containsExactly("0..0 sure", "0..90", "30..120", "120..120 sure");
    }

    /** At either end the blades may lean either way. */
    @Test
    void ofATurnOnlySoMuchIsSureAsBladesDoNotLean() {
        assertThat(sweeps(engine(0.5), "turn 90 ± 0").get(0).length()).isEqualTo(Turn.ofDegrees(89));
    }

    private static Sweep of(Turn length) {
        return new Sweep(Turn.ZERO, Turn.ofDegrees(15), Turn.ZERO, Turn.ofDegrees(15), length, true, false);
    }

    @Test
    void whatIsInSightForAsLongAsTheRestOfATurnWasPassedByAll() {
        Row row = engine(0).rows().get("r");
        Turn low = Turn.ofDegrees(-1);
        Turn high = Turn.ofDegrees(2);
        assertThat(of(Turn.ofDegrees(357)).surely(row, low, high)).isEqualTo(new IndexRun(0, 36));
        assertThat(of(Turn.ofDegrees(356)).surely(row, low, high).length()).isEqualTo(2);
        assertThat(of(Turn.ofDegrees(357))
                        .surely(row, low, high, Turn.ofDegrees(2))
                        .length())
                .as("shorter at its borders")
                .isEqualTo(2);
    }
}
