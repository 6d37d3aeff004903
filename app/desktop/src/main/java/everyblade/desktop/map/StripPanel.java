package everyblade.desktop.map;

import java.awt.Graphics;
import java.util.Optional;

/** One row unrolled: airfoils from left to right, its zones one above the other. */
public final class StripPanel extends CellPanel {

    private static final long serialVersionUID = 1;

    private transient Optional<String> row = Optional.empty();

    /** Shows this row, or none for null. */
    public void row(String id) {
        row = Optional.ofNullable(id);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        row.ifPresent(id -> graphics.drawString(id, 10, 20));
    }
}
