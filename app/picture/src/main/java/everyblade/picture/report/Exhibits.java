package everyblade.picture.report;

import everyblade.core.finding.Limits;
import java.util.Optional;

/**
 * What the report shows beside the entries.
 *
 * @param limits by which findings are judged, as frozen into the job
 */
public record Exhibits(Optional<Limits> limits) {

    /** Nothing beside the entries. */
    public static final Exhibits NONE = new Exhibits(Optional.empty());
}
