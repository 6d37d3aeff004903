package everyblade.desktop.map;

import everyblade.core.coverage.Coverage;
import everyblade.picture.MapFacts;
import everyblade.picture.MapStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;

/** A component that shows cells, of which one can be selected. */
abstract class CellPanel extends JComponent {

    private static final long serialVersionUID = 1;

    transient Optional<Coverage> coverage = Optional.empty();
    transient Optional<MapFacts> facts = Optional.empty();
    transient MapStyle style = MapStyle.PLAIN;
    transient Optional<CellAt> selected = Optional.empty();
    private final transient List<Consumer<CellAt>> selecting = new ArrayList<>();
    private final transient List<Consumer<Optional<CellAt>>> hovering = new ArrayList<>();

    CellPanel() {
        setFocusable(true);
    }

    /** Shows this state of the job. */
    public final void show(Coverage newCoverage, MapFacts newFacts) {
        coverage = Optional.of(newCoverage);
        facts = Optional.of(newFacts);
        repaint();
    }

    /** Shows it in these colours, seen from there. */
    public final void style(MapStyle newStyle) {
        style = newStyle;
        repaint();
    }

    /** Selects a cell, or none for null, without telling those who wait for selections by hand. */
    public final void select(CellAt cell) {
        selected = Optional.ofNullable(cell);
        repaint();
    }

    /** The cell that is selected. */
    public final Optional<CellAt> selected() {
        return selected;
    }

    /** Tells of every cell that a person selects with mouse or keys. */
    public final void onSelect(Consumer<CellAt> listener) {
        selecting.add(listener);
    }

    /** Tells of the cell under the mouse whenever that changes; empty if there is none. */
    public final void onHover(Consumer<Optional<CellAt>> listener) {
        hovering.add(listener);
    }
}
