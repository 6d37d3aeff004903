package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Tells courses as moves and entries, each going on from where the one before ended. */
final class Telling {

    private final Situation now;
    private final List<Move> moves = new ArrayList<>();
    private final List<List<Entry>> entries = new ArrayList<>();
    private Optional<View> seated;
    private ZoneSet watching;
    private long turning;
    private long drawing;

    Telling(Situation now) {
        this.now = now;
        this.seated = now.seat().map(Seat::view);
        this.watching = now.seat().map(Seat::watching).orElse(ZoneSet.NONE);
    }

    List<Move> moves() {
        return moves;
    }

    List<List<Entry>> entries() {
        return entries;
    }

    /** Steps of shaft turned in all moves. */
    long turning() {
        return turning;
    }

    /** Steps that the scope tip is drawn and fed in all moves. */
    long drawing() {
        return drawing;
    }

    void add(Ground ground, Course course) {
        boolean setBack = ground.walk().setBack();
        long place = ground.walk().start();
        for (int i = 0; i < course.stays().size(); i++) {
            Stay stay = course.stays().get(i);
            View view = ground.views().get(stay.view());
            Footing footing = ground.footings().get(view.row());
            boolean known = footing.exact() || footing.startKnown() && (i == 0 || setBack);
            boolean sits = i == 0 && !setBack && seated.filter(view::equals).isPresent();
            add(ground, stay, place, Run.of(ground.walk(), stay, place, ground.pitch(view), !known), sits);
            place = setBack ? place : place + stay.end();
        }
    }

    private void add(Ground ground, Stay stay, long place, List<Run> runs, boolean sits) {
        View view = ground.views().get(stay.view());
        ZoneSet watch = watched(ground, view, stay.served());
        boolean newly = !sits;
        long at = place;
        for (Run run : runs) {
            // To skip half a turn, its sense would have to be said; nobody skips farther, and watching harms nothing.
            boolean far = ground.walk().rising()
                    && ground.walk().falling()
                    && (run.begin() - at) * (stay.endsUp() ? 1 : -1) >= Steps.TURN / 2;
            long begin = far ? at : run.begin();
            tell(ground, view, newly, watch, at, begin, run);
            newly = false;
            at = run.end();
        }
    }

    private void tell(Ground ground, View view, boolean newly, ZoneSet watch, long at, long begin, Run run) {
        Row row = now.engine().rows().get(view.row());
        Steered steered = new Steered(ground.spool());
        List<Entry> said = new ArrayList<>();
        if (now.among() && entries.isEmpty()) {
            said.add(new Entry.Clear());
        }
        said.addAll(seating(view, newly, watch, now.engine().zonings().get(row.id())));
        if (begin != at) {
            said.add(steered.unwatched(Steps.turn(begin), Steps.turn(begin - at)));
        }
        said.add(steered.watched(Steps.turn(run.end() - begin)));
        entries.add(said);
        boolean drawn = ground.spool().isEmpty();
        long sense = drawn ? -1 : 1;
        long reading = drawn ? Steps.floor(Turn.ofDegrees(view.reference())) - begin : begin;
        long length = Math.abs(begin - at) + Math.abs(run.end() - begin);
        turning += drawn ? 0 : length;
        drawing += drawn ? length : 0;
        moves.add(new Move(
                row,
                view,
                view.stations().stream().findFirst().map(everyblade.spi.Station::id),
                newly,
                Steps.degrees(sense * (begin - at)),
                Steps.degrees(Math.floorMod(reading, Steps.TURN)),
                Steps.degrees(sense * (run.end() - begin)),
                drawn,
                watch,
                closings(ground, run.needs())));
    }

    private List<Entry> seating(View view, boolean newly, ZoneSet watch, Zoning zoning) {
        List<Entry> said = new ArrayList<>();
        if (newly) {
            said.add(new Entry.View(new Said<>(view.id(), 1), Optional.empty()));
            seated = Optional.of(view);
            watching = zoning.all();
        }
        if (!watch.equals(watching)) {
            said.add(new Entry.Watch(WatchWords.of(zoning, watch).stream()
                    .map(word -> new Said<>(word, 1))
                    .toList()));
            watching = watch;
        }
        return said;
    }

    /** What is needed; everything if the view shows no more than that. */
    private ZoneSet watched(Ground ground, View view, BitSet needs) {
        Zoning zoning = now.engine().zonings().get(view.row());
        ZoneSet needed = needs.stream()
                .mapToObj(need -> ground.wanted().get(need).zones())
                .reduce(ZoneSet.NONE, ZoneSet::union);
        ZoneSet shown = DeclaredWindow.of(view, zoning).orElseThrow().zones();
        return shown.minus(needed).isEmpty() ? zoning.all() : needed;
    }

    private static List<Move.Closing> closings(Ground ground, BitSet needs) {
        Map<Integer, ZoneSet> byAirfoil = new TreeMap<>();
        needs.stream()
                .mapToObj(ground.wanted()::get)
                .forEach(wanted -> byAirfoil.merge(wanted.airfoil(), wanted.zones(), ZoneSet::union));
        Map<ZoneSet, List<Integer>> byZones = new LinkedHashMap<>();
        byAirfoil.forEach((airfoil, zones) ->
                byZones.computeIfAbsent(zones, key -> new ArrayList<>()).add(airfoil));
        return byZones.entrySet().stream()
                .map(same -> new Move.Closing(same.getValue(), same.getKey()))
                .toList();
    }
}
