package everyblade.core.move;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.move.RotationProblem.Course;
import everyblade.core.move.RotationProblem.How;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.turning.Engine;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tries every set of options that covers a row, and every way of sharing its airfoils out among them, and keeps for each
 * set of ports the quickest. A row has a handful of options, so all sets can be tried; where there are too many ways of
 * sharing out, airfoils of one kind are shared out together.
 */
final class CoverSearch {

    private static final int MOST_SHARINGS = 256;
    /** So many ways are followed, a tenth of a second; the rest are only counted in by what they take at least. */
    private static final int MOST_FOLLOWED = 200;
    /** To pass so many airfoils, evenly spaced, takes nearly a whole turn. */
    private static final int LEAST_WHOLE = 6;

    private final RowNeeds needs;
    private final RotationProblem problem;
    private final Map<Wanted, VisibilityWindow> windows = new HashMap<>();
    private final Map<Stay, List<Work>> works = new HashMap<>();
    private final Map<Set<String>, RowPlan> best = new HashMap<>();
    private final Map<ViewOption, Optional<VisibilityWindow>> anywhere = new IdentityHashMap<>();
    private int followed;

    /**
     * A way of seeing a row.
     *
     * @param ports that it needs
     * @param course what is done
     * @param bound minutes that every way through these ports takes at least
     */
    record RowPlan(Set<String> ports, Course course, double bound) {

        double minutes() {
            return course.minutes();
        }
    }

    /** What is to be seen from an option. */
    private record Wanted(int option, RowNeeds.Shown parts) {}

    /** Airfoils that are shared out alike, and the covers among which there is to choose. */
    private record Portion(RowNeeds.Kind kind, BitSet airfoils, List<Integer> covers) {}

    private CoverSearch(RowNeeds needs, RotationProblem problem) {
        this.needs = needs;
        this.problem = problem;
    }

    /** The quickest way through each set of ports that will do. */
    static List<RowPlan> of(RowNeeds needs, RotationProblem problem) {
        CoverSearch search = new CoverSearch(needs, problem);
        IntStream.range(1, 1 << needs.options().size())
                .filter(mask -> needs.kinds().stream().allMatch(kind -> needs.covers(mask, kind)))
                .boxed()
                .sorted(Comparator.comparing(Integer::bitCount))
                .forEach(search::tryAll);
        return List.copyOf(search.best.values());
    }

