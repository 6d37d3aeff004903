package everyblade.window;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.awt.event.MouseListener;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;

/** A job's screen without a display: built, struck and painted on the event thread. */
final class Offscreen {

    static final Dimension SIZE = new Dimension(1280, 740);

    private final JobScreen screen;
    private final Door door;
    private long clock = 1000;

    private Offscreen(JobScreen screen, Door door) {
        this.screen = screen;
        this.door = door;
    }

    static Offscreen of(Session session) {
        return of(session, new DirectDoor(), Choices.first(Locale.ENGLISH));
    }

    static Offscreen of(Session session, Door door, Choices choices) {
        return on(() -> {
            Looks.use(choices);
            Words words = Words.of(choices.language());
            Shown shown = Shown.of(session.state(), words, ZoneOffset.UTC);
            JobScreen screen = new JobScreen(session, shown, door, words, () -> choices, () -> Workshop.NOW);
            Rehearsal.lay(screen.component(), SIZE);
            return new Offscreen(screen, door);
        });
    }

    JobScreen screen() {
        return screen;
    }

    Door door() {
        return door;
    }

    /** Does something on the event thread, and waits for it. */
    static <T> T on(Callable<T> work) {
        Object[] answer = new Object[1];
        try {
            SwingUtilities.invokeAndWait(() -> {
                try {
                    answer[0] = work.call();
                } catch (RuntimeException fault) {
                    throw fault;
                } catch (Exception fault) {
                    throw new IllegalStateException(fault);
                }
            });
        } catch (InterruptedException | InvocationTargetException fault) {
            throw new AssertionError(fault);
        }
        @SuppressWarnings("unchecked")
        T value = (T) answer[0];
        return value;
    }

    /** The component of this name. */
    static <T extends Component> T find(Container root, Class<T> type, String name) {
        return all(root)
                .filter(one -> name.equals(one.getName()))
                .findFirst()
                .map(type::cast)
                .orElseThrow(() -> new AssertionError("there is no component " + name));
    }

    static Stream<Component> all(Container root) {
        return Stream.concat(
                Stream.of(root),
                Stream.of(root.getComponents())
                        .flatMap(child -> child instanceof Container inner ? all(inner) : Stream.of(child)));
    }

    JTextField field() {
        return find(screen.component(), JTextField.class, "entry");
    }

    void press(String name) {
        on(() -> {
            find(screen.component(), AbstractButton.class, name).doClick(0);
            return true;
        });
    }

    void type(String text) {
        on(() -> {
            field().setText(text);
            return true;
        });
    }

    /** Presses the entry line with a pointer. */
    void touch() {
        on(() -> {
            MouseEvent pressed =
                    new MouseEvent(field(), MouseEvent.MOUSE_PRESSED, clock, 0, 5, 5, 1, false, MouseEvent.BUTTON1);
            for (MouseListener listener : field().getMouseListeners()) {
                listener.mousePressed(pressed);
            }
            return true;
        });
    }

    /** Types a line and strikes Enter. */
    void enter(String text) {
        type(text);
        strike(KeyEvent.VK_ENTER, KeyEvent.KEY_LOCATION_STANDARD);
    }

    /** Strikes a key in the entry line: down and up again. */
    void strike(int key, int location) {
        strike(key, location, 0);
    }

    void strike(int key, int location, int modifiers) {
        clock += 100;
        send(KeyEvent.KEY_PRESSED, key, location, modifiers);
        clock += 50;
        send(KeyEvent.KEY_RELEASED, key, location, modifiers);
    }

    /** Holds a key down: it is pressed again and again, and never released. */
    void hold(int key, int location, int times) {
        for (int i = 0; i < times; i++) {
            clock += 30;
            send(KeyEvent.KEY_PRESSED, key, location, 0);
        }
    }

    void typed(char character) {
        clock += 100;
        on(() -> {
            KeyEvent event = new KeyEvent(field(), KeyEvent.KEY_TYPED, clock, 0, KeyEvent.VK_UNDEFINED, character);
            for (KeyListener listener : field().getKeyListeners()) {
                listener.keyTyped(event);
            }
            return true;
        });
        clock += 50;
        send(KeyEvent.KEY_RELEASED, KeyEvent.VK_PLUS, KeyEvent.KEY_LOCATION_STANDARD, 0);
    }

    private void send(int id, int key, int location, int modifiers) {
        on(() -> {
            KeyEvent event = new KeyEvent(field(), id, clock, modifiers, key, KeyEvent.CHAR_UNDEFINED, location);
            for (KeyListener listener : field().getKeyListeners()) {
                if (id == KeyEvent.KEY_PRESSED) {
                    listener.keyPressed(event);
                } else {
                    listener.keyReleased(event);
                }
            }
            return true;
        });
    }

    String told() {
        return on(() -> screen.entry().told());
    }

    String text() {
        return on(() -> field().getText());
    }

    BufferedImage paint() {
        return paint(screen.component(), SIZE, 1);
    }

    static BufferedImage paint(JComponent component, Dimension size, double scale) {
        return on(() -> {
            BufferedImage image = new BufferedImage(
                    (int) (size.width * scale), (int) (size.height * scale), BufferedImage.TYPE_INT_RGB);
            Rehearsal.lay(component, size);
            Graphics2D g = image.createGraphics();
            g.scale(scale, scale);
            component.printAll(g);
            g.dispose();
            return image;
        });
    }

    /** The first one of this kind. */
    static <T extends Component> Optional<T> first(Container root, Class<T> type) {
        return all(root).filter(type::isInstance).map(type::cast).findFirst();
    }
}
