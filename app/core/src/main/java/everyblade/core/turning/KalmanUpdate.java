package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What is known right after a sighting: the corrections of the counted angle and of every frame's origin that make all
 * sightings so far agree best, with their covariance, and what each frame may be off.
 *
 * <p>The unknowns of one era are the track's angle at each stop and one offset per frame; observed are moves and
 * sightings. The best estimate is the weighted least squares one, found sighting by sighting (a Kalman filter; the
 * state is the angle's correction and then each frame's, in degrees). {@link SmoothedTrack} runs it backwards. A new era begins
 * where a sighting neither knows the angle nor the frame: nothing connects it to what went before. An older one goes on
 * where, after a slip or a doubt, one of its frames is seen again.
 *
 * <p>What a frame may be off is not taken from the covariance but added up along the best chain of moves and sightings,
 * so that one-sided errors stay one-sided and add up.
 *
 * @param sighting after which this is known
 * @param step how the sighting changed it
 * @param era number of the era
 * @param frames the rows that the era knows, and its last setting of the reading
 * @param origins where each frame's zero stands at counted angle zero
 * @param state correction of the counted angle, then of each frame's origin, degrees
 * @param covariance of the state, degrees²
 * @param off what each frame may be off at this stop
 * @param between what frame i may be off as seen from frame j
 * @param innovation of a shared step: seen less expected angle, degrees
 * @param innovationVariance its variance
 * @param gain by which it corrected the state
 */
