package everyblade.window;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Kind;
import everyblade.picture.MapWords;
import everyblade.session.JobState;
import everyblade.session.job.VerdictText;
import everyblade.window.map.CellAt;
import everyblade.window.view.Choices;
import everyblade.window.view.FindingForm;
import everyblade.window.view.LimitsSay;
import everyblade.window.view.NewestPicture;
import everyblade.window.view.Notes;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/**
 * The form for a finding at the selected cell, with what the limits say of it as it is typed; below it all findings with
 * what they say of each.
 */
final class FindingPanel {

    private static final String HIGH = ", hmin " + Looks.USUAL_TARGET + "px";

    /** What a person does here. */
    interface Doing {

        /** Says these entries, and goes back. */
        void enter(List<String> lines);

        /** Turns the map to a cell. */
        void turnTo(CellAt cell);

        /** Brings up the picture of a cell. */
        void picture(CellAt cell);

        void back();
    }

    private final Words words;
    private final Supplier<Choices> choices;
    private final Door door;
    private final InstantSource clock;
    private final Doing doing;
    private final JPanel panel = new Card(new MigLayout(
            "insets 6 10 6 10, fill, wrap 4, gapy 4, hidemode 3",
            "[][grow, fill, sizegroup][][grow, fill, sizegroup]",
            "[][][][][][][][fill, shrinkprio 50][grow, fill, shrinkprio 200][]"));
    private final Paragraph place = new Paragraph(1.1f);
    private final JComboBox<Kind> kind = new JComboBox<>(Kind.values());
    private final JTextField length = new JTextField(4);
    private final JTextField depth = new JTextField(4);
    private final JTextField width = new JTextField(4);
    private final JTextField plusMinus = new JTextField(4);
    private final JComboBox<String> unit = new JComboBox<>(
            Arrays.stream(LengthUnit.values()).map(LengthUnit::word).toArray(String[]::new));
    private final JTextField picture = new JTextField(4);
    private final JButton add = new JButton();
    private final Paragraph verdict = new Paragraph(1.1f);
    private final Paragraph figures = new Paragraph();
    private final Paragraph source = new Paragraph();
    private final LineList<Notes> found = new LineList<>("found", this::text);
    private String refused = "";
    private JobState state;
    private Optional<CellAt> cell = Optional.empty();

