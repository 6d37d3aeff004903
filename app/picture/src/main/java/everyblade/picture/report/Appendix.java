package everyblade.picture.report;

import everyblade.core.entry.Entry;
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
        blocks.add(new Block.Heading(1, "How to check this report"));
        blocks.add(
                new Block.Paragraph(
                        PageWords.of(
                                "Every number here is computed from the job's journal and the engine"
                                        + " model frozen in it, and from nothing else. The foot of each page bears the hash of the journal's"
                                        + " last line; a journal with another one is not, or no longer, the one that this report tells of.")));
        blocks.add(
                new Block.Item(PageWords.of("everyblade verify JOB --head HASH shows whether the journal is whole and"
                        + " still holds this state.")));
        blocks.add(
                new Block.Item(PageWords.of("Signatures lie beside the journal and are checked here against it; whose a"
                        + " key is, only people who know its fingerprint can tell.")));
        blocks.add(new Block.Item(
                PageWords.of("everyblade coverage JOB and everyblade gaps JOB give the shares and the gaps again.")));
        blocks.add(new Block.Item(
                PageWords.of("By the settings below what is computed from shapes is judged; what is declared"
                        + " by windows is judged by least-view alone.")));
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row("journal, last line", facts.head()));
        rows.add(row("engine model, frozen", facts.modelHash()));
        rows.add(row(
                "entries",
                "" + job.fold().entries().size() + ", of these void "
                        + (job.fold().entries().size() - job.counting().size())));
        facts.signatures().forEach(signed -> rows.add(row("key of signature " + signed.number(), signed.key())));
        for (Settings.Setting setting : Settings.ALL) {
            Optional.ofNullable(facts.settings().get(setting.name()))
                    .ifPresentOrElse(
                            value -> rows.add(row(setting.name(), value.toPlainString() + " (" + setting.unit() + ")")),
                            () -> rows.add(row(setting.name(), "not judged (" + setting.unit() + ")")));
        }
        blocks.add(new Block.Table(List.of(Column.of("", 1.4), Column.of("", 5)), rows));
        return blocks;
    }

    private static List<Cell> row(String label, String value) {
        return List.of(Cell.of(PageWords.faint(label)), Cell.of(value));
    }

    static List<Block> log(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "The log"));
        blocks.add(
                new Block.Paragraph(PageWords.of("Every entry as it was made; times are UTC. Void entries do not count:"
                        + " they are struck through and say which entry voids them, and why. The letter f marks what was"
                        + " entered afterwards, from a file or with a time of its own.")));
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
                        ? new Block.Paragraph(PageWords.of("Nothing was entered."))
                        : new Block.Table(
                                List.of(
                                        Column.number("no.", 0.6),
                                        Column.of("when (UTC)", 2.1),
                                        Column.of("by", 1.5),
                                        Column.of("entry", 6.3)),
                                rows));
        return blocks;
    }

    private static Cell said(Reported job, Logged logged) {
        if (!job.fold().isVoid(logged.number())) {
            return Cell.of(logged.text());
        }
        PageWords struck = PageWords.struck(logged.text());
        Optional<Reported.Told<Entry.Void>> by = job.strikes(logged.number());
        return by.map(strikes -> Cell.of(
                        struck,
                        PageWords.faint("void by entry " + strikes.logged().number() + ": "
                                + strikes.entry().reason())))
                .orElse(Cell.of(struck));
    }
}
