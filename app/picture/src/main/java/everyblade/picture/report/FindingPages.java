package everyblade.picture.report;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Entry;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The chapter on what was found wrong, and the pictures. */
final class FindingPages {

    private FindingPages() {}

    /** One finding. */
    private record Finding(Logged logged, Entry.Find entry, Remark remark, RowCoverage row) {

        String where() {
            return Telling.airfoils(row.row(), remark);
        }
    }

    private static List<Finding> all(Reported job) {
        return job.situation().ledger().remarks().stream()
                .filter(remark -> remark.what() == Remark.What.FOUND)
                .map(remark -> new Finding(
                        job.entry(remark.entry()),
                        (Entry.Find) job.entry(remark.entry()).entry(),
                        remark,
                        job.coverage().row(remark.row())))
                .toList();
    }

    /** One line for each finding. */
    static List<String> lines(Reported job) {
        return all(job).stream()
                .map(found -> found.entry().kind().word() + ", "
                        + Telling.row(found.row().row()) + ", " + found.where() + ", "
                        + Telling.zones(found.row(), found.remark()) + ": "
                        + Telling.size(found.entry().size())
                        + job.judgement(found.logged().number())
                                .map(judgement -> " – " + judgement.verdict().words())
                                .orElse(""))
                .toList();
    }

    /** That nothing was found, with what was and no longer counts. */
    static String none(Reported job) {
        long gone = job.fold().entries().stream()
                .filter(logged ->
                        logged.entry() instanceof Entry.Find && job.fold().isVoid(logged.number()))
                .count();
        return gone == 0
                ? "Nothing was entered as found."
                : "Nothing that counts was entered as found; " + Telling.count((int) gone, "finding")
                        + (gone == 1 ? " was" : " were") + " taken out.";
    }

    static List<Block> of(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Findings"));
        List<Finding> findings = all(job);
        if (findings.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(none(job) + " Nothing found is not the same as"
                    + " nothing there: see what was not seen, and that on dirty parts less is found than on clean"
                    + " ones.")));
        } else {
            blocks.add(new Block.Paragraph(PageWords.of("Sizes and their ± as entered. "
                    + (job.exhibits().limits().isPresent()
                            ? "What comes of them is what the entered limits say, no more; the manual in force decides."
                            : "No limits were entered, so none is judged here; the manual in force says what is within"
                                    + " limits."))));
            blocks.add(table(job, findings));
            blocks.addAll(Judged.figures(job));
        }
        blocks.addAll(pictures(job));
        blocks.addAll(ContactSheet.of(job));
        return blocks;
    }

    private static Block table(Reported job, List<Finding> findings) {
        List<List<Cell>> rows = findings.stream()
                .map(found -> List.of(
                        Cell.of("" + found.logged().number()),
                        Cell.of(found.entry().kind().word()),
                        Cell.of(PageWords.of(found.row().row().name()), PageWords.of(found.where())),
                        Cell.of(Telling.zones(found.row(), found.remark())),
                        Cell.of(Telling.size(found.entry().size())),
                        Judged.outcome(job, found.logged().number()),
                        Cell.of(picturesOf(job, found)),
                        Cell.of(
                                PageWords.of(Telling.minute(found.logged().at())),
                                PageWords.of(found.logged().by()))))
                .toList();
        return new Block.Table(
                List.of(
                        Column.of("entry", 0.7),
                        Column.of("kind", 1),
                        Column.of("row and part", 2.1),
                        Column.of("zone", 2.4),
                        Column.of("size", 1.7),
                        Column.of("outcome", 2.4),
                        Column.of("pictures", 1.4),
                        Column.of("when (UTC), by", 1.7)),
                rows);
    }

    private static String picturesOf(Reported job, Finding found) {
        String files = job.told(Entry.Photo.class).stream()
                .filter(photo -> photo.entry().airfoil().isPresent()
                        && photo.entry()
                                .airfoil()
                                .get()
                                .value()
                                .equals(found.entry().airfoil().value())
                        && job.rowInView(photo.logged().number())
                                .filter(found.remark().row()::equals)
                                .isPresent())
                .map(photo -> photo.entry().file().value())
                .collect(Collectors.joining(", "));
        return files.isEmpty() ? "none" : files;
    }

    private static List<Block> pictures(Reported job) {
        List<List<Cell>> rows = job.told(Entry.Photo.class).stream()
                .map(photo -> List.of(
                        Cell.of("" + photo.logged().number()),
                        Cell.of(photo.entry().file().value()),
                        Cell.of(job.rowInView(photo.logged().number()).orElse("no view")),
                        Cell.of(photo.entry().airfoil().map(n -> "" + n.value()).orElse("–")),
                        Cell.of(photo.entry().zone().map(zone -> zone.value()).orElse("–"))))
                .toList();
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading(2, "Pictures"),
                new Block.Paragraph(
                        PageWords.of("As named by entries. A picture that was there when it was named is in the"
                                + " job's folder, under photos, and the line of its entry in the journal carries its hash; the"
                                + " others are names only.")),
                new Block.Table(
                        List.of(
                                Column.of("entry", 0.8),
                                Column.of("file", 4),
                                Column.of("row in view", 1.4),
                                Column.of("part", 0.8),
                                Column.of("zone as entered", 2)),
                        rows));
    }
}
