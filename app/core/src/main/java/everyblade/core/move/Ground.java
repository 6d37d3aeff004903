package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The walk of one shaft, or round one row that stands still, and what its numbers mean in the engine.
 *
 * @param spool that turns; empty for a row that stands still
 * @param walk the bare problem
 * @param views by their index in the walk
 * @param wanted by the index of their need in the walk
 * @param footings by row id
 * @param reading of the shaft at which the walk begins
 */
record Ground(
        Optional<Spool> spool,
        Walk walk,
        List<View> views,
        List<Wanted> wanted,
        Map<String, Footing> footings,
        Turn reading) {

    private static final Turn TICK = Turn.ofTicks(1);

    /** The zones of an airfoil that are shown by the same views. */
    private record Alike(Row row, int airfoil, List<Integer> views) {}

    /**
     * The ground of some wanted zones of rows that turn together, or of one that stands still; every row's footing is
     * known.
     */
    static Ground of(Trial now, Optional<Spool> spool, List<Wanted> open, Map<String, Footing> footings)
            throws Refusal {
        Engine engine = now.situation().engine();
        List<View> views = engine.model().views().stream()
                .filter(view -> footings.containsKey(view.row()))
                .filter(view -> DeclaredWindow.of(view, engine.zonings().get(view.row()))
                        .isPresent())
                .toList();
        List<Wanted> wanted = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        alike(engine, views, open).forEach((alike, zones) -> {
            wanted.add(new Wanted(alike.row(), alike.airfoil(), zones));
            needs.add(new Need(alike.views().stream()
                    .map(view -> chance(
                            engine,
                            view,
                            views.get(view),
                            alike,
                            footings.get(alike.row().id())))
                    .toList()));
        });
        Turn reading = footings.values().iterator().next().reading();
        Set<Direction> ways = Footing.ways(now.situation(), spool);
        Walk walk = new Walk(
                ways.contains(Direction.CW) ? Steps.ceil(reading) : Steps.floor(reading),
                ways.contains(Direction.CW),
                ways.contains(Direction.CCW),
                spool.isEmpty(),
                seated(now, spool, views),
                views.size(),
                needs);
        return new Ground(spool, walk, views, wanted, Map.copyOf(footings), reading);
    }

    private static OptionalInt seated(Trial now, Optional<Spool> spool, List<View> views) {
        return spool.isEmpty()
                ? OptionalInt.empty()
                : now.situation().seat().stream()
                        .mapToInt(seat -> views.indexOf(seat.view()))
                        .filter(view -> view >= 0)
                        .findFirst();
    }

    private static Map<Alike, ZoneSet> alike(Engine engine, List<View> views, List<Wanted> open) {
        Map<Alike, ZoneSet> alike = new LinkedHashMap<>();
        for (Wanted one : open) {
            Map<Integer, ZoneSet> shown = new HashMap<>();
            for (int view = 0; view < views.size(); view++) {
                if (views.get(view).row().equals(one.row().id())) {
                    shown.put(view, window(engine, views.get(view)).zones());
                }
            }
            for (int zone = 0; zone < Long.SIZE; zone++) {
                if (one.zones().contains(zone)) {
                    int asked = zone;
                    List<Integer> showing = shown.keySet().stream()
                            .filter(view -> shown.get(view).contains(asked))
                            .sorted()
                            .toList();
                    alike.merge(new Alike(one.row(), one.airfoil(), showing), new ZoneSet(1L << zone), ZoneSet::union);
                }
            }
        }
        return alike;
    }

    private static DeclaredWindow window(Engine engine, View view) {
        return DeclaredWindow.of(view, engine.zonings().get(view.row())).orElseThrow();
    }

    /** When an airfoil is in a view's window, told by the reading of the shaft. */
    private static Chance chance(Engine engine, int number, View view, Alike alike, Footing footing) {
        DeclaredWindow window = window(engine, view);
        Turn zero = Engine.fromFirst(alike.row(), alike.airfoil()).plus(footing.offset());
        Turn first = window.from().minus(zero);
        long from = Steps.ceil(first);
        long to = Steps.floor(window.to().minus(TICK).minus(zero));
        if (window.to().minus(window.from()).equals(Turn.FULL)) {
            return new Chance(number, from, from + Steps.TURN, from, from + Steps.TURN, true);
        }
        // What cannot be typed exactly is rounded, by less than a step.
        long slack = footing.exact() && Steps.exact(footing.reading()) ? 0 : 1;
        return new Chance(
                number,
                from,
                to,
                from + Steps.ceil(footing.below()) + slack,
                to - Steps.ceil(footing.above()) - slack,
                atStart(footing, first, window.to().minus(window.from())));
    }

    private static boolean atStart(Footing footing, Turn first, Turn width) {
        Turn below = Turn.ofDegrees(footing.startBelow());
        Turn doubt = below.plus(Turn.ofDegrees(footing.startAbove()));
        Turn least = footing.reading().minus(below).minus(first).wrapped();
        return least.plus(doubt).compareTo(width) < 0;
    }

    /** Pitch of the row that a view shows, steps. */
    long pitch(View view) {
        return wanted.stream()
                .map(Wanted::row)
                .filter(row -> row.id().equals(view.row()))
                .mapToLong(row -> Steps.TURN / row.count())
                .findFirst()
                .orElse(0);
    }
}
