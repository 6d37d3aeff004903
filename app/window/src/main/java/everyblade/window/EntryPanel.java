package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.session.Answer;
import everyblade.session.EntryLine;
import everyblade.session.JobState;
import everyblade.session.Preview;
import everyblade.window.view.Act;
import everyblade.window.view.Choices;
import everyblade.window.view.Completion;
import everyblade.window.view.Outbox;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/**
 * The entry line: what is typed, what may come next, and what it will do, told before Enter. Enter takes the text away at
 * once, so that what is typed while it is being kept is the next entry.
 */
final class EntryPanel {

    private final Words words;
    private final Door door;
    private final InstantSource clock;
    private final BiConsumer<String, Boolean> enter;
    private final EntryLine line = new EntryLine();
    private final Outbox outbox = new Outbox();
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap, hidemode 3, gapy 2", "[grow]"));
    private final Told told;
    private final Chips chips;
    private final JTextField field = new JTextField();
    private JobState state;
    private Optional<String> next = Optional.empty();
    private boolean changing;
    /** Whether words to pick were asked for on an empty line. */
    private boolean asked;
    /** Whether anything was typed since Enter was last struck. */
    private boolean touched;
    /** Why the line that came back was not kept. */
    private Optional<Answer> returned = Optional.empty();

    private Runnable onceSettled = () -> {};
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
        this.door = door;
        this.clock = clock;
        this.enter = enter;
        this.chips = new Chips(words, this::begin);
        this.told = new Told(field, chips.component(), ink -> Looks.colour(Looks.theme(choices.get()), ink));
        new EntryKeys(field, this, act).install();
        lay();
    }

    private void lay() {
        field.setName("entry");
        field.getAccessibleContext().setAccessibleName(words.say("entry.name"));
        field.getAccessibleContext().setAccessibleDescription(words.say("entry.description"));
        field.putClientProperty("JTextField.placeholderText", words.say("entry.placeholder"));
        field.putClientProperty("FlatLaf.style", "font: 135%");
        JButton keep = Texts.button(words.say("entry.keep"));
        keep.setName("keep");
        Texts.leaveFocus(keep);
        keep.addActionListener(pressed -> {
            if (!field.getText().isBlank() || !takeBack()) {
                keep();
            }
        });
        JPanel row = new JPanel(new MigLayout("insets 0, fillx", "[grow][]"));
        row.add(field, "growx, wmin 0, hmin 44");
        row.add(keep, "wmin 120px, growy");
        panel.add(row, "growx");
        field.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent pressed) {
                asked = !asked; // who has no keys begins with a word to pick
                chips();
            }
        });
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

    /** What comes right above it, over whatever is there: words to pick while something is typed, and what is wrong. */
    JComponent over() {
        return told.above();
    }

    /** The text field itself, for focus. */
    void focus() {
        field.requestFocusInWindow();
    }

    String text() {
        return field.getText();
    }

    void show(Shown shown) {
        state = shown.state();
        field.setEditable(state.open());
        preview();
    }

    /** What is to be entered next; empty if nothing is, or nobody knows yet. */
    void next(Optional<String> entry) {
        next = entry;
        chips();
    }

    private void typed() {
        if (!changing) {
            line.changed();
            answeredFor = "";
            touched = true;
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
        chips();
    }

    private void chips() {
        if (state != null) {
            String text = field.getText();
            Optional<String> first = next.filter(entry -> state.open());
            Completion completion = Completion.of(state.situation(), text);
            chips.show(completion, text, first);
            told.picking(state.open() && !completion.words().isEmpty() && (asked || !text.isBlank()));
        }
    }

    private void show(Preview preview) {
        if (!answeredFor.isEmpty() && answeredFor.equals(field.getText()) || outbox.inTheWay()) {
            return;
        }
        if (preview instanceof Preview.Will will) {
            String warnings = will.warnings().isEmpty() ? "" : "  ⚠ " + String.join(" ⚠ ", will.warnings());
            String doubts = will.doubts().isEmpty() ? "" : "  ? " + String.join(" ? ", will.doubts());
            boolean expanded = !will.line().equals(field.getText().strip());
            told.over((doubts + warnings).strip());
            told.beside((expanded ? will.line() + "  →  " : "→  ") + String.join("; ", will.effects()), Ink.LINE);
        } else if (preview instanceof Preview.Not not) {
            told.over("");
            told.beside(not.message(), Ink.FAINT);
        } else if (told.tellsEffects()) {
            told.over("");
            told.beside("", Ink.FAINT);
        }
    }

    private void tell(String text, Ink ink) {
        told.tell(text, ink);
    }

    /** Tells why nothing came of a key. */
    void tell(String reason) {
        tell(reason, Ink.ALERT);
    }

    /** What is told at this moment: what is wrong or doubtful, else what there is to know. */
    String told() {
        return told.text();
    }

    /** Enter. */
    void keep() {
        String text = field.getText().strip();
        if (!text.isEmpty()) {
            put("");
            enter(text, line.entered(text));
        }
    }

    /** Enters a line from elsewhere; what is being typed stays. */
    void enter(String text) {
        enter(text, false);
    }

    private void enter(String text, boolean meant) {
        touched = false;
        asked = false;
        chips();
        answeredFor = "";
        Optional<Outbox.Line> now = outbox.entered(text, meant);
        tellStanding();
        now.ifPresent(this::handIn);
    }

    private void handIn(Outbox.Line entered) {
        enter.accept(entered.text(), entered.meant());
    }

    /** Whether a line is being kept at this moment: what comes last is not known yet. */
    boolean keeping() {
        return outbox.beingKept().isPresent();
    }

    /** What was entered and came back, or waits behind such a line. */
    List<String> notKept() {
        return Stream.concat(outbox.back().stream(), outbox.waiting().stream()).toList();
    }

    /** Does this as soon as no line is being kept; at once if none is. */
    void onceSettled(Runnable then) {
        if (keeping()) {
            onceSettled = then;
        } else {
            then.run();
        }
    }

    /** What is being kept or came back stays told, whatever is typed meanwhile. */
    private void tellStanding() {
        String waiting = outbox.waiting().isEmpty()
                ? ""
                : " " + words.say("entry.waiting", String.join("  ·  ", outbox.waiting()));
        outbox.beingKept().ifPresent(text -> tell(words.say("entry.keeping", text) + waiting, Ink.LINE));
        outbox.back().ifPresent(text -> tell(words.say("entry.cameBack", text, reason()) + waiting, Ink.ALERT));
    }

    private String reason() {
        return returned.map(answer -> answer instanceof Answer.Asked asked
                        ? String.join(" ", asked.doubts())
                        : words.say(((Answer.Refused) answer).why()))
                .orElseGet(() -> words.say("entry.notTried"));
    }

    /** Puts the line that came back into the entry line; what is typed there waits behind it. */
    private boolean takeBack() {
        if (outbox.back().isEmpty()) {
            return false;
        }
        String typed = field.getText().strip();
        if (!typed.isEmpty()) {
            outbox.entered(typed, false);
        }
        Optional<Answer> why = returned;
        returned = Optional.empty();
        put(outbox.taken().orElseThrow());
        line.changed();
        answeredFor = "";
        if (why.isPresent()) {
            show(why.get());
        } else {
            preview();
        }
        return true;
    }

    /** What is wrong with the line that stands there, or doubtful about it. */
    private void show(Answer why) {
        if (why instanceof Answer.Asked asked) {
            put(asked.text());
            line.asked(asked.text());
            tell(words.say("entry.asked", String.join(" ", asked.doubts())), Ink.ALERT);
        } else if (why instanceof Answer.Refused refused) {
            field.setCaretPosition(Math.min(field.getText().length(), Math.max(0, refused.column() - 1)));
            tell(words.say("entry.refused", refused.column(), words.say(refused.why())), Ink.ALERT);
        }
        answeredFor = field.getText();
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

    /** What came of what was handed in. */
    void answered(Answer answer) {
        if (answer instanceof Answer.Kept kept) {
            tell(
                    words.say(kept.safe() ? "entry.kept" : "entry.inMemory", kept.number(), kept.text()),
                    kept.safe() ? Ink.SEEN : Ink.ALERT);
            Optional<Outbox.Line> next = outbox.kept();
            tellStanding();
            next.ifPresent(this::handIn);
        } else {
            outbox.cameBack();
            returned = Optional.of(answer);
            tellStanding();
        }
        // Whoever went on typing must not find other words under their fingers.
        if (field.getText().isEmpty() && !touched && outbox.waiting().isEmpty()) {
            takeBack();
        }
        if (!keeping()) {
            Runnable then = onceSettled;
            onceSettled = () -> {};
            then.run();
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
        if (takeBack()) {
            return;
        }
        line.older(field.getText()).ifPresent(this::put);
    }

    void newer() {
        line.newer().ifPresent(this::put);
    }

    void drop() {
        asked = false;
        put("");
        line.changed();
        outbox.dropped();
        tell("", Ink.FAINT);
        tellStanding();
    }
}
