package everyblade.core.bench;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.IndexRun;
import everyblade.core.angle.PitchGrid;
import everyblade.core.angle.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What an entry costs on the circle: eight arcs of up to 30° made into one set and measured (aim: under 2 µs), and the
 * questions that coverage asks of such a set. A different input at each call, so that the branches are not learned.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class ArcSetBenchmark {

    private static final int INPUTS = 1024;
    private static final int ARCS = 8;
    private static final Circle CIRCLE = Circle.STANDARD;

    private final List<List<Arc>> arcs = new ArrayList<>();
    private final List<ArcSet> sets = new ArrayList<>();
    private final List<Turn> angles = new ArrayList<>();
    private final PitchGrid grid = new PitchGrid(Turn.ofFraction(29, 77), 94);
    private int next;

    /** Draws the inputs from a fixed seed. */
    @Setup
    public void draw() {
        SplittableRandom random = new SplittableRandom(1);
        for (int input = 0; input < INPUTS; input++) {
            List<Arc> drawn = new ArrayList<>();
            for (int i = 0; i < ARCS; i++) {
                drawn.add(new Arc(
                        CIRCLE, random.nextLong(CIRCLE.ticks()), random.nextLong(30 * Circle.TICKS_PER_DEGREE)));
            }
            arcs.add(drawn);
            sets.add(ArcSet.of(CIRCLE, drawn));
            angles.add(Turn.ofTicks(random.nextLong(CIRCLE.ticks())));
        }
    }

    private int next() {
        next = (next + 1) % INPUTS;
        return next;
    }

    @Benchmark
    public long unionAndMeasureOfEightArcs() {
        return ArcSet.of(CIRCLE, arcs.get(next())).measure();
    }

    @Benchmark
    public long unionAndMeasureOfTwoSets() {
        int i = next();
        return sets.get(i).union(sets.get(INPUTS - 1 - i)).measure();
    }

    @Benchmark
    public boolean setMeetsArc() {
        int i = next();
        return sets.get(i).meets(arcs.get(INPUTS - 1 - i).get(0));
    }

    @Benchmark
    public IndexRun airfoilsBetweenTwoAngles() {
        Turn from = angles.get(next());
        return grid.between(from, from.plus(Turn.ofTicks(20 * Circle.TICKS_PER_DEGREE)));
    }
}
