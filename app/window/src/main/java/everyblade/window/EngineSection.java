package everyblade.window;

import everyblade.picture.RowProgress;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.picture.section.FilledSection;
import everyblade.session.JobState;
import everyblade.words.Visible;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** Above the strips: the engine cut along its axis, each row filled as far as it was seen, ports open or not. */
final class EngineSection extends JComponent {

    private static final long serialVersionUID = 1;

    private static final double NATURAL = 96 / 25.4;
    private static final int HIGH = 84;
    /** The strips below go first. */
    private static final int LEAST_AROUND = 440;

    private final transient Supplier<Theme> theme;
    private transient Optional<FilledSection> section = Optional.empty();
    private transient Optional<JobState> state = Optional.empty();
    private String chosen = "";

    EngineSection(Supplier<Theme> theme) {
        this.theme = theme;
        setName("section");
    }

    /** Draws this one from now on. */
    void draw(Optional<FilledSection> other) {
        section = other;
        revalidate();
        repaint();
    }

    void show(JobState newState, String row) {
        state = Optional.of(newState);
        chosen = row;
        scene().ifPresent(drawn -> Texts.tip(this, drawn.title() + "; " + drawn.summary()));
        repaint();
    }

    /** So high where there is room for it beside the strips. */
    @Override
    public Dimension getPreferredSize() {
        boolean room = getParent() != null && getParent().getHeight() >= Looks.scaled(LEAST_AROUND);
        return new Dimension(0, section.isPresent() && room ? Looks.scaled(HIGH) : 0);
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    private Optional<Scene> scene() {
        double scale = NATURAL * Looks.text();
        return getWidth() <= 0 || getHeight() <= 0
                ? Optional.empty()
                : section.flatMap(drawn -> state.map(now -> drawn.scene(
                        fills(now),
                        chosen,
                        now.situation().ledger().openings().keySet(),
                        getWidth() / scale,
                        getHeight() / scale)));
    }

    private static Map<String, FilledSection.Fill> fills(JobState state) {
        return state.coverage().rows().stream()
                .collect(Collectors.toMap(row -> row.row().id(), row -> {
                    RowProgress progress = RowProgress.of(row);
                    return new FilledSection.Fill(progress.seen(), progress.part(), progress.maybe());
                }));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        scene().ifPresent(drawn -> {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.scale(NATURAL * Looks.text(), NATURAL * Looks.text());
            ScenePainter.of(theme.get()).paint(drawn, g);
            g.dispose();
        });
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Spoken();
        }
        return accessibleContext;
    }

    /** What is read out: what it shows, each row and port of it, and which are open. */
    private final class Spoken extends AccessibleJComponent {

        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleName() {
            return scene().map(Scene::title).map(Visible::text).orElse("");
        }

        @Override
        public String getAccessibleDescription() {
            return scene().map(Scene::summary).map(Visible::text).orElse("");
        }
    }
}
