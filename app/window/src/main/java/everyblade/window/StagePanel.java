package everyblade.window;

import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenKind;
import everyblade.picture.scene.Theme;
import everyblade.picture.section.FilledSection;
import everyblade.session.JobState;
import everyblade.spi.EngineModel;
import everyblade.window.map.CellAt;
import everyblade.window.map.CellPanel;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    private final Supplier<Choices> choices;
    private final JPanel panel =
            new Card(new MigLayout("insets 6 8 4 4, fill, hidemode 3, gap 4 2", "[grow, fill][]", ""));
    private final CellPanel map = new CellPanel(ScreenKind.RINGS);
    private final JLabel hint = new JLabel();
    private final JToggleButton rings;
    private final JToggleButton strips;
    private final RowList rows;
    private final EngineSection section;
    private final Door door;
    private boolean sectionAsked;
    private final Words words;
    private final List<Consumer<CellAt>> selecting = new ArrayList<>();
    private final List<Consumer<String>> choosing = new ArrayList<>();
    private Runnable turn = () -> {};
    private Optional<JobState> shown = Optional.empty();
    private Optional<CellAt> selected = Optional.empty();
    private String chosen = "";

    StagePanel(Words words, Supplier<Choices> choices, Door door) {
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
        map.setName("map");
        Texts.name(map, words.say("map.name"));
        Texts.faint(hint);
        JPanel head = new JPanel(new MigLayout("insets 0, fillx, gap 6", "[][grow][][]"));
        head.setOpaque(false);
        head.add(Texts.bold(Texts.label(words.say("stage.title")), 1.1f));
        head.add(hint, "wmin 0");
        head.add(rings, "hmin 26px");
        head.add(strips, "hmin 26px");
        panel.add(head, "span 2, growx, wrap");
        panel.add(section, "span 2, growx, wmin 0, wrap");
        panel.add(map, "grow, push, wmin 0, hmin 0");
        panel.add(rows.component(), rowsRoom());
        map.onSelect(this::selectedByHand);
        restyle();
    }

    /** Wide enough for the longest that is said of a row. */
    private static String rowsRoom() {
        return Looks.large() ? "growy, w 120!" : "growy, w 190!";
    }

    private JToggleButton toggle(String key) {
        JToggleButton button = Texts.toggle(words.say(key), false);
        button.setIcon(key.equals("stage.rings") ? ButtonSign.RINGS : ButtonSign.STRIPS);
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
        if (now.strips()) {
            panel.remove(rows.component());
        } else if (rows.component().getParent() == null) {
            panel.add(rows.component(), rowsRoom());
        }
        section.setVisible(now.strips());
        drawSection();
        Texts.say(
                hint,
                words.say(now.strips() ? "stage.unrolled" : now.fromAhead() ? "stage.fromAhead" : "stage.fromAft"));
        Texts.tip(hint, hint.getText());
        panel.revalidate();
    }

    /** Surfaces take a moment to be worked out, and are needed above strips alone. */
    private void drawSection() {
        if (!sectionAsked && choices.get().strips() && shown.isPresent()) {
            sectionAsked = true;
            EngineModel model = shown.get().model();
            door.aside(words.say("wait.section"), () -> FilledSection.of(model, words), section::draw);
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
