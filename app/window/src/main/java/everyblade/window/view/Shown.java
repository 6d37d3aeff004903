package everyblade.window.view;

import everyblade.core.finding.closing.Behind;
import everyblade.session.JobState;
import everyblade.words.Words;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * All that the panels show of one state of a job, worked out before it reaches them.
 *
 * @param state the job
 * @param left what is left, most useful first
 * @param where where everything is
 * @param notes findings and what is open
 * @param cautions what to mind now
 * @param behind what stands behind it, if nothing is left
 */
public record Shown(
        JobState state,
        List<Left> left,
        Where where,
        List<Notes> notes,
        List<CautionsNow> cautions,
        Optional<Behind> behind) {

    public Shown {
        left = List.copyOf(left);
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
    }

    /** What is to be shown of a state; takes as long as finding the gaps. */
    public static Shown of(JobState state, Words words, ZoneId zone) {
        Left.Order order = state.open() ? Left.Order.AT_WORK : Left.Order.REVIEW;
        List<Left> left = Left.of(state.coverage(), order, words);
        return new Shown(
                state,
                left,
                Where.of(state, words, zone),
                Notes.of(state, words),
                CautionsNow.of(state, words),
                left.isEmpty() ? Optional.of(Behind.of(state.fold(), state.coverage())) : Optional.empty());
    }
}
