package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.Entry;
import everyblade.core.finding.Verdict;
import everyblade.core.finding.closing.Behind;
import everyblade.core.turning.Logged;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.picture.Terms;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The first page: the answer in short. */
final class FirstPage {

    private static final int MOST_LISTED = 6;

    private FirstPage() {}

    static List<Block> of(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Borescope inspection: the answer in short"));
        blocks.add(verdict(job));
        blocks.add(new Block.Table(List.of(Column.of("", 1.1), Column.of("", 3.4)), facts(job)));
        blocks.add(new Block.Heading(2, "What was seen"));
        blocks.add(shares(job));
        blocks.add(new Block.Paragraph(PageWords.of(terms(job))));
        blocks.add(new Block.Heading(2, "What was found"));
        blocks.addAll(listed(FindingPages.lines(job), FindingPages.none(job), "Findings"));
        blocks.add(new Block.Heading(2, "What is open"));
        blocks.addAll(listed(Closing.lines(job.closing()), "Nothing.", "Closing list"));
        List<String> said = Closing.onlySaid(job.closing());
        if (!said.isEmpty()) {
            blocks.add(new Block.Heading(2, "What was taken away, accepted or only said"));
            blocks.addAll(listed(said, "", "Closing list and Not done"));
        }
        blocks.add(new Block.Heading(2, "Who"));
        blocks.addAll(people(job));
        return blocks;
    }

    private static Block verdict(Reported job) {
        List<PageWords> lines = new ArrayList<>();
        List<String> doubts = job.facts().doubts();
        doubts.stream().limit(MOST_LISTED).forEach(doubt -> lines.add(PageWords.alert(doubt)));
        if (doubts.size() > MOST_LISTED) {
            lines.add(PageWords.alert((doubts.size() - MOST_LISTED) + " more such lines: see everyblade verify."));
        }
        lines.addAll(Signing.lines(job.facts().signatures()));
        if (job.closing().any()) {
            lines.add(PageWords.alert("INCOMPLETE: " + Closing.counts(job.closing()) + "."));
        } else {
            Behind behind = job.closing().behind();
            lines.add(PageWords.strong(
                    behind.any()
                            ? "Nothing is open. Behind that stand: " + behind.told() + "."
                            : "Nothing that the task asks for is left open in this record."));
        }
        if (job.coverage().lostCount()) {
            lines.add(PageWords.alert("The count was lost in the course of the work; see Is the count sound?"));
        }
        long beyond = job.judged().stream()
                .filter(judgement -> judgement.verdict() == Verdict.BEYOND)
                .count();
        if (beyond > 0) {
            lines.add(PageWords.alert(Telling.count((int) beyond, "finding") + " beyond the entered limits."));
        }
        lines.add(
                PageWords.of("Whether the engine may go on is for licensed people to decide, by the manual in force."));
        return new Block.Framed(lines);
    }

