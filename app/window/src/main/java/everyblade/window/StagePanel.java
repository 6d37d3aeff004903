package everyblade.window;

import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenKind;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.picture.section.FilledSection;
import everyblade.session.JobState;
import everyblade.spi.EngineModel;
import everyblade.window.map.CellAt;
import everyblade.window.map.CellPanel;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/**
 * Every stage at a glance, as rings with a line for each row beside them or as strips. One row is chosen: the one of the
 * selected cell, or of the line that was taken, until another row comes into view.
 */
final class StagePanel {

    /** What a line of the row list takes, with usual letters. */
    private static final int ROWS_ROOM = 156;

    /** The same where its words stand on two lines; it grows as letters do. */
    private static final int ROWS_ROOM_LARGE = 112;

    private final Supplier<Choices> choices;
    /** How the panel is laid out. */
    private enum Laid {
        RINGS_BESIDE_ROWS,
        /** Two wheels need all its width. */
        RINGS_OVER_ROWS,
        STRIPS
    }

    private final JPanel panel =
            new Card(new MigLayout("insets 6 8 4 4, fill, hidemode 3, gap 4 2, novisualpadding", "[grow, fill][]", ""));
    private final JPanel head;
    private final LegendLine legend;
    private final JLabel ports = Texts.bold(new JLabel(), 1);
    private final CellPanel map = new CellPanel(ScreenKind.RINGS);
    private final JLabel title = Texts.bold(new JLabel(), 1.1f);
    private final JLabel hint = new JLabel() {

        private static final long serialVersionUID = 1;

        /** Whole or not at all; where a pointer rests on it, it is told anyhow. */
        @Override
        protected void paintComponent(Graphics graphics) {
            if (getWidth() >= getPreferredSize().width) {
                super.paintComponent(graphics);
            }
        }
    };
    private final JToggleButton rings;
    private final JToggleButton strips;
    private final RowList rows;
    private final EngineSection section;
    private final Door door;
    private final Map<String, byte[]> meshes;
    private boolean sectionAsked;
    private final Words words;
    private final List<Consumer<CellAt>> selecting = new ArrayList<>();
    private final List<Consumer<String>> choosing = new ArrayList<>();
    private Runnable turn = () -> {};
    private Optional<JobState> shown = Optional.empty();
    private Optional<Laid> laid = Optional.empty();
    private Optional<CellAt> selected = Optional.empty();
    private String chosen = "";

    /** @param meshes contents of the model's mesh files, by name */
    StagePanel(Words words, Supplier<Choices> choices, Door door, Map<String, byte[]> meshes) {
        this.meshes = meshes;
        this.door = door;
        section = new EngineSection(this::theme);
        this.words = words;
        this.choices = choices;
        rows = new RowList(words, this::theme, this::taken);
        rings = toggle("stage.rings");
        strips = toggle("stage.strips");
        ButtonGroup one = new ButtonGroup();
        one.add(rings);
        one.add(strips);
        map.speak(MapWords.of(words));
        map.leaveLegend();
        map.setName("map");
        Texts.name(map, words.say("map.name"));
        Texts.faint(hint);
        legend = new LegendLine(MapWords.of(words), this::theme);
        ports.setName("ports");
        head = new JPanel(
                new MigLayout("insets 0, fillx, gap 8, hidemode 3", "[][shrinkprio 50][grow, shrinkprio 200][][]"));
        head.setOpaque(false);
        Texts.say(title, words.say("stage.title"));
        head.add(title, "cell 0 0");
        head.add(ports, "cell 1 0, wmin 0");
        head.add(hint, "cell 2 0, wmin 0");
        head.add(rings, "cell 3 0, hmin 26px");
        head.add(strips, "cell 4 0, hmin 26px");
        map.onSelect(this::selectedByHand);
        restyle();
    }

    private Laid wanted() {
        return choices.get().strips()
                ? Laid.STRIPS
                : shown.filter(state -> ScreenKind.twoWheels(state.model().rows()))
                        .map(many -> Laid.RINGS_OVER_ROWS)
                        .orElse(Laid.RINGS_BESIDE_ROWS);
    }

    private void lay() {
        Laid now = wanted();
        if (laid.equals(Optional.of(now))) {
            return;
        }
        laid = Optional.of(now);
        panel.removeAll();
        panel.add(head, "span 2, growx, wmin 0, wrap");
        rows.inColumns(now == Laid.RINGS_OVER_ROWS);
        switch (now) {
            case RINGS_BESIDE_ROWS -> {
                panel.add(map, "grow, push, wmin 0, hmin 0");
                panel.add(rows.component(), "growy, w " + (Looks.large() ? ROWS_ROOM_LARGE : ROWS_ROOM) + "!, wrap");
            }
            case RINGS_OVER_ROWS -> {
                panel.add(map, "span 2, grow, push, wmin 0, hmin 0, wrap");
                panel.add(rows.component(), "span 2, growx, wmin 0, hmin 0, hmax 36%, wrap");
            }
            case STRIPS -> {
                panel.add(section, "span 2, growx, wmin 0, wrap");
                panel.add(map, "span 2, grow, push, wmin 0, hmin 0, wrap");
            }
        }
        panel.add(legend, "span 2, growx, wmin 0");
        panel.revalidate();
    }

