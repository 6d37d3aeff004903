package everyblade.window.map;

import everyblade.core.coverage.Coverage;
import everyblade.picture.CellTelling;
import everyblade.picture.MapStep;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenKind;
import everyblade.picture.ScreenPicture;
import everyblade.picture.ScreenView;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Ink;
import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;

/**
 * A component that shows rows of cells in one of several layouts; one cell may be selected, one is under the mouse.
 *
 * <p>Arrows walk from cell to cell, page up and down from airfoil to airfoil; plus, minus and 0 enlarge; shift and arrows
 * move; the wheel enlarges at the mouse, dragging moves.
 */
public final class CellPanel extends JComponent implements Accessible {

    private static final long serialVersionUID = 1;

    /** Units below which a cell is too small for a pattern to be told. */
    private static final double FINE = 5.5;

    private static final double ZOOM_STEP = 1.5;

    /** Below this a sheet is drawn smaller. */
    private static final double LEAST_SHEET = 60;

    /** A wheel bears less: it holds one row. */
    private static final double LEAST_WHEEL = 50;

    private final transient Stage stage = new Stage();
    private final transient Ghost ghost = new Ghost();
    private final transient List<Consumer<CellAt>> selecting = new ArrayList<>();
    private transient Optional<Coverage> coverage = Optional.empty();
    private transient ScreenKind kind;
    private transient Optional<String> chosen = Optional.empty();
    private transient MapStyle style = MapStyle.PLAIN;
    private transient MapWords words = MapWords.of(Locale.ENGLISH);
    private boolean figures = true;
    private boolean legend = true;
    private double letters = 1;
    private transient Optional<Cell> selected = Optional.empty();
    private transient Optional<Cell> hovered = Optional.empty();

