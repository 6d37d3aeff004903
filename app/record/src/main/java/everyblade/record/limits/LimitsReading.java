package everyblade.record.limits;

import everyblade.core.finding.Limits;
import everyblade.json.Problem;
import java.util.List;

/** What came of reading a file of limits: the limits, or why there are none. */
public sealed interface LimitsReading {

    /**
     * Limits to judge by.
     *
     * @param warnings in order of place
     */
    record Read(Limits limits, List<Problem> warnings) implements LimitsReading {
        public Read {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * No limits.
     *
     * @param problems at least one error; errors before warnings, each in order of place
     */
    record Unreadable(List<Problem> problems) implements LimitsReading {
        public Unreadable {
            problems = List.copyOf(problems);
        }
    }
}
