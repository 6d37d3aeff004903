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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.ToolTipManager;
import net.miginfocom.swing.MigLayout;

/**
 * The map of truth over that of the entries, one row that was practised on at a time, both unrolled, so that a cell of the one
 * stands over the same cell of the other; one cell is selected in both.
 */
final class DrillMaps {

    private final Told told;
    private final CellPanel truly = new CellPanel(ScreenKind.ROW);
    private final CellPanel claimed = new CellPanel(ScreenKind.ROW);
    private final Map<String, JToggleButton> rows = new LinkedHashMap<>();
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap, gapy 2, hidemode 3", "[grow, fill]", ""));

    DrillMaps(Told told, Words words, MapStyle style) {
        this.told = told;
        truly.setName("drill.truly");
        claimed.setName("drill.claimed");
        // A tip would tell how entries explain a cell, which is no reason for the truth.
        ToolTipManager.sharedInstance().unregisterComponent(truly);
        panel.add(chooser(words), "wmin 0");
        add(truly, words, style, "drill.map.truly");
        add(claimed, words, style, "drill.map.claimed");
        truly.show(told.truly());
        claimed.show(told.coverage());
        look(told.truth().recipe().rows().get(0));
    }

    /** A button for each row that was practised on; there is nothing to choose where it is one. */
    private JComponent chooser(Words words) {
        JPanel buttons = new JPanel(new MigLayout("insets 0", "[]6[]"));
        ButtonGroup group = new ButtonGroup();
        for (String id : told.truth().recipe().rows()) {
            JToggleButton button = Texts.toggle(id, false);
            button.setName("drill.row." + id);
            Texts.name(button, told.coverage().row(id).row().name());
            button.addActionListener(pressed -> look(id));
            group.add(button);
            rows.put(id, button);
            buttons.add(button, "hmin 30");
        }
        buttons.setVisible(rows.size() > 1);
        return buttons;
    }

    private void look(String row) {
        Optional.ofNullable(rows.get(row)).ifPresent(button -> button.setSelected(true));
        List.of(truly, claimed).forEach(map -> {
            map.select(map.selected().filter(cell -> cell.row().equals(row)).orElse(null));
            map.lookInto(row);
        });
    }

    private void add(CellPanel map, Words words, MapStyle style, String key) {
        JLabel title = Texts.label(words.say(key));
        title.setLabelFor(map);
        Texts.name(map, words.say(key));
        map.speak(MapWords.of(words));
        map.style(style);
        map.letters(Looks.text());
        map.onSelect(this::select);
        panel.add(Texts.bold(title, 1), "wmin 0");
        panel.add(map, "grow, push, wmin 0, hmin 60");
    }

    JComponent component() {
        return panel;
    }

    private void select(CellAt cell) {
        look(cell.row());
        List.of(truly, claimed).forEach(map -> map.select(cell));
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
