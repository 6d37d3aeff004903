package everyblade.core.sight;

import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What each station of an engine shows, computed when it is asked for and remembered. Gives the same answers whatever was
 * asked before, and from any thread.
 */
public final class Sights {

    /** To be raised whenever the same question would get another answer. */
    private static final String VERSION = "sight 7";

    private final ViewScene engine;
    private final String mark;
    private final Criteria criteria;
    private final SightStore store;
    private final Progress progress;
    private final Rings rings;
    private final NeededPlaces needed;
    private final Map<String, StationSight> stations;
    /** What was asked for where these places are known, without the words that tell it from every other. */
    private final Map<Asked, StationSight> asked = new ConcurrentHashMap<>();

    /**
     * The sights of an engine.
     *
     * @param mark tells this engine model from every other, such as a hash of its file
     * @param criteria what counts as properly in sight; a test target that was looked at comes with each stance
     * @param progress of each single station's computation
     */
    public Sights(ViewScene engine, String mark, Criteria criteria, SightStore store, Progress progress) {
        this.engine = engine;
        this.mark = mark;
        this.criteria = criteria;
        this.store = store;
        this.progress = progress;
        this.rings = new Rings();
        this.needed = new NeededPlaces(rings);
        this.stations = new ConcurrentHashMap<>();
    }

    private Sights(Sights other, ViewScene engine) {
        this.engine = engine;
        this.mark = other.mark;
        this.criteria = other.criteria;
        this.store = other.store;
        this.progress = other.progress;
        this.rings = other.rings;
        this.needed = other.needed;
        this.stations = other.stations;
    }

    /**
     * The same where these places are known: what is remembered serves both.
     *
     * @param places where the first airfoils of rows that stand still are, by row; clock angles of the engine
     */
    public Sights knowing(Map<String, Place> places) {
        return engine.places().equals(places)
                ? this
                : new Sights(this, new ViewScene(engine.model(), engine.files(), engine.vanes(), places));
    }

    /** Tells the engine model from every other. */
    public String mark() {
        return mark;
    }

    /** The places that what is seen of a row depends on. */
    public Map<String, Place> placesFor(Row row) {
        Map<String, Place> used = new TreeMap<>();
        engine.model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .forEach(view -> used.putAll(places(view)));
        return used;
    }

    private Map<String, Place> places(View view) {
        return computes(view) ? needed.of(engine, view) : Map.of();
    }

    /**
     * The rows of which neither maker nor journal says where they stand, though what views show of a row hangs on it: said at
     * any time, it tells what was seen before, too.
     */
    public List<Row> unidentified(Row row) {
        return engine.model().views().stream()
                .filter(view -> view.row().equals(row.id())
                        && computes(view)
                        && tip(view).isPresent())
                .flatMap(view -> needed.unknown(engine, view).stream())
                .distinct()
                .toList();
    }

    /** Whether what a row shows can be computed: it has a shape, and a view of it stations and a scope tip. */
    public boolean computes(Row row) {
        return engine.model().views().stream()
                .anyMatch(view -> view.row().equals(row.id())
                        && computes(view)
                        && tip(view).isPresent());
    }

    /** Whether what a view shows is computed from its stations; else it is what its window declares. */
    public boolean computes(View view) {
        return !view.stations().isEmpty()
                && engine.model().row(view.row()).flatMap(Row::shape).isPresent();
    }

    private Optional<ScopeTip> tip(View view) {
        return view.scopeTip().flatMap(engine.model()::scopeTip);
    }

    /**
     * The scene of a row's ring, its airfoils at their usual stagger.
     *
     * @throws IllegalStateException if its shape gives no surface; models are checked for that before
     */
    public SightScene scene(Row row) {
        return rings.scene(engine, row);
    }

    /**
     * How finely the airfoils of a row are judged, at their usual stagger.
     *
     * @throws IllegalStateException if its shape gives no surface; models are checked for that before
     */
    public Grain grain(Row row) {
        return rings.grain(engine, row);
    }

    /**
     * What one station of a stance shows; empty if the scope tip is not known.
     *
     * @throws CancellationException if {@code progress} says so
     */
    public Optional<StationSight> of(Stance stance, String station) {
        Asked what = new Asked(stance, station);
        StationSight known = asked.get(what);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<StationSight> found = of(stance, station, withProof(stance));
        found.ifPresent(sight -> asked.put(what, sight));
        return found;
    }

    private record Asked(Stance stance, String station) {}

