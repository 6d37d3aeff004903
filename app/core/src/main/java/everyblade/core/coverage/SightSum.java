package everyblade.core.coverage;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.IndexRun;
import everyblade.core.angle.Turn;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Mesh;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.core.turning.Trail;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The facets of one row that were in sight and watched, while they are being added up: passes go in, in the order of their
 * placements. Changes with each; used by one thread.
 */
final class SightSum {

    private final Row row;
    private final Sights sights;
    private final OptionalDouble leastView;
    private final Situation situation;
    private final SmoothedTrack placing;
    private final FacetsSeen seen;
    private Optional<PlacementSight> under;

    /**
     * Goes on from what was seen.
     *
     * @param seen without the placement under way; is added to
     * @param under that placement, is added to
     */
    SightSum(
            Row row,
            Sights sights,
            OptionalDouble leastView,
            Situation situation,
            FacetsSeen seen,
            Optional<PlacementSight> under) {
        this.row = row;
        this.sights = sights;
        this.leastView = leastView;
        this.situation = situation;
        this.placing = situation.placing(row);
        this.seen = seen;
        this.under = under;
    }

    /** What was seen, without what the placement under way surely shows. */
    FacetsSeen seen() {
        return seen;
    }

    /** The placement under way; empty before the first pass. */
    Optional<PlacementSight> under() {
        return under;
    }

    /** All that was seen; nothing goes in after it. */
    FacetsSeen closed() {
        under.ifPresent(placed -> placed.addTo(seen));
        return seen;
    }

    void add(Pass pass) {
        Leg first = pass.legs().get(0);
        View view = view(first);
        List<StationSweep> held = StationSweep.of(placing, row, view, pass);
        PlacementSight placed = placed(first, view);
        for (StationSweep part : held) {
            sights.of(first.stance(), part.station()).ifPresent(sight -> add(pass, part, sight, placed));
        }
    }

    /** What a leg brought into sight, seen from exactly the station, while something else was being watched. */
    void passOver(Leg leg) {
        ZoneSet zones = sights.scene(row).zoning().all().minus(leg.watched());
        View view = view(leg);
        if (zones.isEmpty() || !sights.computes(view)) {
            return;
        }
        Mesh airfoil = sights.scene(row).row().airfoil();
        Pass pass = new Pass(zones, Trail.<Leg>empty().with(leg));
        for (StationSweep part : StationSweep.of(placing, row, view, pass)) {
            sights.of(leg.stance(), part.station()).ifPresent(sight -> {
                for (int facet = 0; facet < sight.facets(); facet++) {
                    boolean tells = zones.contains(airfoil.zone(facet))
                            && !seen.sure().isFull(facet)
                            && !seen.unwatched().isFull(facet);
                    for (int kind = 0; tells && kind < sight.kinds(); kind++) {
                        passOver(sight, kind, facet, part.sweeps());
                    }
                }
            });
        }
    }

    private void passOver(StationSight sight, int kind, int facet, List<Sweep> sweeps) {
        for (int patch = 0; patch < sight.patches(facet); patch++) {
            ArcSet arcs = sight.arcs(kind, 0, facet, patch);
            for (int arc = 0; arc < arcs.size(); arc++) {
                Turn low = Turn.ofTicks(arcs.from(arc));
                Turn high = Turn.ofTicks(arcs.to(arc));
                sweeps.stream()
                        .filter(sweep -> !sweep.anywhere())
                        .flatMap(sweep -> ofKind(sweep.maybe(row, low, high), sight, kind).stream())
                        .forEach(run -> seen.unwatched().add(run, facet));
            }
        }
    }

    private PlacementSight placed(Leg first, View view) {
        if (under.isEmpty() || under.get().placement() != first.placement()) {
            under.ifPresent(before -> before.addTo(seen));
            Set<String> stations = new TreeSet<>(first.stance().stations());
            view.stations().forEach(station -> {
                if (station.forClock().isPresent()) {
                    stations.add(station.id());
                }
            });
            int poses = stations.stream()
                    .flatMap(station -> sights.of(first.stance(), station).stream())
                    .mapToInt(StationSight::poses)
                    .max()
                    .orElse(1);
            under = Optional.of(PlacementSight.start(
                    first, poses, row.count(), sights.scene(row).facets().count()));
        }
        return under.get();
    }

