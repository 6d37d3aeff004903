package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Reach;
import everyblade.core.surface.Patches;
import everyblade.spi.Row;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Cells whose states rest on computed sight: each has its own surface, what of it is within reach, and what of it was surely
 * and maybe seen. Surfaces are mm².
 *
 * <p>An edge of sight runs somewhere through the patches along it, so half of those that were seen, but not nearly up to their
 * borders, is taken off before a cell counts as done. A cell at the leading or trailing edge counts only if its outermost strip, where
 * nicks sit, does by itself, with the same taken off.
 */
final class ComputedCells implements Cells {

    /** Sums of the same facets in another order may differ by so much of a cell's surface. */
    private static final double ROUNDING = 1e-9;

    private final Judging judging;
    private final Reach stations;
    private final int zones;
    private final SeenSurface seen;
    private final List<Optional<Hindrance>> hindrances;
    /** By how much less than what adds up may have been surely seen of a cell; nothing where that is all of it. */
    private final CoveredSurface offOfOwn;

    /** The same where it is all that is within reach. */
    private final CoveredSurface offOfReach;

    /**
     * The cells of a row.
     *
     * @param patches of an airfoil
     * @param first where airfoil 1 stands, if that is known and matters
     * @param reach what views can show of it
     * @param facetsSeen what was seen of it
     */
    ComputedCells(
            Row row,
            Zoning zoning,
            Patches patches,
            Optional<Turn> first,
            Reach reach,
            FacetsSeen facetsSeen,
            Judging judging) {
        this.judging = judging;
        this.stations = reach;
        Within within = Within.of(row, patches, first, reach, Reach.FromStation::sight);
        Within anyDetail = Within.of(row, patches, first, reach, Reach.FromStation::anyDetail);
        zones = zoning.size();
        seen = new SeenSurface(row, zoning, patches, within, anyDetail, facetsSeen);
        double[][] hindered = new double[zones][Hindrance.values().length];
        for (int patch = 0; patch < patches.count(); patch++) {
            Optional<Hindrance> why = reach.why().get(patches.facet(patch));
            if (why.isPresent()) {
                hindered[patches.zone(patch)][why.get().ordinal()] +=
                        patches.facets().area(patch);
            }
        }
        hindrances = Arrays.stream(hindered).map(ComputedCells::dominant).toList();
        offOfOwn = CoveredSurface.none(row.count() * zones);
        offOfReach = CoveredSurface.none(row.count() * zones);
        for (int zone = 0; zone < zones; zone++) {
            off(zone, row.count());
        }
    }

    private static Optional<Hindrance> dominant(double[] areas) {
        return Arrays.stream(Hindrance.values())
                .filter(hindrance -> areas[hindrance.ordinal()] > 0)
                .max(Comparator.comparingDouble(hindrance -> areas[hindrance.ordinal()]));
    }

    private void off(int zone, int count) {
        double all = seen.own.all()[zone];
        double slack = slack(zone);
        CoveredSurface own = seen.offAtEdge(zone, false);
        CoveredSurface reached = seen.offAtEdge(zone, true);
        for (int n = 1; n <= count; n++) {
            int cell = (n - 1) * zones + zone;
            double sure = seen.sure.all()[cell];
            if (sure < all - slack) {
                offOfOwn.add(cell, own.all()[n - 1], own.strip()[n - 1]);
            }
            if (sure < seen.reach.all()[cell] - slack) {
                offOfReach.add(cell, reached.all()[n - 1], reached.strip()[n - 1]);
            }
        }
    }

    /** By how much sums of areas of a zone may be off, mm². */
    private double slack(int zone) {
        return ROUNDING * seen.own.all()[zone];
    }

    /** Whether so much of a zone is enough to be within reach. */
    private boolean enough(double area, int zone) {
        return area > 0 && area >= judging.reach() * seen.own.all()[zone] - slack(zone);
    }

    @Override
    public Basis basis() {
        return Basis.COMPUTED;
    }

    @Override
    public State state(int n, int zone) {
        int cell = (n - 1) * zones + zone;
        return done(part(seen.sure, cell), cell, zone, part(offOfOwn, cell), part(offOfReach, cell))
                .orElse(done(seen.maybe, cell, zone) ? State.MAYBE : State.UNSEEN);
    }

    /**
     * A part of a cell's surface, mm².
     *
     * @param strip of it in the outermost strip
     */
    private record Part(double all, double strip) {
        static final Part NONE = new Part(0, 0);
    }

