package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.sight.Sights;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.spi.Row;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The cells of one row that were in sight and watched, added up pass by pass. Immutable; {@link #after} goes on from
 * where it stands as long as no identification has moved what came before.
 */
final class RowTally {

    private final Row row;
    private final Map<String, DeclaredWindow> windows;
    private final OptionalDouble leastView;
    /** Legs and sightings that are in. */
    private final List<Leg> legs;

    private final int sightings;
    private final List<Pass> open;
    /** From passes that can grow no more. */
    private final Seen ended;
    /** With the open ones as they stand. */
    final Seen seen;

    /**
     * Cells in sight.
     *
     * @param sure surely
     * @param maybe surely or maybe
     * @param counted maybe, where the count held
     * @param lost maybe, where the count was lost
     * @param brief too briefly
     * @param unwatched maybe, but not being watched
     */
    record Seen(CellBits sure, CellBits maybe, CellBits counted, CellBits lost, CellBits brief, CellBits unwatched) {

        static Seen none(int airfoils, int zones) {
            return new Seen(
                    CellBits.none(airfoils, zones),
                    CellBits.none(airfoils, zones),
                    CellBits.none(airfoils, zones),
                    CellBits.none(airfoils, zones),
                    CellBits.none(airfoils, zones),
                    CellBits.none(airfoils, zones));
        }

        Seen copy() {
            return new Seen(sure.copy(), maybe.copy(), counted.copy(), lost.copy(), brief.copy(), unwatched.copy());
        }
    }

    private RowTally(
            Row row,
            Map<String, DeclaredWindow> windows,
            OptionalDouble leastView,
            List<Leg> legs,
            int sightings,
            List<Pass> open,
            Seen ended,
            Seen seen) {
        this.row = row;
        this.windows = windows;
        this.leastView = leastView;
        this.legs = legs;
        this.sightings = sightings;
        this.open = open;
        this.ended = ended;
        this.seen = seen;
    }

    /** Nothing seen yet. */
    static RowTally start(Row row, int zones, Map<String, DeclaredWindow> windows, OptionalDouble leastView) {
        Seen none = Seen.none(row.count(), zones);
        return new RowTally(row, windows, leastView, List.of(), -1, List.of(), none, none);
    }

    /** With everything that was watched up to this situation, which may also be an earlier or another one. */
    RowTally after(Situation situation) {
        List<Leg> all = situation.legsOf(row);
        int count = situation.sightings(row);
        boolean goesOn = count == sightings
                && all.size() >= legs.size()
                && (legs.isEmpty() || all.get(legs.size() - 1) == legs.get(legs.size() - 1));
        if (goesOn && all.size() == legs.size()) {
            return this;
        }
        SmoothedTrack placing = situation.placing(row);
        Seen sum = goesOn ? ended.copy() : Seen.none(row.count(), zones());
        List<Pass> going = goesOn ? open : List.of();
        for (Leg leg : all.subList(goesOn ? legs.size() : 0, all.size())) {
            Pass.Sorted sorted = Pass.Sorted.after(going, leg);
            for (Pass pass : sorted.ended()) {
                add(sum, pass, placing);
            }
            going = sorted.open();
            passOver(sum, leg, placing);
        }
        Seen now = sum.copy();
        for (Pass pass : going) {
            add(now, pass, placing);
        }
        return new RowTally(row, windows, leastView, all, count, going, sum, now);
    }

    /** What one pass shows by itself. */
    Seen only(Situation situation, Pass pass) {
        Seen sum = Seen.none(row.count(), zones());
        add(sum, pass, situation.placing(row));
        return sum;
    }

    /** What one leg brought into sight of those who watched something else. */
    Seen unwatched(Situation situation, Leg leg) {
        Seen sum = Seen.none(row.count(), zones());
        passOver(sum, leg, situation.placing(row));
        return sum;
    }

    private int zones() {
        return everyblade.core.entry.Zoning.of(row).size();
    }

    private void passOver(Seen sum, Leg leg, SmoothedTrack placing) {
        DeclaredWindow window = windows.get(leg.view());
        ZoneSet zones = window == null ? ZoneSet.NONE : window.zones().minus(leg.watched());
        if (zones.isEmpty()) {
            return;
        }
        for (Sweep sweep : Sweep.of(placing, row, leg.from(), leg.to(), leg.run())) {
            if (!sweep.anywhere()) {
                sum.unwatched().add(sweep.maybe(row, window.from(), window.to()), zones);
            }
        }
    }

    private void add(Seen sum, Pass pass, SmoothedTrack placing) {
        DeclaredWindow window = windows.get(pass.view());
        if (window == null) {
            return;
        }
        ZoneSet zones = pass.zones().intersection(window.zones());
        if (zones.isEmpty()) {
            return;
        }
        double[] angles = {window.from().degrees(), window.to().degrees()};
        Glances glances = Glances.of(pass, row, () -> angles, placing, leastView);
        for (Sweep sweep : Sweep.of(placing, row, pass.from(), pass.to(), pass.run())) {
            IndexRun maybe = sweep.maybe(row, window.from(), window.to());
            glances.add(sum.maybe(), sum.brief(), maybe, zones);
            if (sweep.sure()) {
                IndexRun sure = sweep.surely(row, window.from(), window.to());
                glances.add(sum.sure(), sum.brief(), sure, zones);
                glances.add(sum.counted(), sum.brief(), maybe, zones);
            } else if (!sweep.anywhere()) {
                sum.lost().add(maybe, zones);
            }
        }
    }

    /** Zones that some window shows. */
    ZoneSet shown() {
        return windows.values().stream().map(DeclaredWindow::zones).reduce(ZoneSet.NONE, ZoneSet::union);
    }

    /** The windows through which a row is seen, by view; those of views that are computed do not count. */
    static Map<String, DeclaredWindow> windows(Engine engine, Row row, Sights sights) {
        return engine.model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .filter(view -> !sights.computes(view))
                .filter(view -> view.window().isPresent())
                .collect(java.util.stream.Collectors.toMap(
                        everyblade.spi.View::id,
                        view -> DeclaredWindow.of(view, engine.zonings().get(row.id()))
                                .orElseThrow()));
    }
}
