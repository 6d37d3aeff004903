package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Reach;
import everyblade.core.sight.Reach.FromStation;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Patches;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Which patches of which airfoils of a row some view can be brought to show. */
final class Within {

    private final Row row;
    private final Patches patches;
    /** Where airfoil 1 stands, if that is known. */
    private final Optional<Turn> first;

    private final Function<FromStation, StationSight> sightOf;

    private final boolean[] ofAll;
    private final boolean[] ofSome;
    private final boolean[] whole;
    /** Stations that show some airfoils alone: of a kind, or those that stand before them. */
    private final List<FromStation> some = new ArrayList<>();

    private Within(
            Row row, Patches patches, Optional<Turn> first, Reach reach, Function<FromStation, StationSight> sightOf) {
        this.row = row;
        this.patches = patches;
        this.first = first;
        this.sightOf = sightOf;
        this.ofAll = new boolean[patches.count()];
        this.ofSome = new boolean[patches.count()];
        this.whole = new boolean[patches.facetCount()];
        for (int facet = 0; facet < whole.length; facet++) {
            int one = facet;
            whole[facet] = reach.stations().stream()
                    .noneMatch(from -> sightOf.apply(from).divides(one));
        }
        for (FromStation from : reach.stations()) {
            StationSight sight = sightOf.apply(from);
            boolean everywhere = from.travels() || first.isEmpty();
            for (int patch = 0; patch < patches.count(); patch++) {
                int facet = patches.facet(patch);
                int ofKinds = 0;
                for (int kind = 0; kind < sight.kinds(); kind++) {
                    ofKinds += sight.reaches(kind, facet, patch - patches.first(facet)) ? 1 : 0;
                }
                ofSome[patch] |= ofKinds > 0;
                ofAll[patch] |= everywhere && ofKinds == sight.kinds();
            }
            if (!everywhere || sight.kinds() > 1) {
                some.add(from);
            }
        }
    }

    /**
     * What views can be brought to show.
     *
     * @param first where airfoil 1 stands, if that is known and matters
     * @param sightOf what of each station is asked
     */
    static Within of(
            Row row, Patches patches, Optional<Turn> first, Reach reach, Function<FromStation, StationSight> sightOf) {
        return new Within(row, patches, first, reach, sightOf);
    }

    /** Where airfoil 1 of a row stands, if that is known. */
    static Optional<Turn> first(Situation situation, Row row) {
        Optional<Place> place = situation.counting(row)
                ? situation
                        .placing(row)
                        .at(row.id(), row.rock(), situation.stop(row))
                        .place()
                : Optional.empty();
        // A static row's angle is kept relative to the scope tip, which may have been drawn round since.
        return place.map(at -> at.best().minus(situation.reading(row)));
    }

    /** Whether all patches of a facet are alike. */
    boolean whole(int facet) {
        return whole[facet];
    }

    /** The airfoils of a word of {@link CellBits} of which some station can be brought to show a patch; beyond the last one any bits. */
    long ofWord(int word, int patch) {
        if (ofAll[patch] || !ofSome[patch]) {
            return ofAll[patch] ? -1L : 0;
        }
        long bits = 0;
        int airfoils = Math.min(row.count() - word * Long.SIZE, Long.SIZE);
        for (int i = 0; i < airfoils; i++) {
            bits |= of(word * Long.SIZE + i + 1, patch) ? 1L << i : 0;
        }
        return bits;
    }

    /** Whether some station can be brought to show a patch of airfoil n. */
    boolean of(int n, int patch) {
        if (ofAll[patch] || !ofSome[patch]) {
            return ofAll[patch];
        }
        int facet = patches.facet(patch);
        return some.stream().anyMatch(from -> shows(from, n, facet, patch - patches.first(facet)));
    }

    private boolean shows(FromStation from, int n, int facet, int patch) {
        StationSight sight = sightOf.apply(from);
        int kind = sight.kind(row, n);
        if (from.travels() || first.isEmpty()) {
            return sight.reaches(kind, facet, patch);
        }
        long clock = first.get().plus(Engine.fromFirst(row, n)).wrapped().floorTicks();
        for (int pose = 0; pose < sight.poses(); pose++) {
            if (!sight.arcs(kind, pose, facet, patch).contains(clock)) {
                return false;
            }
        }
        return true;
    }
}
