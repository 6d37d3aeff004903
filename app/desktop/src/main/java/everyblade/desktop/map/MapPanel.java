package everyblade.desktop.map;

import everyblade.core.coverage.Coverage;
import everyblade.picture.CellPicture;
import everyblade.picture.MapFacts;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenMap;
import everyblade.picture.ScreenView;
import java.awt.Dimension;
import java.util.Optional;

/** The map: all rows as rings about one axis, and one of them large round the others. */
public final class MapPanel extends CellPanel {

    private static final long serialVersionUID = 1;

    private transient Optional<String> enlarged = Optional.empty();
    private transient boolean turning = true;

    /**
     * Shows this row large, or none for null.
     *
     * @param row an id of the engine shown, now or at the next {@link #show}
     */
    public void enlarge(String row) {
        enlarged = Optional.ofNullable(row);
        renew();
    }

    /** Whether airfoils are shown where they stand now, or stay while the scope tip goes round them. */
    public void turnWithRotor(boolean turns) {
        turning = turns;
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
        Optional<String> large =
                enlarged.filter(id -> shown.situation().engine().rows().containsKey(id));
        ScreenView view = new ScreenView(style, large, turning, sheet.width(), sheet.height(), sheet.fine(), words);
        return Optional.of(
                before.isPresent()
                        ? ((ScreenMap) before.get()).after(shown, about, view)
                        : ScreenMap.of(shown, about, view));
    }

    @Override
    Dimension leastSheet() {
        return new Dimension(170, 140);
    }

    @Override
    String emptyKey() {
        return "empty.map";
    }
}
