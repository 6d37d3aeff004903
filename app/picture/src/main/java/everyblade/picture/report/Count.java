package everyblade.picture.report;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.TurnEntry;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Logged;
import everyblade.core.turning.LostCount;
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

    /** A count error that would read as 0.0° is told as none; degrees. */
    private static final double LEAST_TOLD = 0.05;

    private Count() {}

    static List<Block> of(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("count")));
        blocks.add(verdict(job));
        TakenAsExact.of(job.situation())
                .map(job.words()::say)
                .ifPresent(told -> blocks.add(new Block.Paragraph(PageWords.of(told))));
        blocks.add(new Block.Heading(2, job.say("count.known")));
        blocks.add(identifications(job));
        blocks.add(new Block.Heading(2, job.say("count.breaks")));
        blocks.add(breaks(job));
        String uncounted = job.coverage().rows().stream()
                .filter(row -> !job.situation().counting(row.row()))
                .map(row -> row.row().id())
                .collect(Collectors.joining(", "));
        if (!uncounted.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(job.say("count.uncounted", uncounted))));
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
                lines.add(PageWords.of(job.say("count.unlogged", error.entry(), error.row(), error.since())));
                continue;
            }
            lines.add(
                    PageWords.alert(job.say(LostCount.of(error, row(job, error).kind()))));
        }
        for (CountError error : large) {
            lines.add(PageWords.of(job.say("count.large", error.since(), error.entry(), error.row())));
        }
        if (lines.isEmpty()) {
            lines.add(PageWords.of(job.say(errors.isEmpty() ? "count.neverClosed" : "count.agreed")));
        }
        return new Block.Framed(lines);
    }

    /** By how many airfoils the count was off, such as {@code 3 blades}. */
    private static String airfoils(Reported job, CountError error) {
        return error.airfoils() + " " + job.map().some(row(job, error), error.airfoils());
    }

    private static Row row(Reported job, CountError error) {
        return job.coverage().row(error.row()).row();
    }

    private static Block identifications(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Logged logged : job.counting()) {
            List<PageWords> found = found(job, logged.number());
            if (EntryKind.of(logged.entry()).identifies() || !found.isEmpty()) {
                rows.add(List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(Telling.minute(logged.at())),
                        Cell.of(logged.text()),
                        Cell.of(job.rowInView(logged.number()).orElse("–")),
                        found.isEmpty() ? Cell.of(PageWords.faint(job.say("count.nothing"))) : new Cell(found)));
            }
        }
        if (rows.isEmpty()) {
            return new Block.Paragraph(PageWords.of(job.say("none")));
        }
        return new Block.Table(
                List.of(
                        Column.of(job.say("column.entry"), 0.95),
                        Column.of(job.say("column.when"), 1.7),
                        Column.of(job.say("column.asEntered"), 2.2),
                        Column.of(job.say("column.inView"), 0.9),
                        Column.of(job.say("count.against"), 5)),
                rows);
    }

    /** What an entry found; the two ends of a round mostly find the same, which is told once. */
    private static List<PageWords> found(Reported job, int entry) {
        return job.situation().countErrors().stream()
                .filter(error -> error.entry() == entry)
                .map(error -> {
                    String told = against(job, error);
                    return error.lost() && !error.unlogged() ? PageWords.alert(told) : PageWords.of(told);
                })
                .distinct()
                .toList();
    }

    private static Block breaks(Reported job) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Logged logged : job.counting()) {
            String follows = follows(job, logged.entry());
            if (!follows.isEmpty()) {
                rows.add(List.of(
                        Cell.of("" + logged.number()),
                        Cell.of(PageWords.of(Telling.minute(logged.at())), PageWords.of(logged.by())),
                        Cell.of(logged.text()),
                        Cell.of(follows)));
            }
        }
        if (rows.isEmpty()) {
            return new Block.Paragraph(PageWords.of(job.say("none")));
        }
        return new Block.Table(
                List.of(
                        Column.of(job.say("column.entry"), 0.95),
                        Column.of(job.say("column.whenBy"), 1.7),
                        Column.of(job.say("column.asEntered"), 3),
                        Column.of(job.say("count.means"), 5)),
                rows);
    }

    /** A count error, and what follows from it. */
    private static String against(Reported job, CountError error) {
        if (!error.outside() && Math.abs(error.degrees()) < LEAST_TOLD) {
            return job.say("count.error.none");
        }
        String off = job.say("count.error.off", Math.abs(error.degrees()), error.degrees() < 0, error.since());
        if (error.unlogged()) {
            return job.say("count.error.unlogged", off);
        }
        if (error.lost()) {
            return job.say("count.error.lost", off, airfoils(job, error));
        }
        return job.say(error.outside() ? "count.error.large" : "count.error.within", off);
    }

    private static String follows(Reported job, Entry entry) {
        if (entry instanceof TurnEntry.Slip) {
            return job.say("count.follows.slip");
        } else if (entry instanceof RecordEntry.Pause pause) {
            return job.say("count.follows.break", pause.held());
        } else if (entry instanceof RecordEntry.Takeover takeover) {
            return job.say("count.follows.break", takeover.held());
        } else if (entry instanceof RecordEntry.Handover) {
            return job.say("count.follows.none");
        }
        return "";
    }
}
