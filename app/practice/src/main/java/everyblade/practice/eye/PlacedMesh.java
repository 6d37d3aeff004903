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
public record PlacedMesh(Solid solid, double clock, int owner, int seed, float grime, List<Trace> traces) {

    public PlacedMesh {
        traces = List.copyOf(traces);
    }

    /** One that nothing has happened to. */
    public PlacedMesh(Solid solid, double clock, int owner) {
        this(solid, clock, owner, owner, 0, List.of());
    }

    boolean isCut() {
        return traces.stream().anyMatch(Trace::cuts);
    }

    /** How far a place of the engine lies from it, mm; not nearer than {@code within} if it is told as that. */
    public double distance(double x, double y, double z, double within) {
        double sine = StrictMath.sin(clock);
        double cosine = StrictMath.cos(clock);
        return solid.distance(x, y * cosine - z * sine, y * sine + z * cosine, within);
    }
}
