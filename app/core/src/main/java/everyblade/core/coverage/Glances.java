package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Placing;
import everyblade.core.turning.Placing.Place;
import everyblade.spi.Row;
import java.util.Optional;
import java.util.OptionalDouble;

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

    static Glances of(Pass pass, Row row, DeclaredWindow window, Placing placing, OptionalDouble least) {
        if (least.isEmpty()
                || pass.legs().stream().noneMatch(leg -> leg.seconds().isPresent())) {
            return new Glances(OptionalDouble.empty(), new double[0]);
        }
        double[] seconds = new double[row.count()];
        for (Leg leg : pass.legs()) {
            Optional<Place> from = placing.at(row.id(), row.rock(), leg.from()).place();
            Optional<Place> to = placing.at(row.id(), row.rock(), leg.to()).place();
            for (int n = 1; n <= row.count(); n++) {
                seconds[n - 1] +=
                        from.isEmpty() || to.isEmpty() || leg.seconds().isEmpty()
                                ? untimed(from, to, leg)
                                : inView(
                                        from.get(),
                                        to.get(),
                                        Engine.fromFirst(row, n).degrees(),
                                        window,
                                        leg.seconds().getAsDouble());
            }
        }
        return new Glances(least, seconds);
    }

    private static double untimed(Optional<Place> from, Optional<Place> to, Leg leg) {
        return leg.seconds().isEmpty()
                ? Double.POSITIVE_INFINITY
                : from.isEmpty() || to.isEmpty() ? leg.seconds().getAsDouble() : 0;
    }

    /** Seconds for which an airfoil is in the window, over all turns of the leg. */
    private static double inView(Place from, Place to, double airfoil, DeclaredWindow window, double seconds) {
        double a = Math.min(from.best().degrees(), to.best().degrees()) + airfoil;
        double b = Math.max(from.best().degrees(), to.best().degrees()) + airfoil;
        double low = window.from().degrees();
        double high = window.to().degrees();
        double inside = 0;
        double still = 0;
        for (double turn = Math.floor((a - high) / 360); turn <= Math.ceil((b - low) / 360); turn++) {
            double start = Math.max(a, low + 360 * turn);
            double end = Math.min(b, high + 360 * turn);
            inside += Math.max(0, end - start);
            still = Math.max(still, start <= end ? 1 : 0);
        }
        return b - a > 1e-9 ? seconds * inside / (b - a) : seconds * still;
    }

    /** Adds a run of airfoils to the cells seen, those that were in view too briefly to the others. */
    void add(CellBits seen, CellBits brief, IndexRun run, ZoneSet zones) {
        if (least.isEmpty()) {
            seen.add(run, zones);
            return;
        }
        for (int i = 0; i < run.length(); i++) {
            int index = (run.first() + i) % seconds.length;
            (seconds[index] >= least.getAsDouble() ? seen : brief).add(new IndexRun(index, 1), zones);
        }
    }
}
