package everyblade.picture.report;

import everyblade.core.entry.Entry;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;

/** The chapter on how well things could be seen: the test target of the day, and how the surfaces were. */
final class Eyesight {

    private Eyesight() {}

    static List<Block> of(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        job.told(Entry.Proof.class)
                .forEach(proof -> rows.add(row(
                        proof,
                        "the finest line seen on the test target",
                        proof.entry().size().value().toPlainString() + " mm wide, at "
                                + proof.entry().distance().value().toPlainString() + " mm")));
        job.told(Entry.Condition.class)
                .forEach(condition -> rows.add(row(
                        condition, "surfaces from here on", condition.entry().words())));
        rows.sort(java.util.Comparator.comparingInt(
                row -> Integer.parseInt(row.get(0).lines().get(0).text())));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "How well it could be seen"));
        blocks.add(
                new Block.Paragraph(PageWords.of("What is computed as seen is fine enough for the detail that the task"
                        + " asks for, and never finer than the test target of the day showed. On dirty or oily surfaces less is"
                        + " found than on clean ones; no number here allows for that.")));
        if (job.told(Entry.Proof.class).isEmpty()) {
            blocks.add(new Block.Item(
                    PageWords.of("No test target was entered, so the scope is taken as its model states.")));
        }
        if (job.told(Entry.Condition.class).isEmpty()) {
            blocks.add(new Block.Item(PageWords.of("How the surfaces were was not entered.")));
        }
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(
                    List.of(
                            Column.of("entry", 0.7),
                            Column.of("when (UTC), by", 2.2),
                            Column.of("what", 3),
                            Column.of("as entered", 4)),
                    rows));
        }
        return blocks;
    }

    private static List<Cell> row(Reported.Told<?> told, String what, String value) {
        return List.of(
                Cell.of("" + told.logged().number()),
                Cell.of(Telling.minute(told.logged().at()) + ", "
                        + told.logged().by()),
                Cell.of(what),
                Cell.of(value));
    }
}
