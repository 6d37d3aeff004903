package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.Settings;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Courses through random stays before four views, against every order of every way of doing them. */
class CourseSearchTest {

    private static final Prices PRICES = Prices.of(Settings.USUAL);

    private final SplittableRandom random = new SplittableRandom(3);

    private record Posed(RotationProblem problem, List<List<Work>> works) {

        /** Least minutes of all orders in which views of a lower rank come first. */
        double least(int done, Optional<ViewOption> at, OptionalDouble from) {
            double least = done == (1 << works.size()) - 1 ? 0 : Double.POSITIVE_INFINITY;
            for (int stay = 0; stay < works.size(); stay++) {
                if ((done >> stay & 1) == 0 && mayCome(done, stay)) {
                    for (Work work : works.get(stay)) {
                        double seating = work.option().awayFrom(at, PRICES);
                        least = Math.min(
                                least,
                                seating
                                        + problem.leading(work, from, seating > 0)
                                        + work.minutes()
                                        + least(
                                                done | 1 << stay,
                                                Optional.of(work.option()),
                                                problem.after(work, from)));
                    }
                }
            }
            return least;
        }

        private boolean mayCome(int done, int stay) {
            return IntStream.range(0, works.size())
                    .filter(other -> (done >> other & 1) == 0)
                    .allMatch(other -> rank(stay) <= rank(other));
        }

        private int rank(int stay) {
            return problem.rank().applyAsInt(works.get(stay).get(0).option());
        }
    }

    private Posed posed() throws Exception {
        Engines engines = new Engines()
                .pad("pad", Ratio.ONE, 1, 0, 0)
                .landmark(1 + random.nextInt(12))
                .rotor("r", 12)
                .aim(random.nextInt(4));
        for (int view = 0; view < 4; view++) {
            engines.view("v" + view, "r", random.nextInt(360), 3);
        }
        Job job = new Job(engines.built());
        if (random.nextBoolean()) {
            job.enter("view v" + random.nextInt(4), "datum r 1");
        }
        RemainingState state = new RemainingState(Trial.of(job.fold()), job.coverage());
        Row row = job.fold().situation().engine().rows().get("r");
        List<ViewOption> options = ViewOption.of(job.coverage(), job.coverage().row("r"));
        int apart = random.nextInt(1, 4);
        RotationProblem problem = RotationProblem.of(
                state,
                row,
                options,
                new Slack(random.nextDouble(3) + 0.1, random.nextDouble(3)),
                random.nextInt(4) == 0,
                option -> options.indexOf(option) / apart,
                PRICES);
        List<List<Work>> works = new ArrayList<>();
        for (ViewOption option : options.subList(0, random.nextInt(1, 4))) {
            List<VisibilityWindow> windows = new ArrayList<>();
            for (int window = random.nextInt(1, 4); window > 0; window--) {
                double at = random.nextInt(360);
                windows.add(new VisibilityWindow(at + random.nextInt(8), at));
            }
            works.add(problem.works(
                    random.nextInt(3) == 0 ? new Stay(option, List.of(), true) : new Stay(option, windows)));
        }
        return new Posed(problem, works);
    }

    @Test
    void noOrderTakesLess() throws Exception {
        for (int round = 0; round < 300; round++) {
            Posed posed = posed();
            double least =
                    posed.least(0, posed.problem().seated(), posed.problem().place());
            assertThat(posed.problem().course(posed.works()).minutes())
                    .as("round " + round)
                    .isCloseTo(least, within(1e-6));
        }
    }
}
