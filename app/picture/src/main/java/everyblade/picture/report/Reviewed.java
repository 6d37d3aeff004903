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
                    said(job, remark),
                    questions.stream()
                            .filter(question -> question.asked().equals(remark))
                            .findFirst()
                            .map(question -> became(job, question))
                            .orElse(Cell.of(""))));
        }
        return List.of(
                new Block.Heading(1, job.say("review")),
                new Block.Paragraph(PageWords.of(job.say("review.told"))),
                new Block.Table(
                        List.of(
                                Column.of(job.say("column.number"), 0.5),
                                Column.of(job.say("column.whenBy"), 1.7),
                                Column.of(job.say("review.upTo"), 0.9),
                                Column.of(job.say("review.said"), 4.2),
                                Column.of(job.say("review.became"), 3)),
                        rows));
    }

    private static Cell said(Reported job, ReviewRemark remark) {
        String words = switch (remark.what()) {
            case WANTED -> job.say("review.wanted", remark.text());
            case SHOWN -> job.say("review.shown");
            case QUESTION -> job.say("review.asks", remark.text());
            case REMARK -> remark.text();
            case WITHDRAWN -> job.say("review.withdrawn", remark.of().orElse(0));
        };
        return remark.place()
                .map(ReviewedPlace::words)
                .map(place -> Cell.of(PageWords.of(words), PageWords.faint(place)))
                .orElse(Cell.of(words));
    }

    private static Cell became(Reported job, Question question) {
        if (question.withdrawn().isPresent()) {
            return Cell.of(job.say("review.takenBack"));
        }
        return question.answers().stream()
                .reduce((earlier, later) -> later)
                .map(answer -> Cell.of(Telling.answered(job, answer.number(), answer.by(), answer.text())))
                .orElse(Cell.of(PageWords.alert(job.say("open"))));
    }
}
