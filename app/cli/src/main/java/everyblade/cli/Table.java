package everyblade.cli;

import java.util.ArrayList;
import java.util.List;

/** Columns of text for people; all but the first two are flush right. */
final class Table {

    private static final int FLUSH_LEFT = 2;
    private static final String BETWEEN = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    Table row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /** The lines, columns as wide as their widest cell. */
    List<String> lines() {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int column = 0; column < columns; column++) {
                widths[column] = Math.max(widths[column], width(row.get(column)));
            }
        }
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            String padding = " ".repeat(widths[column] - width(row.get(column)));
            line.append(column == 0 ? "" : BETWEEN)
                    .append(column < FLUSH_LEFT ? row.get(column) + padding : padding + row.get(column));
        }
        return line.toString().stripTrailing();
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
