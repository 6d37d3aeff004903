package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Oracle.Cell;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Random jobs on random engines without errors, held against an oracle that keeps every angle as a fraction of a
 * general-purpose library and asks for every watched move, airfoil and zone whether one meets the other; 500 of them,
 * with {@code -Deveryblade.campaign=true} 10,000.
 */
class OracleTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 10_000 : 500;

    @Test
    void everyCellIsSeenExactlyWhereTheOracleSaysSo() {
        int cells = 0;
        int seen = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            Set<Cell> expected = random.oracle().seen();
            Set<Cell> found = new TreeSet<>();
            for (RowCoverage row : random.job().coverage().rows()) {
                cells += row.cells();
                for (int n = 1; n <= row.row().count(); n++) {
                    for (int zone = 0; zone < row.zoning().size(); zone++) {
                        assertThat(row.state(n, zone)).isIn(State.SEEN, State.UNSEEN);
                        if (row.state(n, zone) == State.SEEN) {
                            found.add(new Cell(
                                    row.row().id(), n, row.zoning().names().get(zone)));
                        }
                    }
                }
            }
            seen += found.size();
            if (!found.equals(expected)) {
                Set<Cell> missed = new TreeSet<>(expected);
                missed.removeAll(found);
                found.removeAll(expected);
                throw new AssertionError("job " + seed + "\n" + String.join("\n", random.lines()) + "\nmissed " + missed
                        + "\nadded " + found);
            }
        }
        // Neither nearly nothing nor nearly everything was seen, or the comparison would be worth little.
        assertThat((double) seen / cells).isBetween(0.2, 0.8);
    }
}
