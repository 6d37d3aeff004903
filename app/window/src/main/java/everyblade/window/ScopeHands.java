package everyblade.window;

import everyblade.window.view.Motion;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javax.swing.SwingUtilities;

/**
 * Keys and mouse on the scope's picture as movements: keys for as long as they are held, Shift for slow, Ctrl for fast; the
 * mouse bends by dragging, its wheel pushes, with Shift turns, with Ctrl rolls.
 */
final class ScopeHands {

    /** A key that is held comes and goes on some systems; one that is away for less long is held still, milliseconds. */
    private static final long STILL_HELD = 45;

    private static final double SLOW = 0.25;
    private static final double FAST = 3;
    private static final double BEND_A_POINT = 0.25;

    /** What the hands do. */
    interface Moving {

        /** Moves once, by mm, degrees or pitches. */
        void once(Motion motion, double amount);

        /** Straightens the bending part. */
        void straighten();

        /** Counts the tool's turns from here. */
        void zero();

        /** Goes back to the entry line. */
        void leave();
    }

    private final InstantSource clock;
    private final Map<Motion, Long> released = new EnumMap<>(Motion.class);
    private final Map<Motion, Boolean> held = new EnumMap<>(Motion.class);
    private double speed = 1;
    private int x;
    private int y;

    ScopeHands(ScopePanel panel, InstantSource clock, Moving moving) {
        this.clock = clock;
        for (Motion motion : Motion.values()) {
            for (String key : keys(motion)) {
                hold(panel, "", key, motion, 1);
                hold(panel, "shift ", key, motion, key.equals("EQUALS") ? 1 : SLOW); // some keyboards have + there
                hold(panel, "ctrl ", key, motion, FAST);
            }
        }
        Keys.on(panel, "HOME", moving::straighten);
        Keys.on(panel, "0", moving::zero);
        Keys.on(panel, "NUMPAD0", moving::zero);
        Keys.on(panel, "ESCAPE", moving::leave);
        Mouse mouse = new Mouse(panel, moving);
        panel.addMouseListener(mouse);
        panel.addMouseMotionListener(mouse);
        panel.addMouseWheelListener(mouse);
        panel.addFocusListener(new java.awt.event.FocusAdapter() {
            @Override
            public void focusLost(java.awt.event.FocusEvent lost) {
                held.clear();
                panel.repaint();
            }

            @Override
            public void focusGained(java.awt.event.FocusEvent gained) {
                panel.repaint();
            }
        });
    }

    private static List<String> keys(Motion motion) {
        return switch (motion) {
            case CLOCKWISE -> List.of(motion.key(), "EQUALS", "ADD");
            case ANTICLOCKWISE -> List.of(motion.key(), "SUBTRACT");
            default -> List.of(motion.key());
        };
    }

    private void hold(ScopePanel panel, String modifier, String key, Motion motion, double at) {
        Keys.on(panel, modifier + key, () -> {
            held.put(motion, true);
            released.remove(motion);
            speed = at;
        });
        Keys.on(panel, modifier + "released " + key, () -> released.put(motion, clock.millis()));
    }

    /** What is being moved now. */
    List<Motion> going() {
        long now = clock.millis();
        List<Motion> gone = new ArrayList<>();
        released.forEach((motion, since) -> {
            if (now - since > STILL_HELD) {
                gone.add(motion);
            }
        });
        gone.forEach(motion -> {
            held.remove(motion);
            released.remove(motion);
        });
        return List.copyOf(held.keySet());
    }

    /** How fast, 1 as usual. */
    double speed() {
        return speed;
    }

    private final class Mouse extends MouseAdapter {

        private final ScopePanel panel;
        private final Moving moving;

        Mouse(ScopePanel panel, Moving moving) {
            this.panel = panel;
            this.moving = moving;
        }

        @Override
        public void mousePressed(MouseEvent press) {
            panel.requestFocusInWindow();
            x = press.getX();
            y = press.getY();
        }

        @Override
        public void mouseDragged(MouseEvent drag) {
            if (SwingUtilities.isLeftMouseButton(drag)) {
                int across = drag.getX() - x;
                int down = drag.getY() - y;
                moving.once(Motion.RIGHT, across * BEND_A_POINT);
                moving.once(Motion.UP, -down * BEND_A_POINT);
                x = drag.getX();
                y = drag.getY();
            }
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent wheel) {
            double notches = -wheel.getPreciseWheelRotation();
            if (wheel.isShiftDown()) {
                moving.once(Motion.CLOCKWISE, notches * 0.15);
            } else if (wheel.isControlDown()) {
                moving.once(Motion.ROLL_RIGHT, notches * 5);
            } else {
                moving.once(Motion.IN, notches);
            }
        }
    }
}
