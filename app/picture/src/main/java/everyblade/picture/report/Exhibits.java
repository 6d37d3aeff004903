package everyblade.picture.report;

import everyblade.core.finding.Limits;
import java.util.List;
import java.util.Optional;

/**
 * What the report shows beside the entries.
 *
 * @param limits by which findings are judged, as frozen into the job
 * @param photos that entries name, in their order
 * @param last record of the same engine, to compare with
 */
public record Exhibits(Optional<Limits> limits, List<ShownPhoto> photos, Optional<LastRecord> last) {

    /** Nothing beside the entries. */
    public static final Exhibits NONE = new Exhibits(Optional.empty(), List.of(), Optional.empty());

    public Exhibits {
        photos = List.copyOf(photos);
    }
}
