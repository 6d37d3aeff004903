package everyblade.core.move;

import everyblade.core.angle.Turn;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Pose;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * From where a part of an airfoil is seen most squarely: the station and the place of the airfoil at which most of the part's
 * surface is in sight, each facet by the cosine of the angle from square at which it is seen.
 *
 * @param view through which
 * @param station where the scope tip stands, if the view has stations
 * @param clock where the airfoil then stands, degrees
 * @param slant how far from square the part is seen in the mean, degrees; empty where nothing is computed
 * @param share how much of the part's surface is in sight
 * @param reading of the shaft that brings it there, or clock angle to which the scope tip is fed, degrees; empty if it is not
 *     known where the row stands
 * @param entries that bring the scope tip there and, where that is known, the airfoil, to look at it
 */
public record Squarest(
        View view,
        Optional<String> station,
        double clock,
        OptionalDouble slant,
        double share,
        Optional<BigDecimal> reading,
        List<Entry> entries) {

    private static final double STEP = 0.5;

    public Squarest {
        entries = List.copyOf(entries);
    }

    /** A place from which it is seen, and how well: of the surface, and of the surface by how squarely. */
    private record Seen(ViewOption option, double clock, double share, double square) {}

    /** The best place for these zones of an airfoil; empty if no view shows anything of them. */
    public static Optional<Squarest> of(Fold fold, Coverage coverage, Row row, int airfoil, ZoneSet zones) {
        try {
            RemainingState now = new RemainingState(Trial.of(fold), coverage);
            RowCoverage of = coverage.row(row.id());
            OptionalDouble first = now.setBackOrClock(row);
            double ahead = Engine.fromFirst(row, airfoil).degrees();
            return ViewOption.of(coverage, of).stream()
                    .flatMap(option -> seen(coverage, of, option, airfoil, zones, first, ahead))
                    .max(Comparator.comparingDouble(Seen::square)
                            .thenComparing(seen -> seen.option().holds(now.now().seat())))
                    .map(best -> told(now, row, best, ahead));
        } catch (Refusal closed) {
            return Optional.empty();
        }
    }

    private static Stream<Seen> seen(
            Coverage coverage,
            RowCoverage of,
            ViewOption option,
            int airfoil,
            ZoneSet zones,
            OptionalDouble first,
            double ahead) {
        if (option.sight().isEmpty()) {
            int shown = option.declared().get().zones().intersection(zones).size();
            double share = (double) shown / zones.size();
            return shown == 0
                    ? Stream.empty()
                    : Stream.of(new Seen(option, option.view().reference(), share, share));
        }
        StationSight sight = option.sight().get();
        Mesh mesh = coverage.sights().scene(of.row()).row().airfoil();
        Facets facets = coverage.sights().scene(of.row()).facets();
        int kind = sight.kind(of.row(), airfoil);
        Pose pose = pose(coverage.situation().engine().model(), option);
        boolean fixed = !option.travels() && first.isPresent();
        DoubleStream clocks = fixed
                ? DoubleStream.of(TypedDegrees.wrapped(first.getAsDouble() + ahead))
                : DoubleStream.iterate(0, clock -> clock < TypedDegrees.TURN, clock -> clock + STEP);
        return clocks.mapToObj(clock -> {
                    double all = 0;
                    double shown = 0;
                    double square = 0;
                    long tick = Turn.ofDegrees(clock).wrapped().floorTicks();
                    for (int facet = 0; facet < mesh.faceCount(); facet++) {
                        if (zones.contains(mesh.zone(facet))) {
                            double area = facets.area(facet);
                            all += area;
                            if (sight.arcs(kind, 0, facet).contains(tick)) {
                                shown += area;
                                square += area * facing(pose, facets, facet, Math.toRadians(clock));
                            }
                        }
                    }
                    return new Seen(option, clock, shown / all, square / all);
                })
                .filter(seen -> seen.square() > 0);
    }

    private static Pose pose(EngineModel model, ViewOption option) {
        Station station = option.view().stations().stream()
                .filter(one -> Optional.of(one.id()).equals(option.station()))
                .findFirst()
                .orElseThrow();
        ScopeTip tip = option.view().scopeTip().flatMap(model::scopeTip).orElseThrow();
        return Pose.of(station, tip);
    }

    /** Cosine of the angle between a facet's normal and the line to the scope tip; the airfoil turned from clock 0. */
    private static double facing(Pose pose, Facets facets, int facet, double turned) {
        double sin = Math.sin(turned);
        double cos = Math.cos(turned);
        double clock = Math.toRadians(pose.clock().degrees());
        double x = facets.centroid(facet, 0) - pose.x();
        double y = facets.centroid(facet, 1) * cos + facets.centroid(facet, 2) * sin - pose.r() * Math.sin(clock);
        double z = facets.centroid(facet, 2) * cos - facets.centroid(facet, 1) * sin - pose.r() * Math.cos(clock);
        double along = facets.normal(facet, 0) * x
                + (facets.normal(facet, 1) * cos + facets.normal(facet, 2) * sin) * y
                + (facets.normal(facet, 2) * cos - facets.normal(facet, 1) * sin) * z;
        return Math.max(0, -along / Math.sqrt(x * x + y * y + z * z));
    }

    private static Squarest told(RemainingState now, Row row, Seen best, double ahead) {
        Seating there = Seating.of(now, row, best.option()).findFirst().orElseThrow();
        List<Entry> entries = new ArrayList<>(there.entries());
        Optional<BigDecimal> reading = Optional.empty();
        OptionalDouble clock = there.after().clock(row);
        if (clock.isPresent() && best.option().travels()) {
            double from = there.after().now().reading(row).degrees();
            double way = RotationProblem.way(
                    clock.getAsDouble(), best.clock() - ahead, there.after().ways(row));
            double to = TypedDegrees.nearest(from + way, TypedDegrees.TENTH);
            if (Math.abs(way) >= TypedDegrees.TENTH / 2) {
                entries.add(now.steered(row).unwatched(TypedDegrees.turn(to), TypedDegrees.turn(to - from)));
            }
            entries.add(new LookEntry.Look(Optional.empty(), Optional.empty()));
            double shown = RemainingState.turns(row) ? to : best.option().view().reference() - to;
            reading = Optional.of(TypedDegrees.number(TypedDegrees.wrapped(shown)));
        }
        OptionalDouble slant = best.option().sight().isPresent()
                ? OptionalDouble.of(Math.toDegrees(Math.acos(Math.min(1, best.square() / best.share()))))
                : OptionalDouble.empty();
        return new Squarest(
                best.option().view(), best.option().station(), best.clock(), slant, best.share(), reading, entries);
    }
}
