package everyblade.picture.report;

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

    /** Whose limits these are, and that they are invented if they say so. */
    static String source(Limits limits) {
        List<String> words = new ArrayList<>();
        words.add(limits.name());
        limits.manual().ifPresent(manual -> words.add("from " + manual));
        limits.revision().ifPresent(revision -> words.add("revision " + revision));
        return String.join(", ", words)
                + limits.notice().map(notice -> " (" + notice + ")").orElse("");
    }

    /** In a word, such as {@code beyond the limits}. */
    static PageWords verdict(Verdict verdict) {
        return verdict == Verdict.WITHIN ? PageWords.of(verdict.words()) : PageWords.alert(verdict.words());
    }

    /** What comes of a finding, for the table of findings. */
    static Cell outcome(Reported job, int entry) {
        List<PageWords> lines = new ArrayList<>();
        Optional<Judgement> judgement = job.judgement(entry);
        judgement.ifPresent(known -> {
            lines.add(verdict(known.verdict()));
            known.decisive().ifPresent(ruling -> lines.add(PageWords.of(ruling.outcome())));
        });
        Optional.ofNullable(job.situation().ledger().outcomes().get(entry))
                .map(job::entry)
                .ifPresent(settled -> lines.add(PageWords.of("entry " + settled.number() + ", " + settled.by() + ": "
                        + ((everyblade.core.entry.Entry.Settle) settled.entry()).reason())));
        return lines.isEmpty() ? Cell.of(PageWords.alert("no outcome")) : Cell.of(lines.toArray(PageWords[]::new));
    }

    /** Every rule that is on a finding, with its figures. */
    static List<Block> figures(Reported job) {
        if (job.exhibits().limits().isEmpty() || job.judged().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, "What the entered limits say"));
        blocks.add(new Block.Paragraph(PageWords.of("Limits: "
                + source(job.exhibits().limits().get())
                + ". A size is within a limit only if it is so in spite of its uncertainty, and beyond it only if it is"
                + " so in spite of it (ISO 14253-1); the guard is how near it may come. What is beyond one step of a"
                + " rule is held against the next; the figures are those of the step that decided.")));
        List<List<Cell>> rows = new ArrayList<>();
        for (Judgement judgement : job.judged()) {
            for (Ruling ruling : judgement.rulings()) {
                rows.addAll(rows(judgement, ruling));
            }
        }
        blocks.add(new Block.Table(
                List.of(
                        Column.of("entry", 0.7),
                        Column.of("rule", 1.6),
                        Column.of("figure", 1.8),
                        Column.of("as it is", 2),
                        Column.of("limit", 1.7),
                        Column.of("margin", 2.1),
                        Column.of("so", 1.6)),
                rows));
        return blocks;
    }

    private static List<List<Cell>> rows(Judgement judgement, Ruling ruling) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Figure figure : ruling.figures()) {
            rows.add(List.of(
                    Cell.of(rows.isEmpty() ? "" + judgement.finding().entry() : ""),
                    Cell.of(rows.isEmpty() ? ruling.rule().id() : ""),
                    Cell.of(figure.what()),
                    Cell.of(figure.value()),
                    Cell.of(figure.limit()),
                    Cell.of(figure.margin()),
                    Cell.of(verdict(figure.verdict()))));
        }
        if (rows.isEmpty()) {
            rows.add(List.of(
                    Cell.of("" + judgement.finding().entry()),
                    Cell.of(ruling.rule().id()),
                    Cell.of("no limit"),
                    Cell.of(""),
                    Cell.of(""),
                    Cell.of(""),
                    Cell.of(verdict(ruling.verdict()))));
        }
        return rows;
    }
}
