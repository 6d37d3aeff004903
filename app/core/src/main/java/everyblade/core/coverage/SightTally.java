package everyblade.core.coverage;

import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Situation;
import everyblade.core.turning.Stance;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

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
    /** Added up when it is first asked for: who knows already what comes of it need not add up. */
    private final Once<Sum> sum;

    /**
     * What adds up.
     *
     * @param open passes under way
     * @param ended from passes that can grow no more; what the placement under way surely shows is not in
     * @param under what ended passes of the placement under way show
     * @param seen all of it as it stands
     */
    private record Sum(List<Pass> open, FacetsSeen ended, Optional<PlacementSight> under, FacetsSeen seen) {

        /** Before the first leg. */
        static Sum of(FacetsSeen nothing) {
            return new Sum(List.of(), nothing, Optional.empty(), nothing);
        }
    }

    private SightTally(Row row, Sights sights, OptionalDouble leastView, List<Leg> legs, int sightings, Once<Sum> sum) {
        this.row = row;
        this.sights = sights;
        this.leastView = leastView;
        this.legs = legs;
        this.sightings = sightings;
        this.sum = sum;
    }

    /** Nothing seen yet. */
    static SightTally start(Row row, Sights sights, OptionalDouble leastView) {
        return new SightTally(row, sights, leastView, List.of(), -1, new Once<>(() -> Sum.of(nothing(row, sights))));
    }

    private static FacetsSeen nothing(Row row, Sights sights) {
        return FacetsSeen.none(row.count(), sights.scene(row).facets().count());
    }

    /** With everything that was watched up to this situation, which may also be an earlier or another one. */
    SightTally after(Situation situation, Sights knowing) {
        return knowing == sights || knowing.placesFor(row).equals(sights.placesFor(row))
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
        List<Leg> further = all.subList(goesOn ? legs.size() : 0, all.size());
        Once<Sum> before = goesOn ? sum : new Once<>(() -> Sum.of(nothing(row, sights)));
        return new SightTally(
                row, sights, leastView, all, count, new Once<>(() -> with(before.get(), further, situation)));
    }

    private Sum with(Sum before, List<Leg> further, Situation situation) {
        SightSum adding = sum(situation, before.ended.copy(), before.under.map(PlacementSight::copy));
        List<Pass> going = before.open;
        for (Leg leg : further) {
            Pass.Sorted sorted = Pass.Sorted.after(going, leg);
            sorted.ended().forEach(adding::add);
            going = sorted.open();
            adding.passOver(leg);
        }
        SightSum now = sum(situation, adding.seen().copy(), adding.under().map(PlacementSight::copy));
        going.forEach(now::add);
        return new Sum(going, adding.seen(), adding.under(), now.closed());
    }

    /** All that was seen, as it stands. */
    FacetsSeen seen() {
        return sum.get().seen;
    }

    /** What one pass shows by itself. */
    FacetsSeen only(Situation situation, Pass pass) {
        SightSum sum = sum(situation);
        sum.add(pass);
        return sum.closed();
    }

    /** What one leg brought into sight of those who watched something else. */
    FacetsSeen unwatched(Situation situation, Leg leg) {
        SightSum sum = sum(situation);
        sum.passOver(leg);
        return sum.seen();
    }

    private SightSum sum(Situation situation) {
        return sum(situation, nothing(row, sights), Optional.empty());
    }

    private SightSum sum(Situation situation, FacetsSeen before, Optional<PlacementSight> placed) {
        return new SightSum(row, sights, leastView, situation, before, placed);
    }

    /** How much of a facet of airfoil n was surely seen, mm². */
    double seen(int n, int facet) {
        return sights.grain(row).patches().area(facet, patch -> seen().sure().contains(n, facet, patch));
    }

    /** How much of a facet of airfoil n a station shows that was not surely seen, mm². */
    double unseen(StationSight station, int n, int facet) {
        int kind = station.kind(row, n);
        return sights.grain(row)
                .patches()
                .area(
                        facet,
                        patch -> station.reaches(kind, facet, patch)
                                && !seen().sure().contains(n, facet, patch));
    }

    private static View view(Situation situation, Leg leg) {
        return situation.engine().model().view(leg.view()).orElseThrow();
    }

    /** The stances from which the row was watched. */
    Set<Stance> stances() {
        return legs.stream().map(Leg::stance).collect(Collectors.toSet());
    }
}
