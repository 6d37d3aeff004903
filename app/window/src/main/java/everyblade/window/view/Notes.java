package everyblade.window.view;

import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One thing that someone said of the parts themselves, or left open.
 *
 * @param entry number of the entry that says so, or of the remark in the review
 * @param kind what sort of thing
 * @param text as it was said
 * @param cell where, if it is about a cell
 * @param verdict what the job's limits say of it, if it is a finding and there are any
 * @param closes how the entry begins that closes it; empty if nothing need
 */
public record Notes(int entry, Kind kind, String text, Optional<CellAt> cell, Optional<String> verdict, String closes) {

    /** What sort of thing. */
    public enum Kind {
        FINDING,
        /** To be looked at again. */
        RECHECK,
        /** A reviewer's question, open until answered. */
        SENT_BACK,
        /** A question, a repeat or something missing, open until settled. */
        QUESTION
    }

    /** What reviewers sent back; then all findings, and everything that is still open, in the order of the record. */
    public static List<Notes> of(JobState state, Words words) {
        Map<Integer, Judgement> judged = state.judged().stream()
                .collect(Collectors.toMap(judgement -> judgement.finding().entry(), Function.identity()));
        List<Notes> notes = new ArrayList<>();
        Question.of(state.review(), state.fold()).stream()
                .filter(Question::open)
                .map(question -> sentBack(state, question))
                .forEach(notes::add);
        for (Logged logged : state.fold().entries()) {
            boolean counts = !state.fold().isVoid(logged.number());
            boolean open = state.situation().ledger().questions().containsKey(logged.number());
            if (counts && (logged.entry() instanceof FindingEntry.Find || open)) {
                Kind kind = logged.entry() instanceof FindingEntry.Find
                        ? Kind.FINDING
                        : logged.entry() instanceof FindingEntry.Recheck ? Kind.RECHECK : Kind.QUESTION;
                notes.add(new Notes(
                        logged.number(),
                        kind,
                        logged.text(),
                        cell(state, logged.number()),
                        Optional.ofNullable(judged.get(logged.number())).map(known -> verdict(known, words)),
                        open ? "settle " + logged.number() + " because " : ""));
            }
        }
        return notes;
    }

    private static Notes sentBack(JobState state, Question question) {
        ReviewRemark asked = question.asked();
        return new Notes(
                asked.number(),
                Kind.SENT_BACK,
                asked.text()
                        + asked.place().map(place -> " (" + place.words() + ")").orElse("") + ", " + asked.by(),
                asked.place().flatMap(place -> cell(state, place)),
                Optional.empty(),
                question.answer());
    }

    /** The first cell of a place; empty if the engine has no such place. */
    static Optional<CellAt> cell(JobState state, ReviewedPlace place) {
        try {
            long zones = place.zones(state.situation().engine()).bits();
            return Optional.of(new CellAt(place.row(), place.first(), Long.numberOfTrailingZeros(zones)));
        } catch (Refusal noSuchPlace) {
            return Optional.empty();
        }
    }

    /** The verdict, and of what decides it the rule and its outcome. */
    private static String verdict(Judgement judgement, Words words) {
        return words.say(judgement.verdict())
                + judgement
                        .decisive()
                        .map(ruling -> " (" + ruling.rule().id() + "): " + words.say(ruling.outcome()))
                        .orElse("");
    }

    /** Where an entry says that something is; empty if it says so of no cell. */
    static Optional<CellAt> cell(JobState state, int entry) {
        return state.situation().ledger().remarks().stream()
                .filter(remark -> remark.entry() == entry)
                .findFirst()
                .map(Notes::first);
    }

    private static CellAt first(Remark remark) {
        return new CellAt(
                remark.row(),
                remark.airfoils().nextSetBit(0) + 1,
                Long.numberOfTrailingZeros(remark.zones().bits()));
    }
}
