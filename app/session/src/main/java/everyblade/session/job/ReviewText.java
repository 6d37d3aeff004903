package everyblade.session.job;

import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.words.Words;
import java.util.Optional;

/** What reviewers said, in words, the same wherever it is told. */
public final class ReviewText {

    private ReviewText() {}

    /** A remark in one line, with who made it and of which entries. */
    public static String of(ReviewRemark remark, Words words) {
        return words.say(
                "review.told",
                remark.number(),
                remark.by(),
                remark.what(),
                remark.of(),
                Optional.of(remark.text()).filter(text -> !text.isEmpty()),
                remark.place().map(ReviewedPlace::words),
                remark.entries());
    }

    /** What became of a question. */
    public static String state(Question question, Words words) {
        if (question.withdrawn().isPresent()) {
            return words.say(
                    "review.state.withdrawn", question.withdrawn().get().number());
        }
        return question.answers().stream()
                .reduce((earlier, later) -> later)
                .map(answer -> words.say("review.state.answered", answer.number(), answer.by(), answer.text()))
                .orElseGet(
                        () -> words.say("review.state.open", question.answer().strip()));
    }
}
