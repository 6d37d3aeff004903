package everyblade.picture.report;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.finding.closing.Acceptance;
import everyblade.core.finding.closing.Behind;
import everyblade.core.gap.Gap;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The chapters on what is left: gaps, rechecks and questions, and what was not done and why. */
final class Remaining {

    private Remaining() {}

    static List<Block> gaps(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("gaps")));
        if (job.gaps().isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(nothing(job))));
            return blocks;
        }
        int cells = job.gaps().stream()
                .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                .sum();
        blocks.add(
                new Block.Paragraph(PageWords.of(job.say("gaps.told", job.gaps().size(), cells))));
        List<List<Cell>> rows = new ArrayList<>();
        for (Gap gap : job.gaps()) {
            rows.add(List.of(
                    Cell.of("" + (rows.size() + 1)),
                    Cell.of(Telling.gap(job, gap)),
                    Cell.of("" + gap.airfoils().size() * gap.zones().size())));
        }
        blocks.add(new Block.Table(
                List.of(
                        Column.number(job.say("column.number"), 0.5),
                        Column.of(job.say("gaps.column"), 9.4),
                        Column.number(job.say("column.cells"), 0.7)),
                rows));
        return blocks;
    }

    /** That nothing is left to see, with what stands behind that. */
    static String nothing(Reported job) {
        Behind behind = job.closing().behind();
        return behind.any() ? job.say("gaps.behind", behind) : job.say("gaps.none");
    }

    static List<Block> questions(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("questions")));
        List<List<Cell>> rows = new ArrayList<>();
        for (Logged logged : job.counting()) {
            if (EntryKind.of(logged.entry()).asks()) {
                rows.add(List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(PageWords.of(Telling.minute(logged.at())), PageWords.of(logged.by())),
                        Cell.of(logged.text()),
                        settled(job, logged.number())));
            }
        }
        if (rows.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(job.say("none"))));
        } else {
            blocks.add(new Block.Table(
                    List.of(
                            Column.of(job.say("column.entry"), 0.95),
                            Column.of(job.say("column.whenBy"), 1.7),
                            Column.of(job.say("column.asEntered"), 4),
                            Column.of(job.say("questions.settled"), 3)),
                    rows));
        }
        return blocks;
    }

    private static Cell settled(Reported job, int number) {
        if (job.situation().ledger().questions().containsKey(number)) {
            return Cell.of(PageWords.alert(job.say("open")));
        }
        return job.told(FindingEntry.Settle.class).stream()
                .filter(settle -> settle.entry().entry().value() == number)
                .findFirst()
                .map(settle -> Cell.of(Telling.answered(
                        job,
                        settle.logged().number(),
                        settle.logged().by(),
                        settle.entry().reason())))
                .orElse(Cell.of(""));
    }

    static List<Block> notDone(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("notDone")));
        blocks.addAll(accepted(job));
        blocks.addAll(notAsked(job));
        blocks.addAll(stated(job));
        blocks.add(new Block.Heading(2, job.say("notDone.byReason")));
        blocks.add(byReason(job));
        return blocks;
    }

    private static List<Block> accepted(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Remark remark : remarks(job, Remark.What.ACCEPTED)) {
            RowCoverage row = job.coverage().row(remark.row());
            Acceptance acceptance = Acceptance.of(job.coverage(), remark);
            if (acceptance.cells() == 0) {
                continue;
            }
            Logged logged = job.entry(remark.entry());
            rows.add(List.of(
                    Cell.of("" + remark.entry()),
                    Cell.of(Telling.row(row.row())),
                    Cell.of(
                            PageWords.of(
                                    Telling.airfoils(job, row.row(), remark) + ", " + Telling.zones(job, row, remark)),
                            PageWords.faint(job.say(acceptance.told()))),
                    Cell.of(((FindingEntry.NoAccess) logged.entry()).reason()),
                    Cell.of(logged.by())));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say("accepted")));
        blocks.add(
                rows.isEmpty()
                        ? new Block.Paragraph(PageWords.of(job.say("accepted.none")))
                        : new Block.Table(
                                List.of(
                                        Column.of(job.say("column.entry"), 0.95),
                                        Column.of(job.say("column.row"), 2),
                                        Column.of(job.say("accepted.parts"), 2.4),
                                        Column.of(job.say("accepted.reason"), 4),
                                        Column.of(job.say("column.by"), 1.4)),
                                rows));
        return blocks;
    }

    private static List<Remark> remarks(Reported job, Remark.What what) {
        return job.situation().ledger().remarks().stream()
                .filter(remark -> remark.what().says(what))
                .toList();
    }

    private static List<Block> notAsked(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say("notAsked")));
        if (job.situation().ledger().asked().isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(job.say("notAsked.none"))));
        }
        job.situation().ledger().asked().forEach((id, zones) -> {
            RowCoverage row = job.coverage().row(id);
            blocks.add(new Block.Item(
                    PageWords.of(job.say("notAsked.of", Telling.row(row.row()), ZonePhrase.of(row.zoning(), zones)))));
        });
        return blocks;
    }

    private static List<Block> stated(Reported job) {
        List<Remark> remarks = remarks(job, Remark.What.STATED);
        if (remarks.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say("stated")));
        for (Remark remark : remarks) {
            RowCoverage row = job.coverage().row(remark.row());
            FindingEntry.Saw saw = (FindingEntry.Saw) job.entry(remark.entry()).entry();
            blocks.add(new Block.Item(PageWords.of(job.say(
                    "stated.of",
                    remark.entry(),
                    Telling.row(row.row()),
                    Telling.airfoils(job, row.row(), remark),
                    Telling.zones(job, row, remark),
                    saw.file().value()))));
        }
        return blocks;
    }

    private static Block byReason(Reported job) {
        Map<Why, int[]> counts = new EnumMap<>(Why.class);
        for (RowCoverage row : job.coverage().rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    boolean isAccepted = row.remarked(Remark.What.ACCEPTED, n, zone);
                    boolean isMaybe = row.state(n, zone).grade() == State.Grade.DOUBTFUL;
                    row.why(n, zone).ifPresent(why -> {
                        int[] all = counts.computeIfAbsent(why, key -> new int[3]);
                        all[0]++;
                        all[1] += isMaybe ? 1 : 0;
                        all[2] += isAccepted ? 1 : 0;
                    });
                }
            }
        }
        return new Block.Table(
                List.of(
                        Column.of(job.say("column.why"), 6),
                        Column.number(job.say("column.cells"), 1),
                        Column.number(job.say("notDone.maybe"), 1.6),
                        Column.number(job.say("notDone.accepted"), 1.6)),
                counts.entrySet().stream()
                        .map(each -> List.of(
                                Cell.of(job.words().say(each.getKey())),
                                Cell.of("" + each.getValue()[0]),
                                Cell.of("" + each.getValue()[1]),
                                Cell.of("" + each.getValue()[2])))
                        .toList());
    }
}