    /** The same however coarse the pixels are. */
    Optional<StationSight> ofAnyDetail(Stance stance, String station) {
        return of(stance, station, criteria.withoutDetail());
    }

    /** Whether a detail is asked for, so that a view may be too coarse. */
    boolean judgesDetail() {
        return criteria.detail().isPresent();
    }

    private Criteria withProof(Stance stance) {
        return stance.proof()
                .filter(proof -> proof.distance() > 0)
                .map(proof -> criteria.withProof(proof.size() / proof.distance()))
                .orElse(criteria);
    }

    private Optional<StationSight> of(Stance stance, String id, Criteria asked) {
        View view = engine.model().view(stance.view()).orElseThrow();
        Optional<ScopeTip> tip = stance.scopeTip().flatMap(engine.model()::scopeTip);
        Station station = station(view, id);
        if (!computes(view) || tip.isEmpty()) {
            return Optional.empty();
        }
        Criteria judged = asked.alwaysFine(Pose.of(station, tip.get())) ? asked.withoutDetail() : asked;
        String key = String.join(
                "\n",
                VERSION,
                mark,
                view.id(),
                id,
                tip.get().id(),
                new TreeMap<>(stance.vanes()).toString(),
                places(view).toString(),
                judged.written());
        StationSight known = stations.get(key);
        if (known == null) {
            known = found(key, view, station, tip.get(), stance.vanes(), judged);
            stations.put(key, known);
        }
        return Optional.of(known);
    }

    private StationSight found(
            String key, View view, Station station, ScopeTip tip, Map<String, String> vanes, Criteria asked) {
        Row row = engine.model().row(view.row()).orElseThrow();
        ViewScene moved = moved(vanes);
        Grain grain = rings.grain(moved, row);
        Optional<StationSight> kept = store.find(key).flatMap(content -> StationBytes.read(content, grain));
        if (kept.isPresent()) {
            return kept.get();
        }
        Pose pose = Pose.of(station, tip);
        List<Pose> family = PoseFamily.of(pose, station.within());
        Setting setting = rings.setting(moved, row, pose, station.within().mm(), tip.diameter() / 2);
        StationSight computed = StationSight.compute(setting, grain, family, asked, progress);
        store.keep(key, computed.written());
        return computed;
    }

    /**
     * What the tolerance of a station costs; empty if the scope tip is not known, or the station is exact.
     *
     * @throws CancellationException if {@code progress} says so
     */
    public Optional<ToleranceCost> cost(Stance stance, String id) {
        View view = engine.model().view(stance.view()).orElseThrow();
        Station station = station(view, id);
        boolean exact = station.within().mm() == 0 && station.within().deg() == 0;
        return exact
                ? Optional.empty()
                : of(stance, id).map(shown -> {
                    ScopeTip tip =
                            stance.scopeTip().flatMap(engine.model()::scopeTip).orElseThrow();
                    Row row = engine.model().row(view.row()).orElseThrow();
                    Pose pose = Pose.of(station, tip);
                    Setting setting = rings.setting(
                            moved(stance.vanes()), row, pose, station.within().mm(), tip.diameter() / 2);
                    return ToleranceCost.of(setting, pose, station.within(), shown, withProof(stance), progress);
                });
    }

    private static Station station(View view, String id) {
        return view.stations().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private ViewScene moved(Map<String, String> vanes) {
        return new ViewScene(engine.model(), engine.files(), vanes, engine.places());
    }

    /** The usual stances from which a row can be looked at: each of its computed views with its own scope tip. */
    List<Stance> stances(Row row, Map<String, String> vanes, Optional<Stance.Proof> proof) {
        return engine.model().views().stream()
                .filter(view -> view.row().equals(row.id()) && computes(view))
                .map(view -> new Stance(
                        view.id(),
                        view.stations().stream().map(Station::id).toList(),
                        false,
                        view.scopeTip(),
                        vanes,
                        proof))
                .toList();
    }

    /** Whether the scope tip of every view of a row can be brought to every airfoil. */
    public boolean travels(Row row) {
        return engine.model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .allMatch(view -> travels(view.id()));
    }

    /** Whether the scope tip of a view can be brought to every airfoil, or sees those alone that stand before it. */
    boolean travels(String view) {
        View of = engine.model().view(view).orElseThrow();
        return of.travels() || engine.model().row(of.row()).orElseThrow().kind() == RowKind.ROTOR;
    }
}
