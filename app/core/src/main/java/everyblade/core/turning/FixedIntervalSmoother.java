package everyblade.core.turning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The fixes of a track with every later sighting taken into account.
 *
 * <p>Runs the fixes backwards (Bryson and Frazier's form of the fixed-interval smoother, which divides by no matrix and
 * so bears moves and sightings without any error), as far back as somebody asks: who asks where things stand now need not
 * wait for the whole past.
 */
final class FixedIntervalSmoother {

    private final List<KalmanUpdate> fixes;
    /** Of each fix from the last one back. */
    private final List<Double> corrections = new ArrayList<>();
    /** The last fix of the era of each fix, from the last one back. */
    private final List<KalmanUpdate> ends = new ArrayList<>();

    private final Map<Integer, Adjoint> adjoints = new HashMap<>();
    private final Map<Integer, KalmanUpdate> last = new HashMap<>();

    FixedIntervalSmoother(List<KalmanUpdate> fixes) {
        this.fixes = fixes;
    }

    /** The adjoint of a state of the angle and these frames. */
    private record Adjoint(List<String> frames, double[] values) {

        /** The same for other frames; what comes later says nothing of those that it does not know. */
        double[] of(List<String> others) {
            if (others.equals(frames)) {
                return values;
            }
            double[] all = new double[others.size() + 1];
            all[0] = values[0];
            for (int i = 0; i < others.size(); i++) {
                int frame = frames.indexOf(others.get(i));
                all[i + 1] = frame < 0 ? 0 : values[frame + 1];
            }
            return all;
        }
    }

    /** Correction of the counted angle at a fix, degrees. */
    double correction(int fix) {
        return corrections.get(backTo(fix));
    }

    /** Correction of the origin of a row that a fix knows, degrees. */
    double offset(int fix, String row) {
        KalmanUpdate end = ends.get(backTo(fix));
        return end.state()[end.frame(row) + 1];
    }

    /** How far from the last one a fix lies. */
    private synchronized int backTo(int index) {
        while (corrections.size() < fixes.size() - index) {
            KalmanUpdate fix = fixes.get(fixes.size() - 1 - corrections.size());
            ends.add(last.computeIfAbsent(fix.era(), era -> fix));
            Adjoint later = adjoints.get(fix.era());
            double[] adjoint = later == null ? new double[fix.state().length] : later.of(fix.frames());
            double correction = fix.state()[0];
            for (int j = 0; j < adjoint.length; j++) {
                correction -= fix.covariance()[0][j] * adjoint[j];
            }
            adjoints.put(fix.era(), before(fix, adjoint));
            corrections.add(correction);
        }
        return fixes.size() - 1 - index;
    }

    /** The adjoint before a fix, given the one after it. */
    private static Adjoint before(KalmanUpdate fix, double[] after) {
        int known = fix.frames().size() - (fix.step() == KalmanUpdate.Step.FRAME ? 1 : 0);
        return new Adjoint(fix.frames().subList(0, known), values(fix, after));
    }

    private static double[] values(KalmanUpdate fix, double[] after) {
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
