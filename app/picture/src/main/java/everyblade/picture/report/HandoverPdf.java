package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.RecordEntry;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.growth.LeftAgain;
import everyblade.core.gap.ToldGap;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.picture.ShareFigures;
import everyblade.picture.Terms;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.Margins;
import everyblade.picture.report.page.PageWords;
import everyblade.picture.report.page.Pages;
import everyblade.spi.Station;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * The page for the next shift: where everything is, the last three steps, what is open, what comes next. The same record
 * always gives the same bytes.
 */
public final class HandoverPdf {

    private static final int STEPS = 3;
    private static final int MOST_GAPS = 5;

    private HandoverPdf() {}

    /** Writes the page; parameters as of {@link ReportPdf#write(Fold, Coverage, ReportFacts, Exhibits, Words)}. */
    public static byte[] write(Fold fold, Coverage coverage, ReportFacts facts, Exhibits exhibits, Words words) {
        Reported job = Reported.of(fold, coverage, facts, exhibits, words);
        String engine = job.say("engine.of", job.model().name(), facts.serial());
        return new Pages(
                        job.say("handover.title", engine),
                        ReportPdf.language(words),
                        ReportPdf.dated(job),
                        ReportPdf.seed(facts.head()),
                        new Margins(
                                job.say("handover.head", engine),
                                job.closing().any() ? job.say("handover.open") : "",
                                ReportPdf.notices(job),
                                job.say("record", facts.head()),
                                job.words()),
                        blocks(job))
                .pdf();
    }

    private static List<Block> blocks(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("handover")));
        blocks.add(new Block.Framed(List.of(
                PageWords.strong(job.say("handover.first", "here N")), PageWords.of(job.say("handover.after")))));
        blocks.add(new Block.Heading(2, job.say("handover.where")));
        blocks.add(new Block.Table(List.of(Column.of("", 1.2), Column.of("", 4)), places(job)));
        blocks.add(new Block.Heading(2, job.say("first.seen")));
        for (Basis basis : Basis.values()) {
            if (job.coverage().tally(basis).cells() > 0) {
                ShareFigures figures = new ShareFigures(job.coverage().headline(basis), job.map());
                blocks.add(new Block.Item(PageWords.of(job.map().basis(basis) + ": " + figures.line())));
            }
        }
        blocks.add(
                new Block.Item(PageWords.of(Terms.of(job.coverage(), job.map()).line())));
        blocks.add(new Block.Heading(2, job.say("handover.last")));
        blocks.add(steps(job));
        blocks.add(new Block.Heading(2, job.say("handover.next")));
        blocks.addAll(next(job));
        blocks.addAll(Closing.of(job));
        blocks.add(new Block.Heading(2, job.say("handover.accepted")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("handover.takeover", "takeover NAME"))));
        blocks.add(new Block.Table(
                List.of(
                        Column.of("", 1.2),
                        Column.of(job.say("signed.name"), 2.5),
                        Column.of(job.say("signed.signature"), 2.5),
                        Column.of(job.say("handover.when"), 1.5)),
                List.of(sign(job.say("handover.by")), sign(job.say("handover.to")))));
        return blocks;
    }

    private static List<Cell> sign(String role) {
        Cell blank = Cell.of("");
        return List.of(Cell.of(PageWords.faint(role), PageWords.of(" ")), blank, blank, blank);
    }

    private static List<List<Cell>> places(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row(job.say("handover.tip"), scopeTip(job)));
        job.situation().seat().ifPresent(seat -> rows.add(row(job.say("handover.rotor"), rotor(job, seat))));
        rows.add(row(
                job.say("handover.count"),
                job.say("handover.lost", job.coverage().lostCount())));
        rows.add(row(job.say("handover.openings"), named(job, OpenItem.Kind.OPENING)));
        rows.add(row(job.say("handover.tools"), named(job, OpenItem.Kind.TOOL)));
        rows.add(row(job.say("handover.things"), named(job, OpenItem.Kind.LOST)));
        return rows;
    }

    private static List<Cell> row(String label, String value) {
        return List.of(Cell.of(PageWords.faint(label)), Cell.of(value));
    }

    /** A port that is shut again has no scope in it, whatever view was the last one. */
    private static String shut(Reported job) {
        return job.situation()
                .seat()
                .flatMap(at -> at.view().port())
                .filter(port -> !job.situation().ledger().openings().containsKey(port))
                .map(port -> job.say("handover.shut"))
                .orElse("");
    }

    private static String scopeTip(Reported job) {
        String seat = job.situation()
                .seat()
                .map(at -> job.say(
                        "handover.seat",
                        at.view().id(),
                        at.row().name(),
                        at.station().map(Station::id),
                        at.view().port()))
                .orElse(job.say("handover.noSeat"));
        return seat + shut(job) + (job.situation().among() ? job.say("handover.among") : "");
    }

    private static String rotor(Reported job, Seat seat) {
        double reading = job.situation().reading(seat.row()).degrees();
        return job.situation()
                .airfoilAtReference(seat)
                .map(n -> job.say(
                        "handover.reading",
                        reading,
                        job.map().airfoil(seat.row()),
                        n,
                        seat.row().id()))
                .orElse(job.say("handover.uncounted", reading, seat.row().id()));
    }

    private static String named(Reported job, OpenItem.Kind kind) {
        List<String> names = job.closing().of(kind).stream()
                .map(item -> job.say(item.line()))
                .toList();
        return names.isEmpty() ? job.say("handover.nothing") : String.join("; ", names);
    }

    private static Block steps(Reported job) {
        List<Logged> done = job.counting().stream()
                .filter(logged -> !EntryKind.of(logged.entry()).isBreak()
                        && !(logged.entry() instanceof RecordEntry.Note)
                        && !(logged.entry() instanceof RecordEntry.Void))
                .toList();
        List<List<Cell>> rows = done.subList(Math.max(0, done.size() - STEPS), done.size()).stream()
                .map(logged -> List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(Telling.minute(logged.at()) + ", " + logged.by()),
                        Cell.of(logged.text())))
                .toList();
        return rows.isEmpty()
                ? new Block.Paragraph(PageWords.of(job.say("handover.noStep")))
                : new Block.Table(
                        List.of(
                                Column.of(job.say("column.entry"), 0.95),
                                Column.of(job.say("column.whenBy"), 2),
                                Column.of(job.say("column.what"), 5)),
                        rows);
    }

    private static List<Block> next(Reported job) {
        List<String> gaps = job.exhibits()
                .last()
                .map(last -> LeftAgain.first(job.gaps(), last.coverage()).stream()
                        .map(left -> job.words().say(new ToldGap.Sentence(ToldGap.of(left.gap()), left.lastTimeToo())))
                        .toList())
                .orElseGet(() ->
                        job.gaps().stream().map(gap -> Telling.gap(job, gap)).toList());
        List<Block> blocks = new ArrayList<>();
        if (gaps.isEmpty()) {
            blocks.add(new Block.Item(PageWords.of(job.say("handover.close", Remaining.nothing(job)))));
        }
        gaps.stream().limit(MOST_GAPS).forEach(gap -> blocks.add(new Block.Item(PageWords.of(gap))));
        if (gaps.size() > MOST_GAPS) {
            blocks.add(new Block.Item(
                    PageWords.strong(job.say("handover.more", gaps.size() - MOST_GAPS, "everyblade gaps JOB"))));
        }
        return blocks;
    }
}
