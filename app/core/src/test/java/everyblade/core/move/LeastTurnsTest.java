package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.Settings;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Roots and tips of twelve airfoils, seen through different views: each must pass both. */
class LeastTurnsTest {

    private static Engines rows() {
        return new Engines()
                .row("c1", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                .row("s1", RowKind.STATOR, 12, Direction.CW, 2, List.of(), false, 0);
    }

    private static LeastTurns least(Job job) {
        return PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL))
                .least();
    }

    @Test
    void everyAirfoilPassesAsManyViewsAsAreEnoughTogether() {
        Engines engines = rows().view("low", "c1", 90, 2, "root")
                .view("high", "c1", 200, 2, "tip")
                .view("vanes", "s1", 90, 2, "root", "tip");
        assertThat(least(new Job(engines.built()))).isEqualTo(new LeastTurns(2, 1));
    }

    @Test
    void aViewThatShowsAllIsEnoughWhateverOthersShow() {
        Engines engines = rows().view("low", "c1", 90, 2, "root")
                .view("all", "c1", 150, 2, "root", "tip")
                .view("high", "c1", 200, 2, "tip");
        assertThat(least(new Job(engines.built()))).isEqualTo(new LeastTurns(1, 0));
    }

    /** Roots of blades 1 to 4 were seen, for blade 1 was at the reference and three more came by: tips are left of these alone. */
    @Test
    void whatWasSeenNeedsNoTurn() {
        Job job = new Job(rows().view("low", "c1", 90, 2, "root")
                        .view("high", "c1", 200, 2, "tip")
                        .built())
                .enter("view low", "datum c1 1", "turn back 90");
        assertThat(least(job).shaft()).isCloseTo((8 * 2 + 4) / 12.0, within(1e-12));
        assertThat(least(job).scopeTip()).isZero();
    }

    @Test
    void whereNotEveryViewWasLookedAtOneTurnAtMostIsSure() {
        Engines engines = rows();
        for (int view = 0; view < 13; view++) {
            engines.view("v" + view, "c1", 20 * view, 2, view % 2 == 0 ? "root" : "tip");
        }
        assertThat(least(new Job(engines.built()))).isEqualTo(new LeastTurns(1, 0));
    }

    @Test
    void nothingIsLeftOfWhatWasSeenWholly() {
        Job job = new Job(rows().view("all", "c1", 90, 2, "root", "tip").built())
                .enter("view all", "datum c1 1", "turn on 360");
        assertThat(least(job)).isEqualTo(LeastTurns.NONE);
    }
}
