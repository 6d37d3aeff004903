package everyblade.desktop.map;

import everyblade.core.coverage.Coverage;
import everyblade.picture.CellPicture;
import everyblade.picture.CellTelling;
import everyblade.picture.MapFacts;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.Step;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Ink;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;

/**
 * A component that shows a picture of cells, of which one may be selected and one is under the mouse.
 *
 * <p>Arrows walk from cell to cell, page up and down from airfoil to airfoil; plus, minus and 0 enlarge; shift and arrows
 * move; the wheel enlarges at the mouse, dragging moves.
 */
abstract class CellPanel extends JComponent {

    private static final long serialVersionUID = 1;

    /** Units below which a cell is too small for a pattern to be told. */
    private static final double FINE = 5.5;

    private static final double ZOOM_STEP = 1.5;

    private final transient Stage stage = new Stage();
    private final transient List<Consumer<CellAt>> selecting = new ArrayList<>();
    private final transient List<Consumer<Optional<CellAt>>> hovering = new ArrayList<>();
    private transient Optional<Coverage> coverage = Optional.empty();
    private transient Optional<MapFacts> facts = Optional.empty();
    private transient MapStyle style = MapStyle.PLAIN;
    private transient MapWords words = MapWords.ENGLISH;
    private transient Optional<Cell> selected = Optional.empty();
    private transient Optional<Cell> hovered = Optional.empty();

