package everyblade.core.bench;

import everyblade.core.Views;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.PoseFamily;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightArcs;
import everyblade.core.surface.Fineness;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Station.Tolerance;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What sight costs, structures built: one pose of a scope tip before a row (aims, on one thread: 2 ms for 40 axial blades and
 * 4 ms for an impeller with splitters at 16 by 8 facets a side), and the 27 poses of a tolerance (aim: 100 ms). Run with
 * {@code -Djava.util.concurrent.ForkJoinPool.common.parallelism=0} for one thread.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SightBenchmark {

    /** Which row. */
    @Param({"axial", "impeller"})
    public String row;

    /** Facets a side along the chord; half as many up the span. */
    @Param({"16", "64"})
    public int facets;

    private Views views;

    /** Builds the row. */
    @Setup
    public void build() throws UnusableShape {
        Fineness fineness = new Fineness(facets, facets / 2);
        views = row.equals("axial") ? Views.axial(fineness) : Views.impeller(fineness);
    }

    @Benchmark
    public SightArcs onePose() {
        return SightArcs.compute(views.scene(), views.pose(), Criteria.USUAL, Progress.NONE);
    }

    @Benchmark
    public List<SightArcs> aTolerance() {
        return SightArcs.compute(
                views.scene(), PoseFamily.of(views.pose(), new Tolerance(1, 3)), Criteria.USUAL, Progress.NONE);
    }
}
