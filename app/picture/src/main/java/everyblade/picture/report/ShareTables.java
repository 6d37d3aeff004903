package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.ZoneSet;
import everyblade.picture.MapWords;
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
        blocks.add(new Block.Heading(1, "Coverage"));
        blocks.add(new Block.Paragraph(
                PageWords.of("First what is left of the cells that these views can show, then how much of the"
                        + " surface is seen, then how much of it no view shows well enough; what is left and what no view shows is"
                        + " rounded up, what is seen down. Then cells counted; a cell is one zone of one blade, vane or sector."
                        + " Seen: surely in sight and watched. In part: not all of it, but as much as any view can show; a glimpse,"
                        + " if views show less than half of it. Maybe:"
                        + " only if count, errors and the place of the scope tip were kind. Computed: from the shape of the"
                        + " airfoils and where the scope tip stood. Declared: the share rests on windows that the engine model"
                        + " states for its views; nothing is computed.")));
        blocks.add(new Block.Heading(2, "By row"));
        List<Line> lines = lines(job, rows);
        blocks.add(byRow(lines));
        blocks.add(new Block.Heading(2, "Cells not seen, by row"));
        blocks.add(notSeen(lines));
        blocks.addAll(byBand("By span", rows, row -> bands(row, row.zoning().spans(), row.zoning()::span)));
        blocks.addAll(byBand("By side", rows, row -> bands(row, row.zoning().sides(), row.zoning()::side)));
        blocks.addAll(byBand("By edge", rows, row -> bands(row, row.zoning().chords(), row.zoning()::chord)));
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
            Cell cell =
                    job.situation().counting(row.row()) ? Cell.of(name) : Cell.of(name, PageWords.faint("no datum"));
            lines.add(new Line(cell, new ShareFigures(row.headline(), MapWords.ENGLISH), all(row)));
        }
        for (Basis basis : Basis.values()) {
            Tally all = job.coverage().tally(basis);
            if (all.cells() > 0) {
                ShareFigures figures = new ShareFigures(job.coverage().headline(basis), MapWords.ENGLISH);
                lines.add(new Line(Cell.of(PageWords.strong("all rows, " + basis.word())), figures, all));
            }
        }
        return lines;
    }

    private static Block byRow(List<Line> lines) {
        return new Block.Table(
                List.of(
                        Column.of("row", 3.6),
                        Column.number("left", 1.3),
                        Column.number("surface seen", 1.3),
                        Column.number("no view shows", 1.3),
                        Column.number("cells", 1),
                        Column.number("seen", 1),
                        Column.number("in part", 1),
                        Column.number("a glimpse", 1.3),
                        Column.number("maybe", 1.2),
                        Column.number("not seen", 1)),
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

    private static Block notSeen(List<Line> lines) {
        return new Block.Table(
                List.of(
                        Column.of("row", 3.6),
                        Column.number("not seen", 1.2),
                        Column.number("of these shown by no view", 2),
                        Column.number("only too coarsely", 1.6),
                        Column.number("too fast", 1.2),
                        Column.number("stated with a picture", 1.6),
                        Column.number("of all damaged", 1.4)),
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
            String title, List<RowCoverage> rows, Function<RowCoverage, Map<String, ZoneSet>> bandsOf) {
        Map<List<String>, List<RowCoverage>> alike = new LinkedHashMap<>();
        for (RowCoverage row : rows) {
            List<String> names = List.copyOf(bandsOf.apply(row).keySet());
            if (!names.isEmpty()) {
                alike.computeIfAbsent(names, key -> new ArrayList<>()).add(row);
            }
        }
        if (alike.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, title));
        alike.forEach((names, group) -> blocks.add(table(names, group, bandsOf)));
        return blocks;
    }

    private static Block table(
            List<String> names, List<RowCoverage> rows, Function<RowCoverage, Map<String, ZoneSet>> bandsOf) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.of("row", 2.4));
        names.forEach(name -> columns.add(Column.number(name + ": left / surface seen / no view shows", 1.9)));
        List<List<Cell>> lines = new ArrayList<>();
        for (RowCoverage row : rows) {
            List<Cell> line = new ArrayList<>();
            line.add(Cell.of(Telling.row(row.row())));
            bandsOf.apply(row).values().forEach(zones -> {
                line.add(Cell.of(new ShareFigures(row.headline(zones), MapWords.ENGLISH).brief()));
            });
            lines.add(line);
        }
        return new Block.Table(columns, lines);
    }
}
