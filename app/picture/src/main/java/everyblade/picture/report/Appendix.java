package everyblade.picture.report;

import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Settings;
import everyblade.core.turning.Logged;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The last chapters: how to check this report, and the log itself, void entries included. */
final class Appendix {

    private Appendix() {}

    static List<Block> check(Reported job) {
        ReportFacts facts = job.facts();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("check")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("check.told"))));
        blocks.add(new Block.Item(PageWords.of(job.say("check.verify", "everyblade verify JOB --head HASH"))));
        blocks.add(new Block.Item(PageWords.of(job.say("check.signatures"))));
        blocks.add(
                new Block.Item(PageWords.of(job.say("check.again", "everyblade coverage JOB", "everyblade gaps JOB"))));
        blocks.add(new Block.Item(PageWords.of(job.say("check.settings"))));
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row(job.say("check.head"), facts.head()));
        rows.add(row(job.say("check.model"), facts.modelHash()));
        rows.add(row(
                job.say("check.entries"),
                job.say(
                        "check.entries.of",
                        job.fold().entries().size(),
                        job.fold().entries().size() - job.counting().size())));
        facts.signatures().forEach(signed -> rows.add(row(job.say("check.key", signed.number()), signed.key())));
        for (Settings.Setting setting : Settings.ALL) {
            Optional.ofNullable(facts.settings().get(setting.name()))
                    .ifPresentOrElse(
                            value -> rows.add(row(
                                    setting.name(),
                                    job.words().plain(value) + " ("
                                            + job.words().say(setting.meaning()) + ")")),
                            () -> rows.add(row(
                                    setting.name(),
                                    job.say("check.notJudged", job.words().say(setting.meaning())))));
        }
        blocks.add(new Block.Table(List.of(Column.of("", 1.4), Column.of("", 5)), rows));
        return blocks;
    }

    private static List<Cell> row(String label, String value) {
        return List.of(Cell.of(PageWords.faint(label)), Cell.of(value));
    }

    static List<Block> log(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("log")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("log.told"))));
        List<List<Cell>> rows = new ArrayList<>();
        for (Logged logged : job.fold().entries()) {
            rows.add(List.of(
                    Cell.of("" + logged.number()),
                    Cell.of(Telling.second(logged.at()) + (logged.live() ? "" : " f")),
                    Cell.of(logged.by()),
                    said(job, logged)));
        }
        blocks.add(
                rows.isEmpty()
                        ? new Block.Paragraph(PageWords.of(job.say("log.none")))
                        : new Block.Table(
                                List.of(
                                        Column.number(job.say("column.number"), 0.6),
                                        Column.of(job.say("column.when"), 2.1),
                                        Column.of(job.say("column.by"), 1.5),
                                        Column.of(job.say("log.entry"), 6.3)),
                                rows));
        return blocks;
    }

    private static Cell said(Reported job, Logged logged) {
        if (!job.fold().isVoid(logged.number())) {
            return Cell.of(logged.text());
        }
        PageWords struck = PageWords.struck(logged.text());
        Optional<Reported.Told<RecordEntry.Void>> by = job.strikes(logged.number());
        return by.map(strikes -> Cell.of(
                        struck,
                        PageWords.faint(job.say(
                                "log.void",
                                strikes.logged().number(),
                                strikes.entry().reason()))))
                .orElse(Cell.of(struck));
    }
}
