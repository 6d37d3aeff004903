package everyblade.core.move;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.State;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Seat;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans the moves that close all gaps, and follows them through fold and coverage before they are given away. Where the
 * errors of several moves in a row add up to more than was allowed for, it allows for more and plans again.
 */
public final class Plans {

    /** Labels that a search looks at before it settles for a bound. */
    private static final int LIMIT = 5_000;

    private static final int MOST_TURNS = 8;

    private final Fold fold;
    private final Coverage coverage;
    private final Trial now;
    private final int left;
    private final List<Wanted> open;
    /** Cells of computed rows that nobody identified. */
    private final Map<Row, Integer> waiting;

    private Plans(Fold fold, Coverage coverage) throws Refusal {
        this.fold = fold;
        this.coverage = coverage;
        this.now = Trial.of(fold);
        List<Gap> gaps = Gaps.of(coverage);
        this.left = gaps.stream()
                .filter(gap -> gap.why().outOfReach())
                .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                .sum();
        this.open = open(gaps.stream()
                .filter(gap -> coverage.row(gap.row().id()).basis() == Basis.DECLARED)
                .toList());
        this.waiting = waiting(gaps);
    }

    /**
     * The moves that close all gaps of a fold.
     *
     * @param coverage of this fold
     */
    public static Plan of(Fold fold, Coverage coverage) {
        try {
            return new Plans(fold, coverage).plan();
        } catch (Refusal refused) {
            throw new IllegalStateException("a planned entry was refused: " + refused.getMessage(), refused);
        }
    }

    private static List<Wanted> open(List<Gap> gaps) {
        record Airfoil(Row row, int number) {}
        Map<Airfoil, ZoneSet> open = new LinkedHashMap<>();
        for (Gap gap : gaps) {
            if (!gap.why().outOfReach()) {
                gap.airfoils().forEach(n -> open.merge(new Airfoil(gap.row(), n), gap.zones(), ZoneSet::union));
            }
        }
        return open.entrySet().stream()
                .map(entry -> new Wanted(entry.getKey().row(), entry.getKey().number(), entry.getValue()))
                .toList();
    }

    private Plan plan() throws Refusal {
        Plan best = plan(1);
        for (int turns = 2; turns <= MOST_TURNS && best.unsure() > 0; turns *= 2) {
            Plan other = plan(turns);
            best = other.unsure() < best.unsure() ? other : best;
        }
        return withComputed(best);
    }

    /** With the moves for rows whose sight is computed, which follow on the others. */
    private Plan withComputed(Plan declared) throws Refusal {
        Trial done = now;
        for (List<Entry> move : declared.entries()) {
            done = done.with(move);
        }
        Stepwise steps = Stepwise.of(done, coverage.after(done.situation()));
        List<Move> moves = new ArrayList<>(declared.moves());
        moves.addAll(steps.moves());
        List<List<Entry>> entries = new ArrayList<>(declared.entries());
        entries.addAll(steps.entries());
        Map<Row, Integer> unidentified = new LinkedHashMap<>(declared.unidentified());
        unidentified.putAll(waiting);
        return new Plan(
                moves,
                entries,
                declared.turning().add(Steps.degrees(steps.turning())),
                declared.bound(),
                declared.drawing().add(Steps.degrees(steps.drawing())),
                declared.left(),
                unidentified,
                declared.unsure() + steps.unsure());
    }

    private Map<Row, Integer> waiting(List<Gap> gaps) {
        Map<Row, Integer> cells = new LinkedHashMap<>();
        gaps.stream()
                .filter(gap -> coverage.row(gap.row().id()).basis() == Basis.COMPUTED)
                .filter(gap -> !gap.why().outOfReach())
                .filter(gap -> !fold.situation().counting(gap.row()))
                .forEach(gap -> cells.merge(
                        gap.row(), gap.airfoils().size() * gap.zones().size(), Integer::sum));
        return cells;
    }

