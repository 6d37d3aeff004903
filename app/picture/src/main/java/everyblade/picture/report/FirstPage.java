package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.RecordEntry;
import everyblade.core.finding.Verdict;
import everyblade.core.finding.closing.Behind;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Logged;
import everyblade.picture.PageStrips;
import everyblade.picture.ShareFigures;
import everyblade.picture.Terms;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.Block.Figure;
import everyblade.picture.report.page.Margins;
import everyblade.picture.report.page.PageWords;
import everyblade.picture.report.page.Pages;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The first page, which answers alone: lists are cut to what it has room for, and say where the rest is. */
final class FirstPage {

    /** So many lines of each list, the first that leave room for the rows. */
    private static final List<Integer> MOST_LISTED = List.of(6, 5, 4, 3, 2, 1);

    /** Of a row unrolled with the space to the next, mm. */
    private static final double EACH_MOST = 5.2;

    private static final double EACH_LEAST = 2.6;

    private static final Set<String> ASKED = Set.of("hours", "cycles", "position", "manual", "revision");

    private final Reported job;
    private final int most;

    private FirstPage(Reported job, int most) {
        this.job = job;
        this.most = most;
    }

    static List<Block> of(Reported job, Margins margins) {
        int rows = job.coverage().rows().size();
        double legend = Maps.height(PageStrips.of(job.coverage(), job.map(), 0));
        List<Block> blocks = List.of();
        for (int most : MOST_LISTED) {
            FirstPage page = new FirstPage(job, most);
            double room = (Pages.room(margins, page.blocks(List.of())) - legend) / rows / Maps.POINTS_PER_MM;
            double each = Math.max(EACH_LEAST, Math.min(EACH_MOST, room));
            blocks = page.blocks(List.of(Maps.drawing(PageStrips.of(job.coverage(), job.map(), each))));
            if (room >= EACH_LEAST) {
                break;
            }
        }
        return blocks;
    }

