package everyblade.picture.report;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.FindingEntry;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Verdict;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The chapter on what was found wrong, and the pictures. */
final class FindingPages {

    private FindingPages() {}

    /** One finding. */
    private record Finding(Logged logged, FindingEntry.Find entry, Remark remark, RowCoverage row) {

        String where(Reported job) {
            return Telling.airfoils(job, row.row(), remark);
        }
    }

    private static List<Finding> all(Reported job) {
        return job.situation().ledger().remarks().stream()
                .filter(remark -> remark.what() == Remark.What.FOUND)
                .map(remark -> new Finding(
                        job.entry(remark.entry()),
                        (FindingEntry.Find) job.entry(remark.entry()).entry(),
                        remark,
                        job.coverage().row(remark.row())))
                .toList();
    }

    /** How many there are. */
    static int count(Reported job) {
        return all(job).size();
    }

    /** The worst in short, at most so many: entry, where, what and size, and what the limits say. */
    static List<List<Cell>> worst(Reported job, int most) {
        return all(job).stream()
                .sorted(Comparator.comparing(
                                (Finding found) -> job.judgement(found.logged().number())
                                        .map(Judgement::verdict)
                                        .orElse(Verdict.NO_RULE))
                        .reversed())
                .limit(most)
                .map(found -> List.of(
                        Cell.of("" + found.logged().number()),
                        Cell.of(PageWords.strong(job.say(
                                "findings.place",
                                found.row().row().id(),
                                found.where(job),
                                Telling.zones(job, found.row(), found.remark())))),
                        Cell.of(job.say(
                                "findings.what",
                                job.say(found.entry().kind()),
                                Telling.size(found.entry().size(), job.words()))),
                        job.judgement(found.logged().number())
                                .map(judgement -> Cell.of(Judged.verdict(job, judgement.verdict())))
                                .orElse(Cell.of(PageWords.faint(job.say("first.noLimits"))))))
                .toList();
    }

    /** That nothing was found, with what was and no longer counts. */
    static String none(Reported job) {
        long gone = job.fold().entries().stream()
                .filter(logged -> logged.entry() instanceof FindingEntry.Find
                        && job.fold().isVoid(logged.number()))
                .count();
        return gone == 0 ? job.say("findings.none") : job.say("findings.noneCounts", gone);
    }

    static List<Block> of(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("findings")));
        List<Finding> findings = all(job);
        if (findings.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(job.say("findings.nothing", none(job)))));
        } else {
            blocks.add(new Block.Paragraph(PageWords.of(
                    job.say("findings.told", job.exhibits().limits().isPresent()))));
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
                        Cell.of(job.say(found.entry().kind())),
                        Cell.of(PageWords.of(found.row().row().name()), PageWords.of(found.where(job))),
                        Cell.of(Telling.zones(job, found.row(), found.remark())),
                        Cell.of(Telling.size(found.entry().size(), job.words())),
                        Judged.outcome(job, found.logged().number()),
                        Cell.of(picturesOf(job, found)),
                        Cell.of(
                                PageWords.of(Telling.minute(found.logged().at())),
                                PageWords.of(found.logged().by()))))
                .toList();
        return new Block.Table(
                List.of(
                        Column.of(job.say("column.entry"), 1.1),
                        Column.of(job.say("findings.kind"), 1),
                        Column.of(job.say("findings.where"), 2.1),
                        Column.of(job.say("findings.zone"), 2.4),
                        Column.of(job.say("findings.size"), 1.7),
                        Column.of(job.say("findings.outcome"), 2.4),
                        Column.of(job.say("findings.pictures"), 1.4),
                        Column.of(job.say("column.whenBy"), 1.7)),
                rows);
    }

    private static String picturesOf(Reported job, Finding found) {
        String files = job.told(FindingEntry.Photo.class).stream()
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
        return files.isEmpty() ? job.say("findings.noPicture") : files;
    }

    private static List<Block> pictures(Reported job) {
        List<List<Cell>> rows = job.told(FindingEntry.Photo.class).stream()
                .map(photo -> List.of(
                        Cell.of("" + photo.logged().number()),
                        Cell.of(photo.entry().file().value()),
                        Cell.of(job.rowInView(photo.logged().number()).orElse(job.say("noView"))),
                        Cell.of(photo.entry().airfoil().map(n -> "" + n.value()).orElse("–")),
                        Cell.of(photo.entry().zone().map(zone -> zone.value()).orElse("–"))))
                .toList();
        if (rows.isEmpty()) {
            return List.of();
        }
        return List.of(
                new Block.Heading(2, job.say("pictures")),
                new Block.Paragraph(PageWords.of(job.say("pictures.told"))),
                new Block.Table(
                        List.of(
                                Column.of(job.say("column.entry"), 1.1),
                                Column.of(job.say("pictures.file"), 4),
                                Column.of(job.say("pictures.row"), 1.4),
                                Column.of(job.say("pictures.part"), 0.8),
                                Column.of(job.say("pictures.zone"), 2)),
                        rows));
    }
}