    /** Shows nothing yet; in this layout at first. */
    public CellPanel(ScreenKind kind) {
        this.kind = kind;
        setFocusable(true);
        setOpaque(true);
        PanelMouse.on(this);
        PanelKeys.on(this);
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    /** What is said where there is nothing to show. */
    private String emptyKey() {
        return kind == ScreenKind.WHEEL ? "empty.wheel" : "empty.map";
    }

    /** Shows this state of a job. */
    public void show(Coverage newCoverage) {
        coverage = Optional.of(newCoverage);
        renew();
    }

    /** Lays the rows out so from now on. */
    public void lay(ScreenKind next) {
        kind = next;
        look(Lens.whole(stage.lens().fit()));
        renew();
        repaint();
    }

    /** How the rows are laid out. */
    public ScreenKind kind() {
        return kind;
    }

    /**
     * Shows which row is looked into; none for null.
     *
     * @param row an id
     */
    public void lookInto(String row) {
        Optional<String> next = Optional.ofNullable(row);
        if (!next.equals(chosen)) {
            chosen = next;
            renew();
        }
    }

    /** Shows it in these colours, seen from there. */
    public void style(MapStyle newStyle) {
        style = newStyle;
        stage.theme(style.theme());
        renew();
        repaint();
    }

    /** Speaks in these words from now on. */
    public void speak(MapWords newWords) {
        words = newWords;
        renew();
        repaint();
    }

    /** Whether it tells how much is seen; it does until something else is said. */
    public void tellFigures(boolean tells) {
        figures = tells;
        renew();
    }

    /** Leaves the legend to whoever shows it elsewhere. */
    public void leaveLegend() {
        legend = false;
        renew();
    }

    /** Selects a cell, or none for null, without telling those who wait for a person to do so. */
    public void select(CellAt cell) {
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

    /** Shows what is not seen yet and would be by the next step; nothing for none. */
    public void foresee(List<CellAt> cells) {
        if (ghost.show(cells.stream()
                .map(at -> new Cell(at.row(), at.airfoil(), at.zone()))
                .toList())) {
            repaint();
        }
    }

    /** The cell that is selected. */
    public Optional<CellAt> selected() {
        return selected.map(CellPanel::at);
    }

    /** Tells of every cell that a person selects with mouse or keys. */
    public void onSelect(Consumer<CellAt> listener) {
        selecting.add(listener);
    }

    /** Shows things larger. */
    public void zoomIn() {
        zoom(ZOOM_STEP, getWidth() / 2.0, getHeight() / 2.0);
    }

    /** Shows things smaller. */
    public void zoomOut() {
        zoom(1 / ZOOM_STEP, getWidth() / 2.0, getHeight() / 2.0);
    }

    /** Shows the whole picture. */
    public void fit() {
        look(Lens.whole(stage.lens().fit()));
    }

    /** The cell under a point of the component; empty where there is none. */
    Optional<CellAt> cellAt(double x, double y) {
        return stage.cellAt(x, y).map(CellPanel::at);
    }

    private static CellAt at(Cell cell) {
        return new CellAt(cell.row(), cell.airfoil(), cell.zone());
    }

    void zoom(double factor, double x, double y) {
        look(stage.lens().zoomed(factor, x, y));
    }

    void pan(double dx, double dy) {
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
    void walk(MapStep step) {
        stage.picture()
                .flatMap(shown -> selected.filter(cell -> shown.patch(cell).isPresent())
                        .map(cell -> shown.next(cell, step))
                        .or(shown::first))
                .ifPresent(cell -> choose(at(cell)));
    }

    /** Selects a cell for a person, and tells of it. */
    void choose(CellAt cell) {
        select(cell);
        selecting.forEach(listener -> listener.accept(cell));
    }

    void hover(Optional<CellAt> cell) {
        Optional<Cell> next = cell.map(at -> new Cell(at.row(), at.airfoil(), at.zone()));
        if (!next.equals(hovered)) {
            repaint(hovered, false);
            hovered = next;
            repaint(hovered, false);
        }
    }

    private void repaint(Optional<Cell> cell, boolean heavy) {
        cell.ifPresent(marked -> mark(marked, heavy).bounds().forEach(this::repaint));
    }

    private Mark mark(Cell cell, boolean heavy) {
        return new Mark(stage.outline(cell).stream().toList(), heavy);
    }

    /** Moves what is shown so that the selected cell is seen. */
    private void reveal() {
        Optional<Shape> outline = selected.flatMap(stage::outline);
        if (outline.isPresent() && stage.lens().zoom() > 1) {
            Rectangle2D place = outline.get().getBounds2D();
            look(stage.lens().showing(place, getWidth(), getHeight()));
        }
    }

    /** Makes the picture anew of what is to be shown; only what has changed is painted. */
    void renew() {
        if (getWidth() <= 0 || getHeight() <= 0 || coverage.isEmpty()) {
            return;
        }
        Lens lens = stage.lens();
        ScreenView view = new ScreenView(
                style,
                chosen,
                getWidth() / lens.fit(),
                getHeight() / lens.fit(),
                FINE / lens.scale(),
                words,
                figures,
                legend);
        Optional<ScreenPicture> before = stage.picture();
        ScreenPicture next = before.isPresent()
                ? before.get().after(kind, coverage.get(), view)
                : ScreenPicture.of(kind, coverage.get(), view);
        if (before.isEmpty() || nothing(before.get()) != nothing(next)) {
            repaint();
        }
        stage.show(next).forEach(this::repaint);
    }

    private static boolean nothing(ScreenPicture picture) {
        return picture.first().isEmpty();
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
        double least = kind == ScreenKind.WHEEL ? LEAST_WHEEL : LEAST_SHEET;
        double share = Math.min(getWidth(), getHeight()) / (Lens.NATURAL * least);
        return Lens.NATURAL * Math.max(0.1, Math.min(letters, share));
    }

    /** Shows words and figures so many times as large as usual, as far as there is room. */
    public void letters(double times) {
        letters = times;
        look(Lens.whole(fitting()));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics;
        stage.paint(g, getWidth(), getHeight());
        if (stage.picture().filter(shown -> !nothing(shown)).isEmpty()) {
            EmptyWords.paint(g, stage.painter(), words.say(emptyKey()), getWidth(), getHeight());
        }
        ghost.paint(g, stage, getWidth(), getHeight());
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
            return figures
                    ? telling.all(stage.picture().get().scene().summary(), selected)
                    : selected.map(telling::line)
                            .orElse(stage.picture().get().scene().title());
        }
    }
}
