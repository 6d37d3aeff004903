package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Plans where moves have errors: what they claim to close is surely seen by whoever follows them. */
class DoubtTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 5_000 : 100;
    private static final int[] COUNTS = {1, 2, 7, 12, 19, 36, 47};

    static Job random(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int way = random.nextInt(3) - 1;
        Direction[] ways = way == 0 ? new Direction[0] : new Direction[] {way > 0 ? Direction.CW : Direction.CCW};
        Engines engines = new Engines().normal(random.nextBoolean() ? Direction.CW : Direction.CCW);
        engines.pad(
                "pad",
                new Ratio(29, 77),
                random.nextInt(4) * 0.7,
                random.nextInt(2) * 0.5,
                random.nextInt(2) * 0.3,
                ways);
        int rows = 1 + random.nextInt(3);
        for (int i = 0; i < rows; i++) {
            engines.row(
                    "r" + i,
                    random.nextInt(4) > 0 ? RowKind.ROTOR : RowKind.STATOR,
                    COUNTS[random.nextInt(COUNTS.length)],
                    random.nextBoolean() ? Direction.CW : Direction.CCW,
                    2,
                    List.of(),
                    random.nextBoolean(),
                    random.nextInt(2) * 0.4);
            engines.view("r" + i + "-a", "r" + i, random.nextInt(360), 0.3 + 5 * random.nextDouble(), "all");
            engines.view("r" + i + "-b", "r" + i, random.nextInt(360), 0.3 + 5 * random.nextDouble(), "tip");
        }
        Engine engine = engines.built();
        Job job = new Job(engine);
        for (int i = 0; i < rows; i++) {
            boolean turns = engine.rows().get("r" + i).kind() == RowKind.ROTOR;
            job.enter("view r" + i + (random.nextBoolean() ? "-a" : "-b"));
            job.enter("datum r" + i + " 1" + (random.nextBoolean() ? " ± 0.5" : ""));
            for (int move = random.nextInt(4); move > 0; move--) {
                int sign = turns && way != 0 ? way : random.nextBoolean() ? 1 : -1;
                String verb = random.nextBoolean() ? turns ? "turn " : "draw " : turns ? "skip " : "feed ";
                String unit = turns && random.nextInt(3) == 0 ? " tool" : "";
                String number = unit.isEmpty()
                        ? BigDecimal.valueOf(sign * random.nextInt(30_000), 2).toPlainString()
                        : Integer.toString(sign * random.nextInt(3));
                job.enter(verb + number + unit);
            }
        }
        return job;
    }

    @Test
    void whatTheyClaimToCloseIsSurelySeen() {
        int closed = 0;
        int unsure = 0;
        int over = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            Job job = random(seed);
            int before = open(job);
            Plan plan = PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));
            plan.moves().forEach(move -> move.entries().forEach(entry -> job.enter(EntryText.of(entry))));
            assertThat(open(job)).as("job %d: %s", seed, job.fold().entries()).isEqualTo(plan.unsure());
            over += plan.unsure() == 0 && plan.bound() > plan.minutes() + 1e-6 ? 1 : 0;
            closed += before - plan.unsure();
            unsure += plan.unsure();
        }
        assertThat(closed).isGreaterThan(1000);
        assertThat(unsure).isZero();
        assertThat(over).as("plans that take less than their bound").isLessThanOrEqualTo(JOBS / 100);
    }

    private static int open(Job job) {
        return Gaps.of(job.coverage()).stream()
                .filter(gap -> gap.why() != Why.NO_ACCESS)
                .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                .sum();
    }
}
