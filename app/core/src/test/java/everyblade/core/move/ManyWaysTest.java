package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class ManyWaysTest {

    /** Far more ways of sharing blades out among eight views than anybody could wait for. */
    @Test
    void whereThereAreTooManyWaysToFollowThemAllTheRestIsCountedIn() {
        Engines engines = new Engines()
                .pad("pad", Ratio.ONE, 2, 0, 0)
                .row("r", RowKind.ROTOR, 40, Direction.CW, 3, List.of(), false, 0)
                .aim(1);
        for (int view = 0; view < 8; view++) {
            engines.view("v" + view, "r", 77 * view % 360, 3, "s" + (view % 3 + 1));
        }
        Job job = new Job(engines.built())
                .enter("view v0", "datum r 1", "turn on 100", "skip on 50", "turn on 60", "view v1", "turn on 120")
                .enter("skip on 20", "turn on 40", "view v2", "turn on 90", "skip on 100", "turn on 70");
        Plan plan = PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));
        assertThat(plan.unsure()).isZero();
        plan.moves().forEach(move -> move.entries().forEach(entry -> job.enter(EntryText.of(entry))));
        assertThat(Gaps.of(job.coverage())).isEmpty();
        assertThat(plan.bound()).isPositive().isLessThan(plan.minutes());
        assertThat(plan.proved()).isFalse();
    }
}
