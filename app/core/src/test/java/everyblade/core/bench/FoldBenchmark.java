package everyblade.core.bench;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.time.Instant;
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

/** A journal of 10,000 entries on a row of 100 blades: folding it, and adding one more entry to it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class FoldBenchmark {

    private static final int ENTRIES = 10_000;
    private static final Instant AT = Instant.parse("2026-03-01T08:00:00Z");

    /** Blades identified at the end only, or every 20 entries; one seam-less pass, or a skip every 7 entries. */
    @Param({"once", "often"})
    public String identified;

    private Engine engine;
    private Fold fold;
    private Coverage coverage;
    private Logged turn;
    private Logged here;

    @Setup
    public void journal() throws Refusal {
        engine = new Engines()
                .row(
                        "c1",
                        RowKind.ROTOR,
                        100,
                        Direction.CW,
                        2,
                        List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING),
                        true,
                        0)
                .view("v", "c1", 118, 2)
                .pad("pad", Ratio.ONE, 0.01, 0, 0)
                .built();
        fold = folded();
        coverage = Coverage.of(fold.situation(), Settings.USUAL);
        turn = logged("turn on 0.36");
        here = logged("here 1 ±0.1");
    }

    private Fold folded() throws Refusal {
        Job job = new Job(engine).enter("view v", "datum c1 1");
        int at = 0;
        for (int i = 3; i <= ENTRIES; i++) {
            if (identified.equals("often") && i % 20 == 0) {
                job.enter("here " + (Math.floorMod(-at, 100) + 1) + " ±0.1");
            } else if (identified.equals("often") && i % 7 == 0) {
                job.enter("skip on 3.6");
                at++;
            } else {
                job.enter("turn on 3.6");
                at++;
            }
        }
        return job.fold();
    }

    private Logged logged(String line) throws Refusal {
        return new Logged(ENTRIES + 1, AT, "Test", false, line, EntryParser.parse(line));
    }

    @Benchmark
    public Fold foldTenThousandEntries() throws Refusal {
        Fold again = Fold.start(engine);
        for (Logged entry : fold.entries()) {
            again = again.with(entry);
        }
        return again;
    }

    @Benchmark
    public Coverage coverTenThousandEntries() {
        return Coverage.of(fold.situation(), Settings.USUAL);
    }

    @Benchmark
    public Coverage oneMoreTurn() throws Refusal {
        return coverage.after(fold.with(turn).situation());
    }

    @Benchmark
    public Coverage oneMoreIdentification() throws Refusal {
        return coverage.after(fold.with(here).situation());
    }
}
