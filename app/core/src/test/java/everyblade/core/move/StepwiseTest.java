package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryText;
import everyblade.core.gap.Gaps;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever does what a plan says has closed what stations can show. */
class StepwiseTest {

    private static ShapedEngine engine(double play) {
        return new ShapedEngine()
                .row("r", RowKind.ROTOR, 12, 35, 0)
                .play(play)
                .view(
                        "front",
                        "r",
                        ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 1, 3),
                        ShapedEngine.station("low", -14, 116, new Heading(1, 0.4, -0.2), 0.5, 2));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5})
    void aPlanForComputedRowsClosesWhatItSays(double play) {
        Job job = new Job(engine(play).built()).enter("view front", "datum r 1 ± 0", "turn 100");
        Coverage coverage = job.coverage();
        Plan plan = Plans.of(job.fold(), coverage);
        for (var move : plan.entries()) {
            for (Entry entry : move) {
                job.enter(EntryText.of(entry));
            }
        }
        assertThat(Gaps.of(coverage.after(job.fold().situation())))
                .filteredOn(gap -> gap.reach().isPresent())
                .isEmpty();
        assertThat(plan.moves())
                .as("angles that can be read off")
                .isNotEmpty()
                .allSatisfy(move -> assertThat(move.from().scale()).isLessThanOrEqualTo(1))
                .allSatisfy(move -> assertThat(move.sweep().scale()).isLessThanOrEqualTo(1));
        assertThat(plan.unsure()).isZero();
        assertThat(plan.turning()).isGreaterThanOrEqualTo(plan.bound());
        assertThat(plan.proved()).isFalse();
    }

    @Test
    void aComputedRowThatNobodyIdentifiedWaits() {
        Job job = new Job(engine(0).built()).enter("view front");
        Plan plan = Plans.of(job.fold(), job.coverage());
        assertThat(plan.moves()).isEmpty();
        assertThat(plan.unidentified().values())
                .singleElement()
                .satisfies(cells -> assertThat(cells).isPositive());
    }
}
