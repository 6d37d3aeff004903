package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.Entry;
import everyblade.core.finding.Verdict;
import everyblade.core.finding.closing.Behind;
import everyblade.core.turning.Logged;
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
        blocks.add(new Block.Heading(1, job.say("first")));
        blocks.add(verdict(job));
        blocks.add(new Block.Table(List.of(Column.of("", 1.1), Column.of("", 3.4)), facts(job)));
        blocks.add(new Block.Heading(2, job.say("first.seen")));
        blocks.add(shares(job));
        blocks.add(new Block.Paragraph(PageWords.of(terms(job))));
        blocks.add(new Block.Heading(2, job.say("first.found")));
        blocks.addAll(listed(job, FindingPages.lines(job), FindingPages.none(job), job.say("findings")));
        blocks.add(new Block.Heading(2, job.say("first.open")));
        blocks.addAll(listed(job, Closing.lines(job), job.say("first.nothing"), job.say("closing")));
        List<String> said = Closing.onlySaid(job);
        if (!said.isEmpty()) {
            blocks.add(new Block.Heading(2, job.say("first.onlySaid")));
            blocks.addAll(listed(job, said, "", job.say("first.onlySaid.where")));
        }
        blocks.add(new Block.Heading(2, job.say("first.who")));
        blocks.addAll(people(job));
        return blocks;
    }

    private static Block verdict(Reported job) {
        List<PageWords> lines = new ArrayList<>();
        List<String> doubts = job.facts().doubts();
        doubts.stream().limit(MOST_LISTED).forEach(doubt -> lines.add(PageWords.alert(doubt)));
        if (doubts.size() > MOST_LISTED) {
            lines.add(PageWords.alert(job.say("first.doubts", doubts.size() - MOST_LISTED, "everyblade verify")));
        }
        lines.addAll(Signing.lines(job));
        if (job.closing().any()) {
            lines.add(PageWords.alert(job.say("first.incomplete", Closing.counts(job))));
        } else {
            Behind behind = job.closing().behind();
            lines.add(PageWords.strong(behind.any() ? job.say("closing.behind", behind) : job.say("first.complete")));
        }
        if (job.coverage().lostCount()) {
            lines.add(PageWords.alert(job.say("first.lost", job.say("count"))));
        }
        long beyond = job.judged().stream()
                .filter(judgement -> judgement.verdict() == Verdict.BEYOND)
                .count();
        if (beyond > 0) {
            lines.add(PageWords.alert(job.say("first.beyond", beyond)));
        }
        lines.add(PageWords.of(job.say("first.licensed")));
        return new Block.Framed(lines);
    }

    private static List<List<Cell>> facts(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row(
                job.say("first.engine"),
                job.say(
                        "engine.of",
                        job.model().name() + " (" + job.model().id() + ")",
                        job.facts().serial())));
        rows.add(List.of(
                label(job.say("first.hours")),
                Cell.of(stated(job, "hours"), stated(job, "cycles"), stated(job, "position"))));
        rows.add(row(
                job.say("first.asked"),
                job.say(
                        "first.task",
                        job.facts().task(),
                        job.situation().ledger().asked().isEmpty())));
        job.exhibits().limits().ifPresent(limits -> rows.add(row(job.say("first.limits"), Judged.source(job, limits))));
        rows.add(List.of(label(job.say("first.manual")), Cell.of(stated(job, "manual"), stated(job, "revision"))));
        Set<String> named = Set.of("hours", "cycles", "position", "manual", "revision");
        Set<String> further = new LinkedHashSet<>();
        job.told(Entry.Fact.class)
                .forEach(fact -> further.add(fact.entry().name().value().strip()));
        further.stream()
                .filter(name -> !named.contains(name.toLowerCase(java.util.Locale.ROOT)))
                .forEach(name -> rows.add(row(name, job.fact(name).orElse(""))));
        rows.add(row(
                job.say("first.time"),
                job.say("first.when", Telling.minute(job.facts().at()), Telling.minute(end(job)))));
        job.facts().previous().ifPresent(previous -> rows.add(row(job.say("first.previous"), previous)));
        return rows;
    }

    private static java.time.Instant end(Reported job) {
        return job.counting().stream()
                .map(Logged::at)
                .max(java.util.Comparator.naturalOrder())
                .orElse(job.facts().at());
    }

    private static List<Cell> row(String label, String value) {
        return List.of(label(label), Cell.of(value));
    }

    private static Cell label(String label) {
        return Cell.of(PageWords.faint(label));
    }

    private static PageWords stated(Reported job, String name) {
        return job.fact(name)
                .map(value -> PageWords.of(job.say("first.fact." + name) + " " + value))
                .orElse(PageWords.alert(job.say("first.notRecorded", job.say("first.fact." + name))));
    }

    private static Block shares(Reported job) {
        List<List<Cell>> lines = new ArrayList<>();
        for (Basis basis : Basis.values()) {
            Tally all = job.coverage().tally(basis);
            if (all.cells() > 0) {
                ShareFigures figures = new ShareFigures(job.coverage().headline(basis), job.map());
                lines.add(List.of(
                        basis == Basis.COMPUTED
                                ? Cell.of(
                                        PageWords.strong(job.map().basis(basis)),
                                        PageWords.faint(job.say("first.computed")))
                                : Cell.of(
                                        PageWords.strong(job.map().basis(basis)),
                                        PageWords.faint(job.say("first.declared"))),
                        Cell.of(
                                PageWords.strong(figures.left()),
                                PageWords.of(job.say("first.left", all.left(), all.within()))),
                        Cell.of(PageWords.strong(figures.seen())),
                        Cell.of(PageWords.strong(figures.beyond())),
                        good(job, all.seen(), all),
                        good(job, all.part(), all),
                        bad(job, all.glimpsed(), all),
                        bad(job, all.maybe(), all),
                        bad(job, all.unseen(), all)));
            }
        }
        return new Block.Table(
                List.of(
                        Column.of(job.say("first.basis"), 2.2),
                        Column.number(job.say("first.share.left"), 2),
                        Column.number(job.say("shares.surface"), 1.4),
                        Column.number(job.say("first.share.beyond"), 1.6),
                        Column.number(job.say("first.share.seen"), 1.2),
                        Column.number(job.say("shares.part"), 1.2),
                        Column.number(job.say("first.share.glimpse"), 1.4),
                        Column.number(job.say("shares.maybe"), 1.1),
                        Column.number(job.say("shares.unseen"), 1.2)),
                lines);
    }

    private static String terms(Reported job) {
        return Terms.of(job.coverage(), job.map()).line();
    }

    private static Cell good(Reported job, int cells, Tally all) {
        return Cell.of(PageWords.strong("" + cells), PageWords.of(ShareFigures.percent(all.share(cells), job.map())));
    }

    private static Cell bad(Reported job, int cells, Tally all) {
        return Cell.of(
                PageWords.strong("" + cells), PageWords.of(ShareFigures.badPercent(all.share(cells), job.map())));
    }

    private static List<Block> listed(Reported job, List<String> lines, String none, String chapter) {
        List<Block> blocks = new ArrayList<>();
        if (lines.isEmpty()) {
            blocks.add(new Block.Item(PageWords.of(none)));
        }
        lines.stream().limit(MOST_LISTED).forEach(line -> blocks.add(new Block.Item(PageWords.of(line))));
        if (lines.size() > MOST_LISTED) {
            blocks.add(new Block.Item(PageWords.strong(job.say("first.more", lines.size() - MOST_LISTED, chapter))));
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
                hands.add("; " + job.say("first.handover", handover.name(), Telling.minute(logged.at())));
            } else if (logged.entry() instanceof Entry.Takeover takeover) {
                hands.add("; " + job.say("first.takeover", takeover.name(), Telling.minute(logged.at())));
            }
        }
        String who = job.say("first.people", job.facts().by(), String.join(", ", names), String.join("", hands));
        return List.of(
                new Block.Paragraph(PageWords.of(who)),
                new Block.Table(
                        List.of(
                                Column.of("", 1.3),
                                Column.of(job.say("signed.name"), 2),
                                Column.of(job.say("first.licence"), 2.4),
                                Column.of(job.say("signed.signature"), 2.2),
                                Column.of(job.say("first.date"), 1.2)),
                        Signing.rows(job)));
    }
}
