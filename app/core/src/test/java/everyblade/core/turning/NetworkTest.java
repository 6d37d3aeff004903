package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class NetworkTest {

    private static Sighting sighting(Track track, String row, double origin, double plusMinus) {
        return new Sighting(1, track.here(), row, Turn.ofDegrees(origin).wrapped(), 1, plusMinus, 0, 40);
    }

    private static double best(SmoothedTrack placing, String row, int stop) {
        Reckoning.Estimate estimate = placing.estimates(row, 0, stop).get(0);
        return estimate.counted().degrees() + estimate.correction();
    }

    private static double half(SmoothedTrack placing, String row, int stop) {
        SmoothedTrack.Place place = placing.at(row, 0, stop).place().orElseThrow();
        return place.high().minus(place.low()).degrees() / 2;
    }

    /** Compass rule (Bowditch), as in any text on surveying: equal variance a degree. */
    @Nested
    class ATraverseRoundTheShaft {

        private static final double[] MOVES = {45, 90, 60, 75, 87};
        private static final double[] ADJUSTED = {45.378151, 90.756303, 60.504202, 75.630252, 87.731092};

        private SmoothedTrack closed(boolean exactMoves) {
            Track track = Track.start("shaft");
            track = track.identified(sighting(track, "c1", 0, 0));
            for (double move : MOVES) {
                double plusMinus = exactMoves ? 0 : Math.sqrt(move) / 10;
                track = track.moved(1, Turn.ofDegrees(move), Uncertainty.of(plusMinus));
            }
            return SmoothedTrack.of(track.identified(sighting(track, "c1", 360, 0)));
        }

        @Test
        void sharesItsMisclosureInProportionToTheVariance() {
            SmoothedTrack placing = closed(false);
            for (int i = 0; i < MOVES.length; i++) {
                assertThat(best(placing, "c1", i + 1) - best(placing, "c1", i)).isCloseTo(ADJUSTED[i], within(1e-6));
            }
        }

        @Test
        void sharesItInProportionToTheTurningWhereNoErrorIsStated() {
            SmoothedTrack placing = closed(true);
            for (int i = 0; i < MOVES.length; i++) {
                assertThat(best(placing, "c1", i + 1) - best(placing, "c1", i)).isCloseTo(ADJUSTED[i], within(1e-6));
            }
        }
    }

    /** n moves of ± σ grow to ± σ √n, and to σ √(k (n − k) / n) within once closed; 28 moves of 0.5°. */
    @Nested
    class TwentyEightMovesOfHalfADegree {

        private Track moved() {
            Track track = Track.start("shaft");
            track = track.identified(sighting(track, "c1", 0, 0));
            for (int i = 0; i < 28; i++) {
                track = track.moved(1, Turn.ofDegrees(360.0 / 28), Uncertainty.of(0.5));
            }
            return track;
        }

        @Test
        void growWithTheRootOfTheirNumber() {
            assertThat(half(SmoothedTrack.of(moved()), "c1", 28)).isCloseTo(2.6458, within(5e-5));
        }

        @Test
        void areBestKnownAtTheEndsOnceClosed() {
            Track track = moved();
            SmoothedTrack placing = SmoothedTrack.of(track.identified(sighting(track, "c1", 0, 0)));
            assertThat(half(placing, "c1", 14)).isCloseTo(1.3229, within(5e-5));
            assertThat(half(placing, "c1", 28)).isZero();
        }
    }

    /** At σ = 0.5° a move, so ± 1° at 95 %, two σ reach half a pitch with the 42nd move of 28 blades, the 4th of 94. */
    @Test
    void theErrorReachesHalfAPitchAfterAsManyMovesAsComputed() {
        assertThat(Advice.movesLeft(Uncertainty.EXACT, Uncertainty.of(1), 360.0 / 28 / 2))
                .isEqualTo(42);
        assertThat(Advice.movesLeft(Uncertainty.EXACT, Uncertainty.of(1), 360.0 / 94 / 2))
                .isEqualTo(4);
    }

    @Test
    void movesThatReachItExactlyReachItAndSuchAsAddNothingNeverDo() {
        assertThat(Advice.movesLeft(Uncertainty.EXACT, Uncertainty.of(1), 1)).isEqualTo(1);
        assertThat(Advice.movesLeft(Uncertainty.of(1), Uncertainty.of(1), 1)).isZero();
        assertThat(Advice.movesLeft(Uncertainty.EXACT, Uncertainty.EXACT, 1)).isEqualTo(1000);
    }

    /** A random network: moves with play and one-sided errors, sightings of several rows, some before others. */
    private static final class RandomNetwork {

        private final SplittableRandom random;
        private final int rows;
        private final List<double[]> equations = new ArrayList<>();
        private final List<Double> observed = new ArrayList<>();
        private final List<Integer> firstSeen = new ArrayList<>();
        private final int moves;
        private Track track = Track.start("shaft");
        private final BitSet seen = new BitSet();
        private final BitSet slips = new BitSet();
        private final NavigableMap<Integer, Double> settings = new TreeMap<>(Map.of(0, 0.0));

        /** @param slipping whether the rotor now and then turns by an unknown angle, until a row that was
         *     seen before is seen again, and the dial is set to any angle, which says nothing of rows */
        RandomNetwork(long seed, boolean slipping) {
            random = new SplittableRandom(seed);
            rows = 1 + random.nextInt(3);
            moves = 4 + random.nextInt(20);
            for (int row = 0; row < rows; row++) {
                firstSeen.add(-1);
            }
            double truth = 0;
            for (int stop = 0; stop <= moves; stop++) {
                boolean slipped = slipping && stop > 1 && random.nextInt(4) == 0;
                if (slipped) {
                    truth += 360 * random.nextDouble();
                    track = track.slipped(1);
                    slips.set(stop);
                    sight(stop, seenBefore(), truth);
                } else if (stop > 0) {
                    truth += move(stop);
                }
                if (slipping && random.nextInt(4) == 0) {
                    settings.put(stop, Math.rint(360 * random.nextDouble()));
                    track = track.labelled(1, Turn.ofDegrees(settings.get(stop)));
                }
                for (int row = 0; row < rows; row++) {
                    if (stop == 0 && row == 0 || random.nextInt(4) == 0) {
                        sight(stop, row, truth);
                    }
                }
            }
        }

        private int seenBefore() {
            int row = random.nextInt(rows);
            while (firstSeen.get(row) < 0) {
                row = random.nextInt(rows);
            }
            return row;
        }

        private double move(int stop) {
            double counted = Math.rint((60 * random.nextDouble() - 15) * 1e5) / 1e5;
            double play = 0.1 + random.nextDouble();
            double minus = random.nextInt(3) == 0 ? random.nextDouble() : 0;
            double plus = random.nextInt(5) == 0 ? random.nextDouble() / 2 : 0;
            track = track.moved(1, Turn.ofDegrees(counted), new Uncertainty(play * play, minus, plus));
            double[] equation = new double[moves + rows];
            equation[stop - 1] = 1;
            if (stop > 1) {
                equation[stop - 2] = -1;
            }
            double half = (minus + plus) / 2;
            add(equation, counted + (plus - minus) / 2, Math.sqrt(play * play + half * half));
            return counted + (random.nextDouble() - 0.5) * play - minus / 2;
        }

        private void sight(int stop, int row, double truth) {
            double plusMinus = 0.1 + random.nextDouble() / 2;
            double origin = Math.rint((50 * row + truth + (random.nextDouble() - 0.5) * plusMinus) * 1e5) / 1e5;
            track = track.identified(NetworkTest.sighting(track, "row " + row, origin, plusMinus));
            double[] equation = new double[moves + rows];
            if (stop > 0) {
                equation[stop - 1] = 1;
            }
            equation[moves + row] = 1;
            add(equation, origin, plusMinus);
            if (firstSeen.get(row) < 0) {
                firstSeen.set(row, stop);
            }
            seen.set(stop);
        }

        private void add(double[] equation, double value, double plusMinus) {
            for (int i = 0; i < equation.length; i++) {
                equation[i] /= plusMinus;
            }
            equations.add(equation);
            observed.add(value / plusMinus);
        }

        /** Whether moves alone lead from a stop to a later sighting; after the last one the counted angle stands. */
        boolean seenAfter(int stop) {
            int next = seen.nextSetBit(stop);
            int slip = slips.nextSetBit(stop + 1);
            return next >= 0 && (slip < 0 || next < slip);
        }

        /** The general solution: every stop after the first, then every row's offset; unseen rows are left at zero. */
        RealVector solved() {
            for (int row = 0; row < rows; row++) {
                if (firstSeen.get(row) < 0) {
                    double[] equation = new double[moves + rows];
                    equation[moves + row] = 1;
                    add(equation, 0, 1);
                }
            }
            return new QRDecomposition(new Array2DRowRealMatrix(equations.toArray(double[][]::new)))
                    .getSolver()
                    .solve(new ArrayRealVector(
                            observed.stream().mapToDouble(Double::doubleValue).toArray()));
        }
    }

    @Test
    void agreesWithAGeneralLeastSquaresSolutionOnAThousandNetworks() {
        assertThat(compared(1000, false)).isGreaterThan(10_000);
    }

    @Test
    void agreesWithItOverSlipsBetweenRowsThatAreSeenAgain() {
        assertThat(compared(300, true)).isGreaterThan(3_000);
    }

    /** The dial is turned with the rotor from where it was set, whatever is seen only later. */
    @Test
    void readsTheDialAsItTurnsFromWhereItWasSet() {
        int read = 0;
        for (int seed = 0; seed < 300; seed++) {
            RandomNetwork network = new RandomNetwork(seed, true);
            SmoothedTrack placing = SmoothedTrack.of(network.track);
            RealVector expected = network.solved();
            for (int stop = 0; stop <= network.moves; stop++) {
                if (!network.seenAfter(stop)) {
                    continue;
                }
                Map.Entry<Integer, Double> set = network.settings.floorEntry(stop);
                double turned = angle(expected, stop) - angle(expected, set.getKey());
                double off = placing.adjusted(stop).degrees() - set.getValue() - turned;
                assertThat(off - 360 * Math.rint(off / 360))
                        .as("network %d, stop %d, set at %d", seed, stop, set.getKey())
                        .isCloseTo(0, within(1e-6));
                read++;
            }
        }
        assertThat(read).isGreaterThan(2_000);
    }

    private static double angle(RealVector solved, int stop) {
        return stop == 0 ? 0 : solved.getEntry(stop - 1);
    }

    private static int compared(int networks, boolean slips) {
        int compared = 0;
        for (int seed = 0; seed < networks; seed++) {
            RandomNetwork network = new RandomNetwork(seed, slips);
            SmoothedTrack placing = SmoothedTrack.of(network.track);
            RealVector expected = network.solved();
            for (int row = 0; row < network.rows; row++) {
                for (int stop = network.firstSeen.get(row); stop >= 0 && stop <= network.moves; stop++) {
                    if (!network.seenAfter(stop)) {
                        continue;
                    }
                    double found = best(placing, "row " + row, stop);
                    double wanted = angle(expected, stop) + expected.getEntry(network.moves + row);
                    assertThat(found - 360 * Math.rint((found - wanted) / 360))
                            .as("network %d, row %d, stop %d", seed, row, stop)
                            .isCloseTo(wanted, within(1e-9));
                    compared++;
                }
            }
        }
        return compared;
    }
}
