package everyblade.core.coverage;

import everyblade.core.angle.Arc;
import everyblade.core.angle.Circle;
import everyblade.core.entry.Settings;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.PoseFamily;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Patches;
import everyblade.spi.Row;
import everyblade.spi.Station;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.Function;

/**
 * What stations show of one row whose angles are exact, worked out the slow way: for each airfoil and patch the poses are
 * listed that may have been the true one, and struck out as soon as one of them shows it.
 */
final class SightOracle {

    private static final long TURN = Circle.STANDARD.ticks();

    private final Zoning zoning;
    private final Patches patches;
    private final Function<Station, StationSight> sights;
    private final Row row;
    private final int count;
    /** By airfoil and patch: poses of the placement under way that have not shown it. */
    private final boolean[][][] missing;
    /** The same of all of the patch, where it lies along an edge of sight. */
    private final boolean[][][] missingWhole;

    private final boolean[][] sure;
    private final boolean[][] whole;
    private final boolean[][] maybe;

    SightOracle(Row row, Patches patches, Function<Station, StationSight> sights) {
        this.row = row;
        this.zoning = Zoning.of(row);
        this.patches = patches;
        this.sights = sights;
        this.count = row.count();
        missing = new boolean[count][patches.count()][];
        missingWhole = new boolean[count][patches.count()][];
        sure = new boolean[count][patches.count()];
        whole = new boolean[count][patches.count()];
        maybe = new boolean[count][patches.count()];
        seated();
    }

    /** A new placement. */
    void seated() {
        fill(missing);
        fill(missingWhole);
    }

    private static void fill(boolean[][][] airfoils) {
        for (boolean[][] airfoil : airfoils) {
            for (int patch = 0; patch < airfoil.length; patch++) {
                airfoil[patch] = new boolean[PoseFamily.SIZE];
                Arrays.fill(airfoil[patch], true);
            }
        }
    }

    /** Watched while airfoil 1 ran from one tick to another, both included; the scope tip held. */
    void hold(Station station, long from, long to, List<Integer> zones) {
        watch(List.of(station), from, to, zones, (n, patch, surely, ofAll) -> {
            sure[n][patch] |= strikeOut(missing[n][patch], surely.get(0));
            whole[n][patch] |= strikeOut(missingWhole[n][patch], ofAll.get(0));
        });
    }

    /** Whether none is missing any more. */
    private static boolean strikeOut(boolean[] missing, boolean[] shown) {
        for (int pose = 0; pose < PoseFamily.SIZE; pose++) {
            missing[pose] &= !shown[pose];
        }
        return !contains(missing, true);
    }

    /** The scope tip was moved through stations: at rest any of them shows, turning all of them must. */
    void through(List<Station> stations, long from, long to, List<Integer> zones) {
        watch(stations, from, to, zones, (n, patch, surely, ofAll) -> {
            sure[n][patch] |= moved(surely, from == to);
            whole[n][patch] |= moved(ofAll, from == to);
        });
    }

    private static boolean moved(List<boolean[]> stations, boolean atRest) {
        List<Boolean> every =
                stations.stream().map(poses -> !contains(poses, false)).toList();
        return atRest ? every.contains(true) : !every.contains(false);
    }

    /** Told of each airfoil and patch which poses of each station surely show it, and which show all of it. */
    private interface Shown {
        void of(int n, int patch, List<boolean[]> surely, List<boolean[]> ofAll);
    }

    private void watch(List<Station> stations, long from, long to, List<Integer> zones, Shown told) {
        for (int n = 0; n < count; n++) {
            for (int facet = 0; facet < patches.facetCount(); facet++) {
                int first = patches.first(facet);
                if (!zones.contains(patches.zone(first))) {
                    continue;
                }
                int at = facet;
                boolean alike = stations.stream()
                        .noneMatch(station -> sights.apply(station).divides(at));
                List<boolean[]> surely = List.of();
                boolean may = false;
                for (int patch = first; patch < first + patches.count(facet); patch++) {
                    if (patch == first || !alike) {
                        surely = new ArrayList<>();
                        may = false;
                        for (Station station : stations) {
                            boolean[] poses = new boolean[PoseFamily.SIZE];
                            for (int pose = 0; pose < PoseFamily.SIZE; pose++) {
                                poses[pose] = surely(station, pose, patch, n, from, to);
                                may = may || perhaps(station, pose, patch, n, from, to);
                            }
                            surely.add(poses);
                        }
                    }
                    maybe[n][patch] |= may;
                    told.of(n, patch, surely, whole(stations, patch, n, from, to));
                }
            }
        }
    }

