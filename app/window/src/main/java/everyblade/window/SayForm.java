package everyblade.window;

import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Where a reviewer says something: in words, of the whole record or of what is selected on the map. */
final class SayForm {

    /** What a reviewer says. */
    interface Saying {

        void say(What what, String text, Optional<ReviewedPlace> place);
    }

    private final Words words;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap, gapy 4", "[grow, fill]"));
    private final JTextField field = new JTextField();
    private final JComboBox<String> where = new JComboBox<>();
    private final List<Optional<ReviewedPlace>> places = new ArrayList<>();

    /**
     * A form.
     *
     * @param name of the field
     * @param whats sorts of remarks, each with a button; Enter in the field says the first
     */
    SayForm(Words words, String name, List<What> whats, Saying saying) {
        this.words = words;
        field.setName(name);
        Texts.name(field, words.say("review.field"));
        field.putClientProperty("JTextField.placeholderText", words.say("review.field"));
        where.setName(name + " where");
        where.setRenderer(new VisibleCells());
        Texts.name(where, words.say("review.where"));
        panel.add(field, "hmin 34");
        JPanel below = new JPanel(new MigLayout("insets 0, fillx, gap 4", "[grow, fill]"));
        below.add(where, "wmin 0");
        for (What what : whats) {
            JButton button = Texts.button(words.say("review.say." + what.word()));
            button.setName(name + " " + what.word());
            button.addActionListener(pressed -> say(what, saying));
            below.add(button, "wmin 0, hmin 34, grow 0");
        }
        field.addActionListener(entered -> say(whats.get(0), saying));
        panel.add(below, "wmin 0");
        at(Optional.empty(), zone -> "");
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        field.requestFocusInWindow();
    }

    /** Offers what is selected on the map as the place. */
    void at(Optional<CellAt> cell, Function<CellAt, String> zone) {
        places.clear();
        places.add(Optional.empty());
        cell.ifPresent(at -> {
            places.add(Optional.of(new ReviewedPlace(at.row(), at.airfoil(), at.airfoil(), zone.apply(at))));
            places.add(Optional.of(new ReviewedPlace(at.row(), at.airfoil(), at.airfoil(), "")));
        });
        where.setModel(new DefaultComboBoxModel<>(places.stream()
                .map(place -> place.map(ReviewedPlace::words).orElseGet(() -> words.say("review.whole")))
                .toArray(String[]::new)));
        where.setSelectedIndex(places.size() > 1 ? 1 : 0);
    }

    private void say(What what, Saying saying) {
        String text = field.getText().strip();
        if (!text.isEmpty()) {
            saying.say(what, text, places.get(where.getSelectedIndex()));
        }
    }

    /** Empties the field, once what was said in it is kept. */
    void said() {
        field.setText("");
    }
}
