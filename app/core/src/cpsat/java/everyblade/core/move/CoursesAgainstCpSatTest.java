package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Settings;
import everyblade.core.move.RotationProblem.Course;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.turning.Engine;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Courses through the stations of real rows in the middle of jobs against a constraint solver (CP-SAT): the least minutes of a
 * path through one way of doing each stay, ports in their order.
 */
class CoursesAgainstCpSatTest {

    private static final int ROWS = 200;
    private static final double PER_MINUTE = 1e7;
    private static final Prices PRICES = Prices.of(Settings.USUAL);

    private final SplittableRandom random = new SplittableRandom(11);

    @Test
    void noCourseTakesLess() throws Exception {
        Loader.loadNativeLibraries();
        List<Job> fresh = new ArrayList<>();
        for (String id : List.of("tansy-a1", "larkspur-4")) {
            Job job = new Job(Engine.of(model(id)));
            job.coverage();
            fresh.add(job);
        }
        int compared = 0;
        int several = 0;
        for (int seed = 0; compared < ROWS && seed < 20 * ROWS; seed++) {
            Job job = fresh.get(seed % fresh.size()).another();
            Optional<Posed> posed = posed(job);
            if (posed.isPresent()) {
                RotationProblem problem = posed.get().problem();
                Course course = problem.course(
                        posed.get().stays().stream().map(problem::works).toList());
                assertThat(course.minutes())
                        .as("job %d: %s", seed, job.fold().entries())
                        .isCloseTo(least(posed.get()), within(1e-4));
                several += posed.get().stays().size() > 1 ? 1 : 0;
                compared++;
            }
        }
        assertThat(compared).isEqualTo(ROWS);
        assertThat(several).isGreaterThan(ROWS / 2);
    }

    private static EngineModel model(String id) throws Exception {
        Path file = Path.of("..", "..", "engine-models", id, EngineJsonReader.FILE);
        return ((Reading.Read) EngineJsonReader.read(file)).model();
    }

    /** A row, and what must pass before which station. */
    private record Posed(RotationProblem problem, List<Stay> stays) {}

    /** A row of which some was seen, somewhere; empty where a look at rest is all that is left of it somewhere. */
    private Optional<Posed> posed(Job job) throws Exception {
        EngineModel model = job.fold().situation().engine().model();
        List<View> views = model.views().stream()
                .filter(view -> !view.stations().isEmpty())
                .filter(view -> model.row(view.row()).orElseThrow().kind() == RowKind.ROTOR)
                .toList();
        View view = views.get(random.nextInt(views.size()));
        Row row = model.row(view.row()).orElseThrow();
        job.enter("heat 20 C", "view " + view.id(), "datum " + row.id() + " 1");
        for (int moves = random.nextInt(3); moves >= 0; moves--) {
            List<Station> stations = view.stations();
            job.enter("at " + stations.get(random.nextInt(stations.size())).id());
            job.enter((random.nextBoolean() ? "turn on " : "skip on ") + (20 + random.nextInt(300)), "here 1");
        }
        Coverage coverage = job.coverage();
        RemainingState state = new RemainingState(Trial.of(job.fold()), coverage);
        RowNeeds needs = RowNeeds.of(
                coverage, row, state.setBackOrClock(row), ViewOption.of(coverage, coverage.row(row.id())));
        if (needs.none()) {
            return Optional.empty();
        }
        List<String> ports = model.ports().stream().map(port -> port.id()).toList();
        RotationProblem problem = RotationProblem.of(
                state,
                row,
                needs.options(),
                state.slack(row, needs.options().get(0)),
                false,
                option -> option.view().port().map(ports::indexOf).orElse(-1),
                PRICES);
        List<Stay> stays = stays(needs);
        boolean ends = stays.stream().flatMap(stay -> problem.works(stay).stream()).allMatch(CoursesAgainstCpSatTest::ends);
        return ends ? Optional.of(new Posed(problem, stays)) : Optional.empty();
    }

    /** Whether it is known where a work begins and ends, wherever one comes from. */
    private static boolean ends(Work work) {
        return work.how() == How.ROUND
                || work.sweeping()
                        .filter(sweep -> sweep.length() > 0 && sweep.below() == 0 && sweep.above() == 0)
                        .isPresent();
    }

    /** Each kind of airfoil from one of its least covers, drawn by lot. */
    private List<Stay> stays(RowNeeds needs) {
        Map<Integer, BitSet> served = new HashMap<>();
        Map<Integer, BitSet> parts = new HashMap<>();
        for (RowNeeds.Kind kind : needs.kinds()) {
            List<Integer> covers = needs.leastCovers(kind, (1 << needs.options().size()) - 1);
            for (int rest = covers.get(random.nextInt(covers.size())); rest != 0; rest &= rest - 1) {
                int option = Integer.numberOfTrailingZeros(rest);
                served.computeIfAbsent(option, key -> new BitSet()).or(kind.airfoils());
                parts.computeIfAbsent(option, key -> new BitSet())
                        .or(kind.shown().get(option).parts());
            }
        }
        return served.entrySet().stream()
                .map(entry -> {
                    ViewOption option = needs.options().get(entry.getKey());
                    VisibilityWindow window = option.window(parts.get(entry.getKey()), new BitSet());
                    return new Stay(
                            option,
                            entry.getValue().stream()
                                    .mapToObj(n -> window.moved(
                                            -Engine.fromFirst(needs.row(), n).degrees()))
                                    .toList());
                })
                .toList();
    }