    private static Part part(CoveredSurface of, int cell) {
        return new Part(of.all()[cell], of.strip()[cell]);
    }

    /** Whether a cell would be seen, or seen in part, if all of this had surely been seen. */
    private boolean done(CoveredSurface of, int cell, int zone) {
        return done(part(of, cell), cell, zone, Part.NONE, Part.NONE).isPresent();
    }

    private Optional<State> done(Part of, int cell, int zone, Part lessOfOwn, Part lessOfReach) {
        double slack = slack(zone);
        if (of.all - lessOfOwn.all >= judging.seen() * seen.own.all()[zone] - slack
                && of.strip - lessOfOwn.strip >= judging.edge() * seen.own.strip()[zone] - slack) {
            return Optional.of(State.SEEN);
        }
        return enough(seen.reach.all()[cell], zone)
                        && of.all - lessOfReach.all
                                >= judging.seen() * seen.reach.all()[cell] - slack
                        && of.strip - lessOfReach.strip
                                >= judging.edge() * seen.reach.strip()[cell] - slack
                ? Optional.of(State.PART)
                : Optional.empty();
    }

    @Override
    public BitSet surely(int n) {
        return seen.surely(n);
    }

    @Override
    public BitSet wholly(int n) {
        return seen.wholly(n);
    }

    @Override
    public boolean doneBy(int n, int zone, BitSet parts, BitSet whole) {
        int cell = (n - 1) * zones + zone;
        Part sure = part(seen.of(zone, parts), 0);
        if (done(sure, cell, zone, Part.NONE, Part.NONE).isEmpty()) {
            return false;
        }
        CoveredSurface off = seen.offAtEdge(n, zone, parts, whole);
        double slack = slack(zone);
        Part lessOfOwn = sure.all < seen.own.all()[zone] - slack ? part(off, 0) : Part.NONE;
        Part lessOfReach = sure.all < seen.reach.all()[cell] - slack ? part(off, 1) : Part.NONE;
        return done(sure, cell, zone, lessOfOwn, lessOfReach).isPresent();
    }

    @Override
    public Optional<Why> why(int n, int zone) {
        int cell = (n - 1) * zones + zone;
        return switch (state(n, zone).grade()) {
            case DONE -> Optional.empty();
            case DOUBTFUL -> Optional.of(doubt(cell, zone));
            case LEFT ->
                Optional.of(
                        enough(seen.reach.all()[cell], zone)
                                ? omission(cell, n, zone)
                                : enough(seen.anyDetail.all()[cell], zone) ? Why.COARSE : Why.NO_ACCESS);
        };
    }

    private Why doubt(int cell, int zone) {
        if (done(seen.placed, cell, zone)) {
            return Why.PLACEMENT;
        }
        if (done(seen.counted, cell, zone)) {
            return Why.PLAY;
        }
        return done(seen.unlost, cell, zone) ? Why.SLIP : Why.COUNT_LOST;
    }

    private Why omission(int cell, int n, int zone) {
        if (lacksEdgeAlone(n, zone)) {
            return Why.EDGE;
        }
        if (done(seen.brief, cell, zone)) {
            return Why.FAST;
        }
        return done(seen.unwatched, cell, zone) ? Why.NOT_WATCHED : Why.SKIPPED;
    }

    @Override
    public boolean lacksEdgeAlone(int n, int zone) {
        int cell = (n - 1) * zones + zone;
        double slack = slack(zone);
        return seen.sure.all()[cell] - offOfOwn.all()[cell]
                        >= judging.seen() * seen.own.all()[zone] - slack
                && state(n, zone) != State.SEEN;
    }

    @Override
    public Optional<Hindrance> hindrance(int n, int zone) {
        return hindrances.get(zone);
    }

    /** What was seen of the surface of a cell. */
    CellSurface surface(int n, int zone) {
        int cell = (n - 1) * zones + zone;
        return new CellSurface(
                seen.own.all()[zone],
                seen.reach.all()[cell],
                seen.sure.all()[cell],
                seen.maybe.all()[cell]);
    }

    @Override
    public Areas areas(int n, ZoneSet of) {
        return CellSurface.of(of, zone -> surface(n, zone)).shares();
    }

    @Override
    public double surface(ZoneSet of) {
        return CellSurface.of(of, zone -> surface(1, zone)).own();
    }

    @Override
    public Optional<Reach> reach() {
        return Optional.of(stations);
    }
}
