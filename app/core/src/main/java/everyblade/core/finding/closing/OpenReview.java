package everyblade.core.finding.closing;

import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewedPlace;
import java.util.List;
import java.util.Optional;

/**
 * What a reviewer sent back and nobody answered.
 *
 * @param questions all that were asked
 */
record OpenReview(List<Question> questions) {

    List<OpenItem> items() {
        return questions.stream()
                .filter(Question::open)
                .map(question -> new OpenItem(
                        Kind.SENT_BACK,
                        Optional.empty(),
                        question.asked().by() + " asks in review "
                                + question.asked().number() + ": "
                                + question.asked().text().strip(),
                        question.asked().place().map(ReviewedPlace::words).orElse(""),
                        "look, then answer: " + question.answer() + "…",
                        question.answer(),
                        Optional.empty(),
                        question.asked().place()))
                .toList();
    }
}
