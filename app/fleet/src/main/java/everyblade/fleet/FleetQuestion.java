package everyblade.fleet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be asked of a shop's fleet. */
public enum FleetQuestion {
    /** Blades of which the same zones were not seen at the last two inspections of their engine. */
    UNSEEN_TWICE,
    /** Findings that were larger at the last inspection than at the one before, with their sizes then and now. */
    GROWTH,
    /** Gaps that are left in many jobs, by model and view: the station to improve. */
    RECURRING_GAPS,
    /** What is open, by site and age. */
    OPEN,
    /** Repeat inspections, the soonest first. */
    DUE,
    /** Each engine's rows and how much of them was seen at the last inspection, and its age. */
    ENGINES,
    /** Each inspection of each engine in the order of time, with what was seen, left and found: how it went over the years. */
    COURSE;

    /** As it is said on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The question of this word. */
    public static Optional<FleetQuestion> of(String word) {
        return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /** How it is asked of the database. */
    String sql() {
        try (InputStream in = FleetQuestion.class.getResourceAsStream("question/" + word() + ".sql")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException impossible) {
            throw new IllegalStateException("it lies beside this class", impossible);
        }
    }
}
