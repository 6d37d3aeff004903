package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Reach;
import everyblade.core.sight.Scene;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Placing.Place;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Cells whose states rest on computed sight: each has its own surface, what of it is within reach, and what of it was surely
 * and maybe seen. Surfaces are mm².
 */
final class ComputedCells implements Cells {

    /** Sums of the same facets in another order may differ by so much of a cell's surface. */
    private static final double ROUNDING = 1e-9;

    private final Judging judging;
    private final Reach stations;
    private final int zones;
    private final double[] own;
    private final double[] reach;
    private final double[] anyDetail;
    private final double[] seen;
    private final double[] maybe;
    private final double[] placed;
    private final double[] counted;
    private final double[] unlost;
    private final double[] brief;
    private final double[] unwatched;
    private final List<Optional<Hindrance>> hindrances;
    private final ZoneSet shown;

    /**
     * The cells of a row.
     *
     * @param airfoil gives the zone of each facet
     * @param reach what views can show of it
     * @param facetsSeen what was seen of it
     */
    ComputedCells(Situation situation, Row row, Scene scene, Reach reach, FacetsSeen facetsSeen, Judging judging) {
        this.judging = judging;
        this.stations = reach;
        Facets facets = scene.facets();
        Mesh airfoil = scene.row().airfoil();
        zones = scene.zoning().size();
        own = new double[zones];
        int cells = row.count() * zones;
        anyDetail = new double[cells];
        this.reach = new double[cells];
        seen = new double[cells];
        maybe = new double[cells];
        placed = new double[cells];
        counted = new double[cells];
        unlost = new double[cells];
        brief = new double[cells];
        unwatched = new double[cells];
        Within within = new Within(situation, row, reach);
        double[] reached = new double[zones];
        double[][] hindered = new double[zones][Hindrance.values().length];
        for (int facet = 0; facet < facets.count(); facet++) {
            int zone = airfoil.zone(facet);
            double area = facets.area(facet);
            own[zone] += area;
            reached[zone] += reach.facets()[facet] ? area : 0;
            Optional<Hindrance> why = reach.why().get(facet);
            if (why.isPresent()) {
                hindered[zone][why.get().ordinal()] += area;
            }
            for (int n = 1; n <= row.count(); n++) {
                boolean isReached = within.reaches(n, facet, Reach.FromStation::sight);
                boolean isCoarse = !isReached && within.reaches(n, facet, Reach.FromStation::anyDetail);
                add(n, zone, facet, area, isReached, facetsSeen);
                anyDetail[(n - 1) * zones + zone] += isReached || isCoarse ? area : 0;
            }
        }
        hindrances = Arrays.stream(hindered).map(ComputedCells::dominant).toList();
        long bits = 0;
        for (int zone = 0; zone < zones; zone++) {
            bits |= enough(reached[zone], zone) ? 1L << zone : 0;
        }
        shown = new ZoneSet(bits);
    }

    private static Optional<Hindrance> dominant(double[] areas) {
        return Arrays.stream(Hindrance.values())
                .filter(hindrance -> areas[hindrance.ordinal()] > 0)
                .max(Comparator.comparingDouble(hindrance -> areas[hindrance.ordinal()]));
    }

    /** Whether so much of a zone is enough to be within reach. */
    private boolean enough(double area, int zone) {
        return area > 0 && area >= (judging.reach() - ROUNDING) * own[zone];
    }

    private void add(int n, int zone, int facet, double area, boolean reached, FacetsSeen facets) {
        int cell = (n - 1) * zones + zone;
        boolean sure = facets.sure().contains(n, facet);
        boolean may = sure || facets.maybe().contains(n, facet);
        seen[cell] += sure ? area : 0;
        reach[cell] += sure || reached ? area : 0;
        maybe[cell] += may ? area : 0;
        placed[cell] += sure || facets.placed().contains(n, facet) ? area : 0;
        boolean isLost = facets.lost().contains(n, facet);
        counted[cell] += sure || facets.counted().contains(n, facet) && !isLost ? area : 0;
        unlost[cell] += sure || may && !isLost ? area : 0;
        brief[cell] += may || facets.brief().contains(n, facet) ? area : 0;
        unwatched[cell] += may || facets.unwatched().contains(n, facet) ? area : 0;
    }

