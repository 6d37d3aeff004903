package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Explanation;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Remark;
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
 * @param words in which; counts of everything are in English always
 */
public record CellTelling(Coverage coverage, MapWords words) {

    /** What a picture shows, and what was seen of everything, counted; the selected cell first. */
    public String all(String picture, Optional<Cell> selected) {
        String all = picture + ". " + Shares.summary(coverage.rows());
        return selected.map(cell -> words.say("cell.selected", line(cell), all)).orElse(all);
    }

    /** In one line, such as {@code blade 14 of c1, tip/pressure/leading: not inspected}. */
    public String line(Cell cell) {
        RowCoverage row = coverage.row(cell.row());
        List<String> states = new ArrayList<>();
        states.add(Look.of(row, cell.airfoil(), cell.zone()).words(words));
        add(states, row, cell, Remark.What.FOUND, "cell.damaged");
        add(states, row, cell, Remark.What.RECHECK, "cell.recheck");
        add(states, row, cell, Remark.What.ACCEPTED, "cell.accepted");
        return words.say(
                "cell",
                words.airfoil(row.row()),
                cell.airfoil(),
                cell.row(),
                words.zone(row.zoning().names().get(cell.zone())),
                String.join(", ", states));
    }

    private void add(List<String> states, RowCoverage row, Cell cell, Remark.What what, String key) {
        if (row.remarked(what, cell.airfoil(), cell.zone())) {
            states.add(words.say(key));
        }
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
