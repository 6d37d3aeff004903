package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import everyblade.core.Job;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Zoning;
import everyblade.core.move.RowNeeds.Kind;
import everyblade.core.sight.Reach.FromStation;
import everyblade.core.surface.Patches;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Sets of stations that are enough, of real rows in the middle of jobs, against a constraint solver (CP-SAT) that knows nothing of
 * covers: it is told patch by patch what each station shows, of what area, and when a zone counts as seen or as seen in part.
 * Whatever stations cost, the cheapest set that it finds costs as much as the cheapest of the covers.
 */
class CoversAgainstCpSatTest {

    private static final int ROWS = 200;
    private static final int MOST_COST = 20;
    /** Areas as whole numbers, so many to the mm². */
    private static final double PER_AREA = 1e5;

    private static final double SEEN = 0.95;
    private static final double WITHIN_REACH = 0.05;
    private static final double CUT_OFF = 0.5;

    private final SplittableRandom random = new SplittableRandom(5);

    @Test
    void noSetThatIsEnoughCostsLess() throws Exception {
        Loader.loadNativeLibraries();
        List<Job> fresh = List.of(MidJob.fresh("tansy-a1"), MidJob.fresh("larkspur-4"));
        int rows = 0;
        int several = 0;
        int begun = 0;
        for (int seed = 0; rows < ROWS && seed < ROWS; seed++) {
            Coverage coverage = MidJob.of(fresh.get(seed % fresh.size()), seed).coverage();
            for (RowCoverage of : coverage.rows()) {
                Optional<RowNeeds> needs = needs(coverage, of);
                if (needs.isPresent() && rows < ROWS) {
                    for (Kind kind : needs.get().kinds()) {
                        int[] costs = IntStream.range(0, needs.get().options().size())
                                .map(option -> 1 + random.nextInt(MOST_COST))
                                .toArray();
                        int all = (1 << costs.length) - 1;
                        List<Integer> covers = needs.get().leastCovers(kind, all);
                        assertThat(covers.stream().mapToInt(cover -> cost(cover, costs)).min())
                                .as("job %d, %s, %s", seed, of.row().id(), kind.airfoils())
                                .hasValue(cheapest(coverage, of, needs.get(), kind, costs));
                        several += covers.size() > 1 ? 1 : 0;
                    }
                    begun += of.surely(needs.get().kinds().get(0).example()).isEmpty() ? 0 : 1;
                    rows++;
                }
            }
        }
        assertThat(rows).isEqualTo(ROWS);
        assertThat(several).as("kinds with a choice").isGreaterThan(ROWS / 5);
        assertThat(begun).as("rows of which something was seen").isGreaterThan(ROWS / 4);
    }

    private static int cost(int cover, int[] costs) {
        return IntStream.range(0, costs.length)
                .filter(option -> (cover >> option & 1) != 0)
                .map(option -> costs[option])
                .sum();
    }

    /** What is left of a row all airfoils of which stand alike before all of its stations. */
    private static Optional<RowNeeds> needs(Coverage coverage, RowCoverage of) {
        Row row = of.row();
        boolean alike = of.reach()
                .filter(reach -> reach.stations().stream()
                        .allMatch(from -> from.travels() && from.sight().kinds() == 1))
                .isPresent();
        if (!alike) {
            return Optional.empty();
        }
        RowNeeds needs = RowNeeds.of(
                coverage, row, OptionalDouble.empty(), ViewOption.of(coverage, of));
        return Optional.of(needs).filter(some -> !some.none() && some.allOptions());
    }

