package everyblade.core.finding.closing;

import everyblade.fact.Fact;
import java.util.List;

/** What the record itself leaves open. */
public sealed interface RecordLack extends Fact {

    record HandedOver(String to) implements RecordLack {}

    /** @param facts names of those that are missing */
    record NotStated(List<String> facts) implements RecordLack {

        public NotStated {
            facts = List.copyOf(facts);
        }
    }

    /** @param review number of the remark */
    record Asked(String by, int review, String text) implements RecordLack {}
}