    /** Which facets of which airfoils some view can be brought to show. */
    private static final class Within {
        private final Reach reach;
        private final Row row;
        private final Optional<Turn> first;

        Within(Situation situation, Row row, Reach reach) {
            this.reach = reach;
            this.row = row;
            Optional<Place> place = situation.counting(row)
                    ? situation
                            .placing(row)
                            .at(row.id(), row.rock(), situation.stop(row))
                            .place()
                    : Optional.empty();
            // A static row's angle is kept relative to the scope tip, which may have been drawn round since.
            this.first = place.map(at -> at.best().minus(situation.reading(row)));
        }

        boolean reaches(int n, int facet, Function<Reach.FromStation, StationSight> sightOf) {
            for (Reach.FromStation from : reach.stations()) {
                StationSight sight = sightOf.apply(from);
                if (sight.reaches(sight.kind(row, n), facet)
                        && (from.travels() || first.isEmpty() || stands(n, facet, sight))) {
                    return true;
                }
            }
            return false;
        }

        private boolean stands(int n, int facet, StationSight sight) {
            long clock = first.get().plus(Engine.fromFirst(row, n)).wrapped().floorTicks();
            for (int pose = 0; pose < sight.poses(); pose++) {
                if (!sight.arcs(sight.kind(row, n), pose, facet).contains(clock)) {
                    return false;
                }
            }
            return true;
        }
    }

    @Override
    public Basis basis() {
        return Basis.COMPUTED;
    }

    @Override
    public State state(int n, int zone) {
        int cell = (n - 1) * zones + zone;
        return done(seen[cell], cell, zone)
                .orElse(done(maybe[cell], cell, zone).isPresent() ? State.MAYBE : State.UNSEEN);
    }

    /** Seen, or seen in part, if so much of a cell's surface was seen. */
    private Optional<State> done(double area, int cell, int zone) {
        double slack = ROUNDING * own[zone];
        if (area >= judging.seen() * own[zone] - slack) {
            return Optional.of(State.SEEN);
        }
        return enough(reach[cell], zone) && area >= judging.seen() * reach[cell] - slack
                ? Optional.of(State.PART)
                : Optional.empty();
    }

    @Override
    public Optional<Why> why(int n, int zone) {
        int cell = (n - 1) * zones + zone;
        return switch (state(n, zone)) {
            case SEEN, PART -> Optional.empty();
            case MAYBE -> Optional.of(doubt(cell, zone));
            case UNSEEN ->
                Optional.of(
                        enough(reach[cell], zone)
                                ? omission(cell, zone)
                                : enough(anyDetail[cell], zone) ? Why.COARSE : Why.NO_ACCESS);
        };
    }

    private Why doubt(int cell, int zone) {
        if (done(placed[cell], cell, zone).isPresent()) {
            return Why.PLACEMENT;
        }
        if (done(counted[cell], cell, zone).isPresent()) {
            return Why.PLAY;
        }
        return done(unlost[cell], cell, zone).isPresent() ? Why.SLIP : Why.COUNT_LOST;
    }

    private Why omission(int cell, int zone) {
        if (done(brief[cell], cell, zone).isPresent()) {
            return Why.FAST;
        }
        return done(unwatched[cell], cell, zone).isPresent() ? Why.NOT_WATCHED : Why.SKIPPED;
    }

    @Override
    public Optional<Hindrance> hindrance(int n, int zone) {
        return hindrances.get(zone);
    }

    @Override
    public Areas areas(int n, ZoneSet of) {
        double all = 0;
        double reached = 0;
        double sure = 0;
        double may = 0;
        for (long rest = of.bits(); rest != 0; rest &= rest - 1) {
            int zone = Long.numberOfTrailingZeros(rest);
            int cell = (n - 1) * zones + zone;
            all += own[zone];
            reached += reach[cell];
            sure += seen[cell];
            may += maybe[cell];
        }
        return all > 0 ? new Areas(reached / all, sure / all, may / all) : new Areas(0, 0, 0);
    }

    @Override
    public double surface(ZoneSet of) {
        return java.util.stream.IntStream.range(0, zones)
                .filter(of::contains)
                .mapToDouble(zone -> own[zone])
                .sum();
    }

    @Override
    public Optional<Reach> reach() {
        return Optional.of(stations);
    }

    @Override
    public ZoneSet shown() {
        return shown;
    }
}