    CellPanel() {
        setFocusable(true);
        setOpaque(true);
        PanelMouse.on(this);
        PanelKeys.on(this);
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    /**
     * The picture to be shown; empty if there is nothing to show.
     *
     * @param before the picture shown so far
     */
    abstract Optional<CellPicture> picture(
            Coverage shown,
            MapFacts about,
            MapStyle inStyle,
            MapWords inWords,
            SheetSize sheet,
            Optional<CellPicture> before);

    /** The least size of a sheet, mm; in a smaller component it is drawn smaller. */
    abstract Dimension leastSheet();

    /** The key of what is said where there is nothing to show. */
    abstract String emptyKey();

    /** Shows this state of the job. */
    public final void show(Coverage newCoverage, MapFacts newFacts) {
        coverage = Optional.of(newCoverage);
        facts = Optional.of(newFacts);
        renew();
    }

    /** Shows it in these colours, seen from there. */
    public final void style(MapStyle newStyle) {
        style = newStyle;
        stage.theme(style.theme());
        renew();
        repaint();
    }

    /** Speaks in these words from now on. */
    public final void speak(MapWords newWords) {
        words = newWords;
        renew();
        repaint();
    }

    /** Selects a cell, or none for null, without telling those who wait for a person to do so. */
    public final void select(CellAt cell) {
        Optional<Cell> next = Optional.ofNullable(cell).map(at -> new Cell(at.row(), at.airfoil(), at.zone()));
        repaint(selected, true);
        selected = next;
        repaint(selected, true);
        reveal();
        if (accessibleContext != null) {
            accessibleContext.firePropertyChange(
                    AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY,
                    null,
                    accessibleContext.getAccessibleDescription());
        }
    }

    /** The cell that is selected. */
    public final Optional<CellAt> selected() {
        return selected.map(CellPanel::at);
    }

    /** Tells of every cell that a person selects with mouse or keys. */
    public final void onSelect(Consumer<CellAt> listener) {
        selecting.add(listener);
    }

    /** Tells of the cell under the mouse whenever that changes; empty if there is none. */
    public final void onHover(Consumer<Optional<CellAt>> listener) {
        hovering.add(listener);
    }

    /** Shows things larger. */
    public final void zoomIn() {
        zoom(ZOOM_STEP, getWidth() / 2.0, getHeight() / 2.0);
    }

    /** Shows things smaller. */
    public final void zoomOut() {
        zoom(1 / ZOOM_STEP, getWidth() / 2.0, getHeight() / 2.0);
    }

    /** Shows the whole picture. */
    public final void fit() {
        look(Lens.whole(stage.lens().fit()));
    }

    /** The cell under a point of the component; empty where there is none. */
    final Optional<CellAt> cellAt(double x, double y) {
        return stage.cellAt(x, y).map(CellPanel::at);
    }

    private static CellAt at(Cell cell) {
        return new CellAt(cell.row(), cell.airfoil(), cell.zone());
    }

    final void zoom(double factor, double x, double y) {
        look(stage.lens().zoomed(factor, x, y));
    }

    final void pan(double dx, double dy) {
        look(stage.lens().moved(dx, dy));
    }

    private void look(Lens wanted) {
        Lens next = wanted.within(getWidth() / wanted.fit(), getHeight() / wanted.fit());
        if (!next.equals(stage.lens())) {
            stage.lens(next);
            renew();
            repaint();
        }
    }

    /** One step of a walk by a person. */
    final void walk(Step step) {
        stage.picture()
                .flatMap(shown -> selected.filter(cell -> !shown.patches(cell).isEmpty())
                        .map(cell -> shown.next(cell, step))
                        .or(shown::first))
                .ifPresent(cell -> choose(at(cell)));
    }

    /** Selects a cell for a person, and tells of it. */
    final void choose(CellAt cell) {
        select(cell);
        selecting.forEach(listener -> listener.accept(cell));
    }

    final void hover(Optional<CellAt> cell) {
        Optional<Cell> next = cell.map(at -> new Cell(at.row(), at.airfoil(), at.zone()));
        if (!next.equals(hovered)) {
            repaint(hovered, false);
            hovered = next;
            repaint(hovered, false);
            hovering.forEach(listener -> listener.accept(cell));
        }
    }

    private void repaint(Optional<Cell> cell, boolean heavy) {
        cell.ifPresent(marked -> mark(marked, heavy).bounds().forEach(this::repaint));
    }

    private Mark mark(Cell cell, boolean heavy) {
        return new Mark(stage.outlines(cell), heavy);
    }

    /** Moves what is shown so that the selected cell is seen. */
    private void reveal() {
        List<Shape> outlines = selected.map(stage::outlines).orElse(List.of());
        if (!outlines.isEmpty() && stage.lens().zoom() > 1) {
            Rectangle2D place = outlines.get(0).getBounds2D();
            look(stage.lens().showing(place, getWidth(), getHeight()));
        }
    }

    /** Makes the picture anew of what is to be shown; only what has changed is painted. */
    final void renew() {
        if (getWidth() <= 0 || getHeight() <= 0 || coverage.isEmpty()) {
            return;
        }
        Lens lens = stage.lens();
        SheetSize sheet = new SheetSize(getWidth() / lens.fit(), getHeight() / lens.fit(), FINE / lens.scale());
        boolean wasShown = stage.picture().isPresent();
        Optional<CellPicture> next = picture(coverage.get(), facts.orElseThrow(), style, words, sheet, stage.picture());
        if (next.isEmpty() || !wasShown) {
            repaint();
        }
        next.map(stage::show).orElseGet(stage::clear).forEach(this::repaint);
    }

    @Override
    @SuppressWarnings("deprecation") // the only one through which every change of size goes
    public void reshape(int x, int y, int width, int height) {
        boolean other = width != getWidth() || height != getHeight();
        super.reshape(x, y, width, height);
        if (other) {
            stage.lens(Lens.whole(fitting()));
            renew();
        }
    }

    private double fitting() {
        Dimension least = leastSheet();
        double share = Math.min(getWidth() / (Lens.NATURAL * least.width), getHeight() / (Lens.NATURAL * least.height));
        return Lens.NATURAL * Math.max(0.1, Math.min(1, share));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics;
        stage.paint(g, getWidth(), getHeight());
        if (stage.picture().isEmpty()) {
            EmptyWords.paint(g, stage.painter(), words.say(emptyKey()), getWidth(), getHeight());
        }
        hovered.ifPresent(cell -> mark(cell, false).paint(g, stage.painter()));
        selected.ifPresent(cell -> mark(cell, true).paint(g, stage.painter()));
        if (isFocusOwner()) {
            Graphics2D frame = (Graphics2D) g.create();
            frame.setColor(stage.painter().colour(Ink.LINE));
            frame.setStroke(new BasicStroke(2));
            frame.drawRect(1, 1, getWidth() - 2, getHeight() - 2);
            frame.dispose();
        }
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return stage.cellAt(event.getX(), event.getY())
                .map(cell -> ToolTip.of(new CellTelling(coverage.orElseThrow(), words).lines(cell)))
                .orElse(null);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Spoken();
        }
        return accessibleContext;
    }

    /** What is read out: the picture's title, what it says, and the selected cell. */
    private final class Spoken extends AccessibleJComponent {

        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleName() {
            return accessibleName != null
                    ? accessibleName
                    : stage.picture().map(shown -> shown.scene().title()).orElse(words.say(emptyKey()));
        }

        @Override
        public String getAccessibleDescription() {
            if (coverage.isEmpty() || stage.picture().isEmpty()) {
                return words.say(emptyKey());
            }
            CellTelling telling = new CellTelling(coverage.get(), words);
            return telling.all(stage.picture().get().scene().summary(), selected);
        }
    }
}
