package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.ZoneSet;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.Words;
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
        blocks.add(new Block.Paragraph(Words.of("Cells counted; a cell is one zone of one blade, vane or sector."
                + " Shares are of all cells, not accessible ones included, and are rounded down, so 100 % means all."
                + " Seen: surely in sight and watched. In part: not all of it, but as much as any view can show. Maybe:"
                + " only if count, errors and the place of the scope tip were kind. Computed: from the shape of the"
                + " airfoils and where the scope tip stood. Declared: the share rests on windows that the engine model"
                + " states for its views; nothing is computed.")));
        blocks.add(new Block.Heading(2, "By row"));
        blocks.add(byRow(job, rows));
        blocks.addAll(byBand("By span", rows, row -> bands(row, row.zoning().spans(), row.zoning()::span)));
        blocks.addAll(byBand("By side", rows, row -> bands(row, row.zoning().sides(), row.zoning()::side)));
        blocks.addAll(byBand("By edge", rows, row -> bands(row, row.zoning().chords(), row.zoning()::chord)));
        return blocks;
    }

    private static Block byRow(Reported job, List<RowCoverage> rows) {
        List<List<Cell>> lines = new ArrayList<>();
        for (RowCoverage row : rows) {
            Words name = Words.of(Telling.row(row.row()));
            Cell cell = job.situation().counting(row.row()) ? Cell.of(name) : Cell.of(name, Words.faint("no datum"));
            lines.add(line(cell, "" + row.row().count(), all(row)));
        }
        for (Basis basis : Basis.values()) {
            List<RowCoverage> alike =
                    rows.stream().filter(row -> row.basis() == basis).toList();
            if (!alike.isEmpty()) {
                lines.add(line(
                        Cell.of(Words.strong("all rows, " + basis.word())),
                        "" + alike.stream().mapToInt(row -> row.row().count()).sum(),
                        job.coverage().tally(basis)));
            }
        }
        return new Block.Table(
                List.of(
                        Column.of("row", 3.9),
                        Column.number("parts", 0.9),
                        Column.number("cells", 1),
                        Column.number("seen", 1),
                        Column.number("of cells", 1.25),
                        Column.number("in part", 0.9),
                        Column.number("maybe", 1.15),
                        Column.number("not seen", 1.1),
                        Column.number("no access", 1.1),
                        Column.number("too fast", 0.9),
                        Column.number("stated", 1.15),
                        Column.number("damaged", 1.3)),
                lines);
    }

    private static List<Cell> line(Cell name, String parts, Tally tally) {
        return List.of(
                name,
                Cell.of(parts),
                Cell.of("" + tally.cells()),
                Cell.of("" + tally.seen()),
                Cell.of(Words.strong(Telling.percent(tally.seen(), tally.cells()))),
                Cell.of("" + tally.part()),
                Cell.of("" + tally.maybe()),
                Cell.of("" + tally.unseen()),
                Cell.of("" + (tally.noAccess() + tally.coarse())),
                Cell.of("" + tally.fast()),
                Cell.of("" + tally.stated()),
                Cell.of("" + tally.damaged()));
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
        names.forEach(name -> columns.add(Column.number(name + ": seen of cells; with in part", 1.9)));
        List<List<Cell>> lines = new ArrayList<>();
        for (RowCoverage row : rows) {
            List<Cell> line = new ArrayList<>();
            line.add(Cell.of(Telling.row(row.row())));
            bandsOf.apply(row).values().forEach(zones -> {
                Tally tally = row.tally(zones);
                line.add(Cell.of(Words.of(
                        tally.seen() + " of " + tally.cells() + ", " + Telling.percent(tally.seen(), tally.cells())
                                + (tally.part() > 0
                                        ? "; " + Telling.percent(tally.seen() + tally.part(), tally.cells())
                                        : ""))));
            });
            lines.add(line);
        }
        return new Block.Table(columns, lines);
    }
}
