package everyblade.window;

import everyblade.core.coverage.State;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.closing.Behind;
import everyblade.spi.RowKind;
import everyblade.window.map.CellAt;
import everyblade.window.view.Left;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is left, most useful first; the one that is chosen shows on the map, and says how to reach it. */
final class LeftPanel {

    private final Words words;
    private final JPanel panel = new JPanel(new MigLayout("insets 4 0 0 0, fill, wrap, hidemode 3", "[grow, fill]"));
    private final LineList<Left> list = new LineList<>("left", Left::what, this::zones);
    private final Paragraph how = new Paragraph();
    private final JPanel entries = new JPanel(new MigLayout("insets 0, gap 4"));
    private final Consumer<CellAt> select;
    private final Consumer<String> begin;
    private final Paragraph nothing = new Paragraph();
    private Map<String, Zoning> zonings = Map.of();
    private boolean filling;
    private int count;

    /**
     * An empty panel.
     *
     * @param select shows a cell on the map
     * @param begin puts an entry into the line
     */
    LeftPanel(Words words, Consumer<CellAt> select, Consumer<String> begin) {
        this.words = words;
        this.select = select;
        this.begin = begin;
        panel.setOpaque(false);
        entries.setOpaque(false);
        list.getAccessibleContext().setAccessibleName(words.say("left.name"));
        list.getAccessibleContext().setAccessibleDescription(words.say("left.description"));
        list.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && !filling) {
                chosen();
            }
        });
        panel.add(nothing, "wmin 0");
        panel.add(list.scrolled(), "grow, push, hmin 60");
        panel.add(how, "wmin 0, hmin pref");
        panel.add(entries, "hmin pref");
    }

    private Optional<Icon> zones(Left left) {
        return Optional.ofNullable(zonings.get(left.gap().row().id()))
                .filter(zoning -> zoning.size() > 1)
                .map(zoning -> new ZoneGlyph(
                        zoning,
                        left.gap().zones(),
                        left.gap().state() == State.MAYBE,
                        left.gap().row().kind() == RowKind.LINER));
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        list.requestFocusInWindow();
    }

    void show(Shown shown) {
        zonings = shown.state().situation().engine().zonings();
        List<Left> left = shown.left();
        Optional<String> chosen = Optional.ofNullable(list.getSelectedValue()).map(Left::what);
        filling = true;
        list.show(left);
        list.clearSelection();
        left.stream()
                .filter(one -> chosen.equals(Optional.of(one.what())))
                .forEach(one -> list.setSelectedValue(one, true));
        filling = false;
        count = left.size();
        nothing.say(nothing(shown));
        nothing.setVisible(left.isEmpty());
        tell();
    }

    /** How many lines are left. */
    int count() {
        return count;
    }

    /** How much is left, in a few words. */
    String title() {
        return words.say("left.title", count);
    }

    private String nothing(Shown shown) {
        Tally all = shown.state().coverage().tally();
        String nothing =
                all.part() == 0 ? words.say("left.nothing") : words.say("left.nothingMore", all.part(), all.glimpsed());
        return shown.behind()
                .filter(Behind::any)
                .map(behind -> words.say("nothingLeft.behind", nothing, behind))
                .orElse(nothing);
    }

    private void chosen() {
        Left one = list.getSelectedValue();
        if (one != null) {
            select.accept(one.cell());
        }
        tell();
    }

    private void tell() {
        Left one = list.getSelectedValue();
        how.setVisible(one != null);
        entries.setVisible(one != null);
        entries.removeAll();
        if (one != null) {
            how.say(one.why() + "; " + one.how());
            for (String entry : one.entries()) {
                JButton button = Texts.button(entry);
                button.setName("way " + entry);
                Texts.leaveFocus(button);
                button.addActionListener(pressed -> begin.accept(entry));
                entries.add(button);
            }
        }
        panel.revalidate();
        panel.repaint();
    }
}
