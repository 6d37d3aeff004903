package everyblade.practice.drill;

import everyblade.practice.drill.Hands.Moment;
import java.util.List;

/**
 * How a scope tip and the rotors were moved, so that a drill can be seen again from the tip's eye.
 *
 * @param samples in the order of their times
 */
public record TipTrack(List<Sample> samples) {

    /**
     * One moment.
     *
     * @param millis since the drill was begun, pauses between sittings left out
     * @param moment how everything stood
     */
    public record Sample(long millis, Moment moment) {}

    public TipTrack {
        samples = List.copyOf(samples);
    }

    /** How long a sample stood, seconds; the last one did not. */
    public double seconds(int index) {
        return index + 1 < samples.size()
                ? (samples.get(index + 1).millis() - samples.get(index).millis()) / 1000.0
                : 0;
    }

    /** How long the whole took, seconds. */
    public double seconds() {
        return samples.isEmpty()
                ? 0
                : (samples.get(samples.size() - 1).millis() - samples.get(0).millis()) / 1000.0;
    }
}
