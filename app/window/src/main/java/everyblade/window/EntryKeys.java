package everyblade.window;

import everyblade.window.view.Act;
import everyblade.window.view.KeyHold;
import everyblade.window.view.Shortcut;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** The keys of the entry line, as {@link Shortcut} lists them. A key that is held down acts once. */
final class EntryKeys implements KeyListener {

    private static final String KEYPAD_ENTER = "KEYPAD_ENTER";

    private final JTextField field;
    private final EntryPanel panel;
    private final Consumer<Act> act;
    private final KeyHold hold = new KeyHold();

    EntryKeys(JTextField field, EntryPanel panel, Consumer<Act> act) {
        this.field = field;
        this.panel = panel;
        this.act = act;
    }

    void install() {
        field.setFocusTraversalKeysEnabled(false);
        field.addKeyListener(this);
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent lost) {
                hold.forget();
            }
        });
    }

    @Override
    public void keyPressed(KeyEvent event) {
        boolean shiftTab = event.getKeyCode() == KeyEvent.VK_TAB && event.isShiftDown();
        if (shiftTab) {
            field.transferFocusBackward();
            event.consume();
            return;
        }
        Optional<Shortcut> shortcut = pressed(event);
        if (shortcut.isEmpty()) {
            return;
        }
        event.consume();
        boolean repeats = shortcut.get() == Shortcut.OLDER || shortcut.get() == Shortcut.NEWER;
        if (hold.struck(name(event), event.getWhen()) || repeats) {
            strike(shortcut.get());
        }
    }

    private static String name(KeyEvent event) {
        return event.getKeyCode() + "/" + event.getKeyLocation();
    }

    private Optional<Shortcut> pressed(KeyEvent event) {
        boolean keypadEnter =
                event.getKeyCode() == KeyEvent.VK_ENTER && event.getKeyLocation() == KeyEvent.KEY_LOCATION_NUMPAD;
        KeyStroke stroke = KeyStroke.getKeyStrokeForEvent(event);
        return here().filter(one -> one.keys().stream()
                        .anyMatch(key -> keypadEnter
                                ? key.equals(KEYPAD_ENTER)
                                : !key.equals(KEYPAD_ENTER) && stroke.equals(KeyStroke.getKeyStroke(key))))
                .findFirst();
    }

    /** Shortcuts that have a meaning as things stand. */
    private java.util.stream.Stream<Shortcut> here() {
        return Arrays.stream(Shortcut.values())
                .filter(one -> one.place() == Shortcut.Place.ENTRY
                        || one.place() == Shortcut.Place.EMPTY_ENTRY
                                && field.getText().isEmpty());
    }

    private void strike(Shortcut shortcut) {
        if (shortcut == Shortcut.AGAIN && !field.getText().isBlank()) {
            panel.keep(); // with something typed, the number pad's Enter is an Enter
            return;
        }
        if (shortcut.act().isPresent()) {
            act.accept(shortcut.act().get());
            return;
        }
        switch (shortcut) {
            case KEEP -> panel.keep();
            case DROP -> panel.drop();
            case OLDER -> panel.older();
            case NEWER -> panel.newer();
            case COMPLETE -> {
                if (!panel.complete()) {
                    field.transferFocus();
                }
            }
            default -> throw new IllegalStateException(shortcut + " has no meaning in the entry line");
        }
    }

    @Override
    public void keyTyped(KeyEvent event) {
        Optional<Shortcut> shortcut = here().filter(one -> one.keys().contains("typed " + event.getKeyChar()))
                .findFirst();
        if (shortcut.isPresent()) {
            event.consume();
            if (hold.struck("typed", event.getWhen())) {
                strike(shortcut.get());
            }
        }
    }

    @Override
    public void keyReleased(KeyEvent event) {
        hold.released(name(event), event.getWhen());
        hold.released("typed", event.getWhen());
    }
}
