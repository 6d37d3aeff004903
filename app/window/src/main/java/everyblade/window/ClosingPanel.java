package everyblade.window;

import everyblade.session.JobState;
import everyblade.session.job.VerdictText;
import everyblade.window.view.OpenLine;
import everyblade.window.view.Shortcut;
import everyblade.words.Words;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The closing list beside the map: everything that is open, worked out only while somebody looks at it. */
final class ClosingPanel {

    private static final String HIGH = "wmin 0, hmin " + Looks.USUAL_TARGET + "px";

    /** What a person does here. */
    interface Doing {

        /** Shows a line on the map, or begins the entry that closes it, or both. */
        void turnTo(OpenLine line);

        void back();

        void report();

        void handover();

        void sign();
    }

    private final Words words;
    private final Door door;
    private final Doing doing;
    private final JPanel panel = new Card(
            new MigLayout("insets 6 10 6 10, fill, wrap, hidemode 3, gapy 4", "[grow, fill]", "[][grow, fill][][][]"));
    private final JLabel title = Texts.bold(new JLabel(), 1.1f);
    private final LineList<OpenLine> list = new LineList<>("closing", this::text);
    private final Paragraph source = new Paragraph();
    private JobState state;
    private boolean looking;

    ClosingPanel(Words words, Door door, Doing doing) {
        this.words = words;
        this.door = door;
        this.doing = doing;
        list.getAccessibleContext().setAccessibleName(words.say("closing.name"));
        list.getAccessibleContext().setAccessibleDescription(words.say("closing.hint"));
        Keys.on(list, "ENTER", this::turnTo);
        Keys.on(list, "ESCAPE", doing::back);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                if (click.getClickCount() == 2) {
                    turnTo();
                }
            }
        });
        source.putClientProperty("FlatLaf.style", "font: 85%");
        title.setLabelFor(list);
        title.setName("closing title");
        panel.add(title);
        panel.add(list.scrolled(), "hmin 60");
        panel.add(source, "wmin 0");
        if (Looks.large()) { // the list needs the room
            Texts.tip(list, words.say("closing.hint"));
        } else {
            panel.add(new Paragraph(words.say("closing.hint")), "wmin 0");
        }
        panel.add(buttons());
        panel.setMinimumSize(new java.awt.Dimension(300, 100));
    }

    private JComponent buttons() {
        JPanel buttons =
                new JPanel(new MigLayout("insets 0, gap 4, wrap 2", "[0:pref, grow, fill][0:pref, grow, fill]"));
        button(buttons, ButtonSign.REPORT, "bar.report", Shortcut.REPORT, doing::report);
        button(buttons, ButtonSign.HANDOVER, "closing.handover", Shortcut.HANDOVER, doing::handover);
        JButton sign = Texts.button(words.say("closing.sign"));
        sign.setName("closing closing.sign");
        Texts.tip(sign, sign.getText() + " · " + words.say("sign.tip"));
        sign.getAccessibleContext().setAccessibleDescription(words.say("sign.tip"));
        sign.addActionListener(pressed -> doing.sign());
        Texts.signOver(sign, ButtonSign.SIGN);
        buttons.add(sign, HIGH);
        button(buttons, ButtonSign.BACK, "closing.back", Shortcut.CLOSING, doing::back);
        return buttons;
    }

    private void button(JPanel buttons, ButtonSign sign, String key, Shortcut shortcut, Runnable action) {
        JButton button = Texts.button(words.say(key));
        button.setName("closing " + key);
        String told =
                words.say(shortcut.words()) + " (" + KeyNames.of(shortcut.keys().get(0), words) + ")";
        Texts.tip(button, button.getText() + " · " + told);
        button.getAccessibleContext().setAccessibleDescription(told);
        button.addActionListener(pressed -> action.run());
        Texts.signOver(button, sign);
        buttons.add(button, HIGH);
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        list.requestFocusInWindow();
    }

    void show(JobState newState) {
        state = newState;
        source.setVisible(state.limits().isPresent());
        state.limits().ifPresent(limits -> source.say(VerdictText.source(state.limits(), words)));
        work();
    }

    /** Whether the list is in front. */
    void shown(boolean isLooking) {
        looking = isLooking;
        work();
    }

    private void work() {
        if (looking && state != null) {
            JobState now = state;
            door.latest("closing", () -> OpenLine.of(now, words), this::fill);
        }
    }

    private void fill(List<OpenLine> lines) {
        long open = lines.stream().filter(OpenLine::open).count();
        Texts.say(
                title,
                words.say(
                        open > 0 ? "closing.title" : lines.isEmpty() ? "closing.nothing" : "closing.nothingBut",
                        open,
                        lines.size()));
        list.show(lines);
        if (list.getSelectedIndex() < 0 && !lines.isEmpty()) {
            list.setSelectedIndex(0);
        }
    }

    private void turnTo() {
        if (list.getSelectedValue() != null) {
            doing.turnTo(list.getSelectedValue());
        }
    }

    private String text(OpenLine line) {
        return line.kind() + ": " + line.what() + (line.open() ? "\n" + words.say("closing.toDo", line.toDo()) : "");
    }
}