    FindingPanel(Words words, Supplier<Choices> choices, Door door, InstantSource clock, Doing doing) {
        this.words = words;
        this.choices = choices;
        this.door = door;
        this.clock = clock;
        this.doing = doing;
        kind.setName("finding kind");
        kind.setRenderer(new KindCells(words));
        verdict.setName("limits say");
        figures.setName("limits figures");
        found.getAccessibleContext().setAccessibleName(words.say("page.notes"));
        found.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && found.getSelectedValue() != null) {
                found.getSelectedValue().cell().ifPresent(doing::turnTo);
            }
        });
        found.getAccessibleContext().setAccessibleDescription(words.say("finding.openPicture"));
        Texts.tip(found, words.say("finding.openPicture"));
        Keys.on(found, "ENTER", this::openPicture);
        found.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                if (click.getClickCount() == 2) {
                    openPicture();
                }
            }
        });
        source.putClientProperty("FlatLaf.style", "font: 85%");
        lay();
        listen();
    }

    private void lay() {
        panel.add(place, "span 4, wmin 0, growx");
        Form form = new Form(panel, words);
        form.field("finding.kind", kind);
        form.field("finding.unit", unit);
        form.field("finding.length", length);
        form.field("finding.plusMinus", plusMinus);
        form.field("finding.depth", depth);
        form.field("finding.width", width);
        form.field("finding.picture", picture);
        JButton newest = Texts.button(words.say("finding.newest"));
        newest.addActionListener(
                pressed -> choices.get().pictures().flatMap(NewestPicture::in).ifPresent(picture::setText));
        Texts.tight(newest);
        panel.add(newest, "span 2, wmin 0" + HIGH);
        Texts.say(add, words.say("finding.add"));
        add.setName("finding add");
        add.addActionListener(pressed -> add());
        Texts.tight(add);
        add.setIcon(ButtonSign.FIND);
        panel.add(add, "span 2, growx, wmin 0" + HIGH);
        JButton back = Texts.button(words.say("finding.back"));
        back.setName("finding back");
        back.addActionListener(pressed -> doing.back());
        Texts.tight(back);
        back.setIcon(ButtonSign.BACK);
        panel.add(back, "span 2, wmin 0" + HIGH);
        panel.add(verdict, "span 4, wmin 0, growx, gaptop 6");
        panel.add(Form.scrolled(figures), "span 4, grow, hmin 30");
        panel.add(found.scrolled(), "span 4, grow, hmin 60");
        panel.add(Form.scrolled(source), "span 4, wmin 0, growx, hmin 24, shrinkprio 200");
        panel.setMinimumSize(new java.awt.Dimension(300, 100));
        Keys.within(panel, "ESCAPE", doing::back);
    }

    private void listen() {
        for (JTextField field : List.of(length, depth, width, plusMinus, picture)) {
            field.getDocument().addDocumentListener(new Typing(this::judge));
            field.addActionListener(entered -> add());
        }
        kind.addActionListener(chosen -> judge());
        unit.addActionListener(chosen -> judge());
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        kind.requestFocusInWindow();
    }

    void show(Shown shown) {
        state = shown.state();
        found.show(shown.notes().stream()
                .filter(note -> note.kind() == Notes.Kind.FINDING)
                .toList());
        source.setVisible(state.limits().isPresent());
        state.limits().ifPresent(limits -> source.say(VerdictText.source(state.limits(), words)));
        tell();
    }

    /** The finding will be at this cell. */
    void at(CellAt newCell) {
        cell = Optional.of(newCell);
        tell();
    }

    private void openPicture() {
        Optional.ofNullable(found.getSelectedValue()).flatMap(Notes::cell).ifPresent(doing::picture);
    }

    private String text(Notes note) {
        return note.entry() + "  " + note.text()
                + note.verdict().map(verdict -> "\n→ " + verdict).orElse("");
    }

    private void tell() {
        place.say(cell.filter(one -> state != null)
                .map(one -> words.say(
                        "finding.at",
                        one.row(),
                        one.airfoil(),
                        MapWords.of(words).zone(form(one).zone())))
                .orElseGet(() -> words.say("finding.nowhere")));
        judge();
    }

    /** Has the limits asked about what is typed now. */
    private void judge() {
        add.setEnabled(cell.isPresent() && state != null && state.open());
        if (cell.isEmpty() || state == null || !panel.isVisible()) {
            return;
        }
        FindingForm asked = form(cell.get());
        door.latest("limits", () -> LimitsSay.of(asked, clock.instant(), words), said -> {
            verdict.say(said.headline());
            figures.say(String.join("\n", said.figures()));
            figures.scrollRectToVisible(new java.awt.Rectangle(1, 1));
            panel.revalidate();
            refused = said.refused() ? asked.finding() : "";
        });
    }

    private FindingForm form(CellAt at) {
        return new FindingForm(
                state,
                at,
                (Kind) kind.getSelectedItem(),
                new FindingForm.Sizes(
                        length.getText(),
                        depth.getText(),
                        width.getText(),
                        plusMinus.getText(),
                        LengthUnit.values()[unit.getSelectedIndex()]),
                picture.getText());
    }

    private void add() {
        if (!add.isEnabled() || form(cell.orElseThrow()).finding().equals(refused)) {
            return; // why it is refused is told already
        }
        List<String> entries = form(cell.get()).entries();
        for (JTextField field : List.of(length, depth, width, plusMinus, picture)) {
            field.setText("");
        }
        doing.enter(entries);
    }
}
