package everyblade.practice.eye;

import java.util.List;

/**
 * A solid as it stands at one moment.
 *
 * @param solid that stands there
 * @param clock angle by which it is turned from clock 0, clockwise, radians
 * @param owner a number of the caller's choice, by which it knows what this is
 * @param seed of the grain that tells it from others alike
 * @param grime 0 clean to 1 dirty
 * @param traces of what happened to it
 */
public record Placed(Solid solid, double clock, int owner, int seed, float grime, List<Trace> traces) {

    public Placed {
        traces = List.copyOf(traces);
    }

    /** One that nothing has happened to. */
    public Placed(Solid solid, double clock, int owner) {
        this(solid, clock, owner, owner, 0, List.of());
    }

    boolean isCut() {
        return traces.stream().anyMatch(Trace::cuts);
    }
}
