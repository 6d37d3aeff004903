package everyblade.window;

import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenKind;
import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import everyblade.window.map.CellPanel;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * All rows as they were at a moment, and the row in view as it stood then: one cell is selected in both. The rows are
 * unrolled, so that they stay where they are while they fill and only the wheel turns: what changes is then painted within
 * a frame.
 */
final class ReplayMap {

    private final JPanel panel =
            new JPanel(new MigLayout("insets 4 8 4 0, fill, gap 8", "[grow 64, fill][grow 36, fill]", "[grow, fill]"));
    private final CellPanel rows = new CellPanel(ScreenKind.STRIPS);
    private final CellPanel wheel = new CellPanel(ScreenKind.WHEEL);
    private final JLabel inView = new JLabel();
    private final Words words;
    private Optional<CellAt> selected = Optional.empty();

    /** @param select told of every cell that a person selects */
    ReplayMap(Words words, Supplier<Choices> choices, Consumer<CellAt> select) {
        this.words = words;
        Choices chosen = choices.get();
        MapStyle style = new MapStyle(
                Looks.theme(chosen), chosen.fromAhead() ? Facing.FORWARD_LOOKING_AFT : Facing.AFT_LOOKING_FORWARD);
        rows.setName("map");
        Texts.name(rows, words.say("map.name"));
        wheel.setName("wheel");
        for (CellPanel one : List.of(rows, wheel)) {
            one.speak(MapWords.of(words));
            one.style(style);
            one.onSelect(cell -> {
                select(cell);
                select.accept(cell);
            });
        }
        panel.add(card(Texts.label(words.say("stage.title")), rows), "w 64%, wmin 0, hmin 0");
        panel.add(card(inView, wheel), "w 36%, wmin 0, hmin 0");
    }

    private static JComponent card(JLabel title, CellPanel shown) {
        JPanel card = new Card(new MigLayout("insets 6 8 4 8, fill, wrap", "[grow, fill]", "[][grow, fill]"));
        card.add(Texts.bold(title, 1.1f), "wmin 0");
        card.add(shown, "wmin 0, hmin 0");
        return card;
    }

    JComponent component() {
        return panel;
    }

    void show(JobState state) {
        rows.show(state.coverage());
        wheel.show(state.coverage());
        rows.lookInto(selected.map(CellAt::row)
                .or(() -> state.seat().map(seat -> seat.row().id()))
                .orElse(null));
        String named = state.seat()
                .map(seat -> seat.row().id() + " · " + seat.row().name())
                .orElseGet(() -> words.say("where.name"));
        if (!named.equals(inView.getText())) {
            Texts.say(inView, named);
        }
    }

    /** Whether it tells how much is seen. */
    void tellFigures(boolean tells) {
        rows.tellFigures(tells);
        wheel.tellFigures(tells);
    }

    void select(CellAt cell) {
        selected = Optional.of(cell);
        rows.lookInto(cell.row());
        rows.select(cell);
        wheel.select(cell);
    }

    Optional<CellAt> selected() {
        return selected;
    }

    void focus() {
        rows.requestFocusInWindow();
    }
}