    /** A plan that allows for so many moves by an amount after each reading of a shaft. */
    private Plan plan(int turns) throws Refusal {
        Map<String, Footing> footings = footings(turns);
        Telling telling = new Telling(fold.situation());
        long bound = 0;
        for (List<Wanted> together : together(footings)) {
            Optional<Spool> spool =
                    fold.situation().engine().spool(together.get(0).row());
            Map<String, Footing> own = new LinkedHashMap<>();
            together.forEach(wanted ->
                    own.put(wanted.row().id(), footings.get(wanted.row().id())));
            Ground ground = Ground.of(now, spool, together, own);
            Course course = CourseSearch.of(ground.walk(), LIMIT)
                    .orElseThrow(() -> new IllegalStateException("no course serves what some view shows"));
            telling.add(ground, course);
            bound += spool.isPresent() ? course.bound() : 0;
        }
        if (telling.turning() < bound) {
            throw new IllegalStateException("a plan turns less than its bound");
        }
        return new Plan(
                telling.moves(),
                telling.entries(),
                Steps.degrees(telling.turning()),
                Steps.degrees(bound),
                Steps.degrees(telling.drawing()),
                left,
                unidentified(footings),
                unsure(telling.entries(), footings));
    }

    /** Of every row with something to see, where that is known. */
    private Map<String, Footing> footings(int turns) throws Refusal {
        Map<String, Footing> footings = new HashMap<>();
        for (Row row : open.stream().map(Wanted::row).distinct().toList()) {
            View view = now.situation().engine().model().views().stream()
                    .filter(one -> one.row().equals(row.id()) && one.window().isPresent())
                    .findFirst()
                    .orElseThrow();
            Footing.of(now, view, row, turns).ifPresent(footing -> footings.put(row.id(), footing));
        }
        return footings;
    }

    /** What turns together, or stands still by itself; first what turns with the row in view. */
    private List<List<Wanted>> together(Map<String, Footing> footings) {
        Map<String, List<Wanted>> together = new LinkedHashMap<>();
        fold.situation().seat().map(Seat::row).ifPresent(row -> together.put(group(row), new ArrayList<>()));
        for (Wanted wanted : open) {
            if (footings.containsKey(wanted.row().id())) {
                together.computeIfAbsent(group(wanted.row()), key -> new ArrayList<>())
                        .add(wanted);
            }
        }
        return together.values().stream().filter(group -> !group.isEmpty()).toList();
    }

    private String group(Row row) {
        return fold.situation()
                .engine()
                .spool(row)
                .map(spool -> "spool " + spool.id())
                .orElse("row " + row.id());
    }

    private Map<Row, Integer> unidentified(Map<String, Footing> footings) {
        Map<Row, Integer> cells = new LinkedHashMap<>();
        for (Wanted wanted : open) {
            if (!footings.containsKey(wanted.row().id())) {
                cells.merge(wanted.row(), wanted.zones().size(), Integer::sum);
            }
        }
        return cells;
    }

    /** How many cells would not surely be seen after all moves. */
    private int unsure(List<List<Entry>> entries, Map<String, Footing> footings) throws Refusal {
        Trial done = now;
        for (List<Entry> move : entries) {
            done = done.with(move);
        }
        Coverage after = coverage.after(done.situation());
        int unsure = 0;
        for (Wanted wanted : open) {
            if (footings.containsKey(wanted.row().id())) {
                for (int zone = 0; zone < Long.SIZE; zone++) {
                    boolean asked = wanted.zones().contains(zone);
                    unsure += asked && !seen(after, wanted, zone) ? 1 : 0;
                }
            }
        }
        return unsure;
    }

    private static boolean seen(Coverage after, Wanted wanted, int zone) {
        State state = after.row(wanted.row().id()).state(wanted.airfoil(), zone);
        return state == State.SEEN || state == State.PART;
    }
}
