package everyblade.picture.report;

import everyblade.core.entry.Entry;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Logged;
import everyblade.core.turning.TakenAsExact;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The chapter on how far the count of the airfoils can be trusted. */
final class Count {

    private Count() {}

    static List<Block> of(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Is the count sound?"));
        blocks.add(verdict(job));
        TakenAsExact.told(job.situation()).ifPresent(told -> blocks.add(new Block.Paragraph(PageWords.of(told))));
        blocks.add(new Block.Heading(2, "Known parts at the reference"));
        blocks.add(identifications(job));
        blocks.add(new Block.Heading(2, "Slips, pauses and hand-overs"));
        blocks.add(breaks(job));
        String uncounted = job.coverage().rows().stream()
                .filter(row -> !job.situation().counting(row.row()))
                .map(row -> row.row().id())
                .collect(Collectors.joining(", "));
        if (!uncounted.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(
                    "No part was ever identified, so nothing that was watched counts, in: " + uncounted + ".")));
        }
        return blocks;
    }

    private static Block verdict(Reported job) {
        List<CountError> errors = job.situation().countErrors();
        List<CountError> lost = errors.stream().filter(CountError::lost).toList();
        List<CountError> large = errors.stream()
                .filter(error -> error.outside() && !error.lost())
                .toList();
        List<PageWords> lines = new ArrayList<>();
        for (CountError error : lost) {
            if (error.unlogged()) {
                lines.add(PageWords.of(
                        "At entry " + error.entry() + ", row " + error.row() + " stood elsewhere than entry "
                                + error.since()
                                + " left it, with no turning entered between: turned unlogged, it seems. What was"
                                + " seen before stays as it is."));
                continue;
            }
            lines.add(PageWords.alert("The count was lost between entries " + error.since() + " and " + error.entry()
                    + ", row " + error.row() + ", by about "
                    + Telling.count((int) error.airfoils(), airfoil(job, error))
                    + ". What was watched between them is only maybe seen until it is seen again."));
        }
        for (CountError error : large) {
            lines.add(PageWords.of("Between entries " + error.since() + " and " + error.entry() + ", row " + error.row()
                    + ", counted and seen angle differ by more than the stated errors allow for, but by less than half"
                    + " a pitch: the stated errors are too small."));
        }
        if (lines.isEmpty()) {
            lines.add(PageWords.of(
                    errors.isEmpty()
                            ? "No count was ever closed on a known part, so nothing here can show whether it"
                                    + " is right."
                            : "Wherever a count was closed on a known part, it agreed within the stated"
                                    + " errors. A whole turn that was entered as one (round) agrees with itself,"
                                    + " and shows nothing of the others."));
        }
        return new Block.Framed(lines);
    }

    private static String airfoil(Reported job, CountError error) {
        return row(job, error).kind().airfoil();
    }

    private static Row row(Reported job, CountError error) {
        return job.coverage().row(error.row()).row();
    }

    private static Block identifications(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Logged logged : job.counting()) {
            List<PageWords> found = found(job, logged.number());
            if (identifies(logged.entry()) || !found.isEmpty()) {
                rows.add(List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(Telling.minute(logged.at())),
                        Cell.of(logged.text()),
                        Cell.of(job.rowInView(logged.number()).orElse("–")),
                        found.isEmpty() ? Cell.of(PageWords.faint("nothing to compare with")) : new Cell(found)));
            }
        }
        if (rows.isEmpty()) {
            return new Block.Paragraph(PageWords.of("None was entered."));
        }
        return new Block.Table(
                List.of(
                        Column.of("entry", 0.7),
                        Column.of("when (UTC)", 1.7),
                        Column.of("as entered", 2.2),
                        Column.of("in view", 0.9),
                        Column.of("counted against seen", 5)),
                rows);
    }

    /** What an entry found; the two ends of a round mostly find the same, which is told once. */
    private static List<PageWords> found(Reported job, int entry) {
        return job.situation().countErrors().stream()
                .filter(error -> error.entry() == entry)
                .map(error -> {
                    String told = Telling.countError(error, row(job, error));
                    return error.lost() && !error.unlogged() ? PageWords.alert(told) : PageWords.of(told);
                })
                .distinct()
                .toList();
    }

    private static boolean identifies(Entry entry) {
        return entry instanceof Entry.Datum || entry instanceof Entry.Here || entry instanceof Entry.Round;
    }

    private static Block breaks(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Logged logged : job.counting()) {
            String follows = follows(logged.entry());
            if (!follows.isEmpty()) {
                rows.add(List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(PageWords.of(Telling.minute(logged.at())), PageWords.of(logged.by())),
                        Cell.of(logged.text()),
                        Cell.of(follows)));
            }
        }
        if (rows.isEmpty()) {
            return new Block.Paragraph(PageWords.of("None was entered."));
        }
        return new Block.Table(
                List.of(
                        Column.of("entry", 0.7),
                        Column.of("when (UTC), by", 1.7),
                        Column.of("as entered", 3),
                        Column.of("what it means for the count", 5)),
                rows);
    }

    private static String follows(Entry entry) {
        String broken = "nothing new is sure until a known part is at the reference again";
        if (entry instanceof Entry.Slip) {
            return "the rotor may have moved unwatched: " + broken;
        } else if (entry instanceof Entry.Pause pause) {
            return pause.held() ? "the rotor was held, so the count goes on" : broken;
        } else if (entry instanceof Entry.Takeover takeover) {
            return takeover.held() ? "the rotor was held, so the count goes on" : broken;
        } else if (entry instanceof Entry.Handover) {
            return "none by itself";
        }
        return "";
    }
}
