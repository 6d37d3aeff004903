package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.ZoneSet;
import everyblade.picture.ShareFigures;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntFunction;

/** The chapter of coverage tables: by row, then by span, side and edge. */
final class ShareTables {

    private ShareTables() {}

    static List<Block> of(Reported job) {
        List<RowCoverage> rows = job.coverage().rows();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("shares")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("shares.told"))));
        blocks.add(new Block.Heading(2, job.say("shares.byRow")));
        List<Line> lines = lines(job, rows);
        blocks.add(byRow(job, lines));
        blocks.add(new Block.Heading(2, job.say("shares.notSeen")));
        blocks.add(notSeen(job, lines));
        blocks.addAll(byBand(
                job, "shares.bySpan", rows, row -> bands(row, row.zoning().spans(), row.zoning()::span)));
        blocks.addAll(byBand(
                job, "shares.bySide", rows, row -> bands(row, row.zoning().sides(), row.zoning()::side)));
        blocks.addAll(byBand(
                job, "shares.byEdge", rows, row -> bands(row, row.zoning().chords(), row.zoning()::chord)));
        return blocks;
    }

    /**
     * A row, or all of one basis.
     *
     * @param name as it is told
     * @param figures of it
     * @param cells of it, counted
     */
    private record Line(Cell name, ShareFigures figures, Tally cells) {}

    private static List<Line> lines(Reported job, List<RowCoverage> rows) {
        List<Line> lines = new ArrayList<>();
        for (RowCoverage row : rows) {
            PageWords name = PageWords.of(Telling.row(row.row()));
            Cell cell = job.situation().counting(row.row())
                    ? Cell.of(name)
                    : Cell.of(name, PageWords.faint(job.map().say("doubt.no_datum")));
            lines.add(new Line(cell, new ShareFigures(row.headline(), job.map()), all(row)));
        }
        for (Basis basis : Basis.values()) {
            Tally all = job.coverage().tally(basis);
            if (all.cells() > 0) {
                ShareFigures figures = new ShareFigures(job.coverage().headline(basis), job.map());
                lines.add(new Line(
                        Cell.of(PageWords.strong(job.say("shares.all", job.map().basis(basis)))), figures, all));
            }
        }
        return lines;
    }

    private static Block byRow(Reported job, List<Line> lines) {
        return new Block.Table(
                List.of(
                        Column.of(job.say("column.row"), 3.1),
                        Column.number(job.say("shares.left"), 1.3),
                        Column.number(job.say("shares.surface"), 1.3),
                        Column.number(job.say("shares.beyond"), 1.3),
                        Column.number(job.say("column.cells"), 1.1),
                        Column.number(job.say("shares.seen"), 1.3),
                        Column.number(job.say("shares.part"), 1.3),
                        Column.number(job.say("shares.glimpse"), 1.3),
                        Column.number(job.say("shares.maybe"), 1.5),
                        Column.number(job.say("shares.unseen"), 1.3)),
                lines.stream()
                        .map(line -> List.of(
                                line.name(),
                                Cell.of(PageWords.strong(line.figures().left())),
                                Cell.of(PageWords.strong(line.figures().seen())),
                                Cell.of(PageWords.strong(line.figures().beyond())),
                                Cell.of("" + line.cells().cells()),
                                Cell.of("" + line.cells().seen()),
                                Cell.of("" + line.cells().part()),
                                Cell.of("" + line.cells().glimpsed()),
                                Cell.of("" + line.cells().maybe()),
                                Cell.of("" + line.cells().unseen())))
                        .toList());
    }

    private static Block notSeen(Reported job, List<Line> lines) {
        return new Block.Table(
                List.of(
                        Column.of(job.say("column.row"), 3.6),
                        Column.number(job.say("shares.unseen"), 1.2),
                        Column.number(job.say("shares.noAccess"), 2),
                        Column.number(job.say("shares.coarse"), 1.6),
                        Column.number(job.say("shares.fast"), 1.2),
                        Column.number(job.say("shares.stated"), 1.6),
                        Column.number(job.say("shares.damaged"), 1.4)),
                lines.stream()
                        .map(line -> List.of(
                                line.name(),
                                Cell.of("" + line.cells().unseen()),
                                Cell.of("" + line.cells().noAccess()),
                                Cell.of("" + line.cells().coarse()),
                                Cell.of("" + line.cells().fast()),
                                Cell.of("" + line.cells().stated()),
                                Cell.of("" + line.cells().damaged())))
                        .toList());
    }

    private static Tally all(RowCoverage row) {
        return row.tally(row.zoning().all());
    }

    private static Map<String, ZoneSet> bands(RowCoverage row, List<String> names, IntFunction<ZoneSet> zones) {
        Map<String, ZoneSet> bands = new LinkedHashMap<>();
        for (int band = 0; band < names.size(); band++) {
            bands.put(names.get(band), zones.apply(band));
        }
        return bands;
    }

    /** One table for each way of dividing rows, since a liner has other bands than a blade. */
    private static List<Block> byBand(
            Reported job, String key, List<RowCoverage> rows, Function<RowCoverage, Map<String, ZoneSet>> bandsOf) {
        Map<List<String>, List<RowCoverage>> alike = new LinkedHashMap<>();
        for (RowCoverage row : rows) {
            List<String> names = List.copyOf(bandsOf.apply(row).keySet());
            if (!names.isEmpty()) {
                alike.computeIfAbsent(names, one -> new ArrayList<>()).add(row);
            }
        }
        if (alike.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say(key)));
        alike.forEach((names, group) -> blocks.add(table(job, names, group, bandsOf)));
        return blocks;
    }

    private static Block table(
            Reported job,
            List<String> names,
            List<RowCoverage> rows,
            Function<RowCoverage, Map<String, ZoneSet>> bandsOf) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.of(job.say("column.row"), 2.4));
        names.forEach(name ->
                columns.add(Column.number(job.say("shares.three", job.map().zone(name)), 1.9)));
        List<List<Cell>> lines = new ArrayList<>();
        for (RowCoverage row : rows) {
            List<Cell> line = new ArrayList<>();
            line.add(Cell.of(Telling.row(row.row())));
            bandsOf.apply(row).values().forEach(zones -> {
                line.add(Cell.of(new ShareFigures(row.headline(zones), job.map()).brief()));
            });
            lines.add(line);
        }
        return new Block.Table(columns, lines);
    }
}
