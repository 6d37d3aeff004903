package everyblade.practice.drill;

import everyblade.practice.drill.Hands.Moment;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

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
     * @param entries how many entries the record had
     * @param event what happened then beside a movement
     * @param tools what the tool at each spool was turned since its count was last set to zero, degrees of the shaft; of
     *     those that were turned
     */
    public record Sample(long millis, Moment moment, int entries, Optional<Event> event, Map<String, Double> tools) {

        public Sample {
            tools = Map.copyOf(tools);
        }

        /** One of no turned tool. */
        public Sample(long millis, Moment moment, int entries, Optional<Event> event) {
            this(millis, moment, entries, event, Map.of());
        }

        /** A movement only. */
        public Sample(long millis, Moment moment, int entries) {
            this(millis, moment, entries, Optional.empty());
        }
    }

    /** What happened. */
    public sealed interface Event {}

    /** Blades of a row took the tip off. */
    public record TipLost(String row) implements Event {}

    /**
     * The trainee was told of damage that had gone by without a call.
     *
     * @param harm its index in the truth
     */
    public record ToldOf(int harm) implements Event {}

    public TipTrack {
        samples = List.copyOf(samples);
    }

    /** How long a sample stood, seconds; the last one did not, nor one at which the tip was lost. */
    public double seconds(int index) {
        return index + 1 < samples.size() && lost(samples.get(index)).isEmpty()
                ? (samples.get(index + 1).millis() - samples.get(index).millis()) / 1000.0
                : 0;
    }

    /** How long the whole took, seconds. */
    public double seconds() {
        return samples.isEmpty()
                ? 0
                : (samples.get(samples.size() - 1).millis() - samples.get(0).millis()) / 1000.0;
    }

    /** When an entry was made, in milliseconds of the drill; empty if nothing was sampled after it. */
    public OptionalLong when(int entry) {
        return samples.stream()
                .filter(sample -> sample.entries() >= entry)
                .mapToLong(Sample::millis)
                .findFirst();
    }

    /** The rows whose blades took the tip off, each time. */
    public List<String> lost() {
        return samples.stream()
                .flatMap(sample -> lost(sample).stream())
                .map(TipLost::row)
                .toList();
    }

    private static Optional<TipLost> lost(Sample sample) {
        return sample.event().filter(TipLost.class::isInstance).map(TipLost.class::cast);
    }

    /** The harms of which the trainee was told, by their index in the truth, and how many entries there were by then. */
    public Map<Integer, Integer> told() {
        Map<Integer, Integer> told = new TreeMap<>();
        for (Sample sample : samples) {
            sample.event()
                    .filter(ToldOf.class::isInstance)
                    .ifPresent(event -> told.putIfAbsent(((ToldOf) event).harm(), sample.entries()));
        }
        return told;
    }
}
