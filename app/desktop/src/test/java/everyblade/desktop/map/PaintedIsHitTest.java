package everyblade.desktop.map;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.scene.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
    private static final CellAt LARGE = new CellAt("r1", 9, 1);
    private static final CellAt SMALL = new CellAt("r2", 6, 3);
    private static final Coverage LARGE_STATED = with("r1 saw root/pressure/middle 9 photo a.jpg");
    private static final Coverage SMALL_STATED = with("r2 saw s2/suction 6 photo a.jpg");

    private static Coverage with(String entry) {
        return Jobs.begun().enter(entry).coverage();
    }

    static List<Arguments> looks() {
        List<Arguments> all = new ArrayList<>();
        for (double scale : new double[] {1, 1.25, 1.5, 1.75, 2, 3}) {
            for (Facing facing : Facing.values()) {
                for (boolean turning : scale == 1.5 ? new boolean[] {true, false} : new boolean[] {true}) {
                    for (double zoom : scale == 1.25 || scale == 2 ? new double[] {1, 3.7} : new double[] {1}) {
                        all.add(Arguments.of(scale, facing, turning, zoom));
                    }
                }
            }
        }
        return all;
    }

    @ParameterizedTest(name = "at scale {0}, {1}, turning {2}, zoomed {3} times")
    @MethodSource("looks")
    void a_cell_painted_is_the_cell_hit(double scale, Facing facing, boolean turning, double zoom) {
        MapPanel panel = new MapPanel();
        panel.setSize(640, 530);
        panel.style(new MapStyle(Theme.LIGHT, facing));
        panel.enlarge("r1");
        panel.turnWithRotor(turning);
        panel.show(BEFORE, JOB.facts());
        double[] place = outermost(panel, LARGE);
        panel.zoom(zoom, place[0], place[1]);
        panel.pan(zoom > 1 ? 7.3 : 0, zoom > 1 ? -4.9 : 0);

        assertThat(holds(panel, scale, LARGE, LARGE_STATED)).isGreaterThan(5);
        if (zoom == 1) {
            panel.show(BEFORE, JOB.facts());
            holds(panel, scale, SMALL, SMALL_STATED);
        }
    }

    @ParameterizedTest(name = "at scale {0}")
    @MethodSource("scales")
    void a_cell_painted_in_the_strip_is_the_cell_hit(double scale) {
        StripPanel panel = new StripPanel();
        panel.setSize(640, 200);
        panel.row("r1");
        panel.show(BEFORE, JOB.facts());
        assertThat(holds(panel, scale, LARGE, LARGE_STATED)).isGreaterThan(5);
    }

    static Stream<Double> scales() {
        return Stream.of(1.0, 1.25, 1.5, 1.75, 2.0, 3.0);
    }

    /** The place farthest from the axis at which a cell is hit: it lies in the largest drawing of the cell. */
    private static double[] outermost(CellPanel panel, CellAt cell) {
        double[] found = {panel.getWidth() / 2.0, panel.getHeight() / 2.0};
        double farthest = 0;
        for (int x = 0; x < panel.getWidth(); x++) {
            for (int y = 0; y < panel.getHeight(); y++) {
                double far = Math.hypot(x - panel.getWidth() / 2.0, y - panel.getHeight() / 2.0);
                if (far > farthest && panel.cellAt(x, y).equals(Optional.of(cell))) {
                    farthest = far;
                    found = new double[] {x, y};
                }
            }
        }
        return found;
    }

    private static int holds(CellPanel panel, double scale, CellAt cell, Coverage after) {
        Screen screen = Screen.of(panel, scale, 3, 5);
        int[] old = screen.paint(panel);
        panel.show(after, JOB.facts());
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
