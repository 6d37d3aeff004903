package everyblade.window;

import everyblade.core.sight.ToleranceCost;
import everyblade.picture.scene.Theme;
import everyblade.window.author.AuthorState;
import everyblade.window.author.SheetPart;
import everyblade.window.author.Sight;
import everyblade.window.author.SightShares;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/** The drawings of a model and what its stations show, a page each. */
final class DrawingPages {

    private final Words words;
    private final JTabbedPane pages = new JTabbedPane();
    private final Map<SheetPart, DrawingPanel> parts = new EnumMap<>(SheetPart.class);
    private final DrawingPanel unrolled;
    private final Paragraph unrolledTold = new Paragraph();
    private final SharesTable shares;
    private final Paragraph sharesTold = new Paragraph();
    private final List<JComponent> focused = new ArrayList<>();

    DrawingPages(Words words, Theme theme) {
        this.words = words;
        for (SheetPart part : SheetPart.values()) {
            DrawingPanel panel = new DrawingPanel(theme, words.say(part.words()));
            panel.setName("author " + part);
            parts.put(part, panel);
            add(part.words(), panel, new Paragraph(words.say(part.words() + ".about")), panel);
        }
        unrolled = new DrawingPanel(theme, words.say("author.page.unrolled"));
        unrolled.setName("author UNROLLED");
        add("author.page.unrolled", unrolled, unrolledTold, unrolled);
        shares = new SharesTable(words, theme);
        add("author.page.shares", shares.component(), sharesTold, shares.focused());
        sharesTold.setName("author sight");
        pages.setOpaque(false);
        pages.setName("author pages");
        Texts.name(pages, words.say("author.drawings"));
    }

    private void add(String key, JComponent drawing, Paragraph about, JComponent takesFocus) {
        JPanel page = new JPanel(new MigLayout("insets 4 0 0 0, fill, wrap", "[grow, fill]", "[]4[grow, fill]"));
        page.setOpaque(false);
        page.add(about, "wmin 0, gapx 6 6");
        page.add(drawing, "hmin 80, wmin 0");
        pages.addTab(words.say(key), page);
        focused.add(takesFocus);
    }

    JComponent component() {
        return pages;
    }

    void focus() {
        focused.get(page()).requestFocusInWindow();
    }

    /** Which page is shown, from 0. */
    int page() {
        return pages.getSelectedIndex();
    }

    void page(int number) {
        pages.setSelectedIndex(Math.floorMod(number, pages.getTabCount()));
    }

    /** The drawing that is shown, if one is. */
    Optional<DrawingPanel> drawing() {
        return focused.get(page()) instanceof DrawingPanel panel ? Optional.of(panel) : Optional.empty();
    }

    void show(AuthorState state) {
        state.sheet().ifPresent(sheet -> parts.forEach((part, panel) -> panel.show(sheet, part.place())));
        String place = state.from().map(Object::toString).orElse("");
        String told = told(state.sight(), place);
        sharesTold.say(told);
        unrolledTold.say(told);
        if (state.sight() instanceof Sight.Known known) {
            shares.show(known.shares().zones());
            known.unrolled().ifPresent(unrolled::show);
            if (known.unrolled().isEmpty()) {
                unrolled.clear();
            }
        } else if (!(state.sight() instanceof Sight.None)) {
            shares.show(List.of());
            unrolled.clear();
        }
    }

    /** What the tolerance takes, in percent, and which way of being off takes most. */
    private Optional<String> told(ToleranceCost cost) {
        return cost.most()
                .map(way -> words.say(
                        "author.sight.cost." + way.name().toLowerCase(Locale.ROOT),
                        words.percent(cost.sure()),
                        words.percent(cost.nominal()),
                        words.percent(cost.alone().get(way))));
    }

    private String told(Sight sight, String place) {
        if (sight instanceof Sight.Known known) {
            SightShares shown = known.shares();
            String told = words.say(
                    shown.positions() == 1 ? "author.sight.exact" : "author.sight.known",
                    place,
                    shown.row().name(),
                    shown.row().id(),
                    shown.positions());
            return shown.cost()
                    .flatMap(this::told)
                    .map(cost -> told + " " + cost)
                    .orElse(told);
        } else if (sight instanceof Sight.Impossible impossible) {
            return words.say(impossible.key(), place);
        } else if (sight instanceof Sight.Stopped) {
            return words.say("author.sight.stopped", place);
        }
        return sight instanceof Sight.Computing
                ? words.say("author.sight.computing", place)
                : words.say("author.sight.none");
    }
}