    /** Least minutes of a path from where the row and the scope tip are through one work of each stay. */
    private static double least(Posed posed) {
        RotationProblem problem = posed.problem();
        List<Begun> works = new ArrayList<>();
        CpModel model = new CpModel();
        CircuitConstraint circuit = model.addCircuit();
        LinearExprBuilder cost = LinearExpr.newBuilder();
        List<List<BoolVar>> done = new ArrayList<>();
        for (Stay stay : posed.stays()) {
            List<BoolVar> ways = new ArrayList<>();
            for (Begun work : begun(problem, problem.works(stay))) {
                works.add(work);
                BoolVar taken = model.newBoolVar("work " + works.size());
                circuit.addArc(works.size(), works.size(), taken.not());
                cost.addTerm(taken, Math.round(PER_MINUTE * work.work().minutes()));
                ways.add(taken);
            }
            model.addExactlyOne(ways.toArray(BoolVar[]::new));
            done.add(ways);
        }
        for (int to = 1; to <= works.size(); to++) {
            Begun work = works.get(to - 1);
            arc(model, circuit, cost, 0, to, leading(problem, work, problem.place(), problem.seated()));
            arc(model, circuit, cost, to, 0, OptionalDouble.of(0));
            for (int from = 1; from <= works.size(); from++) {
                Begun before = works.get(from - 1);
                boolean later = problem.rank().applyAsInt(before.option()) <= problem.rank().applyAsInt(work.option());
                if (before.work().stay() != work.work().stay() && later) {
                    OptionalDouble there = OptionalDouble.of(before.end());
                    arc(model, circuit, cost, from, to, leading(problem, work, there, Optional.of(before.option())));
                }
            }
        }
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);
        assertThat(solver.solve(model)).isEqualTo(CpSolverStatus.OPTIMAL);
        return solver.objectiveValue() / PER_MINUTE;
    }

    /** No arc where no minutes are given. */
    private static void arc(
            CpModel model, CircuitConstraint circuit, LinearExprBuilder cost, int from, int to, OptionalDouble minutes) {
        if (minutes.isPresent()) {
            BoolVar taken = model.newBoolVar(from + " to " + to);
            circuit.addArc(from, to, taken);
            cost.addTerm(taken, Math.round(PER_MINUTE * minutes.getAsDouble()));
        }
    }

    /**
     * A work, and where airfoil 1 stands when it begins and ends.
     *
     * @param unmoved whether nothing is moved before: the airfoil from which a round is told is at the reference already
     */
    private record Begun(Work work, double begin, double end, boolean unmoved) {

        ViewOption option() {
            return work.option();
        }
    }

    /** Of a round also those that begin at the landmark or at one of the two airfoils either side of it, if that is there. */
    private static List<Begun> begun(RotationProblem problem, List<Work> works) {
        List<Begun> all = new ArrayList<>();
        for (Work work : works) {
            if (work.how() == How.ROUND) {
                double there = problem.atReference(work.option(), work.landmark().getAsInt());
                all.add(new Begun(work, there, there, false));
                for (int apart = -2; apart <= 2; apart++) {
                    double beside = there - apart * 360.0 / problem.row().count();
                    all.add(new Begun(work, beside, beside, true));
                }
            } else {
                Sweeping sweeping = work.sweeping().orElseThrow();
                all.add(
                        work.rising()
                                ? new Begun(work, sweeping.from(), sweeping.to(), false)
                                : new Begun(work, sweeping.to(), sweeping.from(), false));
            }
        }
        return all;
    }

    /** Minutes from an end to where a work begins: turned unwatched, or watched where the sweep goes that way anyway. */
    private static OptionalDouble leading(
            RotationProblem problem, Begun begun, OptionalDouble from, Optional<ViewOption> at) {
        Work work = begun.work();
        double seating = work.option().awayFrom(at, PRICES);
        double search = 0.25 + PRICES.unwatched() / 2;
        if (from.isEmpty()) {
            return begun.unmoved()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(seating + search + (work.how() == How.ROUND ? 0 : PRICES.identification()));
        }
        double way = way(problem, from.getAsDouble(), begun.begin());
        if (begun.unmoved()) {
            double apart = Math.abs((from.getAsDouble() - begun.begin() + 180 + 720) % 360 - 180);
            return apart <= problem.aim().applyAsDouble(work.option())
                    ? OptionalDouble.of(seating)
                    : OptionalDouble.empty();
        }
        if (work.how() == How.ROUND) {
            return OptionalDouble.of(seating + Math.min(search, turning(way)));
        }
        double watched = way > 0 == work.rising() ? PRICES.watched() * Math.abs(way) / 360 : Double.POSITIVE_INFINITY;
        return OptionalDouble.of(seating + Math.min(turning(way), watched));
    }

    private static double turning(double way) {
        return way == 0 ? 0 : 0.25 + PRICES.unwatched() * Math.abs(way) / 360;
    }

    /** The shorter way, of those allowed. */
    private static double way(RotationProblem problem, double from, double to) {
        double clockwise = ((to - from) % 360 + 360) % 360;
        boolean none = clockwise < 1e-7 || clockwise > 360 - 1e-7;
        boolean cw = problem.ways().stream().anyMatch(way -> way.sign() > 0);
        boolean ccw = problem.ways().stream().anyMatch(way -> way.sign() < 0);
        return none ? 0 : cw && (!ccw || clockwise <= 180) ? clockwise : clockwise - 360;
    }
}
