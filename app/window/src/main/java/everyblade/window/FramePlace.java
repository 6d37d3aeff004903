package everyblade.window;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;

/** How large the window is, and where: at first as a job needs it, later as a person left it. */
record FramePlace(JFrame frame) {

    private static final Dimension FIRST_SIZE = new Dimension(1280, 800);
    private static final Dimension LEAST_SIZE = new Dimension(1000, 640);

    /** @param left where it was when it was last closed, if it ever was: x, y, width and height */
    void begin(Optional<List<Integer>> left) {
        frame.setMinimumSize(LEAST_SIZE);
        Dimension screen = Toolkit.getDefaultToolkit().getScreenSize();
        Dimension wanted = new Dimension(Looks.scaled(FIRST_SIZE.width), Looks.scaled(FIRST_SIZE.height));
        frame.setSize(Math.min(screen.width, wanted.width), Math.min(screen.height, wanted.height));
        frame.setLocationRelativeTo(null); // where a platform put it, Java is not always told
        left.map(four -> new Rectangle(four.get(0), four.get(1), four.get(2), four.get(3)))
                .filter(FramePlace::isOnAScreen)
                .ifPresent(frame::setBounds);
    }

    private static boolean isOnAScreen(Rectangle place) {
        return Arrays.stream(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
                .anyMatch(screen -> screen.getDefaultConfiguration().getBounds().contains(place));
    }

    /** As {@link #begin} takes it. */
    List<Integer> now() {
        return List.of(frame.getX(), frame.getY(), frame.getWidth(), frame.getHeight());
    }
}