    /** What the cheapest stations cost after which a kind of airfoils is done. */
    private static int cheapest(Coverage coverage, RowCoverage of, RowNeeds needs, Kind kind, int[] costs) {
        Patches patches = coverage.sights().grain(of.row()).patches();
        Asked asked = new Asked(new CpModel(), patches, of, kind.example());
        List<BoolVar> used = IntStream.range(0, costs.length)
                .mapToObj(option -> asked.model.newBoolVar("option " + option))
                .toList();
        for (int patch = 0; patch < patches.count(); patch++) {
            int one = patch;
            asked.seen.add(asked.any(
                    of.surely(kind.example()).get(patch),
                    showing(used, option -> needs.options().get(option).shows().get(one))));
            asked.whole.add(asked.any(
                    of.wholly(kind.example()).get(patch),
                    showing(used, option -> needs.options().get(option).wholly().get(one))));
        }
        Zoning zoning = of.zoning();
        for (int zone = 0; zone < zoning.size(); zone++) {
            if (kind.open().contains(zone)) {
                asked.done(zone, zoning.atEdge(zone));
            }
        }
        LinearExprBuilder cost = LinearExpr.newBuilder();
        for (int option = 0; option < costs.length; option++) {
            cost.addTerm(used.get(option), costs[option]);
        }
        asked.model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1);
        assertThat(solver.solve(asked.model)).isEqualTo(CpSolverStatus.OPTIMAL);
        return (int) Math.round(solver.objectiveValue());
    }

    private static List<BoolVar> showing(List<BoolVar> used, IntPredicate shows) {
        return IntStream.range(0, used.size()).filter(shows).mapToObj(used::get).toList();
    }

    /** When an airfoil's zones are done, as constraints. */
    private static final class Asked {

        private final CpModel model;
        private final Patches patches;
        private final boolean[] within;
        private final List<Literal> seen = new ArrayList<>();
        private final List<Literal> whole = new ArrayList<>();
        /** Patches that the same options show are one to the solver. */
        private final Map<Set<Integer>, Literal> known = new HashMap<>();

        Asked(CpModel model, Patches patches, RowCoverage of, int airfoil) {
            this.model = model;
            this.patches = patches;
            this.within = new boolean[patches.count()];
            for (FromStation from : of.reach().orElseThrow().stations()) {
                for (int patch = 0; patch < within.length; patch++) {
                    int facet = patches.facet(patch);
                    within[patch] |= from.sight().reaches(0, facet, patch - patches.first(facet));
                }
            }
        }

        /** Whether something is so anyway or because one of these is. */
        Literal any(boolean anyway, List<? extends Literal> of) {
            if (anyway || of.isEmpty()) {
                return anyway ? model.trueLiteral() : model.falseLiteral();
            }
            Set<Integer> which = of.stream().map(Literal::getIndex).collect(Collectors.toSet());
            return which.size() == 1 ? of.get(0) : known.computeIfAbsent(which, key -> any(of));
        }

        private Literal any(List<? extends Literal> of) {
            BoolVar any = model.newBoolVar("any");
            of.forEach(one -> model.addImplication(one, any));
            List<Literal> or = new ArrayList<>(of);
            or.add(any.not());
            model.addBoolOr(or);
            return any;
        }

        /** A zone is seen, or seen in part. */
        void done(int zone, boolean atEdge) {
            BoolVar own = model.newBoolVar("of its own");
            BoolVar reach = model.newBoolVar("of what is within reach");
            enough(zone, atEdge, own, false);
            enough(zone, atEdge, reach, true);
            model.addBoolOr(new Literal[] {own, reach});
        }

        /** If a literal holds, so much of a zone is seen, with what an edge of sight may cut off taken off. */
        private void enough(int zone, boolean atEdge, BoolVar if_, boolean ofReach) {
            List<Integer> wanted = IntStream.of(patches.ofZone(zone))
                    .filter(patch -> !ofReach || within[patch])
                    .boxed()
                    .toList();
            long all = wanted.stream().mapToLong(this::area).sum();
            long own = IntStream.of(patches.ofZone(zone)).mapToLong(this::area).sum();
            if (all == 0 || all < WITHIN_REACH * own) {
                model.addEquality(if_, 0);
                return;
            }
            BoolVar everything = model.newBoolVar("everything");
            wanted.forEach(patch -> model.addImplication(everything, seen.get(patch)));
            BoolVar most = model.newBoolVar("most");
            model.addBoolOr(new Literal[] {everything, most, if_.not()});
            LinearExprBuilder sum = LinearExpr.newBuilder();
            LinearExprBuilder strip = LinearExpr.newBuilder();
            for (int patch : patches.ofZone(zone)) {
                long area = area(patch);
                long inStrip = atEdge && patches.atEdge(patch) ? area : 0;
                sum.addTerm(seen.get(patch), area);
                strip.addTerm(seen.get(patch), inStrip);
                Literal bordering = bordering(patch, ofReach);
                sum.addTerm(bordering, -Math.round(CUT_OFF * area));
                strip.addTerm(bordering, -Math.round(CUT_OFF * inStrip));
                Literal little = both(bordering, whole.get(patch));
                sum.addTerm(little, Math.round((CUT_OFF - Patches.BEYOND) * area));
                strip.addTerm(little, Math.round((CUT_OFF - Patches.BEYOND) * inStrip));
            }
            long ofStrip = wanted.stream()
                    .filter(patch -> atEdge && patches.atEdge(patch))
                    .mapToLong(this::area)
                    .sum();
            model.addGreaterOrEqual(sum, (long) Math.floor(SEEN * all)).onlyEnforceIf(most);
            model.addGreaterOrEqual(strip, (long) Math.floor(SEEN * ofStrip)).onlyEnforceIf(most);
        }

        /** Whether a patch is seen and one beside it is not. */
        private Literal bordering(int patch, boolean ofReach) {
            List<Literal> missed = new ArrayList<>();
            for (int edge = 0; edge < patches.edges(patch); edge++) {
                int beyond = patches.beyond(patch, edge);
                if (beyond >= 0 && (!ofReach || within[beyond])) {
                    missed.add(seen.get(beyond).not());
                }
            }
            return both(seen.get(patch), any(false, missed));
        }

        private Literal both(Literal a, Literal b) {
            return any(false, List.of(a.not(), b.not())).not();
        }

        private long area(int patch) {
            return Math.round(PER_AREA * patches.facets().area(patch));
        }
    }
}
