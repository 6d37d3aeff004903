package everyblade.desktop.window;

import everyblade.core.entry.Kind;
import everyblade.desktop.map.CellAt;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.FindingForm;
import everyblade.desktop.view.JobState;
import everyblade.desktop.view.NewestPicture;
import everyblade.desktop.words.Words;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The form for a finding at the selected cell: what, how large, how surely, with which picture. */
final class FindingPanel {

    private final Words words;
    private final Supplier<Choices> choices;
    private final Consumer<String> enter;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 6, fillx, wrap 4, gapy 4", "[][grow, fill][][grow, fill]"));
    private final Paragraph place = new Paragraph();
    private final JComboBox<Kind> kind = new JComboBox<>(Kind.values());
    private final JTextField length = new JTextField(4);
    private final JTextField depth = new JTextField(4);
    private final JTextField plusMinus = new JTextField(4);
    private final JTextField picture = new JTextField(4);
    private final JButton add = new JButton();
    private JobState state;
    private Optional<CellAt> cell = Optional.empty();

    FindingPanel(Words words, Supplier<Choices> choices, Consumer<String> enter) {
        this.words = words;
        this.choices = choices;
        this.enter = enter;
        kind.setName("finding kind");
        kind.setRenderer(new KindCells(words));
        panel.add(place, "span 2, wmin 0, growx");
        add.setText(words.say("finding.add"));
        add.setName("finding add");
        add.addActionListener(pressed -> add());
        panel.add(add, "span 2, growx");
        field("finding.kind", kind);
        field("finding.length", length);
        field("finding.depth", depth);
        field("finding.plusMinus", plusMinus);
        field("finding.picture", picture);
        JButton newest = new JButton(words.say("finding.newest"));
        newest.addActionListener(
                pressed -> choices().pictures().flatMap(NewestPicture::in).ifPresent(picture::setText));
        panel.add(newest, "span 2");
        tellPlace();
    }

    private Choices choices() {
        return choices.get();
    }

    private void field(String key, JComponent input) {
        JLabel label = new JLabel(words.say(key));
        label.setLabelFor(input);
        input.getAccessibleContext().setAccessibleName(words.say(key));
        if (input.getName() == null) {
            input.setName(key);
        }
        panel.add(label);
        panel.add(input);
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        kind.requestFocusInWindow();
    }

    void show(JobState newState) {
        state = newState;
        tellPlace();
    }

    /** The finding will be at this cell. */
    void at(CellAt newCell) {
        cell = Optional.of(newCell);
        tellPlace();
    }

    private void tellPlace() {
        place.say(cell.filter(one -> state != null)
                .map(one -> words.say(
                        "finding.at", one.row(), one.airfoil(), form(one).zone()))
                .orElseGet(() -> words.say("finding.nowhere")));
        add.setEnabled(cell.isPresent() && state != null && state.open());
    }

    private FindingForm form(CellAt at) {
        return new FindingForm(
                state,
                at,
                (Kind) kind.getSelectedItem(),
                length.getText(),
                depth.getText(),
                plusMinus.getText(),
                picture.getText());
    }

    private void add() {
        cell.ifPresent(at -> form(at).entries().forEach(enter));
        for (JTextField field : java.util.List.of(length, depth, plusMinus, picture)) {
            field.setText("");
        }
    }
}
