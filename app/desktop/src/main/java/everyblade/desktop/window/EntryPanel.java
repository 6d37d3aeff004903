package everyblade.desktop.window;

import everyblade.desktop.view.Act;
import everyblade.desktop.view.Answer;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.Completion;
import everyblade.desktop.view.EntryLine;
import everyblade.desktop.view.JobState;
import everyblade.desktop.view.Preview;
import everyblade.desktop.view.Shown;
import everyblade.desktop.words.Words;
import everyblade.picture.scene.Ink;
import java.time.InstantSource;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** The entry line: what is typed, what may come next, and what it will do, told before Enter. */
final class EntryPanel {

    private final Words words;
    private final Supplier<Choices> choices;
    private final Door door;
    private final InstantSource clock;
    private final BiConsumer<String, Boolean> enter;
    private final EntryLine line = new EntryLine();
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap, hidemode 3, gapy 2", "[grow]"));
    private final Paragraph told = new Paragraph(" ");
    private final Chips chips;
    private final JTextField field = new JTextField();
    private JobState state;
    private Shown shown;
    private boolean changing;
    private String sent = "";
    /** The text about which an answer stands there, which must not give way to what the text would do. */
    private String answeredFor = "";

    EntryPanel(
            Words words,
            Supplier<Choices> choices,
            Door door,
            InstantSource clock,
            BiConsumer<String, Boolean> enter,
            Consumer<Act> act) {
        this.words = words;
        this.choices = choices;
        this.door = door;
        this.clock = clock;
        this.enter = enter;
        this.chips = new Chips(words, this::begin);
        new EntryKeys(field, this, act).install();
        lay();
    }

    private void lay() {
        told.setName("told");
        field.setName("entry");
        field.getAccessibleContext().setAccessibleName(words.say("entry.name"));
        field.getAccessibleContext().setAccessibleDescription(words.say("entry.description"));
        field.putClientProperty("JTextField.placeholderText", words.say("entry.placeholder"));
        field.putClientProperty("JTextField.showClearButton", true);
        field.putClientProperty("FlatLaf.style", "font: 135%");
        JButton keep = new JButton(words.say("entry.keep"));
        keep.setName("keep");
        keep.setFocusable(false);
        keep.addActionListener(pressed -> keep());
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[grow][]"));
        row.add(field, "growx, hmin 44");
        row.add(keep, "wmin 120, growy");
        panel.add(chips.component(), "growx, wmin 0, h 34!"); // always as high, or the map would jump at each key
        panel.add(told, "growx, wmin 0, h 38!");
        panel.add(row, "growx");
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent change) {
                typed();
            }

            @Override
            public void removeUpdate(DocumentEvent change) {
                typed();
            }

            @Override
            public void changedUpdate(DocumentEvent change) {
                typed();
            }
        });
    }

    JComponent component() {
        return panel;
    }

    /** The text field itself, for focus. */
    void focus() {
        field.requestFocusInWindow();
    }

    String text() {
        return field.getText();
    }

    void show(Shown newShown) {
        shown = newShown;
        state = shown.state();
        field.setEditable(state.open());
        preview();
    }

    private void typed() {
        if (!changing) {
            line.changed();
            answeredFor = "";
        }
        preview();
    }

    private void preview() {
        String text = field.getText();
        JobState seen = state;
        if (seen == null) {
            return;
        }
        door.latest("preview", () -> Preview.of(seen, text, clock.instant(), words), preview -> {
            if (text.equals(field.getText())) {
                show(preview);
            }
        });
        chips.show(Completion.of(seen.situation(), text), text, shown);
    }

    private void show(Preview preview) {
        if (!answeredFor.isEmpty() && answeredFor.equals(field.getText())) {
            return;
        }
        if (preview instanceof Preview.Will will) {
            String warnings = will.warnings().isEmpty() ? "" : "  ⚠ " + String.join(" ⚠ ", will.warnings());
            String doubts = will.doubts().isEmpty() ? "" : "  ? " + String.join(" ? ", will.doubts());
            boolean expanded = !will.line().equals(field.getText().strip());
            tell(
                    (expanded ? will.line() + "  →  " : "→  ") + String.join("; ", will.effects()) + doubts + warnings,
                    doubts.isEmpty() && warnings.isEmpty() ? Ink.LINE : Ink.ALERT);
        } else if (preview instanceof Preview.Not not) {
            tell(not.message(), Ink.FAINT);
        } else if (told.getText().startsWith("→")) {
            tell(" ", Ink.FAINT);
        }
    }

    private void tell(String text, Ink ink) {
        told.say(text);
        told.setToolTipText(text.isBlank() ? null : text);
        told.setForeground(Looks.colour(Looks.theme(choices.get()), ink));
    }

    /** Tells why nothing came of a key. */
    void tell(String reason) {
        tell(reason, Ink.ALERT);
    }

    /** What is told at this moment. */
    String told() {
        return told.getText();
    }

    /** Enter. */
    void keep() {
        sent = field.getText();
        line.enter(state, field.getText()).ifPresent(entered -> enter.accept(entered.line(), entered.meant()));
    }

    /** Says this, as if it had been typed and entered; what was typed is dropped. */
    void say(String text) {
        put(text);
        keep();
    }

    /** Puts text into the line to go on with. */
    void begin(String text) {
        put(text);
        line.changed();
        focus();
    }

    private void put(String text) {
        changing = true;
        field.setText(text);
        field.setCaretPosition(text.length());
        changing = false;
    }

    /** Adds to the end of the text, or takes its last character away for a blank one. */
    void key(String digit) {
        String text = field.getText();
        begin(digit.isEmpty() ? text.substring(0, Math.max(0, text.length() - 1)) : text + digit);
    }

    /** What came of what was entered. */
    void answered(Answer answer) {
        if (answer instanceof Answer.Kept kept) {
            if (field.getText().equals(sent)) {
                put(""); // unless the next entry is being typed already
            }
            tell(
                    words.say(kept.safe() ? "entry.kept" : "entry.inMemory", kept.number(), kept.text()),
                    kept.safe() ? Ink.SEEN : Ink.ALERT);
        } else if (answer instanceof Answer.Asked asked) {
            put(asked.text());
            line.asked(asked.text());
            answeredFor = asked.text();
            tell(words.say("entry.asked", String.join(" ", asked.doubts())), Ink.ALERT);
        } else if (answer instanceof Answer.Refused refused) {
            if (field.getText().isBlank()) {
                put(refused.text());
            }
            answeredFor = field.getText();
            field.setCaretPosition(Math.min(field.getText().length(), Math.max(0, refused.column() - 1)));
            tell(words.say("entry.refused", refused.column(), refused.message()), Ink.ALERT);
        }
    }

    /** Completes the word that is being typed; whether there was anything to complete. */
    boolean complete() {
        String text = field.getText();
        Completion completion = Completion.of(state.situation(), text);
        if (text.isEmpty() || completion.words().isEmpty()) {
            return false;
        }
        begin(completion.accepted(text));
        return true;
    }

    void older() {
        line.older(field.getText()).ifPresent(this::put);
    }

    void newer() {
        line.newer().ifPresent(this::put);
    }

    void drop() {
        put("");
        line.changed();
        tell(" ", Ink.FAINT);
    }
}