    private List<Block> blocks(List<Block> strips) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(
                1, job.say("engine.of", job.model().name(), job.facts().serial())));
        blocks.add(new Block.Table(List.of(Column.of("", 1)), List.of(List.of(new Cell(facts())))));
        blocks.add(answer());
        blocks.add(new Block.Heading(2, job.say("first.rows")));
        blocks.addAll(strips);
        blocks.add(findings());
        blocks.add(open());
        blocks.add(people());
        return blocks;
    }

    /** What was looked at, when, by whom and by what, in few lines. */
    private List<PageWords> facts() {
        List<PageWords> lines = new ArrayList<>();
        lines.add(PageWords.of(String.join(
                " · ",
                job.say(
                        "first.task",
                        job.facts().task(),
                        job.situation().ledger().asked().isEmpty()),
                job.say("first.when", Telling.minute(job.facts().at()), Telling.minute(end())),
                who())));
        Set<String> names = new LinkedHashSet<>(List.of("hours", "cycles", "position", "manual", "revision"));
        job.told(RecordEntry.Fact.class)
                .forEach(fact -> names.add(fact.entry().name().value().strip().toLowerCase(Locale.ROOT)));
        List<String> stated = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (String name : names) {
            String label = ASKED.contains(name) ? job.say("first.fact." + name) : name;
            job.fact(name).ifPresentOrElse(value -> stated.add(label + " " + value), () -> missing.add(label));
        }
        job.exhibits().limits().ifPresent(limits -> stated.add(job.say("first.limits", Judged.source(job, limits))));
        job.facts().previous().ifPresent(previous -> stated.add(job.say("first.previous", previous)));
        if (!stated.isEmpty()) {
            lines.add(PageWords.of(String.join(" · ", stated)));
        }
        if (!missing.isEmpty()) {
            lines.add(PageWords.alert(job.say("first.notRecorded", String.join(", ", missing))));
        }
        return lines;
    }

    private java.time.Instant end() {
        return job.counting().stream()
                .map(Logged::at)
                .max(Comparator.naturalOrder())
                .orElse(job.facts().at());
    }

    private String who() {
        Set<String> names = new LinkedHashSet<>();
        names.add(job.facts().by());
        job.counting().forEach(logged -> names.add(logged.by()));
        List<String> hands = new ArrayList<>();
        for (Logged logged : job.counting()) {
            if (logged.entry() instanceof RecordEntry.Handover handover) {
                hands.add("; " + job.say("first.handover", handover.name(), Telling.minute(logged.at())));
            } else if (logged.entry() instanceof RecordEntry.Takeover takeover) {
                hands.add("; " + job.say("first.takeover", takeover.name(), Telling.minute(logged.at())));
            }
        }
        return String.join(", ", names) + String.join("", hands);
    }

    private Block answer() {
        List<PageWords> reasons = new ArrayList<>();
        List<String> doubts = job.facts().doubts();
        doubts.stream().limit(most).forEach(doubt -> reasons.add(PageWords.alert(doubt)));
        if (doubts.size() > most) {
            reasons.add(PageWords.alert(job.say("first.doubts", doubts.size() - most, "everyblade verify")));
        }
        reasons.addAll(Signing.lines(job));
        boolean open = job.closing().any();
        Behind behind = job.closing().behind();
        if (open) {
            reasons.add(PageWords.alert(job.say("first.incomplete", Closing.counts(job))));
        } else if (behind.any()) {
            reasons.add(PageWords.strong(job.say("closing.behind", behind)));
        } else {
            reasons.add(PageWords.strong(job.say("first.complete")));
        }
        long beyond = job.judged().stream()
                .filter(judgement -> judgement.verdict() == Verdict.BEYOND)
                .count();
        if (beyond > 0) {
            reasons.add(PageWords.alert(job.say("first.beyond", beyond)));
        }
        for (Basis basis : Basis.values()) {
            if (job.coverage().tally(basis).cells() > 0) {
                ShareFigures figures = new ShareFigures(job.coverage().headline(basis), job.map());
                reasons.add(PageWords.of(job.say("first.basis", job.map().basis(basis), figures.line())));
            }
        }
        reasons.add(PageWords.faint(Terms.of(job.coverage(), job.map()).line()));
        reasons.add(PageWords.of(job.say("first.licensed")));
        boolean sound = !open && doubts.isEmpty() && beyond == 0;
        String said = job.say(open ? "first.notComplete" : sound ? "first.isComplete" : "first.completeBut");
        return new Block.Answer(sound ? PageWords.good(said) : PageWords.alert(said), figures(), reasons);
    }

    /** Four shares that are all cells of the leading basis, never rounded in our favour. */
    private List<Figure> figures() {
        Tally all = job.coverage().tally(job.coverage().leading());
        return List.of(
                new Figure(ShareFigures.percent(all.seenShare(), job.map()), job.say("shares.seen")),
                new Figure(
                        ShareFigures.percent(all.share(all.part()), job.map()),
                        job.map().say("look.part")),
                new Figure(ShareFigures.badPercent(all.share(all.maybe()), job.map()), job.say("shares.maybe")),
                new Figure(ShareFigures.badPercent(all.share(all.unseen()), job.map()), job.say("shares.unseen")));
    }

    private Block findings() {
        List<List<Cell>> rows = FindingPages.worst(job, most);
        int all = FindingPages.count(job);
        if (all > most) {
            rows = new ArrayList<>(rows);
            rows.add(List.of(
                    Cell.of(""),
                    Cell.of(PageWords.strong(job.say("first.more", all - most, job.say("findings")))),
                    Cell.of(""),
                    Cell.of("")));
        }
        if (all == 0) {
            rows = List.of(List.of(Cell.of(""), Cell.of(FindingPages.none(job)), Cell.of(""), Cell.of("")));
        }
        return new Block.Table(
                List.of(
                        Column.of(job.say("column.entry"), 0.95),
                        Column.of(job.say("first.found", all), 3.4),
                        Column.of(job.say("findings.size"), 3.2),
                        Column.of(job.say("first.limitsSay"), 2.4)),
                rows);
    }

    /** What is open; beside it whether the count is sound, and what was taken away, accepted or only said. */
    private Block open() {
        List<PageWords> open = new ArrayList<>(Closing.byKind(job, most));
        open.add(PageWords.of(open.isEmpty() ? job.say("first.nothing") : job.say("first.inFull", job.say("closing"))));
        List<PageWords> beside = new ArrayList<>(count());
        List<String> said = Closing.onlySaid(job);
        if (!said.isEmpty()) {
            beside.add(PageWords.strong(job.say("first.onlySaid")));
            beside.addAll(listed(said, "", job.say("first.onlySaid.where")));
        }
        return new Block.Table(
                List.of(
                        Column.of(job.say("first.open", job.closing().items().size()), 1),
                        Column.of(job.say("count"), 1)),
                List.of(List.of(new Cell(open), new Cell(beside))));
    }

    private List<PageWords> count() {
        if (job.coverage().lostCount()) {
            String rows = job.situation().countErrors().stream()
                    .filter(CountError::lost)
                    .map(CountError::row)
                    .distinct()
                    .collect(Collectors.joining(", "));
            return List.of(
                    PageWords.alert(job.say("first.lost", rows)),
                    PageWords.of(job.say("first.lost.see", job.say("count"))));
        }
        boolean closed = !job.situation().countErrors().isEmpty();
        List<PageWords> lines = new ArrayList<>();
        lines.add(PageWords.of(job.say(closed ? "first.agreed" : "first.neverClosed")));
        String uncounted = job.coverage().rows().stream()
                .map(RowCoverage::row)
                .filter(row -> !job.situation().counting(row))
                .map(row -> row.id())
                .collect(Collectors.joining(", "));
        if (!uncounted.isEmpty()) {
            lines.add(PageWords.of(job.say("first.uncounted", uncounted)));
        }
        return lines;
    }

    private List<PageWords> listed(List<String> lines, String none, String chapter) {
        if (lines.isEmpty()) {
            return List.of(PageWords.of(none));
        }
        List<PageWords> listed = new ArrayList<>(lines.stream()
                .limit(most)
                .map(line -> PageWords.of("– " + line))
                .toList());
        if (lines.size() > most) {
            listed.add(PageWords.strong(job.say("first.more", lines.size() - most, chapter)));
        }
        return listed;
    }

    private Block people() {
        return new Block.Table(
                List.of(
                        Column.of("", 1.3),
                        Column.of(job.say("signed.name"), 2),
                        Column.of(job.say("first.licence"), 2.4),
                        Column.of(job.say("signed.signature"), 2.2),
                        Column.of(job.say("first.date"), 1.2)),
                Signing.rows(job));
    }
}
