package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.turning.Situation;
import everyblade.spi.Ratio;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** At a pad that promises ± 1°: which ± the next move should state. */
class StatedErrorTest {

    private static Optional<BigDecimal> next(boolean shaft, String lines) {
        Job job = new Job(new Engines()
                        .rotor("r", 36)
                        .stator("s", 24)
                        .view("v", "r", 0, 2)
                        .view("w", "s", 0, 2)
                        .pad("pad", Ratio.ONE, 1, 0, 0)
                        .built())
                .enter("view v")
                .enter(lines.split("; "));
        Situation now = job.fold().situation();
        Optional<Spool> spool = now.engine().spool(now.engine().rows().get("r"));
        return shaft
                ? StatedError.of(job.fold(), spool, spool.map(now::padOf))
                : StatedError.of(job.fold(), Optional.empty(), Optional.empty());
    }

    @ParameterizedTest
    @CsvSource({
        "note on, ",
        "turn 10, ",
        "turn 10 ± 3, 3",
        "skip 10 ± 3, 3",
        "turn 10 ± 1, ",
        "turn 10 ± 1.1, 1.1",
        "turn 10 ± 3; turn 10, ",
        "turn 10 ± 3; turn 10 ± 2, 2",
        "turn 10 ± 3; turn 2 blades, 3",
        "turn 10 ± 3; note on, 3",
        "turn 10 ± 3; turn 10 ± 5; void 3 because misread, 3",
        "turn 10 ± 3; view w; datum s 1; draw 10 ± 5, 3"
    })
    void aTurnIsAsGoodAsTheLastOneByAnAngleThatCounts(String lines, BigDecimal expected) {
        assertThat(next(true, lines)).isEqualTo(Optional.ofNullable(expected));
    }

    @ParameterizedTest
    @CsvSource({
        "turn 10 ± 3, ",
        "view w; datum s 1; draw 10 ± 0.5, 0.5",
        "view w; datum s 1; feed 10 ± 2, 2",
        "view w; datum s 1; draw 10, ",
        "view w; datum s 1; draw 10 ± 2; view v; turn 10 ± 3, 2"
    })
    void aScopeTipIsDrawnAsWellAsTheLastTime(String lines, BigDecimal expected) {
        assertThat(next(false, lines)).isEqualTo(Optional.ofNullable(expected));
    }
}
