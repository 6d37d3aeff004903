package everyblade.window;

import everyblade.picture.RowProgress;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.picture.section.FilledSection;
import everyblade.session.JobState;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Above the strips: the engine cut along its axis, each row filled as far as it was seen, ports open or not. */
final class EngineSection extends Painted {

    private static final long serialVersionUID = 1;

    private static final double NATURAL = 96 / 25.4;
    private static final int HIGH = 84;
    private static final int LEAST = 60;
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
        tell();
        revalidate();
        repaint();
    }

    void show(JobState newState, String row) {
        state = Optional.of(newState);
        chosen = row;
        tell();
        repaint();
    }

    private void tell() {
        scene().ifPresent(drawn -> {
            Texts.tip(this, drawn.title() + "; " + drawn.summary());
            Texts.name(this, drawn.title());
            describe(drawn.summary());
        });
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
        return section.flatMap(drawn -> state.map(now -> drawn.scene(
                fills(now),
                chosen,
                now.situation().ledger().openings().keySet(),
                Math.max(LEAST, getWidth()) / scale,
                Math.max(LEAST, getHeight()) / scale)));
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
}
