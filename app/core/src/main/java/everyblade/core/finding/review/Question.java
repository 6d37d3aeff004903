package everyblade.core.finding.review;

import everyblade.core.entry.RecordEntry;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A question that a reviewer sent back, open until the technician answers it or the reviewer takes it back. The answer is a
 * note in the journal, made after what was reviewed, such as {@code note review 3: looked again, it is a shadow}; void,
 * it answers nothing.
 *
 * @param asked the question
 * @param answers the notes that answer it, in their order
 * @param withdrawn what took it back
 */
public record Question(ReviewRemark asked, List<Logged> answers, Optional<ReviewRemark> withdrawn) {

    /** The number is that of the remark; an answer has a word in it that another person can read. */
    private static final Pattern ANSWER =
            Pattern.compile("(?is)\\s*review\\s+([0-9]{1,6})\\b\\W*(\\p{L}{2}.*|[0-9].*)");

    public Question {
        answers = List.copyOf(answers);
    }

    /** All questions among a record's remarks, in their order. */
    public static List<Question> of(List<ReviewRemark> remarks, Fold fold) {
        return remarks.stream()
                .filter(remark -> remark.what() == What.QUESTION)
                .map(asked -> new Question(asked, answers(asked, fold), withdrawn(asked, remarks)))
                .toList();
    }

    private static List<Logged> answers(ReviewRemark asked, Fold fold) {
        return fold.entries().stream()
                .skip(asked.entries())
                .filter(logged -> !fold.isVoid(logged.number()))
                .filter(logged ->
                        logged.entry() instanceof RecordEntry.Note note && answers(note.text(), asked.number()))
                .toList();
    }

    private static boolean answers(String note, int number) {
        Matcher matcher = ANSWER.matcher(note);
        return matcher.matches() && Integer.parseInt(matcher.group(1)) == number;
    }

    private static Optional<ReviewRemark> withdrawn(ReviewRemark asked, List<ReviewRemark> remarks) {
        return remarks.stream()
                .filter(remark -> remark.what() == What.WITHDRAWN
                        && remark.of().equals(OptionalInt.of(asked.number()))
                        && remark.by().equals(asked.by()))
                .findFirst();
    }

    /** Whether nobody has answered it yet, and it stands. */
    public boolean open() {
        return answers.isEmpty() && withdrawn.isEmpty();
    }

    /** How the entry begins that answers it. */
    public String answer() {
        return "note review " + asked.number() + ": ";
    }
}
