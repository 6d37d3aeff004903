package everyblade.core.finding.closing;

import everyblade.core.coverage.Coverage;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Fold;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Everything that is open in a record; with nothing in it the record may be closed.
 *
 * @param items what can do most harm first, each kind in the order in which it is to be closed
 * @param accepted what was accepted as not seen, and why; not open, but told with it, unless no reason can be read
 */
public record ClosingList(List<OpenItem> items, List<Accepted> accepted) {

    /** Facts that every record must have, whatever the limits ask for besides. */
    public static final List<String> FACTS = List.of("hours", "cycles", "position", "manual", "revision");

    public ClosingList {
        items = List.copyOf(items);
        accepted = List.copyOf(accepted);
    }

    /**
     * Cells that a person accepted as not seen.
     *
     * @param entry that says so
     * @param what the cells, in words
     * @param reason that was given
     * @param by whom
     */
    public record Accepted(int entry, String what, String reason, String by) {

        private static final Pattern WORD = Pattern.compile("\\p{L}{3}");

        /** Whether the reason has a word in it that another person can read. */
        boolean saysWhy() {
            return WORD.matcher(reason).find();
        }
    }

    /** The list of a record that nobody reviewed. */
    public static ClosingList of(Fold fold, Coverage coverage, Optional<Limits> limits, List<Judgement> judged) {
        return of(fold, coverage, limits, judged, List.of());
    }

    /**
     * The list of a record.
     *
     * @param coverage of the fold's situation
     * @param limits that findings are judged by
     * @param judged the judgement of each finding by these limits; none without limits
     * @param review what reviewers said of it
     */
    public static ClosingList of(
            Fold fold, Coverage coverage, Optional<Limits> limits, List<Judgement> judged, List<ReviewRemark> review) {
        List<Gap> gaps = Gaps.of(coverage);
        List<OpenItem> items = new ArrayList<>(new OpenThings(fold).items());
        items.addAll(new OpenPorts(fold).items());
        items.addAll(new OpenFindings(fold, limits.isPresent(), judged).items());
        items.addAll(new OpenReview(Question.of(review, fold)).items());
        items.addAll(new OpenSeeing(fold, gaps).items());
        Set<String> facts = new LinkedHashSet<>(FACTS);
        limits.ifPresent(known -> facts.addAll(known.facts()));
        items.addAll(new OpenRecord(fold, facts).items());
        items.addAll(new TakenOut(fold).items());
        Map<Boolean, List<Accepted>> accepted =
                OpenSeeing.accepted(fold).stream().collect(Collectors.partitioningBy(Accepted::saysWhy));
        accepted.get(false).forEach(each -> items.add(OpenSeeing.unexplained(fold, each)));
        items.sort(Comparator.comparing(OpenItem::kind));
        return new ClosingList(items, accepted.get(true));
    }

    /** Whether anything is open. */
    public boolean any() {
        return !items.isEmpty();
    }

    /** The open things of one kind. */
    public List<OpenItem> of(OpenItem.Kind kind) {
        return items.stream().filter(item -> item.kind() == kind).toList();
    }
}
