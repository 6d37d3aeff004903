package everyblade.window.view;

import everyblade.core.finding.review.CellsThere;
import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.session.JobState;
import everyblade.session.job.ReviewText;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;

/**
 * Something that a reviewer said, with what the record has to say to it.
 *
 * @param said by whom, and what
 * @param beside what the record shows at its place, or what became of a question; empty if nothing
 * @param cell where it is on the map
 */
public record SaidLine(String said, String beside, Optional<CellAt> cell) {

    /** All that reviewers said, in their order. */
    public static List<SaidLine> of(JobState state, Words words) {
        List<Question> questions = Question.of(state.review(), state.fold());
        return state.review().stream()
                .map(remark -> of(state, remark, questions, words))
                .toList();
    }

    private static SaidLine of(JobState state, ReviewRemark remark, List<Question> questions, Words words) {
        Optional<String> became = questions.stream()
                .filter(question -> question.asked().equals(remark))
                .findFirst()
                .map(question -> ReviewText.state(question, words));
        Optional<String> there = Optional.of(remark)
                .filter(said -> said.what() == What.WANTED)
                .flatMap(ReviewRemark::place)
                .flatMap(place -> CellsThere.of(state.coverage(), place))
                .map(cells -> words.say(cells.told()));
        return new SaidLine(
                ReviewText.of(remark, words),
                became.or(() -> there).orElse(""),
                remark.place().flatMap(place -> Notes.cell(state, place)));
    }

    /** What a reviewer wanted to see before they knew what the technician says, without what the record shows. */
    public static List<SaidLine> blind(JobState state, Words words) {
        return state.review().stream()
                .filter(remark -> remark.what() == What.WANTED)
                .map(remark -> new SaidLine(
                        ReviewText.of(remark, words), "", remark.place().flatMap(place -> Notes.cell(state, place))))
                .toList();
    }
}
