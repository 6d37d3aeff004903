package everyblade.desktop.map;

import everyblade.core.coverage.Coverage;
import everyblade.picture.CellPicture;
import everyblade.picture.MapFacts;
import everyblade.picture.MapStyle;
import everyblade.picture.ScreenStrip;
import java.awt.Dimension;
import java.util.Optional;

/** One row unrolled: airfoils from left to right, its zones one above the other. */
public final class StripPanel extends CellPanel {

    private static final long serialVersionUID = 1;

    private transient Optional<String> row = Optional.empty();

    /**
     * Shows this row, or none for null.
     *
     * @param id of the engine shown, now or at the next {@link #show}
     */
    public void row(String id) {
        row = Optional.ofNullable(id);
        renew();
    }

    @Override
    Optional<CellPicture> picture(
            Coverage shown, MapFacts about, MapStyle style, SheetSize sheet, Optional<CellPicture> before) {
        return row.filter(id -> shown.situation().engine().rows().containsKey(id))
                .map(id -> strip(shown, id, sheet, before));
    }

    private static CellPicture strip(Coverage shown, String id, SheetSize sheet, Optional<CellPicture> before) {
        return before.isPresent()
                ? ((ScreenStrip) before.get()).after(shown, id, sheet.width(), sheet.height(), sheet.fine())
                : ScreenStrip.of(shown, id, sheet.width(), sheet.height(), sheet.fine());
    }

    @Override
    Dimension leastSheet() {
        return new Dimension(120, 34);
    }

    @Override
    String emptyWords() {
        return "No row is in view; the row in view is unrolled here.";
    }
}
