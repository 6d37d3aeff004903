package everyblade.core.coverage;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.IndexRun;
import everyblade.core.angle.Turn;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Mesh;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Placing;
import everyblade.core.turning.Situation;
import everyblade.core.turning.Stance;
import everyblade.core.turning.Trail;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The facets of one row that were in sight and watched, added up pass by pass and placement by placement. Immutable;
 * {@link #after} goes on from where it stands as long as no identification has moved what came before.
 */
final class SightTally {

    private final Row row;
    private final Sights sights;
    private final OptionalDouble leastView;
    /** Legs and sightings that are in. */
    private final List<Leg> legs;

    private final int sightings;
    private final List<Pass> open;
    /** From passes that can grow no more; what the placement under way surely shows is not in. */
    private final FacetsSeen ended;
    /** What ended passes of the placement under way show. */
    private final Optional<Placed> under;
    /** All of it as it stands. */
    final FacetsSeen seen;

    private SightTally(
            Row row,
            Sights sights,
            OptionalDouble leastView,
            List<Leg> legs,
            int sightings,
            List<Pass> open,
            FacetsSeen ended,
            Optional<Placed> under,
            FacetsSeen seen) {
        this.row = row;
        this.sights = sights;
        this.leastView = leastView;
        this.legs = legs;
        this.sightings = sightings;
        this.open = open;
        this.ended = ended;
        this.under = under;
        this.seen = seen;
    }

    /** Nothing seen yet. */
    static SightTally start(Row row, Sights sights, OptionalDouble leastView) {
        FacetsSeen none =
                FacetsSeen.none(row.count(), sights.scene(row).facets().count());
        return new SightTally(row, sights, leastView, List.of(), -1, List.of(), none, Optional.empty(), none);
    }

    /** With everything that was watched up to this situation, which may also be an earlier or another one. */
    SightTally after(Situation situation, Sights knowing) {
        return knowing.placesFor(row).equals(sights.placesFor(row))
                ? after(situation)
                : start(row, knowing, leastView).after(situation);
    }

    private SightTally after(Situation situation) {
        List<Leg> all = situation.legsOf(row).stream()
                .filter(leg -> sights.computes(view(situation, leg)))
                .toList();
        int count = situation.sightings(row);
        boolean goesOn = count == sightings
                && all.size() >= legs.size()
                && (legs.isEmpty() || all.get(legs.size() - 1) == legs.get(legs.size() - 1));
        if (goesOn && all.size() == legs.size()) {
            return this;
        }
        Sum sum = goesOn ? new Sum(situation, ended.copy(), under.map(Placed::copy)) : sum(situation);
        List<Pass> going = goesOn ? open : List.of();
        for (Leg leg : all.subList(goesOn ? legs.size() : 0, all.size())) {
            Pass.Sorted sorted = Pass.Sorted.after(going, leg);
            sorted.ended().forEach(sum::add);
            going = sorted.open();
            sum.passOver(leg);
        }
        Sum now = new Sum(situation, sum.seen.copy(), sum.under.map(Placed::copy));
        going.forEach(now::add);
        now.under.ifPresent(placed -> placed.addTo(now.seen));
        return new SightTally(row, sights, leastView, all, count, going, sum.seen, sum.under, now.seen);
    }

    /** What one pass shows by itself. */
    FacetsSeen only(Situation situation, Pass pass) {
        Sum sum = sum(situation);
        sum.add(pass);
        sum.under.ifPresent(placed -> placed.addTo(sum.seen));
        return sum.seen;
    }

    /** What one leg brought into sight of those who watched something else. */
    FacetsSeen unwatched(Situation situation, Leg leg) {
        Sum sum = sum(situation);
        sum.passOver(leg);
        return sum.seen;
    }

    private Sum sum(Situation situation) {
        return new Sum(
                situation,
                FacetsSeen.none(row.count(), sights.scene(row).facets().count()),
                Optional.empty());
    }

    /** Whether all of a facet of airfoil n was surely seen. */
    boolean sees(int n, int facet) {
        int patches = seen.sure().whole(facet) ? 1 : sights.grain(row).patches().count(facet);
        return IntStream.range(0, patches).allMatch(patch -> seen.sure().contains(n, facet, patch));
    }

    /** How much of a facet of airfoil n a station shows that was not surely seen, mm². */
    double unseen(StationSight station, int n, int facet) {
        int kind = station.kind(row, n);
        return sights.grain(row)
                .patches()
                .area(
                        facet,
                        patch -> station.reaches(kind, facet, patch)
                                && !seen.sure().contains(n, facet, patch));
    }

    private static View view(Situation situation, Leg leg) {
        return situation.engine().model().view(leg.view()).orElseThrow();
    }

    /** The stances from which the row was watched. */
    Set<Stance> stances() {
        return legs.stream().map(Leg::stance).collect(Collectors.toSet());
    }

    /** Under way: passes go in, in the order of their placements. */
    private final class Sum {
        private final Situation situation;
        private final Placing placing;
        private final FacetsSeen seen;
        private Optional<Placed> under;

        Sum(Situation situation, FacetsSeen seen, Optional<Placed> under) {
            this.situation = situation;
            this.placing = situation.placing(row);
            this.seen = seen;
            this.under = under;
        }

        void add(Pass pass) {
            Leg first = pass.legs().get(0);
            View view = view(situation, first);
            List<Held> held = Held.of(placing, row, view, pass);
            Placed placed = placed(first, view);
            for (Held part : held) {
                sights.of(first.stance(), part.station()).ifPresent(sight -> add(pass, part, sight, placed));
            }
        }

        /** What a leg brought into sight, seen from exactly the station, while something else was being watched. */
        void passOver(Leg leg) {
            ZoneSet zones = sights.scene(row).zoning().all().minus(leg.watched());
            View view = view(situation, leg);
            if (zones.isEmpty() || !sights.computes(view)) {
                return;
            }
            Mesh airfoil = sights.scene(row).row().airfoil();
            Pass pass = new Pass(zones, Trail.<Leg>empty().with(leg));
            for (Held part : Held.of(placing, row, view, pass)) {
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
                for (Arc arc : sight.arcs(kind, 0, facet, patch).arcs()) {
                    Turn low = Turn.ofTicks(arc.start());
                    Turn high = Turn.ofTicks(arc.start() + arc.length());
                    sweeps.stream()
                            .filter(sweep -> !sweep.anywhere())
                            .flatMap(sweep -> ofKind(sweep.maybe(row, low, high), sight, kind).stream())
                            .forEach(run -> seen.unwatched().add(run, facet));
                }
            }
        }

        private Placed placed(Leg first, View view) {
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
                under = Optional.of(Placed.start(
                        first, poses, row.count(), sights.scene(row).facets().count()));
            }
            return under.get();
        }

        private void add(Pass pass, Held part, StationSight sight, Placed placed) {
            Mesh airfoil = sights.scene(row).row().airfoil();
            for (int facet = 0; facet < sight.facets(); facet++) {
                if (pass.zones().contains(airfoil.zone(facet)) && !seen.sure().isFull(facet)) {
                    for (int kind = 0; kind < sight.kinds(); kind++) {
                        add(pass, part, sight, placed, kind, facet);
                    }
                }
            }
        }

        private void add(Pass pass, Held part, StationSight sight, Placed placed, int kind, int facet) {
            Glances glances = Glances.of(pass, row, degrees(sight.arcs(kind, 0, facet)), placing, leastView);
            for (Sweep sweep : part.sweeps()) {
                for (int pose = 0; pose < placed.poses(); pose++) {
                    if (tellsMore(sweep, facet)) {
                        addMaybe(sight, kind, pose % sight.poses(), facet, sweep, glances);
                    }
                    PatchBits sure = placed.sure(part.slot(), pose);
                    if (sweep.sure() && !sure.isFull(facet)) {
                        addSure(sight, kind, pose, facet, sweep, glances, sure);
                    }
                }
            }
        }

        /** Whether a sweep may add anything to what is maybe seen of a facet. */
        private boolean tellsMore(Sweep sweep, int facet) {
            return !seen.maybe().isFull(facet)
                    || sweep.sure()
                            && !(seen.placed().isFull(facet) && seen.counted().isFull(facet))
                    || !sweep.sure() && !sweep.anywhere() && !seen.lost().isFull(facet);
        }

        private void addMaybe(StationSight sight, int kind, int pose, int facet, Sweep sweep, Glances glances) {
            for (Arc arc : sight.arcs(kind, pose, facet).arcs()) {
                Turn low = Turn.ofTicks(arc.start());
                Turn high = Turn.ofTicks(arc.start() + arc.length());
                ofKind(sweep.maybe(row, low, high), sight, kind).forEach(run -> addMaybe(run, facet, sweep, glances));
                ofKind(sweep.surely(row, low, high), sight, kind).stream()
                        .flatMap(of -> glances.longEnough(of).stream())
                        .forEach(run -> seen.placed().add(run, facet));
            }
        }

        private void addSure(
                StationSight sight, int kind, int pose, int facet, Sweep sweep, Glances glances, PatchBits sure) {
            int own = pose % sight.poses();
            int patches = sight.patches(facet);
            for (int patch = 0; patch < patches; patch++) {
                if (sure.isFull(facet, patch)) {
                    continue;
                }
                // Wherever the ends are, a whole turn passes them.
                long slack = sweep.length().compareTo(Turn.FULL) < 0 ? sight.slack(kind, own, facet, patch) : 0;
                for (Arc arc : sight.arcs(kind, own, facet, patch).arcs()) {
                    Turn low = Turn.ofTicks(arc.start() + slack);
                    Turn high = Turn.ofTicks(arc.start() + arc.length() - slack);
                    for (IndexRun of : ofKind(sweep.surely(row, low, high), sight, kind)) {
                        for (IndexRun run : glances.longEnough(of)) {
                            sure.add(run, facet, patch, patches);
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
    }

    private static double[] degrees(ArcSet arcs) {
        double[] ends = new double[2 * arcs.arcs().size()];
        int end = 0;
        for (Arc arc : arcs.arcs()) {
            ends[end++] = (double) arc.start() / Circle.TICKS_PER_DEGREE;
            ends[end++] = (double) (arc.start() + arc.length()) / Circle.TICKS_PER_DEGREE;
        }
        return ends;
    }
}
