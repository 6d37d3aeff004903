package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Settings;
import everyblade.core.sight.Progress;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Port;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The least order of turning a whole rotor before what shows it, against trying every one. */
class EveryOrderTest {

    private static final boolean CAMPAIGN = Boolean.getBoolean("everyblade.campaign");
    private static final Prices PRICES = Prices.of(Settings.USUAL);
    private static final double ROUNDING = 1e-6;
    private static final int JOBS = 25;

    @Test
    void itIsWhatTryingAllThereIsFinds() throws Exception {
        int found = 0;
        int taken = 0;
        for (int seed = 0; seed < (CAMPAIGN ? 2_000 : 20); seed++) {
            Job job = new Job(random(new SplittableRandom(seed), 3));
            SlowOrders slow = slow(job, "r");
            Optional<EveryOrder.Least> least = least(job, Integer.MAX_VALUE);
            if (least.isPresent()) {
                found++;
                assertThat(least.get().minutes()).as("job " + seed).isCloseTo(slow.minutes(), within(ROUNDING));
                assertThat(least.get().order().orElseThrow().minutes())
                        .as("job " + seed)
                        .isCloseTo(slow.minutes(), within(ROUNDING));
            }
            Plan plan = PlanBuilder.of(job.fold(), job.coverage(), PRICES);
            if (least.isPresent()
                    && begin(plan.moves())
                            .equals(begin(least.get().order().orElseThrow().moves()))) {
                taken++;
                assertThat(plan.minutes()).as("job " + seed).isLessThanOrEqualTo(slow.minutes() + ROUNDING);
            }
            assertThat(PlanBuilder.next(job.fold(), job.coverage(), PRICES, Progress.NONE)
                            .map(Move::entries))
                    .as("what comes next, job " + seed)
                    .isEqualTo(plan.moves().stream().findFirst().map(Move::entries));
            assertThat(plan.bound())
                    .as("job " + seed)
                    .isLessThanOrEqualTo(Math.min(slow.minutes(), plan.minutes()) + ROUNDING);
        }
        assertThat(found).isGreaterThan(10);
        assertThat(taken).isGreaterThan(5);
    }

    /** In how few turns it is found, and how much is told to be ahead after each: nothing of it changes unseen. */
    @Test
    void whatIsAheadIsToldAsCloselyAsItWas() throws Exception {
        assertThat(onTheWay()).isEqualTo(kept());
    }

    private static List<String> onTheWay() throws Exception {
        List<String> told = new ArrayList<>();
        for (int seed = 0; seed < JOBS; seed++) {
            told.add("job " + seed + onTheWay(new Job(random(new SplittableRandom(100 + seed), 5))));
        }
        return told;
    }

    /** Minutes that a job takes at least, once no turn, one, two and so on were followed, to the least. */
    private static String onTheWay(Job job) throws Exception {
        StringBuilder told = new StringBuilder();
        boolean found = least(job, Integer.MAX_VALUE).isEmpty();
        for (int turns = 0; !found; turns++) {
            EveryOrder.Least least = least(job, turns).orElseThrow();
            told.append(String.format(Locale.ROOT, ",%.4f", least.minutes()));
            found = least.order().isPresent();
        }
        return told.toString();
    }

    private static List<String> kept() throws IOException {
        try (InputStream in = EveryOrderTest.class.getResourceAsStream("every-order.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private static List<Entry> begin(List<Move> moves) {
        return moves.get(0).entries();
    }

    private static Engine random(SplittableRandom random, int most) {
        int count = 6 + random.nextInt(7);
        Engines engines = new Engines()
                .pad("pad", Ratio.ONE, 1 + random.nextInt(6), 0, 0)
                .port("p0")
                .port("p1")
                .landmark(1 + random.nextInt(count))
                .row("r", RowKind.ROTOR, count, Direction.CW, 2, List.of(), false, 0)
                .aim(random.nextInt(3));
        int views = 2 + random.nextInt(most - 1);
        for (int view = 0; view < views; view++) {
            engines.viewThrough(
                    "p" + random.nextInt(2),
                    "v" + view,
                    "r",
                    random.nextInt(360),
                    0.5 + random.nextInt(7),
                    view % 2 == 0 ? "root" : "tip");
        }
        return engines.built();
    }

    private static SlowOrders slow(Job job, String row) throws Exception {
        RemainingState start = new RemainingState(Trial.of(job.fold()), job.coverage());
        return SlowOrders.of(start, row(job, row), ports(job), PRICES, Double.POSITIVE_INFINITY);
    }

    private static Optional<EveryOrder.Least> least(Job job, int most) throws Exception {
        Coverage coverage = job.coverage();
        RemainingState start = new RemainingState(Trial.of(job.fold()), coverage);
        List<RowNeeds> left = start.now().engine().rows().values().stream()
                .map(row -> RowNeeds.of(
                        coverage, row, OptionalDouble.empty(), ViewOption.of(coverage, coverage.row(row.id()))))
                .filter(needs -> !needs.none())
                .toList();
        return EveryOrder.least(start, left, ports(job), PRICES, most);
    }

    private static Row row(Job job, String id) {
        return job.fold().situation().engine().rows().get(id);
    }

    private static List<String> ports(Job job) {
        return job.fold().situation().engine().model().ports().stream()
                .map(Port::id)
                .toList();
    }
}
