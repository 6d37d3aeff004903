package everyblade.practice.progress;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.practice.account.Debrief.Trials;
import everyblade.practice.harm.Dice;
import everyblade.practice.progress.HitMissCurve.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private static final int RUNS = Boolean.getBoolean("everyblade.campaign") ? 1000 : 40;
    private static final double INTERCEPT = 1.0;
    private static final double SLOPE = 3.0;

    /** Somebody whose curve is known. */
    private static List<Point> trainee(Dice dice, int points) {
        List<Point> all = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double size = 0.25 * StrictMath.exp(dice.share() * StrictMath.log(20));
            double share = 1 / (1 + StrictMath.exp(-INTERCEPT - SLOPE * StrictMath.log(size)));
            all.add(new Point(size, dice.share() < share));
        }
        return all;
    }

    @Test
    void twenty_nine_of_twenty_nine_show_nine_of_ten_and_twenty_eight_do_not() {
        // MIL-HDBK-1823A practice: 29 of 29 found, 95 % lower bound 0.901855; 28 of 28: 0.898534.
        assertThat(new ShareFound(29, 29).atLeast(0.95)).isCloseTo(0.901855, within(5e-7));
        assertThat(new ShareFound(28, 28).atLeast(0.95)).isCloseTo(0.898534, within(5e-7));
    }

    @Test
    void five_of_ten_are_at_least_the_exact_bound() {
        // Clopper–Pearson 5/10 at 95 % two-sided: from 0.187086 (computed).
        assertThat(new ShareFound(5, 10).atLeast(0.975)).isCloseTo(0.187086, within(5e-7));
        assertThat(new ShareFound(0, 10).atLeast(0.95)).isZero();
    }

    @Test
    void who_calls_as_often_where_nothing_is_tells_nothing_apart() {
        Discrimination guessing = Discrimination.of(new Trials(20, 20, 20, 20)).orElseThrow();
        assertThat(guessing.sensitivity()).isCloseTo(0, within(1e-12));
        assertThat(guessing.criterion()).isCloseTo(0, within(1e-12));

        // Shares 0.84 and 0.16 are one standard deviation to either side: z(0.8413) = 1 (tables of the normal curve).
        Discrimination good = Discrimination.of(new Trials(841, 158, 158, 841)).orElseThrow();
        assertThat(good.sensitivity()).isCloseTo(2, within(0.01));
        assertThat(Discrimination.of(new Trials(5, 35, 0, 40)).orElseThrow().criterion())
                .isPositive();
        assertThat(Discrimination.of(new Trials(5, 3, 0, 0))).isEmpty();
    }

    @Test
    void the_curve_is_the_likeliest_of_all_on_a_grid_that_grows_finer_and_finer() {
        List<Point> points = trainee(new Dice(4), 90);
        HitMissCurve curve = HitMissCurve.of(points).orElseThrow();

        double[] general = {0, 0};
        for (double step = 1; step > 1e-7; step *= 0.7) {
            double[] from = general.clone();
            for (int i = -6; i <= 6; i++) {
                for (int k = -6; k <= 6; k++) {
                    double[] tried = {from[0] + i * step, from[1] + k * step};
                    general = likelihood(points, tried) > likelihood(points, general) ? tried : general;
                }
            }
        }

        assertThat(curve.intercept()).isCloseTo(general[0], within(1e-4));
        assertThat(curve.slope()).isCloseTo(general[1], within(1e-4));
        assertThat(curve.share(new Point(curve.a90(), true))).isCloseTo(0.9, within(1e-9));
        assertThat(curve.a90Surely().orElseThrow()).isGreaterThan(curve.a90());
    }

    private static double likelihood(List<Point> points, double[] b) {
        return points.stream()
                .mapToDouble(point -> {
                    double p = 1 / (1 + Math.exp(-b[0] - b[1] * Math.log(point.size())));
                    return Math.log(point.found() ? p : 1 - p);
                })
                .sum();
    }

    @Test
    void the_size_that_is_surely_found_holds_for_nineteen_trainees_of_twenty() {
        double truth = StrictMath.exp((StrictMath.log(9) - INTERCEPT) / SLOPE);
        Dice dice = new Dice(95);
        int held = 0;
        int curves = 0;
        for (int run = 0; run < RUNS; run++) {
            List<Point> points = trainee(dice, 60 + run % 3 * 30);
            if (HitMissCurve.of(points).isPresent()) {
                curves++;
                // Where no size is sure, none is promised.
                held += HitMissCurve.of(points).get().a90Surely().orElse(Double.POSITIVE_INFINITY) >= truth ? 1 : 0;
            }
        }
        assertThat(curves).isGreaterThan(RUNS * 9 / 10);
        assertThat((double) held / curves)
                .as("%d of %d bounds hold", held, curves)
                .isGreaterThanOrEqualTo(0.95);
    }

    @Test
    void there_is_no_curve_of_few_points_nor_of_points_that_make_none() {
        assertThat(HitMissCurve.of(trainee(new Dice(1), 59))).isEmpty();
        assertThat(HitMissCurve.of(trainee(new Dice(1), 60))).isPresent();
        List<Point> apart = new ArrayList<>();
        List<Point> turned = new ArrayList<>();
        for (int i = 1; i <= 60; i++) {
            apart.add(new Point(i, i > 30));
            turned.add(new Point(i, i < 30 || i == 60));
        }
        assertThat(HitMissCurve.of(apart)).isEmpty();
        assertThat(HitMissCurve.of(turned)).isEmpty();
    }
}
