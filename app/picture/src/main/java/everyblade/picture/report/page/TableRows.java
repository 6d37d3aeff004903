package everyblade.picture.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * A table with its words broken into lines: each cell as wide as its column.
 *
 * @param lefts where each column's words begin, points from the table's left edge
 * @param rooms how long a line of each column may be, points
 * @param head the head row; empty if no column has a head
 * @param rows the others
 */
record TableRows(double[] lefts, double[] rooms, List<Line[]> head, List<List<Line[]>> rows) {

    static final double SIZE = 8.2;
    static final double LEADING = 10.6;
    /** Above and below the lines of a row. */
    static final double PADDING = 2.4;

    private static final double GAP = 7;
    private static final Line NOTHING = new Line("", PageWords.Look.PLAIN);

    /** One line of one cell. */
    record Line(String text, PageWords.Look look) {}

    static TableRows of(Block.Table table, Letters letters, double width) {
        List<Block.Column> columns = table.columns();
        double shares = columns.stream().mapToDouble(Block.Column::share).sum();
        double[] lefts = new double[columns.size()];
        double[] rooms = new double[columns.size()];
        double at = 0;
        for (int i = 0; i < columns.size(); i++) {
            double column = width * columns.get(i).share() / shares;
            lefts[i] = at + GAP / 2;
            rooms[i] = column - GAP;
            at += column;
        }
        boolean headed = columns.stream().anyMatch(column -> !column.head().isEmpty());
        List<Block.Cell> heads = columns.stream()
                .map(column -> Block.Cell.of(PageWords.strong(column.head())))
                .toList();
        return new TableRows(
                lefts,
                rooms,
                headed ? lines(heads, letters, rooms) : List.of(),
                table.rows().stream().map(row -> lines(row, letters, rooms)).toList());
    }

    /** The lines of a row from top to bottom, each with one line a column. */
    private static List<Line[]> lines(List<Block.Cell> cells, Letters letters, double[] rooms) {
        List<List<Line>> byCell = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            double room = rooms[i];
            byCell.add(cells.get(i).lines().stream()
                    .flatMap(words -> letters
                            .wrapped(words.text(), SIZE, words.look().bold(), room)
                            .stream()
                            .map(text -> new Line(text, words.look())))
                    .toList());
        }
        int most = byCell.stream().mapToInt(List::size).max().orElse(0);
        List<Line[]> lines = new ArrayList<>();
        for (int line = 0; line < most; line++) {
            Line[] across = new Line[cells.size()];
            for (int i = 0; i < across.length; i++) {
                across[i] = line < byCell.get(i).size() ? byCell.get(i).get(line) : NOTHING;
            }
            lines.add(across);
        }
        return lines;
    }

    /** Height of so many lines with what is above and below them. */
    static double height(int lines) {
        return lines * LEADING + 2 * PADDING;
    }
}
