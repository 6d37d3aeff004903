package everyblade.picture.report;

import everyblade.core.entry.LookEntry;
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
        job.told(LookEntry.Proof.class)
                .forEach(proof -> rows.add(row(
                        proof,
                        job.say("eyesight.target"),
                        job.say(
                                "eyesight.line",
                                job.words().plain(proof.entry().size().value()),
                                job.words().plain(proof.entry().distance().value())))));
        job.told(LookEntry.Condition.class)
                .forEach(condition -> rows.add(row(
                        condition,
                        job.say("eyesight.surfaces"),
                        condition.entry().words())));
        rows.sort(java.util.Comparator.comparingInt(
                row -> Integer.parseInt(row.get(0).lines().get(0).text())));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("eyesight")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("eyesight.told"))));
        if (job.told(LookEntry.Proof.class).isEmpty()) {
            blocks.add(new Block.Item(PageWords.of(job.say("eyesight.noTarget"))));
        }
        if (job.told(LookEntry.Condition.class).isEmpty()) {
            blocks.add(new Block.Item(PageWords.of(job.say("eyesight.noSurfaces"))));
        }
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(
                    List.of(
                            Column.of(job.say("column.entry"), 0.95),
                            Column.of(job.say("column.whenBy"), 2.2),
                            Column.of(job.say("column.what"), 3),
                            Column.of(job.say("column.asEntered"), 4)),
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
