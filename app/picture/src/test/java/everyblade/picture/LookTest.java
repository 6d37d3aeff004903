package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.picture.scene.Cell;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How cells look and are called whose state could flatter, or whose reason could be taken for another. */
class LookTest {

    private static final Job JOB =
            new Job(TwoRows.model()).set("detail", "0.5").enter("view p-r", "datum r 1", "turn 360");

    private static RowCoverage shaped() {
        return JOB.coverage().row("r");
    }

    private static String line(int airfoil, int zone, MapWords words) {
        return new CellTelling(JOB.coverage(), words).line(new Cell("r", airfoil, zone));
    }

    @Test
    void a_cell_of_which_views_show_less_than_half_looks_unlike_one_in_part() {
        RowCoverage row = shaped();
        int glimpsed = 0;
        for (int zone = 0; zone < row.zoning().size(); zone++) {
            if (row.state(1, zone) == State.PART) {
                boolean half = row.areas(1, zone).reach() >= 0.5;
                assertThat(Look.of(row, 1, zone)).isEqualTo(half ? Look.PART : Look.GLIMPSED);
                assertThat(line(1, zone, MapWords.of(Locale.ENGLISH)))
                        .endsWith(half ? "as far as can be" : "only a glimpse");
                assertThat(line(1, zone, MapWords.of(Locale.GERMAN)))
                        .endsWith(half ? "so weit es geht" : "nur ein Blick");
                glimpsed += half ? 0 : 1;
            }
        }
        assertThat(glimpsed).isPositive();
    }

    @Test
    void a_cell_that_is_only_shown_too_coarsely_is_never_called_not_accessible() {
        RowCoverage row = shaped();
        Set<Why> met = EnumSet.noneOf(Why.class);
        for (int zone = 0; zone < row.zoning().size(); zone++) {
            Why why = row.why(1, zone).orElse(Why.SKIPPED);
            if (why.outOfReach()) {
                met.add(why);
                assertThat(Look.of(row, 1, zone)).isEqualTo(Look.OUT_OF_REACH);
                assertThat(line(1, zone, MapWords.of(Locale.ENGLISH))).endsWith("no view shows it well");
                assertThat(new CellTelling(JOB.coverage(), MapWords.of(Locale.ENGLISH)).lines(new Cell("r", 1, zone)))
                        .contains(MapWords.of(Locale.ENGLISH).why(why))
                        .noneMatch(line -> line.contains("accessible") || line.contains("no access"));
            }
        }
        assertThat(met).contains(Why.COARSE);
    }
}
