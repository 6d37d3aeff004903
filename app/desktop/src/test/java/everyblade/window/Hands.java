package everyblade.window;

import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.AWTEventListener;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.File;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;

/** A person at the real window: strikes keys, clicks what shows, and waits for what should happen. */
final class Hands {

    private static final int PATIENCE_MILLIS = 30_000;
    private static final int FEW_EVENTS = 15;
    private static final Map<Character, Integer> SIGNS = Map.of(
            ' ',
            KeyEvent.VK_SPACE,
            '-',
            KeyEvent.VK_MINUS,
            '.',
            KeyEvent.VK_PERIOD,
            ',',
            KeyEvent.VK_COMMA,
            '/',
            KeyEvent.VK_SLASH);

    private final Robot robot;
    private int last;

    Hands() {
        try {
            robot = new Robot();
            robot.setAutoDelay(8);
        } catch (AWTException unavailable) {
            throw new AssertionError(unavailable);
        }
    }

    /** Types text of plain characters, as a keyboard would. */
    void type(String text) {
        for (char character : text.toCharArray()) {
            int code = SIGNS.getOrDefault(character, KeyEvent.getExtendedKeyCodeForChar(character));
            if (Character.isUpperCase(character)) {
                robot.keyPress(KeyEvent.VK_SHIFT);
                strike(code);
                robot.keyRelease(KeyEvent.VK_SHIFT);
            } else {
                strike(code);
            }
        }
        robot.waitForIdle();
    }

    void strike(int key) {
        if (key == last) {
            robot.delay(40); // fingers take longer, and a shorter pause is taken for a key that repeats
        }
        last = key;
        robot.keyPress(key);
        robot.keyRelease(key);
    }

    /** Strikes a key while Ctrl is held. */
    void control(int key) {
        robot.keyPress(KeyEvent.VK_CONTROL);
        strike(key);
        robot.keyRelease(KeyEvent.VK_CONTROL);
        robot.waitForIdle();
    }

    /** Clicks the component of this name, in the window or a menu of it, once it shows and can be clicked. */
    void click(Window window, String name) {
        click(
                "the component " + name,
                () -> java.util.Arrays.stream(Window.getWindows())
                        .filter(one -> one == window || one.getOwner() == window)
                        .flatMap(Offscreen::all)
                        .filter(one -> name.equals(one.getName()) && one.isShowing() && one.isEnabled())
                        .findFirst());
    }

    /** Clicks the button with these words in a dialog. */
    void clickInDialog(String words) {
        click(
                "a button " + words,
                () -> java.util.Arrays.stream(Window.getWindows())
                        .filter(one -> one instanceof Dialog && one.isShowing())
                        .flatMap(Offscreen::all)
                        .filter(one -> one instanceof AbstractButton button && words.equals(button.getText()))
                        .filter(one -> one.isShowing() && one.isEnabled())
                        .findFirst());
    }

    /**
     * Presses only once the component itself says that the mouse is over it: a window that comes up may still move, and
     * what may be said next may still change.
     */
    private void click(String what, Supplier<Optional<Component>> found) {
        AtomicReference<Object> under = new AtomicReference<>();
        AWTEventListener watch = event -> under.set(event.getSource());
        Toolkit toolkit = Toolkit.getDefaultToolkit();
        toolkit.addAWTEventListener(watch, AWTEvent.MOUSE_MOTION_EVENT_MASK);
        try {
            Component component = await(what, found);
            for (int tries = 0; under.get() != component || !component.isShowing(); tries++) {
                if (tries == PATIENCE_MILLIS / 200) {
                    throw new AssertionError("the mouse does not come over " + what + " but over " + under.get()
                            + "; the screen is in " + picture());
                }
                component = await(what, found);
                place(component).ifPresent(box -> {
                    robot.mouseMove(box.x + box.width / 2 - 1, box.y + box.height / 2);
                    robot.mouseMove(box.x + box.width / 2, box.y + box.height / 2);
                });
                robot.waitForIdle();
                robot.delay(100);
            }
        } finally {
            toolkit.removeAWTEventListener(watch);
        }
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    /** Where a component is on the screen; empty if it is not there any more. */
    private Optional<Rectangle> place(Component component) {
        robot.waitForIdle();
        return Offscreen.on(() -> {
            if (!component.isShowing()) {
                return Optional.empty();
            }
            if (component instanceof JComponent inner) {
                inner.scrollRectToVisible(new Rectangle(inner.getSize()));
            }
            return Optional.of(new Rectangle(component.getLocationOnScreen(), component.getSize()));
        });
    }

    /** Waits until this is so. */
    void until(String what, BooleanSupplier isSo) {
        await(what, () -> isSo.getAsBoolean() ? Optional.of(true) : Optional.empty());
    }

    /** Waits until hardly anything happens on the event thread: a caret blinks, but nothing is laid out again and again. */
    void untilAtRest() {
        CountingQueue events = new CountingQueue();
        Offscreen.on(() -> {
            Toolkit.getDefaultToolkit().getSystemEventQueue().push(events);
            return true;
        });
        int restless = 0;
        int happened;
        try {
            do {
                events.count.set(0);
                robot.delay(300);
                happened = events.count.get();
                restless++;
            } while (happened > FEW_EVENTS && restless < PATIENCE_MILLIS / 300);
        } finally {
            Offscreen.on(() -> {
                events.leave();
                return true;
            });
        }
        if (happened > FEW_EVENTS) {
            throw new AssertionError(
                    "the window does not come to rest: " + happened + " events in 0.3 s, the last one " + events.last);
        }
    }

    /** Counts what is dispatched. */
    private static final class CountingQueue extends EventQueue {

        private final AtomicInteger count = new AtomicInteger();
        private volatile String last = "none";

        @Override
        protected void dispatchEvent(AWTEvent event) {
            count.incrementAndGet();
            last = event.toString();
            super.dispatchEvent(event);
        }

        void leave() {
            pop();
        }
    }

    private <T> T await(String what, Supplier<Optional<T>> found) {
        long end = System.nanoTime() + PATIENCE_MILLIS * 1_000_000L;
        while (System.nanoTime() < end) {
            Optional<T> value = Offscreen.on(found::get);
            if (value.isPresent()) {
                return value.get();
            }
            try {
                Thread.sleep(15);
            } catch (InterruptedException stop) {
                throw new AssertionError(stop);
            }
        }
        throw new AssertionError("waited in vain for " + what + "; the screen is in " + picture());
    }

    /** Keeps what the screen shows, for whoever looks into the failure. */
    private String picture() {
        File file = new File("target", "screen-" + System.nanoTime() + ".png");
        try {
            Rectangle all = new Rectangle(Toolkit.getDefaultToolkit().getScreenSize());
            ImageIO.write(robot.createScreenCapture(all), "png", file);
            return file.toString();
        } catch (IOException refused) {
            return "no file, " + refused.getMessage();
        }
    }
}
