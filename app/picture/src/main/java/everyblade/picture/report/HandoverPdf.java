package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Entry;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.growth.LeftAgain;
import everyblade.core.gap.GapText;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.picture.Terms;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.Margins;
import everyblade.picture.report.page.PageWords;
import everyblade.picture.report.page.Pages;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The page for the next shift: where everything is, the last three steps, what is open, what comes next. The same record
 * always gives the same bytes.
 */
public final class HandoverPdf {

    private static final int STEPS = 3;
    private static final int MOST_GAPS = 5;

    private HandoverPdf() {}

    /** Writes the page; parameters as of {@link ReportPdf#write(Fold, Coverage, ReportFacts, Exhibits)}. */
    public static byte[] write(Fold fold, Coverage coverage, ReportFacts facts, Exhibits exhibits) {
        Reported job = Reported.of(fold, coverage, facts, exhibits);
        String engine = job.model().name() + ", serial " + facts.serial();
        return new Pages(
                        "Hand-over: " + engine,
                        "en-GB",
                        ReportPdf.dated(job),
                        ReportPdf.seed(facts.head()),
                        new Margins(
                                "Hand-over to the next shift – " + engine,
                                job.closing().any() ? "WORK IN PROGRESS" : "",
                                ReportPdf.notices(job),
                                "record " + facts.head()),
                        blocks(job))
                .pdf();
    }

    private static List<Block> blocks(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Hand-over"));
        blocks.add(new Block.Framed(List.of(
                PageWords.strong("First: bring a blade that is surely known to the reference, and say here N."),
                PageWords.of(
                        "After a takeover nothing new counts as surely seen until then. Go back over the last three"
                                + " steps before going on."))));
        blocks.add(new Block.Heading(2, "Where everything is"));
        blocks.add(new Block.Table(List.of(Column.of("", 1.2), Column.of("", 4)), places(job)));
        blocks.add(new Block.Heading(2, "What was seen"));
        for (Basis basis : Basis.values()) {
            if (job.coverage().tally(basis).cells() > 0) {
                ShareFigures figures = new ShareFigures(job.coverage().headline(basis), MapWords.ENGLISH);
                blocks.add(new Block.Item(PageWords.of(basis.word() + ": " + figures.line())));
            }
        }
        blocks.add(new Block.Item(
                PageWords.of(Terms.of(job.coverage(), MapWords.ENGLISH).line())));
        blocks.add(new Block.Heading(2, "The last three steps done"));
        blocks.add(steps(job));
        blocks.add(new Block.Heading(2, "Next"));
        blocks.addAll(next(job));
        blocks.addAll(Closing.of(job.closing()));
        blocks.add(new Block.Heading(2, "Accepted"));
        blocks.add(new Block.Paragraph(PageWords.of("Whoever goes on says so in the record as well: takeover NAME.")));
        blocks.add(new Block.Table(
                List.of(
                        Column.of("", 1.2),
                        Column.of("name", 2.5),
                        Column.of("signature", 2.5),
                        Column.of("when", 1.5)),
                List.of(sign("handed over by"), sign("taken over by"))));
        return blocks;
    }

    private static List<Cell> sign(String role) {
        Cell blank = Cell.of("");
        return List.of(Cell.of(PageWords.faint(role), PageWords.of(" ")), blank, blank, blank);
    }

    private static List<List<Cell>> places(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row("scope tip", scopeTip(job)));
        job.situation().seat().ifPresent(seat -> rows.add(row("rotor", rotor(job, seat))));
        rows.add(row(
                "count", job.coverage().lostCount() ? "WAS LOST in the course of the work" : "not found to be lost"));
        rows.add(row("open", named(job, OpenItem.Kind.OPENING)));
        rows.add(row("tools out", named(job, OpenItem.Kind.TOOL)));
        rows.add(row("lost", named(job, OpenItem.Kind.LOST)));
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
                .map(port -> ", which is not open now: see that the scope is out")
                .orElse("");
    }

    private static String scopeTip(Reported job) {
        String seat = job.situation()
                .seat()
                .map(at -> "at view " + at.view().id() + " of "
                        + at.row().name()
                        + at.station()
                                .map(station -> ", station " + station.id())
                                .orElse("")
                        + at.view().port().map(port -> ", through " + port).orElse(""))
                .orElse("not seated at any view");
        return seat + shut(job) + (job.situation().among() ? "; STILL AMONG THE BLADES" : "");
    }

    private static String rotor(Reported job, Seat seat) {
        String reading = String.format(
                Locale.ROOT, "reads %.1f°", job.situation().reading(seat.row()).degrees());
        return job.situation()
                .airfoilAtReference(seat)
                .map(n -> reading + "; " + seat.row().kind().airfoil() + " " + n + " of "
                        + seat.row().id() + " nearest to the reference")
                .orElse(reading + "; " + seat.row().id() + " is not being counted yet");
    }

    private static String named(Reported job, OpenItem.Kind kind) {
        List<String> names = job.closing().of(kind).stream().map(OpenItem::line).toList();
        return names.isEmpty() ? "nothing" : String.join("; ", names);
    }

    private static Block steps(Reported job) {
        List<Logged> done = job.counting().stream()
                .filter(logged -> !(logged.entry() instanceof Entry.Note)
                        && !(logged.entry() instanceof Entry.Handover)
                        && !(logged.entry() instanceof Entry.Takeover)
                        && !(logged.entry() instanceof Entry.Pause)
                        && !(logged.entry() instanceof Entry.Void))
                .toList();
        List<List<Cell>> rows = done.subList(Math.max(0, done.size() - STEPS), done.size()).stream()
                .map(logged -> List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(Telling.minute(logged.at()) + ", " + logged.by()),
                        Cell.of(logged.text())))
                .toList();
        return rows.isEmpty()
                ? new Block.Paragraph(PageWords.of("Nothing was done yet."))
                : new Block.Table(
                        List.of(Column.of("entry", 0.6), Column.of("when (UTC), by", 2), Column.of("what", 5)), rows);
    }

    private static List<Block> next(Reported job) {
        List<String> gaps = job.exhibits()
                .last()
                .map(last -> LeftAgain.first(job.gaps(), last.coverage()).stream()
                        .map(left -> GapText.of(left.gap()) + (left.lastTimeToo() ? " Not seen last time either." : ""))
                        .toList())
                .orElseGet(() -> job.gaps().stream().map(GapText::of).toList());
        List<Block> blocks = new ArrayList<>();
        if (gaps.isEmpty()) {
            blocks.add(new Block.Item(PageWords.of(Remaining.nothing(job) + " Close up by the list below.")));
        }
        gaps.stream().limit(MOST_GAPS).forEach(gap -> blocks.add(new Block.Item(PageWords.of(gap))));
        if (gaps.size() > MOST_GAPS) {
            blocks.add(new Block.Item(
                    PageWords.strong("and " + (gaps.size() - MOST_GAPS) + " more: everyblade gaps JOB")));
        }
        return blocks;
    }
}
