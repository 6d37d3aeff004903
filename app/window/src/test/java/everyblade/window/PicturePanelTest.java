package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.photo.CameraPicture;
import everyblade.window.view.Act;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PicturePanelTest {

    @TempDir
    Path folder;

    private Session session;
    private Offscreen screen;

    @BeforeEach
    void open() throws IOException {
        Workshop workshop = Workshop.in(folder);
        Files.write(folder.resolve("one.jpg"), CameraPicture.jpeg(6, ""));
        session = workshop.counting("photo one.jpg of 5 tip");
        screen = Offscreen.of(session);
    }

    @AfterEach
    void close() {
        session.close();
    }

    private PictureCanvas canvas() {
        return Offscreen.find(screen.screen().component(), PictureCanvas.class, "picture");
    }

    private void look() {
        Offscreen.on(() -> {
            screen.screen().middle().turnPictures();
            Rehearsal.lay(screen.screen().component(), Offscreen.SIZE);
            canvas().fit();
            return true;
        });
    }

    private void strike(String key) {
        Offscreen.on(() -> {
            Object name = canvas().getInputMap().get(KeyStroke.getKeyStroke(key));
            canvas().getActionMap().get(name).actionPerformed(null);
            return true;
        });
    }

    private void type(String field, String text) {
        Offscreen.on(() -> {
            Offscreen.find(screen.screen().component(), JTextField.class, field).setText(text);
            return true;
        });
    }

    private String said(String name) {
        return Offscreen.on(() -> Offscreen.find(screen.screen().component(), Paragraph.class, name)
                .getText());
    }

    private void drag(double x1, double y1, double x2, double y2) {
        Offscreen.on(() -> {
            var frame = canvas().framing().orElseThrow();
            mouse(MouseEvent.MOUSE_PRESSED, frame.across(x1), frame.down(y1));
            mouse(MouseEvent.MOUSE_DRAGGED, frame.across(x2), frame.down(y2));
            mouse(MouseEvent.MOUSE_RELEASED, frame.across(x2), frame.down(y2));
            return true;
        });
    }

    private void mouse(int what, double x, double y) {
        int button = what == MouseEvent.MOUSE_DRAGGED ? 0 : MouseEvent.BUTTON1;
        canvas().dispatchEvent(new MouseEvent(
                canvas(),
                what,
                0,
                MouseEvent.BUTTON1_DOWN_MASK,
                (int) Math.round(x),
                (int) Math.round(y),
                1,
                false,
                button));
    }

    @Test
    void measuresByKeyboardAloneAndKeepsNothing() {
        look();
        type("picture.known", "20 ± 0.2 mm");
        strike("typed k");
        strike("shift LEFT");
        strike("typed s");
        strike("SPACE");
        strike("LEFT");

        assertThat(said("picture size")).matches("[0-9.]+ ± [0-9.]+ mm");
        strike("ENTER");
        assertThat(screen.text()).isEqualTo("nick 5 tip length " + said("picture size"));
        assertThat(session.state().fold().entries()).hasSize(4);
    }

    @Test
    void measuresByMouse() {
        look();
        type("picture.known", "20");
        Offscreen.on(() -> {
            canvas().frame(canvas().framing().orElseThrow().zoomed(1.5));
            return true;
        });
        screen.press("picture.takeKnown");
        strike("ESCAPE");
        double[] before = {canvas().marks().known().orElseThrow().length()};
        screen.press("picture.takeSize");
        drag(10, 20, 20, 20);

        assertThat(canvas().marks().size().orElseThrow().length()).isBetween(9.0, 11.0);
        assertThat(canvas().marks().known().orElseThrow().length()).isEqualTo(before[0]);
        assertThat(said("picture size")).isNotEmpty();
    }

    @Test
    void comesUpFromTheFindingThatItShows() {
        screen.enter("nick 5 tip 1");
        screen.strike(
                KeyEvent.VK_ENTER, KeyEvent.KEY_LOCATION_STANDARD); // it is not in view any more, so it was asked about
        Offscreen.on(() -> {
            screen.screen().act(Act.FIND);
            JList<?> found = Offscreen.find(screen.screen().component(), JList.class, "found");
            found.setSelectedIndex(0);
            found.getActionMap().get("ENTER").actionPerformed(null);
            return true;
        });

        assertThat(Offscreen.<Boolean>on(canvas()::isVisible)).isTrue();
        assertThat(canvas().framing()).isPresent();
    }

    @Test
    void arrowsMoveThePictureWhileNoPointIsChosenAndTheChosenPointElse() {
        look();
        strike("typed +");
        double left = canvas().framing().orElseThrow().left();
        strike("RIGHT");
        assertThat(canvas().framing().orElseThrow().left()).isLessThan(left);
        strike("typed 0");
        strike("typed k");
        double x = canvas().marks().known().orElseThrow().x1();
        strike("RIGHT");
        strike("shift RIGHT");
        assertThat(canvas().marks().known().orElseThrow().x1()).isEqualTo(x + 11);
    }

    @Test
    void escapeLeavesThePointFirstAndThenThePicture() {
        look();
        strike("typed k");
        strike("ESCAPE");
        assertThat(canvas().marks().isChosen()).isFalse();
        assertThat(Offscreen.<Boolean>on(canvas()::isVisible)).isTrue();
        strike("ESCAPE");
        assertThat(Offscreen.<Boolean>on(canvas()::isVisible)).isFalse();
    }

    @Test
    void confirmsTheBladeByAnEntryThatIsNotKeptYet() {
        look();
        type("picture.airfoil", "1");
        strike("typed c");

        assertThat(screen.text()).isEqualTo("photo one.jpg of 1 tip");
        assertThat(session.state().fold().entries()).hasSize(4);
    }

    @Test
    void saysSoIfThePictureIsNoLongerTheOneThatWasKept() throws IOException {
        Files.write(folder.resolve("job/photos/one.jpg"), CameraPicture.jpeg(1, ""));
        look();

        assertThat(canvas().framing()).isEmpty();
        assertThat(canvas().message()).startsWith("one.jpg is not there as it was kept");
    }

    @Test
    void everyKeyOfTheHintIsBound() {
        look();
        for (String key : new String[] {"typed +", "typed -", "typed 0", "SPACE", "PAGE_UP", "PAGE_DOWN", "ENTER"}) {
            assertThat(canvas().getInputMap().get(KeyStroke.getKeyStroke(key)))
                    .as(key)
                    .isNotNull();
        }
        assertThat(KeyStroke.getKeyStroke("typed k").getKeyCode()).isEqualTo(KeyEvent.VK_UNDEFINED);
    }
}
