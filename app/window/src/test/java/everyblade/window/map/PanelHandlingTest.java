package everyblade.window.map;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.ScreenKind;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PanelHandlingTest {

    private static CellPanel map() {
        return panel(ScreenKind.RINGS);
    }

    private static CellPanel panel(ScreenKind kind) {
        CellPanel panel = new CellPanel(kind);
        panel.setSize(800, 640);
        panel.lookInto("r1");
        panel.show(Jobs.begun().coverage());
        return panel;
    }

    private static void press(CellPanel panel, String key) {
        Object does = panel.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(key));
        panel.getActionMap().get(does).actionPerformed(new ActionEvent(panel, ActionEvent.ACTION_PERFORMED, key));
    }

    private static void mouse(CellPanel panel, int what, int x, int y) {
        int buttons = what == MouseEvent.MOUSE_DRAGGED ? InputEvent.BUTTON1_DOWN_MASK : 0;
        int button = what == MouseEvent.MOUSE_MOVED ? MouseEvent.NOBUTTON : MouseEvent.BUTTON1;
        panel.dispatchEvent(new MouseEvent((Component) panel, what, 0, buttons, x, y, 1, false, button));
    }

    private static int[] placeOf(CellPanel panel, CellAt cell) {
        for (int x = 0; x < panel.getWidth(); x++) {
            for (int y = 0; y < panel.getHeight(); y++) {
                if (panel.cellAt(x, y).equals(Optional.of(cell))) {
                    return new int[] {x + 1, y};
                }
            }
        }
        throw new AssertionError(cell + " is nowhere");
    }

    @Nested
    class Keyboard {

        private static final List<String> ARROWS = List.of("RIGHT", "LEFT", "UP", "DOWN");

        private static Set<CellAt> reached(CellPanel panel) {
            press(panel, "RIGHT");
            Deque<CellAt> open = new ArrayDeque<>(List.of(panel.selected().orElseThrow()));
            Set<CellAt> reached = new HashSet<>(open);
            while (!open.isEmpty()) {
                CellAt from = open.remove();
                for (String arrow : ARROWS) {
                    panel.select(from);
                    press(panel, arrow);
                    CellAt to = panel.selected().orElseThrow();
                    if (reached.add(to)) {
                        open.add(to);
                    }
                }
            }
            return reached;
        }

        @ParameterizedTest
        @EnumSource(names = {"RINGS", "STRIPS"})
        void arrows_walk_to_every_cell_of_the_map_and_to_nothing_else(ScreenKind kind) {
            Set<CellAt> reached = reached(panel(kind));
            assertThat(reached).hasSize(11 * 12 + 7 + 9 * 6 + 5 * 2);
            assertThat(reached).extracting(CellAt::row).containsOnly("r1", "v1", "r2", "l1");
        }

        @Test
        void arrows_walk_to_every_cell_of_the_row_in_view() {
            assertThat(reached(panel(ScreenKind.WHEEL))).hasSize(9 * 6);
            assertThat(reached(panel(ScreenKind.ROW))).hasSize(11 * 12);
        }

        @Test
        void right_goes_clockwise_as_it_is_drawn_and_back_again() {
            CellPanel panel = map();
            panel.select(new CellAt("r1", 3, 4));
            int[] from = placeOf(panel, panel.selected().orElseThrow());
            press(panel, "RIGHT");
            int[] to = placeOf(panel, panel.selected().orElseThrow());
            double cross = (from[0] - 400) * (to[1] - 320.0) - (from[1] - 320) * (to[0] - 400.0);
            assertThat(cross).isPositive();
            press(panel, "LEFT");
            assertThat(panel.selected()).contains(new CellAt("r1", 3, 4));
        }

        @Test
        void pages_go_from_airfoil_to_airfoil_round_the_row() {
            CellPanel panel = map();
            panel.select(new CellAt("r1", 11, 4));
            press(panel, "PAGE_UP");
            assertThat(panel.selected()).contains(new CellAt("r1", 1, 4));
            press(panel, "PAGE_DOWN");
            assertThat(panel.selected()).contains(new CellAt("r1", 11, 4));
        }

        @Test
        void tab_is_left_to_go_on_to_the_next_component() {
            CellPanel panel = map();
            KeyStroke tab = KeyStroke.getKeyStroke(KeyEvent.VK_TAB, 0);
            assertThat(panel.getInputMap(JComponent.WHEN_FOCUSED).get(tab)).isNull();
            assertThat(panel.getFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS))
                    .contains(tab);
            assertThat(panel.isFocusable()).isTrue();
        }

        @Test
        void a_walk_in_an_enlarged_map_takes_the_map_along() {
            CellPanel panel = map();
            panel.select(new CellAt("r1", 1, 0));
            for (int i = 0; i < 4; i++) {
                press(panel, "typed +");
            }
            for (int i = 0; i < 33; i++) {
                press(panel, "RIGHT");
                CellAt here = panel.selected().orElseThrow();
                assertThat(placeOf(panel, here)).isNotEmpty();
            }
        }
    }

    @Nested
    class Mouse {

        @Test
        void a_click_selects_the_cell_under_it_and_tells_of_it() {
            CellPanel panel = map();
            List<CellAt> told = new ArrayList<>();
            panel.onSelect(told::add);
            CellAt cell = new CellAt("r2", 5, 2);
            int[] place = placeOf(panel, cell);
            mouse(panel, MouseEvent.MOUSE_PRESSED, place[0], place[1]);
            mouse(panel, MouseEvent.MOUSE_RELEASED, place[0], place[1]);
            assertThat(panel.selected()).contains(cell);
            assertThat(told).containsExactly(cell);
        }

        @Test
        void dragging_moves_an_enlarged_map_and_selects_nothing() {
            CellPanel panel = map();
            panel.zoom(4, 400, 320);
            CellAt cell = new CellAt("r1", 5, 2);
            int[] place = placeOf(panel, cell);
            mouse(panel, MouseEvent.MOUSE_PRESSED, place[0], place[1]);
            mouse(panel, MouseEvent.MOUSE_DRAGGED, place[0] + 30, place[1] + 40);
            mouse(panel, MouseEvent.MOUSE_RELEASED, place[0] + 30, place[1] + 40);
            assertThat(panel.cellAt(place[0] + 30.0, place[1] + 40.0)).contains(cell);
            assertThat(panel.selected()).isEmpty();
        }

        @Test
        void a_program_that_selects_is_not_told_of_it() {
            CellPanel panel = map();
            List<CellAt> told = new ArrayList<>();
            panel.onSelect(told::add);
            panel.select(new CellAt("r1", 5, 2));
            panel.select(null);
            assertThat(told).isEmpty();
            assertThat(panel.selected()).isEmpty();
        }
    }

    @Nested
    class Words {

        @Test
        void a_tool_tip_says_which_cell_it_is_how_it_is_and_why() {
            CellPanel panel = map();
            int[] place = placeOf(panel, new CellAt("r1", 10, 9));
            MouseEvent over =
                    new MouseEvent((Component) panel, MouseEvent.MOUSE_MOVED, 0, 0, place[0], place[1], 0, false);
            assertThat(panel.getToolTipText(over))
                    .startsWith("blade 10 of r1, tip/suction/leading: seen, damaged")
                    .contains("stands at clock", "entry 3", "so blade 10 of rotor 1 (r1), tip/suction/leading is seen");
        }

        @Test
        void those_who_hear_it_are_told_what_it_shows_and_what_is_selected() {
            CellPanel panel = map();
            panel.select(new CellAt("r1", 10, 9));
            assertThat(panel.getAccessibleContext().getAccessibleName()).isEqualTo("4 rows as rings");
            assertThat(panel.getAccessibleContext().getAccessibleDescription())
                    .startsWith("Selected: blade 10 of r1, tip/suction/leading: seen, damaged. ")
                    .contains("seen from aft looking forward", "of the surface seen");
        }

        @Test
        void a_map_without_a_job_says_what_to_do() {
            CellPanel panel = new CellPanel(ScreenKind.RINGS);
            panel.setSize(600, 400);
            Screen screen = Screen.of(panel, 1, 0, 0);
            int paper = screen.paint(panel)[0];
            assertThat(java.util.Arrays.stream(screen.paint(panel)).filter(rgb -> rgb != paper))
                    .hasSizeBetween(500, 20_000);
            assertThat(panel.getAccessibleContext().getAccessibleDescription()).startsWith("No job is open.");
            assertThat(panel.cellAt(300, 200)).isEmpty();
            press(panel, "RIGHT");
            assertThat(panel.selected()).isEmpty();
        }

        @Test
        void a_chosen_row_that_the_engine_lacks_shows_nothing_else() {
            CellPanel panel = map();
            panel.lookInto("nowhere");
            CellPanel none = map();
            none.lookInto(null);
            assertThat(Screen.differing(
                            Screen.of(panel, 1, 0, 0).paint(panel),
                            Screen.of(none, 1, 0, 0).paint(none)))
                    .isZero();
        }
    }
}
