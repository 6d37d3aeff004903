package everyblade.core.finding.closing;

import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.review.Question;
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
                        new RecordLack.Asked(
                                question.asked().by(),
                                question.asked().number(),
                                question.asked().text().strip()),
                        question.asked().place().map(place -> new Where.AsSaid(place.words())),
                        Optional.of(new ToDo.Reply(question.answer().strip())),
                        question.answer(),
                        Optional.empty(),
                        question.asked().place()))
                .toList();
    }
}
