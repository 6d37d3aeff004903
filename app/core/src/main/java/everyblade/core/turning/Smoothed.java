package everyblade.core.turning;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The fixes of a track with every later sighting taken into account.
 *
 * <p>Runs the fixes backwards (Bryson and Frazier's form of the fixed-interval smoother, which divides by no matrix and
 * so bears moves and sightings without any error).
 */
final class Smoothed {

    private final double[] corrections;
    /** The last state of the era of each fix. */
    private final double[][] states;

    private Smoothed(double[] corrections, double[][] states) {
        this.corrections = corrections;
        this.states = states;
    }

    static Smoothed of(List<Fix> fixes) {
        double[] corrections = new double[fixes.size()];
        double[][] states = new double[fixes.size()][];
        Map<Integer, double[]> adjoints = new HashMap<>();
        Map<Integer, double[]> ends = new HashMap<>();
        for (int i = fixes.size() - 1; i >= 0; i--) {
            Fix fix = fixes.get(i);
            states[i] = ends.computeIfAbsent(fix.era(), era -> fix.state());
            double[] adjoint = adjoints.computeIfAbsent(fix.era(), era -> new double[fix.state().length]);
            double correction = fix.state()[0];
            for (int j = 0; j < adjoint.length; j++) {
                correction -= fix.covariance()[0][j] * adjoint[j];
            }
            corrections[i] = correction;
            adjoints.put(fix.era(), before(fix, adjoint));
        }
        return new Smoothed(corrections, states);
    }

    /** Correction of the counted angle at a fix, degrees. */
    double correction(int fix) {
        return corrections[fix];
    }

    /** Correction of the origin of a frame that a fix knows, degrees. */
    double offset(int fix, int frame) {
        return states[fix][frame + 1];
    }

    /** The adjoint before a fix, given the one after it. */
    private static double[] before(Fix fix, double[] after) {
        int slot = fix.frame(fix.sighting().frame()) + 1;
        return switch (fix.step()) {
            case ERA -> new double[0];
            case FRAME -> {
                double[] before = Arrays.copyOf(after, after.length - 1);
                before[0] -= after[slot];
                yield before;
            }
            case ANGLE -> {
                double[] before = after.clone();
                before[slot] -= after[0];
                before[0] = 0;
                yield before;
            }
            case SHARED -> {
                double[] before = after.clone();
                if (fix.innovationVariance() > 0) {
                    double along = fix.innovation() / fix.innovationVariance();
                    for (int j = 0; j < after.length; j++) {
                        along += fix.gain()[j] * after[j];
                    }
                    before[0] -= along;
                    before[slot] -= along;
                }
                yield before;
            }
        };
    }
}