    private void add(Pass pass, StationSweep part, StationSight sight, PlacementSight placed) {
        Mesh airfoil = sights.scene(row).row().airfoil();
        for (int facet = 0; facet < sight.facets(); facet++) {
            if (pass.zones().contains(airfoil.zone(facet)) && !seen.sure().isFull(facet)) {
                for (int kind = 0; kind < sight.kinds(); kind++) {
                    add(pass, part, sight, placed, kind, facet);
                }
            }
        }
    }

    private void add(Pass pass, StationSweep part, StationSight sight, PlacementSight placed, int kind, int facet) {
        Glances glances = Glances.of(pass, row, () -> degrees(sight.arcs(kind, 0, facet)), placing, leastView);
        for (Sweep sweep : part.sweeps()) {
            for (int pose = 0; pose < placed.poses() && tellsMore(sweep, facet); pose++) {
                addMaybe(sight, kind, pose % sight.poses(), facet, sweep, glances);
            }
            int patches = sight.patches(facet);
            for (int patch = 0; sweep.sure() && patch < patches; patch++) {
                int place = patch;
                // What some pose never shows is not surely seen, unless another station takes over on the way.
                if (seen.sure().isFull(facet, patch, patches)
                        || placed.fromEveryPose().isFull(facet, patch, patches)
                        || !part.inTurn() && !sight.reaches(kind, facet, patch)) {
                    continue;
                }
                if (!placed.moved() && leastView.isEmpty() && passesAll(sight, kind, facet, patch, sweep)) {
                    ofKind(new IndexRun(0, row.count()), sight, kind)
                            .forEach(run -> placed.fromEveryPose().add(run, facet, place, patches));
                } else {
                    for (int pose = 0; pose < placed.poses(); pose++) {
                        addSure(sight, kind, pose, facet, patch, sweep, glances, placed.sure(part.slot(), pose));
                    }
                }
            }
            if (sweep.sure() && sight.showsWhole(kind, facet)) {
                for (int pose = 0; pose < placed.poses(); pose++) {
                    addWhole(sight, kind, pose, facet, sweep, glances, placed.whole(part.slot(), pose));
                }
            }
        }
    }

    /** Whether a sweep goes so far that from every pose each airfoil surely came by, wherever it began. */
    private static boolean passesAll(StationSight sight, int kind, int facet, int patch, Sweep sweep) {
        long rest = Turn.FULL.minus(sweep.length()).ceilTicks();
        for (int pose = 0; pose < sight.poses(); pose++) {
            ArcSet arcs = sight.arcs(kind, pose, facet, patch);
            long shorter = sight.shorter(kind, pose, facet, patch);
            boolean any = false;
            for (int arc = 0; arc < arcs.size() && !any; arc++) {
                any = arcs.to(arc) - arcs.from(arc) - shorter >= rest;
            }
            if (!any) {
                return false;
            }
        }
        return true;
    }

    /** Whether a sweep may add anything to what is maybe seen of a facet. */
    private boolean tellsMore(Sweep sweep, int facet) {
        return !seen.maybe().isFull(facet)
                || sweep.sure()
                        && !(seen.placed().isFull(facet) && seen.counted().isFull(facet))
                || !sweep.sure() && !sweep.anywhere() && !seen.lost().isFull(facet);
    }

