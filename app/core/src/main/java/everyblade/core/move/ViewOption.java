package everyblade.core.move;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Turn;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Showing;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.sight.Reach;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Patches;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A place from which a row can be watched: a station of a view, or a view that declares what it shows.
 *
 * @param view through which
 * @param station where the scope tip stands, if the view has stations
 * @param sight what it shows, where that is computed
 * @param declared what the view declares, where it is not
 * @param patches of an airfoil, where sight is computed
 * @param shows patches of an airfoil that it surely shows if the airfoil passes by; zones where nothing is computed
 * @param wholly of these, patches along an edge of sight that it shows as a whole
 * @param travels whether every airfoil can be brought before it; what is declared counts for every airfoil
 */
record ViewOption(
        View view,
        Optional<String> station,
        Optional<StationSight> sight,
        Optional<DeclaredWindow> declared,
        Optional<Patches> patches,
        BitSet shows,
        BitSet wholly,
        boolean travels) {

    private static final Turn TICK = Turn.ofTicks(1);

    /** All that show anything of a row, in the model's order. */
    static List<ViewOption> of(Coverage coverage, RowCoverage row) {
        Engine engine = coverage.situation().engine();
        List<ViewOption> options = row.reach()
                .map(reach -> stations(
                        engine, reach, coverage.sights().grain(row.row()).patches()))
                .orElseGet(() -> engine.model().views().stream()
                        .filter(view -> view.row().equals(row.row().id()))
                        .flatMap(view -> window(engine, view).stream())
                        .toList());
        return options.stream().filter(option -> !option.shows().isEmpty()).toList();
    }

    private static Optional<ViewOption> window(Engine engine, View view) {
        return DeclaredWindow.of(view, engine.zonings().get(view.row()))
                .map(window -> new ViewOption(
                        view,
                        view.stations().stream().findFirst().map(Station::id),
                        Optional.empty(),
                        Optional.of(window),
                        Optional.empty(),
                        BitSet.valueOf(new long[] {window.zones().bits()}),
                        new BitSet(),
                        true));
    }

    /** Of a scope tip that gravity moves on the way round only what every station of its view shows is sure. */
    private static List<ViewOption> stations(Engine engine, Reach reach, Patches patches) {
        Map<String, ViewOption> options = new LinkedHashMap<>();
        for (Reach.FromStation from : reach.stations()) {
            View view = engine.model().view(from.view()).orElseThrow();
            BitSet shows = new BitSet();
            BitSet wholly = new BitSet();
            StationSight sight = from.sight();
            for (int patch = 0; patch < patches.count(); patch++) {
                int facet = patches.facet(patch);
                shows.set(patch, ofEveryKind(sight, facet, patch - patches.first(facet)));
                wholly.set(patch, shows.get(patch) && wholly(sight, facet, patch - patches.first(facet)));
            }
            boolean sectors = view.stations().stream()
                    .anyMatch(station -> station.forClock().isPresent());
            ViewOption option = new ViewOption(
                    view,
                    Optional.of(from.station()),
                    Optional.of(from.sight()),
                    Optional.empty(),
                    Optional.of(patches),
                    shows,
                    wholly,
                    from.travels());
            if (sectors) {
                options.merge(view.id(), option, (first, other) -> {
                    first.shows().and(other.shows());
                    first.wholly().and(other.wholly());
                    return first;
                });
            } else {
                options.putIfAbsent(view.id() + " " + from.station(), option);
            }
        }
        return new ArrayList<>(options.values());
    }

    private static boolean ofEveryKind(StationSight sight, int facet, int patch) {
        for (int kind = 0; kind < sight.kinds(); kind++) {
            if (!sight.reaches(kind, facet, patch)) {
                return false;
            }
        }
        return true;
    }

    /** Whether every pose shows a patch of each airfoil as a whole. */
    private static boolean wholly(StationSight sight, int facet, int patch) {
        for (int kind = 0; kind < sight.kinds(); kind++) {
            for (int pose = 0; pose < sight.poses(); pose++) {
                if (!sight.showsWhole(kind, facet)
                        || sight.whole(kind, pose, facet, patch).isEmpty()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The parts of these zones. */
    BitSet parts(ZoneSet zones) {
        if (patches.isEmpty()) {
            return BitSet.valueOf(new long[] {zones.bits()});
        }
        BitSet parts = new BitSet(patches.get().count());
        for (int patch = 0; patch < patches.get().count(); patch++) {
            parts.set(patch, zones.contains(patches.get().zone(patch)));
        }
        return parts;
    }

    /** Patches beside these that are none of them; none where nothing is computed. */
    BitSet beside(BitSet parts) {
        BitSet beside = new BitSet();
        patches.ifPresent(all -> parts.stream()
                .forEach(patch -> IntStream.range(0, all.edges(patch))
                        .map(edge -> all.beyond(patch, edge))
                        .filter(beyond -> beyond >= 0 && !parts.get(beyond))
                        .forEach(beside::set)));
        return beside;
    }

    /** What it shows of an airfoil that stands there and cannot be brought anywhere else; clock angle in degrees. */
    BitSet showsAt(double clock) {
        return at(
                clock,
                shows,
                (pose, part) ->
                        sight.orElseThrow().arcs(pose, patches.orElseThrow().facet(part)));
    }

    /** Of that, what it shows as a whole. */
    BitSet whollyAt(double clock) {
        return at(clock, wholly, (pose, part) -> {
            int facet = patches.orElseThrow().facet(part);
            return sight.orElseThrow()
                    .whole(0, pose, facet, part - patches.get().first(facet));
        });
    }

    private BitSet at(double clock, BitSet parts, BiFunction<Integer, Integer, ArcSet> arcs) {
        BitSet shown = new BitSet();
        long tick = Turn.ofDegrees(clock).wrapped().floorTicks();
        parts.stream()
                .filter(part -> IntStream.range(0, sight.orElseThrow().poses())
                        .allMatch(pose -> arcs.apply(pose, part).contains(tick)))
                .forEach(shown::set);
        return shown;
    }

    /**
     * Where an airfoil must pass so that these parts of it are seen.
     *
     * @param whole patches that it shows as a whole, and that are to be seen so
     */
    VisibilityWindow window(BitSet parts, BitSet whole) {
        return sight.map(from -> Showing.of(from, patches.orElseThrow(), parts, whole))
                .map(showing -> VisibilityWindow.allOf(showing.from(), showing.width()))
                .orElseGet(() -> VisibilityWindow.anywhereIn(
                        declared.get().from(), declared.get().to().minus(TICK)));
    }

    /** The facets on which these patches lie. */
    BitSet facets(BitSet parts) {
        BitSet facets = new BitSet();
        parts.stream().map(patches.orElseThrow()::facet).forEach(facets::set);
        return facets;
    }

    /** Of where it is alone: what it shows is large, and options are looked up all the time. */
    @Override
    public int hashCode() {
        return Objects.hash(view.id(), station);
    }

    Optional<Station> stationThere() {
        return view.stations().stream()
                .filter(at -> station.equals(Optional.of(at.id())))
                .findFirst();
    }

    /** Whether the scope tip is there. */
    boolean holds(Optional<Seat> seat) {
        return through(seat) && seat.get().station().map(Station::id).equals(station);
    }

    /** Whether the scope tip, the usual one, is at some station of this view. */
    boolean through(Optional<Seat> seat) {
        return seat.filter(in -> in.view().id().equals(view.id())
                        && !in.out()
                        && in.shut().isEmpty()
                        && in.scopeTip().map(ScopeTip::id).equals(view.scopeTip()))
                .isPresent();
    }

    /** What is to be done to get here from where the scope tip is, minutes; nothing from here. */
    double away(Optional<Seat> seat, Prices prices) {
        return holds(seat) ? 0 : through(seat) ? prices.station() : seating(prices);
    }

    /** The same from another option; from nowhere if that is empty. */
    double awayFrom(Optional<ViewOption> from, Prices prices) {
        if (from.filter(this::equals).isPresent()) {
            return 0;
        }
        return from.filter(other -> other.view().id().equals(view.id())).isPresent()
                ? prices.station()
                : seating(prices);
    }

    /**
     * Minutes to be seated at each of these once, in whatever order, at the least.
     *
     * @param in view that the scope tip is in and need not leave before
     * @param seated whether it is at one of them
     */
    static double seating(List<ViewOption> options, Optional<View> in, boolean seated, Prices prices) {
        Set<String> entered = options.stream().map(option -> option.view().id()).collect(Collectors.toSet());
        in.map(View::id).ifPresent(entered::remove);
        return (prices.view() - prices.station()) * entered.size()
                + prices.station() * (options.size() - (seated ? 1 : 0));
    }

    private double seating(Prices prices) {
        Optional<String> first = view.stations().stream().findFirst().map(Station::id);
        return prices.view() + (station.equals(first) ? 0 : prices.station());
    }
}