    private static List<List<Cell>> facts(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row(
                "engine",
                job.model().name() + " (" + job.model().id() + "), serial "
                        + job.facts().serial()));
        rows.add(List.of(
                label("hours, cycles, position"),
                Cell.of(stated(job, "hours"), stated(job, "cycles"), stated(job, "position"))));
        rows.add(row("what was asked", job.facts().task() + asked(job)));
        job.exhibits().limits().ifPresent(limits -> rows.add(row("limits", Judged.source(limits))));
        rows.add(List.of(label("manual, revision"), Cell.of(stated(job, "manual"), stated(job, "revision"))));
        Set<String> named = Set.of("hours", "cycles", "position", "manual", "revision");
        Set<String> further = new LinkedHashSet<>();
        job.told(Entry.Fact.class)
                .forEach(fact -> further.add(fact.entry().name().value().strip()));
        further.stream()
                .filter(name -> !named.contains(name.toLowerCase(java.util.Locale.ROOT)))
                .forEach(name -> rows.add(row(name, job.fact(name).orElse(""))));
        rows.add(row("when", Telling.minute(job.facts().at()) + " to " + Telling.minute(end(job)) + " UTC"));
        job.facts().previous().ifPresent(previous -> rows.add(row("compared with", previous)));
        return rows;
    }

    private static java.time.Instant end(Reported job) {
        return job.counting().stream()
                .map(Logged::at)
                .max(java.util.Comparator.naturalOrder())
                .orElse(job.facts().at());
    }

    private static String asked(Reported job) {
        return job.situation().ledger().asked().isEmpty()
                ? " – every part of every row"
                : " – of some rows only certain parts, see Not done";
    }

    private static List<Cell> row(String label, String value) {
        return List.of(label(label), Cell.of(value));
    }

    private static Cell label(String label) {
        return Cell.of(PageWords.faint(label));
    }

    private static PageWords stated(Reported job, String name) {
        return job.fact(name)
                .map(value -> PageWords.of(name + " " + value))
                .orElse(PageWords.alert(name + ": not recorded"));
    }

    private static Block shares(Reported job) {
        List<List<Cell>> lines = new ArrayList<>();
        for (Basis basis : Basis.values()) {
            Tally all = job.coverage().tally(basis);
            if (all.cells() > 0) {
                ShareFigures figures = new ShareFigures(job.coverage().headline(basis), MapWords.ENGLISH);
                lines.add(List.of(
                        basis == Basis.COMPUTED
                                ? Cell.of(PageWords.strong("computed"), PageWords.faint("from shapes and stations"))
                                : Cell.of(
                                        PageWords.strong("declared"),
                                        PageWords.faint("rests on stated windows; not computed")),
                        Cell.of(
                                PageWords.strong(figures.left()),
                                PageWords.of(all.left() + " of " + Telling.count(all.within(), "cell"))),
                        Cell.of(PageWords.strong(figures.seen())),
                        Cell.of(PageWords.strong(figures.beyond())),
                        good(all.seen(), all),
                        good(all.part(), all),
                        bad(all.glimpsed(), all),
                        bad(all.maybe(), all),
                        bad(all.unseen(), all)));
            }
        }
        return new Block.Table(
                List.of(
                        Column.of("basis", 2.2),
                        Column.number("left of what these views can show", 2),
                        Column.number("surface seen", 1.4),
                        Column.number("surface that no view shows", 1.6),
                        Column.number("cells seen", 1.2),
                        Column.number("in part", 1.2),
                        Column.number("of these a glimpse", 1.4),
                        Column.number("maybe", 1.1),
                        Column.number("not seen", 1.2)),
                lines);
    }

    private static String terms(Reported job) {
        return Terms.of(job.coverage(), MapWords.ENGLISH).line();
    }

    private static Cell good(int cells, Tally all) {
        return Cell.of(
                PageWords.strong("" + cells), PageWords.of(ShareFigures.percent(all.share(cells), MapWords.ENGLISH)));
    }

    private static Cell bad(int cells, Tally all) {
        return Cell.of(
                PageWords.strong("" + cells),
                PageWords.of(ShareFigures.badPercent(all.share(cells), MapWords.ENGLISH)));
    }

    private static List<Block> listed(List<String> lines, String none, String chapter) {
        List<Block> blocks = new ArrayList<>();
        if (lines.isEmpty()) {
            blocks.add(new Block.Item(PageWords.of(none)));
        }
        lines.stream().limit(MOST_LISTED).forEach(line -> blocks.add(new Block.Item(PageWords.of(line))));
        if (lines.size() > MOST_LISTED) {
            blocks.add(
                    new Block.Item(PageWords.strong("and " + (lines.size() - MOST_LISTED) + " more, see " + chapter)));
        }
        return blocks;
    }

    private static List<Block> people(Reported job) {
        Set<String> names = new LinkedHashSet<>();
        names.add(job.facts().by());
        job.counting().forEach(logged -> names.add(logged.by()));
        List<String> hands = new ArrayList<>();
        for (Logged logged : job.counting()) {
            if (logged.entry() instanceof Entry.Handover handover) {
                hands.add("handed over to " + handover.name() + " " + Telling.minute(logged.at()));
            } else if (logged.entry() instanceof Entry.Takeover takeover) {
                hands.add("taken over by " + takeover.name() + " " + Telling.minute(logged.at()));
            }
        }
        String who = "Started by " + job.facts().by() + ". Entries by " + String.join(", ", names)
                + (hands.isEmpty() ? "" : "; " + String.join("; ", hands)) + ".";
        return List.of(
                new Block.Paragraph(PageWords.of(who)),
                new Block.Table(
                        List.of(
                                Column.of("", 1.3),
                                Column.of("name", 2),
                                Column.of("licence or certificate, kind and number", 2.4),
                                Column.of("signature", 2.2),
                                Column.of("date (UTC)", 1.2)),
                        Signing.rows(job.facts().signatures())));
    }
}
