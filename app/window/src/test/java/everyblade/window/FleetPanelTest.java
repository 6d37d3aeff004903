package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.scene.Theme;
import everyblade.window.view.FleetBoard;
import everyblade.window.view.FleetBoard.Cell;
import everyblade.window.view.FleetBoard.Engine;
import everyblade.window.view.FleetBoard.Inspection;
import everyblade.window.view.FleetBoard.Open;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;

class FleetPanelTest {

    private static final Dimension SIZE = new Dimension(1264, 700);

    private static final FleetBoard BOARD = new FleetBoard(
            List.of("r", "v"),
            List.of(
                    new Engine(
                            "north",
                            "ring",
                            "7",
                            40,
                            "aaaa",
                            Map.of("r", new Cell(24, 8, 0, 2), "v", new Cell(8, 0, 0, 0)),
                            List.of(
                                    new Inspection(Instant.parse("2025-01-02T03:04:05Z"), 0.5, 1),
                                    new Inspection(Instant.parse("2026-01-02T03:04:05Z"), 0.25, 2))),
                    new Engine("south", "ring", "9", 3, "bbbb", Map.of("r", new Cell(24, 24, 0, 0)), List.of())),
            List.of(new Open("north", 40, "ring", "7", "nick", "r 3 tip", "aaaa")),
            0);

    private final List<String> opened = new ArrayList<>();
    private final FleetPanel panel = Offscreen.on(() -> {
        FleetPanel made = new FleetPanel(Words.of(Locale.ENGLISH), Theme.LIGHT, "", false, new Watching());
        Rehearsal.lay(made.component(), SIZE);
        made.show(BOARD);
        Rehearsal.lay(made.component(), SIZE);
        return made;
    });

    private final class Watching implements FleetPanel.Doing {

        @Override
        public void look(String address) {
            throw new AssertionError("nobody asks");
        }

        @Override
        public void follow(String address, boolean always) {
            throw new AssertionError("nobody chooses that");
        }

        @Override
        public void open(String job) {
            opened.add(job);
        }

        @Override
        public void back() {
            throw new AssertionError("nobody goes back");
        }
    }

    private <T extends Component> T find(Class<T> type, String name) {
        return Offscreen.find(panel.component(), type, name);
    }

    @Test
    void everyEngineIsALineAndEveryRowAColumn() {
        JTable grid = find(JTable.class, "fleet.grid");

        assertThat(grid.getRowCount()).isEqualTo(2);
        assertThat(grid.getColumnName(grid.getColumnCount() - 1)).isEqualTo("v");
        assertThat(grid.getSelectedRow()).isZero();
    }

    @Test
    void theCourseOfTheEngineThatIsChosenIsDrawn() {
        assertThat(coloursOf(find(JComponent.class, "fleet.course"))).isGreaterThan(2);
        Offscreen.on(() -> {
            find(JTable.class, "fleet.grid").setRowSelectionInterval(1, 1);
            return true;
        });

        assertThat(coloursOf(find(JComponent.class, "fleet.course"))).isEqualTo(1);
    }

    private static long coloursOf(JComponent component) {
        return Offscreen.on(() -> {
            BufferedImage image =
                    new BufferedImage(component.getWidth(), component.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics g = image.createGraphics();
            component.paint(g);
            g.dispose();
            return java.util.Arrays.stream(
                            image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                    .distinct()
                    .count();
        });
    }

    @Test
    void theLastJobOfTheEngineThatIsChosenIsOpened() {
        Offscreen.on(() -> {
            find(AbstractButton.class, "fleet.page.bring").doClick(0);
            return true;
        });

        assertThat(opened).containsExactly("aaaa");
    }
}
