package everyblade.window.map;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.ScreenKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the next step would show is outlined, and looks no more seen than it is. */
class GhostTest {

    private static CellPanel panel(ScreenKind kind) {
        CellPanel panel = new CellPanel(kind);
        panel.setSize(800, 640);
        panel.lookInto("r2");
        panel.show(Jobs.begun().coverage());
        return panel;
    }

    private static List<CellAt> cells(int from, int to) {
        List<CellAt> cells = new ArrayList<>();
        for (int airfoil = from; airfoil <= to; airfoil++) {
            cells.add(new CellAt("r2", airfoil, 0));
            cells.add(new CellAt("r2", airfoil, 1));
        }
        return cells;
    }

    /** Whether a place lies within these cells, and not at their edge, which is smooth. */
    private static boolean within(CellPanel panel, List<CellAt> cells, double x, double y) {
        for (int side = -1; side <= 1; side += 2) {
            if (panel.cellAt(x + 1.5 * side, y).filter(cells::contains).isEmpty()
                    || panel.cellAt(x, y + 1.5 * side).filter(cells::contains).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    @ParameterizedTest
    @EnumSource
    void runsRoundItsCellsAndLeavesThemAsTheyAre(ScreenKind kind) {
        CellPanel panel = panel(kind);
        List<CellAt> next = cells(3, 6);
        Screen screen = Screen.of(panel, 2, 0, 0);
        int[] before = screen.paint(panel);
        panel.foresee(next);
        int[] with = screen.paint(panel);
        for (int i = 0; i < with.length; i++) {
            if (with[i] != before[i]) {
                double x = screen.x(i % screen.image().getWidth());
                double y = screen.y(i / screen.image().getWidth());
                assertThat(within(panel, next, x, y)).as("at %.1f, %.1f", x, y).isFalse();
            }
        }
        assertThat(Screen.differing(before, with)).as("a line round them").isGreaterThan(50);

        panel.foresee(List.of());
        assertThat(Screen.differing(before, screen.paint(panel))).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void goesWithWhatIsShown(ScreenKind kind) {
        CellPanel panel = panel(kind);
        panel.foresee(cells(3, 6));
        panel.zoomIn();
        int[] zoomed = Screen.of(panel, 1, 0, 0).paint(panel);

        CellPanel other = panel(kind);
        other.zoomIn();
        other.foresee(cells(3, 6));
        assertThat(Screen.differing(zoomed, Screen.of(other, 1, 0, 0).paint(other)))
                .isZero();
    }
}
