package everyblade.picture.report;

import everyblade.core.finding.review.ReviewRemark;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the report says of the record beside its entries; the same record always has the same facts.
 *
 * @param serial number of the engine
 * @param task what was to be done, in words
 * @param by who started the job
 * @param at when, UTC
 * @param settings what counts as seen, by name, each in the unit of its name
 * @param previous the job that this one is compared with
 * @param modelHash hash of the frozen engine model, hexadecimal digits
 * @param head hash of the journal's last line, hexadecimal digits
 * @param doubts what is wrong with the record itself, such as a picture that is not the one that was kept; a line each
 * @param review what reviewers said of the record
 * @param signatures of the record, in their order
 */
public record ReportFacts(
        String serial,
        String task,
        String by,
        Instant at,
        SortedMap<String, BigDecimal> settings,
        Optional<String> previous,
        String modelHash,
        String head,
        List<String> doubts,
        List<ReviewRemark> review,
        List<SignedAccount> signatures) {

    /** Of a record that nothing is wrong with, and nobody reviewed or signed. */
    public ReportFacts(
            String serial,
            String task,
            String by,
            Instant at,
            SortedMap<String, BigDecimal> settings,
            Optional<String> previous,
            String modelHash,
            String head) {
        this(serial, task, by, at, settings, previous, modelHash, head, List.of(), List.of(), List.of());
    }

    public ReportFacts {
        doubts = List.copyOf(doubts);
        review = List.copyOf(review);
        signatures = List.copyOf(signatures);
        settings = Collections.unmodifiableSortedMap(new TreeMap<>(settings));
    }
}
