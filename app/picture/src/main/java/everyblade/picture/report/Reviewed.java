package everyblade.picture.report;

import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;

/** The chapter on what reviewers said; there is none if nobody said anything. */
final class Reviewed {

    private Reviewed() {}

    static List<Block> of(Reported job) {
        List<ReviewRemark> remarks = job.facts().review();
        if (remarks.isEmpty()) {
            return List.of();
        }
        List<Question> questions = Question.of(remarks, job.fold());
        List<List<Cell>> rows = new ArrayList<>();
        for (ReviewRemark remark : remarks) {
            rows.add(List.of(
                    Cell.of("" + remark.number()),
                    Cell.of(PageWords.of(Telling.minute(remark.at())), PageWords.of(remark.by())),
                    Cell.of("" + remark.entries()),
                    said(remark),
                    questions.stream()
                            .filter(question -> question.asked().equals(remark))
                            .findFirst()
                            .map(Reviewed::became)
                            .orElse(Cell.of(""))));
        }
        return List.of(
                new Block.Heading(1, "Review"),
                new Block.Paragraph(
                        PageWords.of("What reviewers said of this record, kept beside it under their own names."
                                + " What they still wanted to see was said before they were shown what the technician makes of"
                                + " it, if it stands before that in this list.")),
                new Block.Table(
                        List.of(
                                Column.of("no.", 0.5),
                                Column.of("when (UTC), by", 1.7),
                                Column.of("of entries up to", 0.9),
                                Column.of("said", 4.2),
                                Column.of("what became of it", 3)),
                        rows));
    }

    private static Cell said(ReviewRemark remark) {
        String words = switch (remark.what()) {
            case WANTED -> "wants to see: " + remark.text();
            case SHOWN -> "was shown what the technician makes of it";
            case QUESTION -> "asks: " + remark.text();
            case REMARK -> remark.text();
            case WITHDRAWN -> "takes question " + remark.of().orElse(0) + " back";
        };
        return remark.place()
                .map(ReviewedPlace::words)
                .map(place -> Cell.of(PageWords.of(words), PageWords.faint(place)))
                .orElse(Cell.of(words));
    }

    private static Cell became(Question question) {
        if (question.withdrawn().isPresent()) {
            return Cell.of("taken back");
        }
        return question.answers().stream()
                .reduce((earlier, later) -> later)
                .map(answer -> Cell.of("entry " + answer.number() + ", " + answer.by() + ": " + answer.text()))
                .orElse(Cell.of(PageWords.alert("OPEN")));
    }
}
