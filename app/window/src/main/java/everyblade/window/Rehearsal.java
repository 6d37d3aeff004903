package everyblade.window;

import everyblade.core.sight.Progress;
import everyblade.session.Session;
import everyblade.session.around.Surroundings;
import everyblade.window.view.Choices;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;

/** The screens of the window built and painted where nobody sees them: what they need is then loaded. */
final class Rehearsal {

    private static final Dimension SIZE = new Dimension(1280, 740);

    private Rehearsal() {}

    /** The start screen and that of a job; on the event thread, and without a display. */
    static void of(Surroundings around, Path job) {
        onScreen();
        Choices choices = Choices.first(Locale.ENGLISH);
        Looks.use(choices);
        Words words = Words.of(choices.language());
        Waiting waiting = new Waiting();
        waiting.speak(words);
        try (Session session = Session.review(around, job, "", Progress.NONE);
                Door door = new Workers(waiting, message -> {}, fault -> {})) {
            paint(new StartPanel(words, new Places(around).demo(), List.of(), new Idle()).component());
            Shown shown = Shown.of(session.state(), words, ZoneOffset.UTC);
            paint(new JobScreen(session, shown, door, words, () -> choices, around.clock()).component());
        }
    }

    /** What cannot be made without a display is loaded at least. */
    private static void onScreen() {
        try (InputStream names = Rehearsal.class.getResourceAsStream("on-screen.txt")) {
            new String(names.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(name -> !name.startsWith("#"))
                    .forEach(Rehearsal::load);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private static void load(String name) {
        try {
            Class.forName(name, false, Rehearsal.class.getClassLoader());
        } catch (ClassNotFoundException | LinkageError elsewhere) {
            // another Java, or another system, has others
        }
    }

    /** Nobody presses anything at a rehearsal. */
    private static final class Idle implements StartPanel.Doing {

        @Override
        public void open(Path job) {}

        @Override
        public boolean isDrill(Path folder) {
            return false;
        }

        @Override
        public void review(Path job) {}

        @Override
        public void newJob() {}

        @Override
        public void practise() {}

        @Override
        public void fleet() {}

        @Override
        public void author() {}

        @Override
        public void choose(boolean review) {}
    }

    private static void paint(JComponent component) {
        lay(component, SIZE);
        BufferedImage image = new BufferedImage(SIZE.width, SIZE.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        component.paint(g);
        g.dispose();
    }

    /** Gives a component its size and lays out everything in it, as a window would. */
    static void lay(JComponent component, Dimension size) {
        component.setSize(size);
        layAll(component);
        layAll(component); // labels that wrap know their height only once they know their width
    }

    private static void layAll(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layAll(inner);
            }
        }
    }
}
