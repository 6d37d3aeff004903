package everyblade.picture.report;

import everyblade.core.entry.FindingEntry;
import everyblade.core.finding.Figure;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Ruling;
import everyblade.core.finding.Verdict;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the entered limits say of the findings: verdicts, and the rules and figures behind them. */
final class Judged {

    private Judged() {}

    /** Whose limits these are; what they say of themselves stands at the head of every page. */
    static String source(Reported job, Limits limits) {
        List<String> words = new ArrayList<>();
        words.add(limits.name());
        limits.manual().ifPresent(manual -> words.add(job.say("limits.manual", manual)));
        limits.revision().ifPresent(revision -> words.add(job.say("limits.revision", revision)));
        return String.join(", ", words);
    }

    /** In a word, such as {@code beyond the limits}. */
    static PageWords verdict(Reported job, Verdict verdict) {
        return verdict == Verdict.WITHIN ? PageWords.of(job.say(verdict)) : PageWords.alert(job.say(verdict));
    }

    /** What comes of a finding, for the table of findings. */
    static Cell outcome(Reported job, int entry) {
        List<PageWords> lines = new ArrayList<>();
        Optional<Judgement> judgement = job.judgement(entry);
        judgement.ifPresent(known -> {
            lines.add(verdict(job, known.verdict()));
            known.decisive().ifPresent(ruling -> lines.add(PageWords.of(job.say(ruling.outcome()))));
        });
        Optional.ofNullable(job.situation().ledger().outcomes().get(entry))
                .map(job::entry)
                .ifPresent(settled -> lines.add(PageWords.of(Telling.answered(
                        job, settled.number(), settled.by(), ((FindingEntry.Settle) settled.entry()).reason()))));
        return lines.isEmpty()
                ? Cell.of(PageWords.alert(job.say("findings.noOutcome")))
                : Cell.of(lines.toArray(PageWords[]::new));
    }

    /** Every rule that is on a finding, with its figures. */
    static List<Block> figures(Reported job) {
        if (job.exhibits().limits().isEmpty() || job.judged().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say("limits")));
        blocks.add(new Block.Paragraph(PageWords.of(
                job.say("limits.told", source(job, job.exhibits().limits().get())))));
        List<List<Cell>> rows = new ArrayList<>();
        for (Judgement judgement : job.judged()) {
            for (Ruling ruling : judgement.rulings()) {
                rows.addAll(rows(job, judgement, ruling));
            }
        }
        blocks.add(new Block.Table(
                List.of(
                        Column.of(job.say("column.entry"), 0.95),
                        Column.of(job.say("limits.rule"), 1.6),
                        Column.of(job.say("limits.figure"), 1.8),
                        Column.of(job.say("limits.value"), 2),
                        Column.of(job.say("limits.limit"), 1.7),
                        Column.of(job.say("limits.margin"), 2.1),
                        Column.of(job.say("limits.verdict"), 1.6)),
                rows));
        return blocks;
    }

    private static List<List<Cell>> rows(Reported job, Judgement judgement, Ruling ruling) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Figure figure : ruling.figures()) {
            rows.add(List.of(
                    Cell.of(rows.isEmpty() ? "" + judgement.finding().entry() : ""),
                    Cell.of(rows.isEmpty() ? ruling.rule().id() : ""),
                    Cell.of(job.say(figure.what())),
                    Cell.of(job.say(figure.value())),
                    Cell.of(job.say(figure.limit())),
                    Cell.of(figure.margin().map(job::say).orElse("")),
                    Cell.of(verdict(job, figure.verdict()))));
        }
        if (rows.isEmpty()) {
            rows.add(List.of(
                    Cell.of("" + judgement.finding().entry()),
                    Cell.of(ruling.rule().id()),
                    Cell.of(job.say("limits.none")),
                    Cell.of(""),
                    Cell.of(""),
                    Cell.of(""),
                    Cell.of(verdict(job, ruling.verdict()))));
        }
        return rows;
    }
}
