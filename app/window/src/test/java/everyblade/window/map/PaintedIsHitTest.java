package everyblade.window.map;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.ScreenKind;
import everyblade.picture.scene.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One cell changes its look; the picture elements that change are those under which the panel finds that cell. */
class PaintedIsHitTest {

    private static final int GRID = 4;

    /**
     * Picture elements, where enlarged, that are left to outlines, which are the same whatever a cell is, and to the ends of
     * a pattern's lines, which reach out of the cell by half their width.
     */
    private static final int LINE = 2;

    private static final int ALL = (2 * LINE + 1) * (2 * LINE + 1);

    private static final Jobs JOB = Jobs.begun();
    private static final Coverage BEFORE = JOB.coverage();
    private static final CellAt OF_R1 = new CellAt("r1", 9, 1);
    private static final CellAt OF_R2 = new CellAt("r2", 6, 3);
    private static final Coverage R1_STATED = with("r1 saw root/pressure/middle 9 photo a.jpg");
    private static final Coverage R2_STATED = with("r2 saw s2/suction 6 photo a.jpg");

    private static Coverage with(String entry) {
        return Jobs.begun().enter(entry).coverage();
    }

    static List<Arguments> looks() {
        List<Arguments> all = new ArrayList<>();
        for (ScreenKind kind : ScreenKind.values()) {
            for (double scale : new double[] {1, 1.25, 1.5, 1.75, 2, 3}) {
                for (Facing facing : scale == 1.5 ? Facing.values() : new Facing[] {Facing.AFT_LOOKING_FORWARD}) {
                    for (double zoom : scale == 1.25 ? new double[] {1, 3.7} : new double[] {1}) {
                        all.add(Arguments.of(kind, scale, facing, zoom));
                    }
                }
            }
        }
        return all;
    }

    @ParameterizedTest(name = "{0} at scale {1}, {2}, zoomed {3} times")
    @MethodSource("looks")
    void a_cell_painted_is_the_cell_hit(ScreenKind kind, double scale, Facing facing, double zoom) {
        CellPanel panel = new CellPanel(kind);
        panel.setSize(640, 530);
        panel.style(new MapStyle(Theme.LIGHT, facing));
        panel.lookInto("r1");
        panel.show(BEFORE);
        boolean opened = kind == ScreenKind.STRIPS || kind == ScreenKind.ROW;
        CellAt large = opened ? OF_R1 : OF_R2;
        double[] place = place(panel, large);
        panel.zoom(zoom, place[0], place[1]);
        panel.pan(zoom > 1 ? 7.3 : 0, zoom > 1 ? -4.9 : 0);

        assertThat(holds(panel, scale, large, opened ? R1_STATED : R2_STATED)).isGreaterThan(5);
        if (zoom == 1 && kind != ScreenKind.WHEEL && kind != ScreenKind.ROW) {
            panel.show(BEFORE);
            holds(panel, scale, opened ? OF_R2 : OF_R1, opened ? R2_STATED : R1_STATED);
        }
    }

    /** A place where a cell is hit. */
    private static double[] place(CellPanel panel, CellAt cell) {
        for (int x = 0; x < panel.getWidth(); x++) {
            for (int y = 0; y < panel.getHeight(); y++) {
                if (panel.cellAt(x, y).equals(Optional.of(cell))) {
                    return new double[] {x, y};
                }
            }
        }
        throw new AssertionError(cell + " is nowhere");
    }

    private static int holds(CellPanel panel, double scale, CellAt cell, Coverage after) {
        Screen screen = Screen.of(panel, scale, 3, 5);
        int[] old = screen.paint(panel);
        panel.show(after);
        int[] now = screen.paint(panel);
        int width = screen.image().getWidth();
        int inside = 0;
        for (int line = 1; line < screen.image().getHeight() - 1; line++) {
            for (int column = 1; column < width - 1; column++) {
                boolean changed = old[line * width + column] != now[line * width + column];
                // Every change is looked into; of what has not changed, a grid of places.
                if (changed || line % GRID == 0 && column % GRID == 0 && hit(panel, screen, cell, column, line)) {
                    int near = near(panel, screen, cell, column, line, LINE);
                    assertThat(changed ? near > 0 : near < ALL)
                            .as(
                                    "%s at %s, %s, which %s",
                                    cell,
                                    screen.x(column),
                                    screen.y(line),
                                    changed ? "has changed and is not hit" : "is hit and has not changed")
                            .isTrue();
                    inside += near == ALL ? 1 : 0;
                }
            }
        }
        return inside;
    }

    /** Of a picture element and its neighbours so far each way, how many are hit as this cell. */
    private static int near(CellPanel panel, Screen screen, CellAt cell, int column, int line, int far) {
        int near = 0;
        for (int dy = -far; dy <= far; dy++) {
            for (int dx = -far; dx <= far; dx++) {
                near += hit(panel, screen, cell, column + dx, line + dy) ? 1 : 0;
            }
        }
        return near;
    }

    private static boolean hit(CellPanel panel, Screen screen, CellAt cell, int column, int line) {
        return panel.cellAt(screen.x(column), screen.y(line)).equals(Optional.of(cell));
    }
}
