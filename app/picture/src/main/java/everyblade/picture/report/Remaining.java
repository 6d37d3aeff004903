package everyblade.picture.report;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.entry.Entry;
import everyblade.core.finding.closing.Acceptance;
import everyblade.core.finding.closing.Behind;
import everyblade.core.gap.Gap;
import everyblade.core.gap.GapText;
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
        blocks.add(new Block.Heading(1, "Gaps"));
        if (job.gaps().isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(nothing(job))));
            return blocks;
        }
        int cells = job.gaps().stream()
                .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                .sum();
        blocks.add(
                new Block.Paragraph(
                        PageWords.of(
                                Telling.count(job.gaps().size(), "gap") + ", "
                                        + Telling.count(cells, "cell")
                                        + " that the task asks for, and that are neither seen nor accepted as"
                                        + " not seen. Angles are readings of the shaft, of rows that stand still clock angles of the scope tip; they rise clockwise as seen from aft looking forward.")));
        List<List<Cell>> rows = new ArrayList<>();
        for (Gap gap : job.gaps()) {
            rows.add(List.of(
                    Cell.of("" + (rows.size() + 1)),
                    Cell.of(GapText.of(gap)),
                    Cell.of("" + gap.airfoils().size() * gap.zones().size())));
        }
        blocks.add(new Block.Table(
                List.of(
                        Column.number("no.", 0.5),
                        Column.of("gap, why, and how to close it", 9.4),
                        Column.number("cells", 0.7)),
                rows));
        return blocks;
    }

    /** That nothing is left to see, with what stands behind that. */
    static String nothing(Reported job) {
        Behind behind = job.closing().behind();
        return behind.any()
                ? "No gap is left. Behind that stand: " + behind.told() + "."
                : "Nothing is left: all that the task asks for is seen.";
    }

    static List<Block> questions(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Rechecks and questions"));
        List<List<Cell>> rows = new ArrayList<>();
        for (Logged logged : job.counting()) {
            Entry entry = logged.entry();
            if (entry instanceof Entry.Recheck
                    || entry instanceof Entry.Refer
                    || entry instanceof Entry.Again
                    || entry instanceof Entry.Lost) {
                rows.add(List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(PageWords.of(Telling.minute(logged.at())), PageWords.of(logged.by())),
                        Cell.of(logged.text()),
                        settled(job, logged.number())));
            }
        }
        if (rows.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of("None was entered.")));
        } else {
            blocks.add(new Block.Table(
                    List.of(
                            Column.of("entry", 0.7),
                            Column.of("when (UTC), by", 1.7),
                            Column.of("as entered", 4),
                            Column.of("settled", 3)),
                    rows));
        }
        return blocks;
    }

    private static Cell settled(Reported job, int number) {
        if (job.situation().ledger().questions().containsKey(number)) {
            return Cell.of(PageWords.alert("OPEN"));
        }
        return job.told(Entry.Settle.class).stream()
                .filter(settle -> settle.entry().entry().value() == number)
                .findFirst()
                .map(settle -> Cell.of(PageWords.of("entry " + settle.logged().number() + ", "
                        + settle.logged().by() + ": " + settle.entry().reason())))
                .orElse(Cell.of(""));
    }

    static List<Block> notDone(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Not done, and why"));
        blocks.addAll(accepted(job));
        blocks.addAll(notAsked(job));
        blocks.addAll(stated(job));
        blocks.add(new Block.Heading(2, "Cells neither seen nor seen in part, by reason"));
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
                            PageWords.of(Telling.airfoils(row.row(), remark) + ", " + Telling.zones(row, remark)),
                            PageWords.faint(acceptance.told())),
                    Cell.of(((Entry.NoAccess) logged.entry()).reason()),
                    Cell.of(logged.by())));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, "Accepted as not seen"));
        blocks.add(
                rows.isEmpty()
                        ? new Block.Paragraph(PageWords.of("Nobody accepted anything as not seen."))
                        : new Block.Table(
                                List.of(
                                        Column.of("entry", 0.7),
                                        Column.of("row", 2),
                                        Column.of("parts and zones", 2.4),
                                        Column.of("reason", 4),
                                        Column.of("by", 1.4)),
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
        blocks.add(new Block.Heading(2, "Not asked for"));
        if (job.situation().ledger().asked().isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of("The task asks for every part of every row.")));
        }
        job.situation().ledger().asked().forEach((id, zones) -> {
            RowCoverage row = job.coverage().row(id);
            blocks.add(new Block.Item(PageWords.of("of " + Telling.row(row.row()) + " the task asks only for "
                    + GapText.zones(row.zoning(), zones) + "; shares are of everything all the same")));
        });
        return blocks;
    }

    private static List<Block> stated(Reported job) {
        List<Remark> remarks = remarks(job, Remark.What.STATED);
        if (remarks.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, "Stated with a picture, not counted as seen"));
        for (Remark remark : remarks) {
            RowCoverage row = job.coverage().row(remark.row());
            Entry.Saw saw = (Entry.Saw) job.entry(remark.entry()).entry();
            blocks.add(new Block.Item(PageWords.of("entry " + remark.entry() + ": " + Telling.row(row.row()) + ", "
                    + Telling.airfoils(row.row(), remark) + ", " + Telling.zones(row, remark) + ", picture "
                    + saw.file().value())));
        }
        return blocks;
    }

    private static Block byReason(Reported job) {
        Map<Why, int[]> counts = new EnumMap<>(Why.class);
        for (RowCoverage row : job.coverage().rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    boolean isAccepted = row.remarked(Remark.What.ACCEPTED, n, zone);
                    boolean isMaybe = row.state(n, zone) == State.MAYBE;
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
                        Column.of("why", 6),
                        Column.number("cells", 1),
                        Column.number("of these maybe seen", 1.6),
                        Column.number("of these accepted", 1.6)),
                counts.entrySet().stream()
                        .map(each -> List.of(
                                Cell.of(each.getKey().words()),
                                Cell.of("" + each.getValue()[0]),
                                Cell.of("" + each.getValue()[1]),
                                Cell.of("" + each.getValue()[2])))
                        .toList());
    }
}