    private JToggleButton toggle(String key) {
        JToggleButton button = Texts.toggle("", false);
        ButtonSign sign = key.equals("stage.rings") ? ButtonSign.RINGS : ButtonSign.STRIPS;
        Texts.sign(button, sign, words.say(key), !Looks.large());
        Texts.tip(button, words.say(key));
        button.setName(key);
        Texts.leaveFocus(button);
        button.addActionListener(pressed -> {
            if ((button == strips) != choices.get().strips()) {
                turn.run();
            }
        });
        return button;
    }

    JComponent component() {
        return panel;
    }

    /** Shows what the next step would close. */
    void foresee(List<CellAt> cells) {
        map.foresee(cells);
    }

    /** What turns rings to strips and back. */
    void onTurn(Runnable turning) {
        turn = turning;
    }

    /** Tells of every cell that a person selects here. */
    void onSelect(Consumer<CellAt> listener) {
        selecting.add(listener);
    }

    /** Tells of every row that becomes the chosen one. */
    void onChoose(Consumer<String> listener) {
        choosing.add(listener);
    }

    private void selectedByHand(CellAt cell) {
        select(cell);
        selecting.forEach(listener -> listener.accept(cell));
    }

    /** Chooses a row, whatever cell of another was selected. */
    void taken(String row) {
        if (selected.filter(cell -> !cell.row().equals(row)).isPresent()) {
            select(null);
        }
        choose(row);
    }

    /** Selects a cell, and chooses its row; none for null. */
    void select(CellAt cell) {
        selected = Optional.ofNullable(cell);
        map.select(cell);
        selected.map(CellAt::row).ifPresent(this::choose);
    }

    Optional<CellAt> selected() {
        return selected;
    }

    /** Id of the chosen row. */
    String chosen() {
        return chosen;
    }

    private void choose(String row) {
        if (!row.equals(chosen)) {
            chosen = row;
            map.lookInto(row);
            shown.ifPresent(state -> section.show(state, row));
            rows.choose(row);
            choosing.forEach(listener -> listener.accept(row));
        }
    }

    void show(JobState state) {
        Optional<String> before = shown.flatMap(StagePanel::rowInView);
        Optional<String> now = rowInView(state);
        boolean first = shown.isEmpty();
        shown = Optional.of(state);
        lay();
        openPorts(state);
        if (first || !before.equals(now)) {
            String row = now.orElseGet(() -> state.model().rows().get(0).id());
            if (selected.filter(cell -> !cell.row().equals(row)).isPresent()) {
                select(null);
            }
            choose(row);
        }
        map.show(state.coverage());
        section.show(state, chosen);
        drawSection();
        rows.show(state.coverage().rows(), chosen);
    }

    /** Shows all as was chosen. */
    void restyle() {
        Choices now = choices.get();
        map.letters(Looks.text());
        map.style(new MapStyle(theme(), now.fromAhead() ? Facing.FORWARD_LOOKING_AFT : Facing.AFT_LOOKING_FORWARD));
        ScreenKind kind = now.strips() ? ScreenKind.STRIPS : ScreenKind.RINGS;
        if (kind != map.kind()) {
            map.lay(kind);
        }
        rings.setSelected(!now.strips());
        strips.setSelected(now.strips());
        lay();
        shown.ifPresent(this::openPorts);
        drawSection();
        Texts.say(
                hint,
                words.say(now.strips() ? "stage.unrolled" : now.fromAhead() ? "stage.fromAhead" : "stage.fromAft"));
        Texts.tip(hint, hint.getText());
    }

    /** Which ports are open is to be seen at any time; which are, above strips the section shows as well. */
    private void openPorts(JobState state) {
        Set<String> open = state.situation().ledger().openings().keySet();
        Texts.say(
                ports,
                open.isEmpty() ? words.say("section.noneOpen") : words.say("section.open", String.join(", ", open)));
        Texts.tip(ports, ports.getText());
        title.setVisible(!Looks.large() || open.isEmpty()); // large letters leave room for one of them
        ports.setForeground(Looks.letters(theme(), open.isEmpty() ? Ink.FAINT : Ink.ALERT));
    }

    /** Surfaces take a moment to be worked out, and are needed above strips alone. */
    private void drawSection() {
        if (!sectionAsked && choices.get().strips() && shown.isPresent()) {
            sectionAsked = true;
            EngineModel model = shown.get().model();
            door.aside(words.say("wait.section"), () -> FilledSection.of(model, meshes, words), section::draw);
        }
    }

    private Theme theme() {
        return Looks.theme(choices.get());
    }

    void zoomIn() {
        map.zoomIn();
    }

    void zoomOut() {
        map.zoomOut();
    }

    void fit() {
        map.fit();
    }

    void focus() {
        map.requestFocusInWindow();
    }

    private static Optional<String> rowInView(JobState state) {
        return state.seat().map(seat -> seat.row().id());
    }
}
