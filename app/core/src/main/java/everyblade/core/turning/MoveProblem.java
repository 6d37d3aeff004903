package everyblade.core.turning;

import everyblade.fact.Fact;
import everyblade.spi.Direction;
import java.util.Optional;

/** Why nothing can be turned or drawn round as an entry says. Angles are as they are typed. */
sealed interface MoveProblem extends Fact {

    /** What says all by itself. */
    enum Flaw implements MoveProblem {
        /** The scope tip is among the blades. */
        AMONG_BLADES,
        /** More than a thousand turns. */
        TOO_FAR,
        /** Blades to be counted, and no row in view. */
        NO_ROW
    }

    /** A round of a row that does not turn. */
    record StandsStill(String row) implements MoveProblem {}

    /** A shaft angle of a row that does not turn. */
    record NoShaftAngle(String row) implements MoveProblem {}

    /** The scope tip drawn round a row that turns. */
    record Turns(String row) implements MoveProblem {}

    /** @param spool its name */
    record OneWayOnly(String pad, String spool, Direction only, Direction asked) implements MoveProblem {}

    /** A round is turned in the normal direction of its spool, and may not be at this pad. */
    record NoRound(String pad, String spool, Direction normal) implements MoveProblem {}

    /** An angle that is as far one way as the other. */
    record Opposite(String angle) implements MoveProblem {}

    /**
     * Nothing tells which shaft turns.
     *
     * @param noView whether no view is in use, rather than one of a row that stands still
     * @param such a pad, if the engine model has any
     */
    record WhichShaft(boolean noView, Optional<String> such) implements MoveProblem {}
}