    private List<boolean[]> whole(List<Station> stations, int patch, int n, long from, long to) {
        int facet = patches.facet(patch);
        List<boolean[]> whole = new ArrayList<>();
        for (Station station : stations) {
            StationSight sight = sights.apply(station);
            int kind = sight.kind(row, n + 1);
            boolean[] poses = new boolean[PoseFamily.SIZE];
            for (int pose = 0; sight.showsWhole(kind, facet) && pose < PoseFamily.SIZE; pose++) {
                List<Arc> arcs = sight.whole(kind, pose % sight.poses(), facet, patch - patches.first(facet))
                        .arcs();
                poses[pose] = arcs.stream().anyMatch(arc -> to - from >= TURN - arc.length())
                        || meets(arcs, 0, 0, n, from, to);
            }
            whole.add(poses);
        }
        return whole;
    }

    private static boolean contains(boolean[] values, boolean value) {
        for (boolean one : values) {
            if (one == value) {
                return true;
            }
        }
        return false;
    }

    private boolean surely(Station station, int pose, int patch, int n, long from, long to) {
        StationSight sight = sights.apply(station);
        int kind = sight.kind(row, n + 1);
        int own = sight.poses() == 1 ? 0 : pose;
        int facet = patches.facet(patch);
        int part = patch - patches.first(facet);
        boolean whole = to - from >= TURN;
        long before = whole ? 0 : sight.startSlack(kind, own, facet, part);
        long after = whole ? 0 : sight.endSlack(kind, own, facet, part);
        List<Arc> arcs = sight.arcs(kind, own, facet, part).arcs();
        long shorter = sight.shorter(kind, own, facet, part);
        // What is left of the turn is too short for it to hide in.
        return arcs.stream().anyMatch(arc -> to - from >= TURN - (arc.length() - shorter))
                || meets(arcs, before, after, n, from, to);
    }

    private boolean perhaps(Station station, int pose, int patch, int n, long from, long to) {
        StationSight sight = sights.apply(station);
        return meets(
                sight.arcs(sight.kind(row, n + 1), sight.poses() == 1 ? 0 : pose, patches.facet(patch))
                        .arcs(),
                0,
                0,
                n,
                from,
                to);
    }

    private boolean meets(List<Arc> arcs, long before, long after, int n, long from, long to) {
        long offset = TURN / count * n;
        for (Arc arc : arcs) {
            // The last turn at which it begins in time is the one at which it ends latest.
            long turns = Math.floorDiv(to + offset - arc.start() - before, TURN);
            if (arc.start() + arc.length() - 1 - after + turns * TURN >= from + offset) {
                return true;
            }
        }
        return false;
    }

    /** The state of a cell whose reach is told. */
    State state(int n, int zone, BitSet reach) {
        BitSet surely = set(sure[n - 1]);
        BitSet reached = union(reach, surely);
        return new NaiveCells(
                        zoning,
                        patches,
                        Judging.of(Settings.USUAL),
                        new NaiveCells.Airfoil(surely, set(whole[n - 1]), union(set(maybe[n - 1]), surely), reached))
                .state(zone);
    }

    private static BitSet set(boolean[] of) {
        BitSet set = new BitSet();
        for (int patch = 0; patch < of.length; patch++) {
            set.set(patch, of[patch]);
        }
        return set;
    }

    private static BitSet union(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.or(other);
        return both;
    }

    /** The patches of airfoil n that were surely seen. */
    BitSet surely(int n) {
        return set(sure[n - 1]);
    }

    /** Of these, those along an edge of sight that were seen as a whole. */
    BitSet wholly(int n) {
        return set(whole[n - 1]);
    }

    /** Of airfoil n. */
    BitSet reach(int n, List<Station> stations) {
        BitSet reach = new BitSet();
        for (Station station : stations) {
            StationSight sight = sights.apply(station);
            for (int patch = 0; patch < patches.count(); patch++) {
                int facet = patches.facet(patch);
                if (sight.reaches(sight.kind(row, n), facet, patch - patches.first(facet))) {
                    reach.set(patch);
                }
            }
        }
        return reach;
    }
}
