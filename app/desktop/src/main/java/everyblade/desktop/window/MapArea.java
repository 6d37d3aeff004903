package everyblade.desktop.window;

import everyblade.desktop.map.CellAt;
import everyblade.desktop.map.MapPanel;
import everyblade.desktop.map.StripPanel;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.JobState;
import everyblade.desktop.words.Words;
import everyblade.picture.Facing;
import everyblade.picture.MapFacts;
import everyblade.picture.MapStyle;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The map with the row in view unrolled below it: one cell is selected in both. */
final class MapArea {

    private static final int STRIP_HEIGHT = 110;

    private final Supplier<Choices> choices;
    private final JPanel panel = new JPanel(new BorderLayout());
    private final MapPanel map = new MapPanel();
    private final StripPanel strip = new StripPanel();
    private final List<Consumer<CellAt>> listeners = new ArrayList<>();
    private Optional<JobState> shown = Optional.empty();
    private Optional<CellAt> selected = Optional.empty();

    MapArea(Words words, Supplier<Choices> choices) {
        this.choices = choices;
        map.speak(words.map());
        strip.speak(words.map());
        map.setName("map");
        strip.setName("strip");
        Texts.name(map, words.say("map.name"));
        Texts.name(strip, words.say("strip.name"));
        strip.setPreferredSize(new java.awt.Dimension(100, STRIP_HEIGHT));
        panel.add(map, BorderLayout.CENTER);
        panel.add(strip, BorderLayout.SOUTH);
        map.onSelect(this::chosen);
        strip.onSelect(this::chosen);
        restyle();
    }

    JComponent component() {
        return panel;
    }

    void onSelect(Consumer<CellAt> listener) {
        listeners.add(listener);
    }

    private void chosen(CellAt cell) {
        select(cell);
        listeners.forEach(listener -> listener.accept(cell));
    }

    /** Selects a cell and brings its row into the strip. */
    void select(CellAt cell) {
        selected = Optional.of(cell);
        map.select(cell);
        strip.row(cell.row());
        strip.select(cell);
    }

    Optional<CellAt> selected() {
        return selected;
    }

    void show(JobState state) {
        boolean otherRow = shown.isEmpty() || !rowInView(shown.get()).equals(rowInView(state));
        shown = Optional.of(state);
        MapFacts facts = new MapFacts(
                state.model().name(),
                state.model().notice(),
                state.beginning().serial(),
                state.beginning().task(),
                state.head());
        map.show(state.coverage(), facts);
        strip.show(state.coverage(), facts);
        if (otherRow) {
            String row = rowInView(state).orElse(null);
            map.enlarge(row);
            strip.row(row == null ? state.model().rows().get(0).id() : row);
        }
    }

    /** Shows both as was chosen. */
    void restyle() {
        Choices chosen = choices.get();
        MapStyle style = new MapStyle(
                Looks.theme(chosen), chosen.fromAhead() ? Facing.FORWARD_LOOKING_AFT : Facing.AFT_LOOKING_FORWARD);
        map.style(style);
        strip.style(style);
        map.turnWithRotor(chosen.turnMap());
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
