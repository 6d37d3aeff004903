package everyblade.desktop.map;

import everyblade.core.coverage.Coverage;
import everyblade.picture.CellPicture;
import everyblade.picture.MapFacts;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenStrip;
import everyblade.picture.StripView;
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
            Coverage shown,
            MapFacts about,
            MapStyle style,
            MapWords words,
            SheetSize sheet,
            Optional<CellPicture> before) {
        return row.filter(id -> shown.situation().engine().rows().containsKey(id))
                .map(id -> strip(shown, id, new StripView(sheet.width(), sheet.height(), sheet.fine(), words), before));
    }

    private static CellPicture strip(Coverage shown, String id, StripView view, Optional<CellPicture> before) {
        return before.isPresent()
                ? ((ScreenStrip) before.get()).after(shown, id, view)
                : ScreenStrip.of(shown, id, view);
    }

    @Override
    Dimension leastSheet() {
        return new Dimension(120, 34);
    }

    @Override
    String emptyKey() {
        return "empty.strip";
    }
}
