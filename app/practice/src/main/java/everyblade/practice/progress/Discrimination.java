package everyblade.practice.progress;

import everyblade.practice.account.Debrief.Trials;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How well airfoils with damage are told from those without, and which way somebody leans, by signal detection theory (D. M.
 * Green, J. A. Swets, Signal Detection Theory and Psychophysics, 1966): with shares corrected by half a trial, so that none
 * is 0 or 1 (M. J. Hautus, Behavior Research Methods 27 (1995) 46–51).
 *
 * @param sensitivity d′; 0 is guessing, 1 is fair, 3 is nearly always right
 * @param criterion above 0 for somebody who calls too little, below 0 for somebody who calls too much
 */
public record Discrimination(double sensitivity, double criterion) {

    /** Of trials; empty without any of one sort. */
    public static Optional<Discrimination> of(Trials trials) {
        int damaged = trials.hits() + trials.misses();
        int sound = trials.falseAlarms() + trials.rejections();
        if (damaged == 0 || sound == 0) {
            return Optional.empty();
        }
        NormalDistribution normal = new NormalDistribution();
        double hit = normal.inverseCumulativeProbability((trials.hits() + 0.5) / (damaged + 1));
        double alarm = normal.inverseCumulativeProbability((trials.falseAlarms() + 0.5) / (sound + 1));
        return Optional.of(new Discrimination(hit - alarm, -(hit + alarm) / 2));
    }
}
