package everyblade.core.bench;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Settings;
import everyblade.core.move.Plan;
import everyblade.core.move.PlanBuilder;
import everyblade.core.move.Prices;
import everyblade.core.turning.Fold;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The least moves on one shaft with nothing seen yet, root and tip of each row through views of their own. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class PlanBenchmark {

    private static final int[] COUNTS = {28, 32, 38, 44, 50, 54, 58, 62, 66, 70, 74, 78};

    @Param({"1", "3", "6", "12"})
    public int rows;

    private Fold fold;
    private Coverage coverage;

    @Setup
    public void job() {
        Engines engines = new Engines().pad("pad", Ratio.ONE, 0.5, 0, 0);
        for (int i = 0; i < rows; i++) {
            engines.row("r" + i, RowKind.ROTOR, COUNTS[i], Direction.CW, 2, List.of(), false, 0)
                    .view("a" + i, "r" + i, 37 * i, 1 + 0.3 * i, "root")
                    .view("b" + i, "r" + i, 61 * i + 13, 1.1 + 0.2 * i, "tip");
        }
        Job job = new Job(engines.built());
        for (int i = 0; i < rows; i++) {
            job.enter("view a" + i, "datum r" + i + " 1");
        }
        fold = job.fold();
        coverage = job.coverage();
    }

    @Benchmark
    public Plan closeAllGaps() {
        return PlanBuilder.of(fold, coverage, Prices.of(Settings.USUAL));
    }
}
