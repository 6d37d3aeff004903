package everyblade.core.sight;

import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
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
    private static final String VERSION = "sight 1";

    private final ViewScene engine;
    private final String mark;
    private final Criteria criteria;
    private final SightStore store;
    private final Progress progress;
    private final Map<String, Optional<Scene>> rings = new ConcurrentHashMap<>();
    private final Map<String, StationSight> stations = new ConcurrentHashMap<>();

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
    public Scene scene(Row row) {
        return ring(engine, row).orElseThrow(() -> new IllegalStateException("row " + row.id() + " has no shape"));
    }

    private Optional<Scene> ring(ViewScene moved, Row row) {
        return rings.computeIfAbsent(row.id() + " " + new TreeMap<>(moved.vanes()), key -> {
            try {
                return moved.ring(row);
            } catch (UnusableShape unusable) {
                throw new IllegalStateException(unusable.getMessage(), unusable);
            }
        });
    }

    /**
     * What one station of a stance shows; empty if the scope tip is not known.
     *
     * @throws CancellationException if {@code progress} says so
     */
    public Optional<StationSight> of(Stance stance, String station) {
        return of(stance, station, withProof(stance));
    }

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
        Station station = view.stations().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
        if (!computes(view) || tip.isEmpty()) {
            return Optional.empty();
        }
        String key = String.join(
                "\n",
                VERSION,
                mark,
                view.id(),
                id,
                tip.get().id(),
                new TreeMap<>(stance.vanes()).toString(),
                asked.written());
        StationSight known = stations.get(key);
        if (known == null) {
            known = found(key, view, station, tip.get(), stance.vanes(), asked);
            stations.put(key, known);
        }
        return Optional.of(known);
    }

    private StationSight found(
            String key, View view, Station station, ScopeTip tip, Map<String, String> vanes, Criteria asked) {
        Row row = engine.model().row(view.row()).orElseThrow();
        Mesh airfoil = scene(row).row().airfoil();
        Optional<StationSight> kept =
                store.find(key).flatMap(content -> StationSight.read(content, airfoil.faceCount()));
        if (kept.isPresent()) {
            return kept.get();
        }
        Pose pose = Pose.of(station, tip);
        List<Pose> family = PoseFamily.of(pose, station.within());
        StationSight computed = StationSight.of(
                SightArcs.compute(scene(row, pose, station.within().mm(), vanes), family, asked, progress));
        store.keep(key, computed.written());
        return computed;
    }

    /** The scene as a scope tip at a pose sees it. */
    private Scene scene(Row row, Pose pose, double reach, Map<String, String> vanes) {
        ViewScene moved = new ViewScene(engine.model(), engine.files(), vanes);
        Scene ring = ring(moved, row).orElseThrow();
        try {
            return moved.with(ring, row, pose, reach);
        } catch (UnusableShape unusable) {
            throw new IllegalStateException(unusable.getMessage(), unusable);
        }
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

    /** Whether the scope tip of a view can be brought to every airfoil, or sees those alone that stand before it. */
    boolean travels(String view) {
        View of = engine.model().view(view).orElseThrow();
        return of.travels() || engine.model().row(of.row()).orElseThrow().kind() == RowKind.ROTOR;
    }
}
