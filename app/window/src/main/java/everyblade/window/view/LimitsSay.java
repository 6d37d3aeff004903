package everyblade.window.view;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Refusal;
import everyblade.core.finding.Judging;
import everyblade.core.finding.Limits;
import everyblade.core.turning.Fold;
import everyblade.session.JobState;
import everyblade.session.Keeping;
import everyblade.session.job.Speech;
import everyblade.session.job.VerdictText;
import everyblade.words.Words;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What the job's limits say of a finding as it is typed, before it is kept; only ever what the limits say.
 *
 * @param headline their verdict, or why there is none
 * @param figures the rules that are on it, and what they compare
 * @param refused whether the finding cannot be kept as it is typed
 */
public record LimitsSay(String headline, List<String> figures, boolean refused) {

    public LimitsSay {
        figures = List.copyOf(figures);
    }

    /**
     * Of what a form says; nothing is written.
     *
     * @param at the time now
     */
    public static LimitsSay of(FindingForm form, Instant at, Words words) {
        JobState state = form.state();
        if (state.keeping() instanceof Keeping.ReadOnly readOnly) {
            return new LimitsSay(readOnly.reason(), List.of(), true);
        }
        try {
            Speech.Said said = state.speech().with(form.finding(), at, Optional.empty(), true, state::coverage);
            return state.limits()
                    .map(limits -> judged(limits, said, state.coverage(), words))
                    .orElseGet(() -> new LimitsSay(words.say("limits.none"), List.of(), false));
        } catch (Refusal refusal) {
            return new LimitsSay(words.say("limits.refused", words.say(refusal.why())), List.of(), true);
        }
    }

    private static LimitsSay judged(Limits limits, Speech.Said said, Coverage before, Words words) {
        Fold fold = said.after().fold();
        return Judging.of(limits, fold, before.after(fold.situation())).stream()
                .filter(judgement -> judgement.finding().entry() == said.number())
                .map(judgement ->
                        new LimitsSay(words.say(judgement.verdict()), VerdictText.rulings(judgement, words), false))
                .findFirst()
                .orElseThrow();
    }
}
