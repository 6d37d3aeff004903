package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Leg;
import everyblade.core.turning.SmoothedTrack;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.SmoothedTrack.Stand;
import everyblade.spi.Row;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * How long each airfoil was in view during one pass, against the least time that counts. Turning within a leg is taken
 * as even, at the most likely angles; a leg whose duration is not known is never too fast.
 */
final class Glances {

    private final OptionalDouble least;
    private final double[] seconds;

    private Glances(OptionalDouble least, double[] seconds) {
        this.least = least;
        this.seconds = seconds;
    }

    /**
     * The glances of a pass.
     *
     * @param angles clock angles of an airfoil at which it is in view, degrees: from and to of each range in turn
     */
    static Glances of(Pass pass, Row row, Supplier<double[]> angles, SmoothedTrack placing, OptionalDouble least) {
        if (least.isEmpty()
                || pass.legs().stream().noneMatch(leg -> leg.seconds().isPresent())) {
            return new Glances(OptionalDouble.empty(), new double[0]);
        }
        double[] inView = angles.get();
        double[] seconds = new double[row.count()];
        for (Leg leg : pass.legs()) {
            List<Stand> course = placing.course(row.id(), row.rock(), leg.from(), leg.to(), leg.run());
            Optional<Place> from = course.get(0).place();
            Optional<Place> to = course.get(course.size() - 1).place();
            for (int n = 1; n <= row.count(); n++) {
                seconds[n - 1] +=
                        from.isEmpty() || to.isEmpty() || leg.seconds().isEmpty()
                                ? leg.seconds().orElse(Double.POSITIVE_INFINITY)
                                : inView(
                                        from.get(),
                                        to.get(),
                                        Engine.fromFirst(row, n).degrees(),
                                        inView,
                                        leg.seconds().getAsDouble());
            }
        }
        return new Glances(least, seconds);
    }

    /** Seconds for which an airfoil is in view, over all turns of the leg. */
    private static double inView(Place from, Place to, double airfoil, double[] angles, double seconds) {
        double a = Math.min(from.best().degrees(), to.best().degrees()) + airfoil;
        double b = Math.max(from.best().degrees(), to.best().degrees()) + airfoil;
        double inside = 0;
        double still = 0;
        for (int i = 0; i < angles.length; i += 2) {
            double low = angles[i];
            double high = angles[i + 1];
            for (double turn = Math.floor((a - high) / 360); turn <= Math.ceil((b - low) / 360); turn++) {
                double start = Math.max(a, low + 360 * turn);
                double end = Math.min(b, high + 360 * turn);
                inside += Math.max(0, end - start);
                still = Math.max(still, start <= end ? 1 : 0);
            }
        }
        return b - a > 1e-9 ? seconds * inside / (b - a) : seconds * still;
    }

    /** Of a run of airfoils those that were in view long enough. */
    List<IndexRun> longEnough(IndexRun run) {
        return of(run, true);
    }

    /** Of a run of airfoils those that were in view too briefly. */
    List<IndexRun> tooBrief(IndexRun run) {
        return of(run, false);
    }

    private List<IndexRun> of(IndexRun run, boolean enough) {
        if (least.isEmpty()) {
            return enough ? List.of(run) : List.of();
        }
        return IntStream.range(0, run.length())
                .map(i -> (run.first() + i) % seconds.length)
                .filter(index -> enough == (seconds[index] >= least.getAsDouble()))
                .mapToObj(index -> new IndexRun(index, 1))
                .toList();
    }

    /** Adds a run of airfoils to the cells seen, those that were in view too briefly to the others. */
    void add(CellBits seen, CellBits brief, IndexRun run, ZoneSet zones) {
        longEnough(run).forEach(part -> seen.add(part, zones));
        tooBrief(run).forEach(part -> brief.add(part, zones));
    }
}