    private void addMaybe(StationSight sight, int kind, int pose, int facet, Sweep sweep, Glances glances) {
        ArcSet arcs = sight.arcs(kind, pose, facet);
        for (int arc = 0; arc < arcs.size(); arc++) {
            Turn low = Turn.ofTicks(arcs.from(arc));
            Turn high = Turn.ofTicks(arcs.to(arc));
            ofKind(sweep.maybe(row, low, high), sight, kind).forEach(run -> addMaybe(run, facet, sweep, glances));
            ofKind(sweep.surely(row, low, high), sight, kind).stream()
                    .flatMap(of -> glances.longEnough(of).stream())
                    .forEach(run -> seen.placed().add(run, facet));
        }
    }

    private void addSure(
            StationSight sight,
            int kind,
            int pose,
            int facet,
            int patch,
            Sweep sweep,
            Glances glances,
            PatchBits sure) {
        if (sure.isFull(facet, patch, sight.patches(facet))) {
            return;
        }
        int own = pose % sight.poses();
        // Wherever the ends are, a whole turn passes them.
        boolean whole = sweep.length().compareTo(Turn.FULL) >= 0;
        long before = whole ? 0 : sight.startSlack(kind, own, facet, patch);
        long after = whole ? 0 : sight.endSlack(kind, own, facet, patch);
        ArcSet arcs = sight.arcs(kind, own, facet, patch);
        for (int arc = 0; arc < arcs.size(); arc++) {
            Turn low = Turn.ofTicks(arcs.from(arc) + before);
            Turn high = Turn.ofTicks(arcs.to(arc) - after);
            Turn least = Turn.ofTicks(arcs.to(arc) - arcs.from(arc) - sight.shorter(kind, own, facet, patch));
            for (IndexRun of : ofKind(sweep.surely(row, low, high, least), sight, kind)) {
                for (IndexRun run : glances.longEnough(of)) {
                    sure.add(run, facet, patch, sight.patches(facet));
                }
            }
        }
    }

    private void addWhole(
            StationSight sight, int kind, int pose, int facet, Sweep sweep, Glances glances, PatchBits whole) {
        int patches = sights.grain(row).patches().count(facet);
        for (int patch = 0; patch < patches; patch++) {
            if (!whole.isFull(facet, patch, patches)) {
                ArcSet arcs = sight.whole(kind, pose % sight.poses(), facet, patch);
                for (int arc = 0; arc < arcs.size(); arc++) {
                    Turn low = Turn.ofTicks(arcs.from(arc));
                    Turn high = Turn.ofTicks(arcs.to(arc));
                    for (IndexRun of : ofKind(sweep.surely(row, low, high), sight, kind)) {
                        for (IndexRun run : glances.longEnough(of)) {
                            whole.add(run, facet, patch, patches);
                        }
                    }
                }
            }
        }
    }

    private void addMaybe(IndexRun airfoils, int facet, Sweep sweep, Glances glances) {
        glances.longEnough(airfoils).forEach(run -> seen.maybe().add(run, facet));
        glances.tooBrief(airfoils).forEach(run -> seen.brief().add(run, facet));
        if (sweep.sure()) {
            glances.longEnough(airfoils).forEach(run -> seen.counted().add(run, facet));
        } else if (!sweep.anywhere()) {
            seen.lost().add(airfoils, facet);
        }
    }

    /** Of a run of airfoils those of a kind. */
    private List<IndexRun> ofKind(IndexRun run, StationSight sight, int kind) {
        return sight.kinds() == 1
                ? List.of(run)
                : IntStream.range(0, run.length())
                        .map(i -> (run.first() + i) % row.count())
                        .filter(index -> sight.kind(row, index + 1) == kind)
                        .mapToObj(index -> new IndexRun(index, 1))
                        .toList();
    }

    private View view(Leg leg) {
        return situation.engine().model().view(leg.view()).orElseThrow();
    }

    private static double[] degrees(ArcSet arcs) {
        double[] ends = new double[2 * arcs.size()];
        for (int arc = 0; arc < arcs.size(); arc++) {
            ends[2 * arc] = (double) arcs.from(arc) / Circle.TICKS_PER_DEGREE;
            ends[2 * arc + 1] = (double) arcs.to(arc) / Circle.TICKS_PER_DEGREE;
        }
        return ends;
    }
}