record KalmanUpdate(
        Sighting sighting,
        Step step,
        int era,
        List<String> frames,
        List<Turn> origins,
        double[] state,
        double[][] covariance,
        Uncertainty[] off,
        Uncertainty[][] between,
        double innovation,
        double innovationVariance,
        double[] gain) {

    /** How a sighting changed what is known. */
    enum Step {
        /** Nothing was known: a new era. */
        ERA,
        /** The angle was known, the frame was not. */
        FRAME,
        /** The frame was known, the angle was not. */
        ANGLE,
        /** Both were known: the count error was shared out. */
        SHARED
    }

    /** Index of a frame that this era knows, −1 of any other. */
    int frame(String name) {
        return frames.indexOf(name);
    }

    /** Whether this era knows a frame. */
    boolean knows(String name) {
        return frames.contains(name);
    }

    /**
     * Whether it tells something of a row. One by which another frame became known does not: what was known before is
     * known as well without it.
     */
    boolean tells(String row) {
        return knows(row) && (step != Step.FRAME || sighting.frame().equals(row));
    }

    /** The fix after one more sighting; where the angle is not known, it goes on from the last era that knows the frame. */
    static KalmanUpdate after(List<KalmanUpdate> before, List<Stop> stops, Sighting sighting) {
        Stop stop = stops.get(sighting.stop());
        if (!before.isEmpty()) {
            KalmanUpdate last = before.get(before.size() - 1);
            Stop lastStop = stops.get(last.sighting().stop());
            if (lastStop.stretch() == stop.stretch()) {
                Uncertainty link = stop.total().since(lastStop.total());
                double weight = stop.weight() - lastStop.weight();
                return last.knows(sighting.frame())
                        ? last.shared(stop, last.frame(sighting.frame()), link, weight, sighting)
                        : (sighting.reads() ? last.undialled() : last).frame(stop, link, weight, sighting);
            }
        }
        int era = 0;
        for (int i = before.size() - 1; i >= 0; i--) {
            KalmanUpdate earlier = before.get(i);
            if (earlier.knows(sighting.frame())) {
                return earlier.angle(stop, earlier.frame(sighting.frame()), sighting);
            }
            era = Math.max(era, earlier.era() + 1);
        }
        return era(era, stop, sighting);
    }

    /**
     * How a row closes on itself.
     *
     * @param counted counted less seen angle, degrees
     * @param explained what the stated errors allow for, without the row's rock
     */
    record Closing(double counted, Uncertainty explained) {

        /** From one identification of a row to another, by nothing but the moves between. */
        static Closing between(Sighting before, Sighting after, List<Stop> stops) {
            Stop from = stops.get(before.stop());
            Stop to = stops.get(after.stop());
            double seen = after.origin()
                    .minus(before.origin())
                    .minus(to.counted().minus(from.counted()))
                    .wrapped()
                    .degrees();
            return new Closing(
                    360 * Math.rint(seen / 360) - seen,
                    Uncertainty.of(before.plusMinus())
                            .and(to.total().since(from.total()))
                            .and(Uncertainty.of(after.plusMinus())));
        }
    }

    /** How a sighting closes if this is the last thing known before; empty if that says nothing of its frame there. */
    Optional<Closing> closing(List<Stop> stops, Sighting sighting) {
        Stop here = stops.get(this.sighting.stop());
        Stop stop = stops.get(sighting.stop());
        if (!knows(sighting.frame()) || here.stretch() != stop.stretch()) {
            return Optional.empty();
        }
        int frame = frame(sighting.frame());
        return Optional.of(new Closing(
                state[0] + state[frame + 1] - disagreement(stop, frame, sighting),
                off[frame].and(stop.total().since(here.total())).and(Uncertainty.of(sighting.plusMinus()))));
    }

    private static KalmanUpdate era(int era, Stop stop, Sighting sighting) {
        double variance = sighting.plusMinus() * sighting.plusMinus();
        return new KalmanUpdate(
                sighting,
                Step.ERA,
                era,
                List.of(sighting.frame()),
                List.of(sighting.origin().minus(stop.counted())),
                new double[2],
                new double[][] {{0, 0}, {0, variance}},
                new Uncertainty[] {Uncertainty.of(sighting.plusMinus())},
                new Uncertainty[][] {{Uncertainty.EXACT}},
                0,
                0,
                new double[2]);
    }

    /**
     * What it knows of rows. A setting of the reading is never seen again after a later one, and correlates with nothing
     * that is asked; kept, settings would make a long job's every fix larger than the one before.
     */
    private KalmanUpdate undialled() {
        int[] rows = IntStream.range(0, frames.size())
                .filter(frame -> !Fixes.ofReading(frames.get(frame)))
                .toArray();
        if (rows.length == frames.size()) {
            return this;
        }
        int[] slots = IntStream.concat(IntStream.of(0), Arrays.stream(rows).map(row -> row + 1))
                .toArray();
        return new KalmanUpdate(
                sighting,
                step,
                era,
                Arrays.stream(rows).mapToObj(frames::get).toList(),
                Arrays.stream(rows).mapToObj(origins::get).toList(),
                Arrays.stream(slots).mapToDouble(slot -> state[slot]).toArray(),
                Arrays.stream(slots)
                        .mapToObj(slot -> Arrays.stream(slots)
                                .mapToDouble(other -> covariance[slot][other])
                                .toArray())
                        .toArray(double[][]::new),
                Arrays.stream(rows).mapToObj(row -> off[row]).toArray(Uncertainty[]::new),
                Arrays.stream(rows)
                        .mapToObj(row -> Arrays.stream(rows)
                                .mapToObj(other -> between[row][other])
                                .toArray(Uncertainty[]::new))
                        .toArray(Uncertainty[][]::new),
                innovation,
                innovationVariance,
                gain);
    }

    private KalmanUpdate frame(Stop stop, Uncertainty link, double weight, Sighting sighting) {
        int size = frames.size() + 1;
        double[] angle = predicted(link);
        double[] x = Arrays.copyOf(angle, size + 1);
        x[size] = -x[0];
        double[][] p = new double[size + 1][];
        for (int i = 0; i < size; i++) {
            p[i] = Arrays.copyOf(covariance[i], size + 1);
        }
        p[0][0] += weight;
        p[size] = new double[size + 1];
        for (int i = 0; i < size; i++) {
            p[i][size] = -p[i][0];
            p[size][i] = -p[0][i];
        }
        p[size][size] = p[0][0] + sighting.plusMinus() * sighting.plusMinus();
        Uncertainty seen = Uncertainty.of(sighting.plusMinus());
        Uncertainty[] moved = moved(link);
        Uncertainty[][] apart = grown(between, size);
        for (int i = 0; i < size - 1; i++) {
            apart[i][size - 1] = moved[i].and(seen);
            apart[size - 1][i] = apart[i][size - 1].reversed();
        }
        Uncertainty[] here = Arrays.copyOf(moved, size);
        here[size - 1] = seen;
        return new KalmanUpdate(
                sighting,
                Step.FRAME,
                era,
                Stream.concat(frames.stream(), Stream.of(sighting.frame())).toList(),
                Stream.concat(origins.stream(), Stream.of(sighting.origin().minus(stop.counted())))
                        .toList(),
                x,
                p,
                here,
                apart,
                0,
                0,
                new double[size + 1]);
    }

    private KalmanUpdate angle(Stop stop, int frame, Sighting sighting) {
        int slot = frame + 1;
        double[] x = state.clone();
        x[0] = disagreement(stop, frame, sighting) - x[slot];
        double[][] p = copy(covariance);
        for (int i = 1; i < x.length; i++) {
            p[0][i] = -covariance[slot][i];
            p[i][0] = p[0][i];
        }
        p[0][0] = covariance[slot][slot] + sighting.plusMinus() * sighting.plusMinus();
        Uncertainty seen = Uncertainty.of(sighting.plusMinus());
        Uncertainty[] here = new Uncertainty[frames.size()];
        for (int i = 0; i < here.length; i++) {
            here[i] = i == frame ? seen : between[i][frame].and(seen);
        }
        return new KalmanUpdate(
                sighting, Step.ANGLE, era, frames, origins, x, p, here, between, 0, 0, new double[x.length]);
    }

    private KalmanUpdate shared(Stop stop, int frame, Uncertainty link, double weight, Sighting sighting) {
        int slot = frame + 1;
        Uncertainty seen = Uncertainty.of(sighting.plusMinus());
        double[] x = predicted(link);
        double[][] p = copy(covariance);
        p[0][0] += weight;
        double[] column = new double[x.length];
        for (int i = 0; i < column.length; i++) {
            column[i] = p[i][0] + p[i][slot];
        }
        double variance = column[0] + column[slot] + sighting.plusMinus() * sighting.plusMinus();
        double z = disagreement(stop, frame, sighting) - x[0] - x[slot];
        double[] k = new double[x.length];
        if (variance > 0) {
            for (int i = 0; i < k.length; i++) {
                k[i] = column[i] / variance;
                x[i] += k[i] * z;
            }
            for (int i = 0; i < k.length; i++) {
                for (int j = 0; j < k.length; j++) {
                    p[i][j] -= k[i] * column[j];
                }
            }
        }
        Uncertainty[] here = moved(link);
        Uncertainty[][] apart = grown(between, frames.size());
        here[frame] = tighter(seen, here[frame]);
        for (int i = 0; i < here.length; i++) {
            if (i != frame) {
                apart[i][frame] = tighter(apart[i][frame], here[i].and(seen));
                apart[frame][i] = apart[i][frame].reversed();
                here[i] = tighter(here[i], apart[i][frame].and(seen));
            }
        }
        return new KalmanUpdate(sighting, Step.SHARED, era, frames, origins, x, p, here, apart, z, variance, k);
    }

    /** Seen less counted angle of the frame, uncorrected, −180 to 180 degrees. */
    private double disagreement(Stop stop, int frame, Sighting sighting) {
        double degrees = sighting.origin()
                .minus(origins.get(frame))
                .minus(stop.counted())
                .wrapped()
                .degrees();
        double near = state[0] + state[frame + 1];
        return degrees - 360 * Math.rint((degrees - near) / 360);
    }

    private double[] predicted(Uncertainty link) {
        double[] x = state.clone();
        x[0] += link.middle();
        return x;
    }

    private Uncertainty[] moved(Uncertainty link) {
        return Arrays.stream(off).map(error -> error.and(link)).toArray(Uncertainty[]::new);
    }

    private static Uncertainty tighter(Uncertainty a, Uncertainty b) {
        return b.tighterThan(a) ? b : a;
    }

    private static double[][] copy(double[][] matrix) {
        return Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
    }

    private static Uncertainty[][] grown(Uncertainty[][] matrix, int size) {
        Uncertainty[][] result = new Uncertainty[size][size];
        IntStream.range(0, size).forEach(i -> Arrays.fill(result[i], Uncertainty.EXACT));
        for (int i = 0; i < matrix.length; i++) {
            System.arraycopy(matrix[i], 0, result[i], 0, matrix.length);
        }
        return result;
    }
}
