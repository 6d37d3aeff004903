package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import everyblade.window.view.OpenLine;
import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClosingPanelTest {

    @TempDir
    Path folder;

    private Session session;
    private Offscreen screen;

    @BeforeEach
    void open() {
        session = Workshop.in(folder).counting("tool out hand lamp", "dent 5 tip 2");
        screen = Offscreen.of(session);
    }

    @AfterEach
    void close() {
        session.close();
    }

    private void turn() {
        Offscreen.on(() -> {
            screen.screen().middle().turnClosing();
            return true;
        });
    }

    private JList<?> list() {
        return Offscreen.find(screen.screen().component(), JList.class, "closing");
    }

    private List<OpenLine> lines() {
        return Offscreen.on(() -> {
            List<OpenLine> lines = new ArrayList<>();
            for (int i = 0; i < list().getModel().getSize(); i++) {
                lines.add((OpenLine) list().getModel().getElementAt(i));
            }
            return lines;
        });
    }

    private void enterAt(String kind) {
        int index = lines().stream().map(OpenLine::kind).toList().indexOf(kind);
        Offscreen.on(() -> {
            list().setSelectedIndex(index);
            list().getActionMap().get("ENTER").actionPerformed(null);
            return true;
        });
    }

    @Test
    void isWorkedOutOnlyWhileItIsInFront() {
        assertThat(lines()).isEmpty();
        turn();
        assertThat(lines()).extracting(OpenLine::kind).startsWith("tool", "finding", "gap");
        screen.enter("tool in hand lamp");
        assertThat(lines()).extracting(OpenLine::kind).startsWith("finding", "gap");
        turn();
        screen.enter("tool out mirror");
        assertThat(lines()).extracting(OpenLine::kind).doesNotContain("tool");
    }

    @Test
    void saysHowMuchIsOpen() {
        turn();
        JLabel title = Offscreen.find(screen.screen().component(), JLabel.class, "closing title");
        assertThat(Offscreen.<String>on(title::getText)).isEqualTo("Open: " + lines().size());
    }

    @Test
    void enterPutsWhatClosesAThingIntoTheLineAndKeepsNothing() {
        turn();
        enterAt("tool");
        assertThat(screen.text()).isEqualTo("tool in hand lamp");
        assertThat(session.state().fold().entries()).hasSize(5);
    }

    @Test
    void enterTurnsTheMapToTheCell() {
        turn();
        enterAt("finding");
        assertThat(screen.screen().stages().selected()).contains(new CellAt("r", 5, 1));
        assertThat(screen.text()).isEqualTo("settle 5 because ");
    }

    @Test
    void everyLineIsAsHighAsItsWordsAre() {
        turn();
        screen.paint();
        Offscreen.on(() -> {
            for (int i = 0; i < list().getModel().getSize(); i++) {
                assertThat(list().getCellBounds(i, i).height)
                        .as("line " + i)
                        .isEqualTo(preferred(list(), i).getPreferredSize().height)
                        .isGreaterThan(30);
            }
            return true;
        });
    }

    private static <T> Component preferred(JList<T> list, int index) {
        return list.getCellRenderer()
                .getListCellRendererComponent(list, list.getModel().getElementAt(index), index, false, false);
    }
}
