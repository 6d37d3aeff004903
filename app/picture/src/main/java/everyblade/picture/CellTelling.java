package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Explanation;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is known of one cell, and of all together, in words.
 *
 * @param coverage of which it is told
 * @param words in which
 */
public record CellTelling(Coverage coverage, MapWords words) {

    /** What a picture shows, and what was seen of everything, counted; the selected cell first. */
    public String all(String picture, Optional<Cell> selected) {
        String all = picture + ". " + Shares.summary(coverage.rows(), words);
        return selected.map(cell -> words.say("cell.selected", line(cell), all)).orElse(all);
    }

    /** In one line, such as {@code blade 14 of c1, tip/pressure/leading: not inspected}. */
    public String line(Cell cell) {
        return new AirfoilWords(coverage.row(cell.row()), words).of(cell.airfoil(), cell.zone());
    }

    /** At length: that line, where the airfoil stands, and why the cell has its state, pass by pass. */
    public List<String> lines(Cell cell) {
        RowCoverage row = coverage.row(cell.row());
        List<String> lines = new ArrayList<>();
        lines.add(line(cell));
        lines.add(row.why(cell.airfoil(), cell.zone())
                .map(words::why)
                .orElseGet(() -> Look.of(row, cell.airfoil(), cell.zone()).meaning(words)));
        Standing standing = Standing.of(coverage.situation(), row.row());
        lines.add(
                standing.doubt().isEmpty()
                        ? words.say("cell.stands", tenths(standing.clock(cell.airfoil())))
                        : words.say("cell.where", standing.doubt(words)));
        lines.addAll(words.say(Explanation.of(coverage, cell.row(), cell.airfoil(), cell.zone())));
        return lines;
    }

    private String tenths(double degrees) {
        return new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(words.locale())).format(degrees);
    }
}
