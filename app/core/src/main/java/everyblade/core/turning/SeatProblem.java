package everyblade.core.turning;

import everyblade.fact.Fact;
import java.util.List;
import java.util.Optional;

/** Why the scope tip cannot be where an entry says, or the shaft be turned at that pad. */
sealed interface SeatProblem extends Fact {

    /** What an entry may name of an engine model. */
    enum Named {
        VIEW,
        SCOPE_TIP,
        STATION,
        PAD,
        ROW
    }

    /**
     * No view is in use.
     *
     * @param out whether the scope was taken out, so that one was in use before
     * @param such a view of this engine model, if it has any
     */
    record NoView(boolean out, Optional<String> such) implements SeatProblem {}

    /**
     * The engine model has none of this name.
     *
     * @param near the name that was most likely meant
     * @param there all names
     */
    record NotThere(Named what, String said, Optional<String> near, List<String> there) implements SeatProblem {}

    /** The vanes of a row have no position of this name; as {@link NotThere}. */
    record NoPosition(String row, String said, Optional<String> near, List<String> there) implements SeatProblem {}

    /** No metal temperature was read. */
    record NotMeasured(double hottest) implements SeatProblem {}

    /** The metal is hotter than the scope tip bears; °C. */
    record TooHot(double celsius, double hottest) implements SeatProblem {}

    /** More than one spool has a pad of this name. */
    record SeveralSpools(String pad) implements SeatProblem {}

    /** The scope tip was drawn clear of a station that lies among what turns. */
    record DrawnClear(String station) implements SeatProblem {}

    /** Turning is refused where the scope tip stands closer to what turns than the margin; mm. */
    record TooClose(String station, double clearance, double margin) implements SeatProblem {}
}
