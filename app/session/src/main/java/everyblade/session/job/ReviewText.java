package everyblade.session.job;

import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewedPlace;

/** What reviewers said, in words, the same wherever it is told. */
public final class ReviewText {

    private ReviewText() {}

    /** A remark in one line, with who made it and of which entries. */
    public static String of(ReviewRemark remark) {
        String said = remark.text().isEmpty() ? "" : ": " + remark.text();
        String place = remark.place()
                .map(ReviewedPlace::words)
                .map(words -> " (" + words + ")")
                .orElse("");
        return "review " + remark.number() + " by " + remark.by() + ", " + sort(remark) + said + place
                + "; after entry " + remark.entries();
    }

    private static String sort(ReviewRemark remark) {
        return switch (remark.what()) {
            case WANTED -> "still wanted to see";
            case SHOWN -> "was shown what the technician says";
            case QUESTION -> "sent back";
            case REMARK -> "remarked";
            case WITHDRAWN -> "took back review " + remark.of().orElse(0);
        };
    }

    /** What became of a question. */
    public static String state(Question question) {
        if (question.withdrawn().isPresent()) {
            return "taken back in review " + question.withdrawn().get().number();
        }
        return question.answers().stream()
                .reduce((earlier, later) -> later)
                .map(answer -> "answered in entry " + answer.number() + " by " + answer.by() + ": " + answer.text())
                .orElse("OPEN; to answer it: " + question.answer() + "…");
    }
}
