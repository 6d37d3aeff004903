package everyblade.spi;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A way in.
 *
 * @param id unique within the engine model
 * @param name what people call it
 * @param kind plug, igniter, nozzle, inlet or panel
 * @param clock where it sits, degrees; empty if all round
 * @param x where it sits along the axis, mm; empty if not stated
 * @param through what is passed on the way in, outermost first
 */
public record Port(String id, String name, Kind kind, OptionalDouble clock, OptionalDouble x, List<Opening> through) {

    /** What sort of way in. */
    public enum Kind {
        PLUG,
        IGNITER,
        NOZZLE,
        INLET,
        PANEL;

        /** The word used in engine models. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    /**
     * One opening on the way.
     *
     * @param what what it is
     * @param diameter what passes through it, mm
     */
    public record Opening(String what, double diameter) {}

    /** One that sits at a clock angle, in degrees, and a place along the axis, in mm. */
    public static Port at(String id, String name, Kind kind, double clock, double x, List<Opening> through) {
        return new Port(id, name, kind, OptionalDouble.of(clock), OptionalDouble.of(x), through);
    }

    public Port {
        through = List.copyOf(through);
    }
}
