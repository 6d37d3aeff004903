package everyblade.core.finding.closing;

import everyblade.core.coverage.Coverage;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import everyblade.core.finding.photo.Taken;
import everyblade.core.finding.review.Question;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Fold;
import everyblade.fact.Fact;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that is open in a record; with nothing in it the record may be closed.
 *
 * @param items what can do most harm first, each kind in the order in which it is to be closed
 * @param told what is not open, or no longer, and that whoever signs must know all the same
 * @param accepted what was accepted as not seen, and why; not open, but told with it, unless no reason can be read or it is
 *     not so
 * @param behind what stands behind it where nothing is open
 */
public record ClosingList(List<OpenItem> items, List<OpenItem> told, List<Accepted> accepted, Behind behind) {

    /** Facts that every record must have, whatever the limits ask for besides. */
    public static final List<String> FACTS = List.of("hours", "cycles", "position", "manual", "revision");

    public ClosingList {
        items = List.copyOf(items);
        told = List.copyOf(told);
        accepted = List.copyOf(accepted);
    }

    /**
     * Cells that a person accepted as not seen.
     *
     * @param entry that says so
     * @param what the cells
     * @param reason that was given
     * @param by whom
     * @param against what views can show of them
     */
    public record Accepted(int entry, Where what, String reason, String by, Acceptance against) {

        /** In one line. */
        public Fact line() {
            return new Line(what, reason, entry, by, against.told());
        }

        /** @param against what views can show of it */
        record Line(Where what, String reason, int entry, String by, Fact against) implements Fact {}
    }

    /** The list of a record of which there is nothing but entries. */
    public static ClosingList of(Fold fold, Coverage coverage, Optional<Limits> limits, List<Judgement> judged) {
        return of(fold, coverage, limits, judged, Beside.NOTHING);
    }

    /**
     * The list of a record with all that it holds.
     *
     * @param coverage of the fold's situation
     * @param limits that findings are judged by
     * @param judged the judgement of each finding by these limits; none without limits
     * @param beside what it holds beside its entries
     */
    public static ClosingList of(
            Fold fold, Coverage coverage, Optional<Limits> limits, List<Judgement> judged, Beside beside) {
        List<Gap> gaps = Gaps.of(coverage);
        List<OpenItem> items = new ArrayList<>(new OpenThings(fold).items());
        items.addAll(new OpenPorts(fold).items());
        items.addAll(new OpenFindings(fold, limits.isPresent(), judged).items());
        items.addAll(new OpenReview(Question.of(beside.review(), fold)).items());
        items.addAll(new OpenSeeing(fold, gaps).items());
        Set<String> facts = new LinkedHashSet<>(FACTS);
        limits.ifPresent(known -> facts.addAll(known.facts()));
        items.addAll(new OpenRecord(fold, facts).items());
        beside.last().ifPresent(last -> items.addAll(new LastTime(fold, coverage, last).items()));
        items.addAll(new OpenAnswers(fold).items());
        items.addAll(new OpenCounting(fold).items());
        List<OpenItem> taken = new TakenOut(fold).items();
        items.addAll(taken);
        items.addAll(new OpenTimes(fold, coverage).items());
        items.addAll(new OpenPictures(fold, Taken.of(fold, beside.pictures())).items());
        List<Accepted> accepted = new ArrayList<>();
        for (Accepted each : OpenAccepting.accepted(fold, coverage)) {
            Optional<OpenItem> doubted = new OpenAccepting(fold).doubted(each);
            doubted.ifPresent(items::add);
            if (doubted.isEmpty()) {
                accepted.add(each);
            }
        }
        items.sort(Comparator.comparing(OpenItem::kind));
        return new ClosingList(
                items.stream().filter(OpenItem::open).toList(),
                items.stream().filter(item -> !item.open()).toList(),
                accepted,
                Behind.of(coverage, TakenOut.voided(taken)));
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
