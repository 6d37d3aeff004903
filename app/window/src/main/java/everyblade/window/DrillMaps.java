package everyblade.window;

import everyblade.core.coverage.RowCoverage;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenKind;
import everyblade.practice.harm.Harm;
import everyblade.session.drill.DrillRecord.Told;
import everyblade.window.map.CellAt;
import everyblade.window.map.CellPanel;
import everyblade.words.Words;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.ToolTipManager;
import net.miginfocom.swing.MigLayout;

/**
 * The map of truth over that of the entries, both unrolled, so that a cell of the one stands over the same cell of the other;
 * one cell is selected in both.
 */
final class DrillMaps {

    private final Told told;
    private final CellPanel truly = new CellPanel(ScreenKind.STRIPS);
    private final CellPanel claimed = new CellPanel(ScreenKind.STRIPS);
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fill, wrap, gapy 2", "[grow, fill]", ""));

    DrillMaps(Told told, Words words, MapStyle style) {
        this.told = told;
        truly.setName("drill.truly");
        claimed.setName("drill.claimed");
        // A tip would tell how entries explain a cell, which is no reason for the truth.
        ToolTipManager.sharedInstance().unregisterComponent(truly);
        add(truly, words, style, "drill.map.truly");
        add(claimed, words, style, "drill.map.claimed");
        truly.show(told.truly());
        claimed.show(told.coverage());
        String row = told.truth().recipe().rows().get(0);
        List.of(truly, claimed).forEach(map -> map.lookInto(row));
    }

    private void add(CellPanel map, Words words, MapStyle style, String key) {
        JLabel title = Texts.label(words.say(key));
        title.setLabelFor(map);
        Texts.name(map, words.say(key));
        map.speak(MapWords.of(words));
        map.style(style);
        map.onSelect(this::select);
        panel.add(Texts.bold(title, 1), "wmin 0");
        panel.add(map, "grow, push, wmin 0, hmin 60");
    }

    JComponent component() {
        return panel;
    }

    private void select(CellAt cell) {
        for (CellPanel map : List.of(truly, claimed)) {
            map.lookInto(cell.row());
            map.select(cell);
        }
    }

    /** Shows where some damage is. */
    void select(Harm harm) {
        RowCoverage row = told.coverage().row(harm.row());
        select(new CellAt(
                harm.row(),
                harm.airfoil(),
                row.zoning().names().indexOf(harm.zones().get(0))));
    }
}