    private void tryAll(int mask) {
        Set<String> ports = in(mask).flatMap(option -> option.view().port().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        List<Portion> portions = portions(mask);
        boolean all = sharings(portions) <= MOST_SHARINGS;
        int[] choice = new int[portions.size()];
        do {
            if (followed >= MOST_FOLLOWED && best.containsKey(ports)) {
                countIn(ports, mask);
                return;
            }
            Map<Integer, BitSet> served = served(portions, choice);
            if (served.size() == Integer.bitCount(mask)) {
                follow(ports, stays(served), all ? served : essential(mask));
            }
        } while (all && advance(choice, portions));
    }

    private Stream<ViewOption> in(int mask) {
        return IntStream.range(0, needs.options().size())
                .filter(option -> (mask >> option & 1) != 0)
                .mapToObj(needs.options()::get);
    }

    /** What was not followed is only known to take so long. */
    private void countIn(Set<String> ports, int mask) {
        RowPlan known = best.get(ports);
        double least = outset(atLeast(
                in(mask).map(option -> new Stay(option, List.of())).toList(), essential(mask)));
        best.put(ports, new RowPlan(ports, known.course(), Math.min(least, known.bound())));
    }

    /** Nothing need be found out of what takes longer than what is known anyway. */
    private void follow(Set<String> ports, List<Stay> stays, Map<Integer, BitSet> atLeast) {
        RowPlan known = best.get(ports);
        List<Stay> least = atLeast(stays, atLeast);
        if (known != null && outset(least) >= known.minutes()) {
            return;
        }
        followed++;
        Course course = course(problem, stays);
        double bound = bound(least);
        best.merge(ports, new RowPlan(ports, course, bound), CoverSearch::better);
    }

    private static RowPlan better(RowPlan a, RowPlan b) {
        RowPlan quicker = b.minutes() < a.minutes() ? b : a;
        return new RowPlan(quicker.ports(), quicker.course(), Math.min(a.bound(), b.bound()));
    }

    private Course course(RotationProblem problem, List<Stay> stays) {
        return problem.course(stays.stream().map(this::works).toList());
    }

    private List<Work> works(Stay stay) {
        return works.computeIfAbsent(stay, problem::works);
    }

    /** Minutes of these stays without the ways between them, and with what they may save by sharing moves. */
    private double outset(List<Stay> stays) {
        double minutes = stays.stream()
                .mapToDouble(stay ->
                        works(stay).stream().mapToDouble(Work::minutes).min().orElse(0))
                .sum();
        List<ViewOption> options = stays.stream().map(Stay::option).toList();
        boolean seated = problem.seated().filter(options::contains).isPresent();
        return minutes
                + ViewOption.seating(options, problem.seated().map(ViewOption::view), seated, problem.prices())
                - (problem.fromAnywhere()
                        ? 0
                        : 2 * stays.size() * problem.prices().move());
    }

    private List<Portion> portions(int mask) {
        List<Portion> byAirfoil = new ArrayList<>();
        List<Portion> byKind = new ArrayList<>();
        for (RowNeeds.Kind kind : needs.kinds()) {
            List<Integer> covers = needs.leastCovers(kind, mask);
            byKind.add(new Portion(kind, kind.airfoils(), covers));
            if (covers.size() == 1) {
                byAirfoil.add(byKind.get(byKind.size() - 1));
            } else {
                kind.airfoils().stream().forEach(n -> {
                    BitSet one = new BitSet();
                    one.set(n);
                    byAirfoil.add(new Portion(kind, one, covers));
                });
            }
        }
        return sharings(byAirfoil) <= MOST_SHARINGS ? byAirfoil : byKind;
    }

    private static double sharings(List<Portion> portions) {
        return portions.stream().mapToDouble(portion -> portion.covers().size()).reduce(1, (a, b) -> a * b);
    }

    private static boolean advance(int[] choice, List<Portion> portions) {
        for (int i = 0; i < choice.length; i++) {
            if (++choice[i] < portions.get(i).covers().size()) {
                return true;
            }
            choice[i] = 0;
        }
        return false;
    }

    /** The airfoils that each option must serve. */
    private static Map<Integer, BitSet> served(List<Portion> portions, int[] choice) {
        Map<Integer, BitSet> served = new HashMap<>();
        for (int i = 0; i < choice.length; i++) {
            Portion portion = portions.get(i);
            for (int rest = portion.covers().get(choice[i]); rest != 0; rest &= rest - 1) {
                served.computeIfAbsent(Integer.numberOfTrailingZeros(rest), option -> new BitSet())
                        .or(portion.airfoils());
            }
        }
        return served;
    }

    /** The airfoils that each option must serve however they are shared out. */
    private Map<Integer, BitSet> essential(int mask) {
        Map<Integer, BitSet> served = new HashMap<>();
        for (int option = 0; option < needs.options().size(); option++) {
            if ((mask >> option & 1) != 0) {
                BitSet airfoils = new BitSet();
                for (RowNeeds.Kind kind : needs.kinds()) {
                    if (!needs.covers(mask & ~(1 << option), kind)) {
                        airfoils.or(kind.airfoils());
                    }
                }
                served.put(option, airfoils);
            }
        }
        return served;
    }

    private List<Stay> stays(Map<Integer, BitSet> served) {
        int mask = served.keySet().stream().mapToInt(option -> 1 << option).sum();
        int whole = served.entrySet().stream()
                .filter(entry -> whole(needs.options().get(entry.getKey()), entry.getValue()))
                .mapToInt(entry -> 1 << entry.getKey())
                .sum();
        return served.entrySet().stream()
                .map(entry -> stay(entry.getKey(), entry.getValue(), whole, mask))
                .toList();
    }

    /** A row that is turned whole anyway passes everything: nobody needs to know where. */
    private boolean whole(ViewOption option, BitSet airfoils) {
        int count = needs.row().count();
        return airfoils.cardinality() == count
                && count >= LEAST_WHOLE
                && !problem.slack().none()
                && option.travels();
    }

    /**
     * @param whole options that every airfoil passes
     * @param mask all options
     */
    private Stay stay(int number, BitSet airfoils, int whole, int mask) {
        ViewOption option = needs.options().get(number);
        return (whole >> number & 1) != 0
                ? new Stay(option, List.of(), true)
                : stay(option, airfoils, window(number, airfoils, whole, mask));
    }

    private Stay stay(ViewOption option, BitSet airfoils, VisibilityWindow window) {
        return new Stay(
                option,
                airfoils.stream()
                        .mapToObj(n ->
                                window.moved(-Engine.fromFirst(needs.row(), n).degrees()))
                        .toList());
    }

    /**
     * Where an airfoil must pass so that all that an option shows of what is left of these is seen, but for what they show
     * to others anyway.
     */
    private VisibilityWindow window(int number, BitSet airfoils, int whole, int mask) {
        RowNeeds.Shown parts = new RowNeeds.Shown();
        for (RowNeeds.Kind kind : needs.kinds()) {
            if (kind.airfoils().intersects(airfoils)) {
                RowNeeds.Shown own = kind.shown().get(number).minus(needs.shown(kind, whole));
                parts.parts().or(own.parts());
                if (needs.onlyAtEdges(kind, mask)) {
                    parts.beside().or(own.beside());
                    parts.wholly().or(own.wholly());
                }
            }
        }
        return windows.computeIfAbsent(
                new Wanted(number, parts),
                wanted -> needs.options()
                        .get(number)
                        .window(wanted.parts().all(), wanted.parts().wholly()));
    }

    /**
     * What this set of options takes at least: what must be turned whole is; elsewhere an airfoil must at least come to where
     * anything of it can be seen at all.
     */
    private List<Stay> atLeast(List<Stay> stays, Map<Integer, BitSet> atLeast) {
        List<Stay> least = new ArrayList<>();
        for (Map.Entry<Integer, BitSet> entry : atLeast.entrySet()) {
            ViewOption option = needs.options().get(entry.getKey());
            boolean whole = stays.stream()
                    .filter(stay -> stay.option().equals(option))
                    .flatMap(stay -> works(stay).stream())
                    .anyMatch(work -> work.how() == How.ROUND || work.how() == How.WHOLE);
            if (whole && !problem.slack().none() && !entry.getValue().isEmpty()) {
                least.add(new Stay(option, List.of(), true));
            } else {
                least.add(anywhere.computeIfAbsent(option, CoverSearch::atLeast)
                        .filter(window -> !entry.getValue().isEmpty())
                        .map(window -> stay(option, entry.getValue(), window.before(problem.slack())))
                        .orElseGet(() -> new Stay(option, List.of())));
            }
        }
        return least;
    }

    private double bound(List<Stay> stays) {
        Course least = course(problem.loosely(), stays);
        return least.minutes() - savable(least) * problem.prices().move();
    }

    /**
     * How many moves other courses may save at most: a sweep or a look may end a little further, so that the way to where
     * the next stay begins is no move of its own; and where moves have errors, a sweep may begin where it stands.
     */
    private int savable(Course course) {
        int stays = course.works().size();
        int ends = (int) course.works().stream()
                .filter(work -> work.how() == How.SWEEP || work.how() == How.LOOK)
                .count();
        if (problem.fromAnywhere()) {
            return 0;
        }
        return problem.slack().none() ? Math.min(stays - 1, ends) : Math.min(stays, 2 * ends);
    }

    /** Where anything can be seen at all of an airfoil; empty if anywhere. */
    private static Optional<VisibilityWindow> atLeast(ViewOption option) {
        if (option.sight().isEmpty()) {
            return Optional.of(option.window(option.shows(), new BitSet()));
        }
        ArcSet all = ArcSet.of(
                Circle.STANDARD,
                option.facets(option.shows()).stream()
                        .mapToObj(facet -> option.sight().get().arcs(0, facet).arcs())
                        .flatMap(List::stream)
                        .toList());
        List<Arc> gaps = all.complement().arcs();
        if (gaps.isEmpty()) {
            return Optional.empty();
        }
        Arc widest = gaps.stream().max(Comparator.comparingLong(Arc::length)).orElseThrow();
        Turn from = Turn.ofTicks(widest.start() + widest.length());
        return Optional.of(
                VisibilityWindow.anywhereIn(from, from.plus(Turn.ofTicks(Circle.STANDARD.ticks() - widest.length()))));
    }
}
