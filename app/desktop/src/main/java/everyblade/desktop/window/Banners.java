package everyblade.desktop.window;

import everyblade.desktop.view.Answer;
import everyblade.desktop.view.CautionsNow;
import everyblade.desktop.view.Choices;
import everyblade.desktop.view.JobState;
import everyblade.desktop.view.Keeping;
import everyblade.desktop.view.Shown;
import everyblade.desktop.view.Where;
import everyblade.desktop.words.Words;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import java.awt.Color;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What must not be overlooked, across the whole window: a disk that refuses, who else is writing, cautions, interruptions. */
final class Banners {

    private final Words words;
    private final Supplier<Choices> choices;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap, gap 0", "[grow]"));
    private final JPanel keeping = new JPanel(new MigLayout("insets 6 12 6 12, fillx", "[grow][][]"));
    private final JPanel cautions = new JPanel(new MigLayout("insets 0, fillx, wrap, gap 0", "[grow]"));
    private final JPanel notice = new JPanel(new MigLayout("insets 6 12 6 12, fillx", "[grow][]"));
    private Runnable saveAgain = () -> {};
    private Runnable saveElsewhere = () -> {};
    private Runnable tryWriting = () -> {};

    Banners(Words words, Supplier<Choices> choices) {
        this.words = words;
        this.choices = choices;
        panel.add(keeping, "growx, hidemode 3");
        panel.add(cautions, "growx, hidemode 3");
        panel.add(notice, "growx, hidemode 3");
        notice.setVisible(false);
    }

    JComponent component() {
        return panel;
    }

    /** What the buttons of a refusing disk, and of a job in use, do. */
    void onTrouble(Runnable again, Runnable elsewhere, Runnable writing) {
        saveAgain = again;
        saveElsewhere = elsewhere;
        tryWriting = writing;
    }

    void show(Shown shown) {
        JobState state = shown.state();
        keeping.removeAll();
        if (state.keeping() instanceof Keeping.InMemory inMemory) {
            paint(keeping, Ink.ALERT);
            keeping.add(
                    loud(words.say("keeping.memory", inMemory.unsaved().size(), inMemory.problem())), "growx, wmin 0");
            keeping.add(button("keeping.again", saveAgain));
            keeping.add(button("keeping.elsewhere", saveElsewhere));
        } else if (state.keeping() instanceof Keeping.ReadOnly readOnly) {
            paint(keeping, Ink.FAINT);
            keeping.add(loud(words.say("keeping.readOnly", readOnly.reason())), "growx, wmin 0");
            if (readOnly.inUse()) {
                keeping.add(button("keeping.tryWriting", tryWriting));
            }
        }
        keeping.setVisible(keeping.getComponentCount() > 0);
        showCautions(shown.cautions());
        notice.setVisible(false);
        panel.revalidate();
        panel.repaint();
    }

    private void showCautions(List<CautionsNow> now) {
        cautions.removeAll();
        for (CautionsNow caution : now) {
            JPanel one = new JPanel(new MigLayout("insets 4 12 4 12, fillx", "[grow]"));
            Theme theme = Looks.theme(choices.get());
            one.setBackground(Looks.colour(theme, caution.bars() ? Ink.MAYBE_WASH : Ink.PAPER));
            Paragraph label = new Paragraph((caution.bars() ? "⚠ " : "") + caution.text());
            label.setForeground(Looks.colour(theme, Ink.LINE));
            one.add(label, "growx, wmin 0");
            cautions.add(one, "growx");
        }
        cautions.setVisible(!now.isEmpty());
    }

    /** After an entry that is not on disk nothing of it may look as usual. */
    void answered(Answer.Kept kept) {
        if (!kept.warnings().isEmpty()) {
            tell(kept.warnings());
        }
    }

    /** What a person should know about how the job was found. */
    void opened(List<String> lines) {
        if (!lines.isEmpty()) {
            tell(lines);
        }
    }

    /** The last thing confirmed and the next to do. */
    void welcomeBack(Where where) {
        tell(List.of(words.say("back.last", where.last()), words.say("back.next", where.next())));
    }

    private void tell(List<String> lines) {
        notice.removeAll();
        Theme theme = Looks.theme(choices.get());
        notice.setBackground(Looks.colour(theme, Ink.PART_WASH));
        Paragraph label = new Paragraph(String.join("\n", lines));
        label.setForeground(Looks.colour(theme, Ink.LINE));
        label.getAccessibleContext().setAccessibleName(String.join(" ", lines));
        notice.add(label, "growx, wmin 0");
        notice.add(button("banner.close", () -> notice.setVisible(false)));
        notice.setVisible(true);
        panel.revalidate();
        panel.repaint();
    }

    /** What is told at this moment; blank if nothing is. */
    String told() {
        return notice.isVisible()
                ? notice.getComponent(0).getAccessibleContext().getAccessibleName()
                : "";
    }

    private JButton button(String key, Runnable action) {
        JButton button = new JButton(words.say(key));
        button.setName(key);
        button.addActionListener(pressed -> action.run());
        return button;
    }

    private void paint(JPanel strip, Ink ink) {
        strip.setBackground(Looks.colour(Looks.theme(choices.get()), ink));
    }

    private JComponent loud(String text) {
        Paragraph label = new Paragraph(text);
        label.setForeground(choices.get().dark() ? Color.BLACK : Color.WHITE);
        return label;
    }
}
