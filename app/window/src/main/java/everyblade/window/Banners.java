package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.session.Answer;
import everyblade.session.Keeping;
import everyblade.window.view.CautionsNow;
import everyblade.window.view.Choices;
import everyblade.window.view.NextToDo;
import everyblade.window.view.Shown;
import everyblade.window.view.Where;
import everyblade.words.Words;
import java.awt.Color;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What must not be overlooked, across the whole window: a disk that refuses, who else is writing, cautions, interruptions. */
final class Banners {

    /** What is kept free for a line of it. */
    private static final int ROOM = 30;

    private final Words words;
    private final Supplier<Choices> choices;
    private final JPanel panel = new JPanel() {

        private static final long serialVersionUID = 1;

        /** Never lower than a line: nothing shifts when one comes. */
        @Override
        public Dimension getPreferredSize() {
            Dimension wanted = super.getPreferredSize();
            return new Dimension(wanted.width, Math.max(Looks.scaled(ROOM), wanted.height));
        }
    };
    private final Strip keeping = new Strip();
    private final Strip barred = new Strip();
    private final Strip lost = new Strip();
    private final Strip cautions = new Strip();
    private final Strip notice = new Strip();
    private Runnable saveAgain = () -> {};
    private Runnable saveElsewhere = () -> {};
    private Runnable tryWriting = () -> {};
    private Consumer<String> showRow = row -> {};

    Banners(Words words, Supplier<Choices> choices) {
        this.words = words;
        this.choices = choices;
        panel.setLayout(new MigLayout("insets 0, fillx, wrap, hidemode 3, gap 0", "[grow, fill]"));
        for (Strip strip : List.of(keeping, barred, lost, cautions, notice)) {
            strip.setVisible(false);
            panel.add(strip, "wmin 0");
        }
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
        showKeeping(shown.state().keeping());
        show(
                barred,
                Ink.MAYBE_WASH,
                shown.cautions().stream().filter(CautionsNow::bars).toList(),
                List.of());
        showLost(shown.cautions().stream().filter(one -> one.row().isPresent()).toList());
        show(
                cautions,
                Ink.PAPER,
                shown.cautions().stream()
                        .filter(one -> !one.bars() && one.row().isEmpty())
                        .toList(),
                List.of());
        notice.setVisible(false);
    }

    /** A lost count stays told until it is made good, and leads to its row. */
    private void showLost(List<CautionsNow> all) {
        List<JButton> rows = all.stream()
                .map(one -> one.row().orElseThrow())
                .distinct()
                .map(row -> {
                    JButton button = Texts.button(words.say("banner.show", row));
                    button.setName("banner.show " + row);
                    button.addActionListener(pressed -> showRow.accept(row));
                    return button;
                })
                .toList();
        show(lost, Ink.MAYBE_WASH, all, rows);
    }

    /** What shows a row. */
    void onShow(Consumer<String> shows) {
        showRow = shows;
    }

    private void showKeeping(Keeping now) {
        Color loud = choices.get().dark() ? Color.BLACK : Color.WHITE;
        if (now instanceof Keeping.InMemory inMemory) {
            keeping.show(
                    words.say("keeping.memory", inMemory.unsaved().size(), inMemory.problem()),
                    loud,
                    colour(Ink.ALERT),
                    List.of(button("keeping.again", saveAgain), button("keeping.elsewhere", saveElsewhere)));
        } else if (now instanceof Keeping.ReadOnly readOnly) {
            keeping.show(
                    readOnly.holder()
                            .map(holder -> words.say("keeping.inUse", holder))
                            .orElseGet(() -> words.say("keeping.readOnly", readOnly.reason())),
                    loud,
                    colour(Ink.FAINT),
                    readOnly.mayChange() ? List.of(button("keeping.tryWriting", tryWriting)) : List.of());
        } else {
            keeping.setVisible(false);
        }
    }

    private void show(Strip strip, Ink ground, List<CautionsNow> all, List<JButton> buttons) {
        String text = all.stream()
                .map(caution -> (ground == Ink.PAPER ? "" : "⚠ ") + caution.text())
                .collect(Collectors.joining("\n"));
        if (text.isEmpty()) {
            strip.setVisible(false);
        } else {
            strip.show(text, colour(Ink.LINE), colour(ground), buttons);
        }
    }

    /** What a person should know about what was kept. */
    void answered(Answer.Kept kept) {
        tell(words.say(kept.warnings()));
    }

    /** What a person should know that is not about an entry. */
    void opened(List<String> lines) {
        tell(lines);
    }

    /** The last thing confirmed and, where it is known, the next to do. */
    void welcomeBack(Where where, Optional<NextToDo> next) {
        List<String> lines = new ArrayList<>(List.of(words.say("back.last", where.last())));
        next.ifPresent(step -> lines.add(words.say("back.next", step.words())));
        tell(lines);
    }

    private void tell(List<String> lines) {
        if (!lines.isEmpty()) {
            notice.show(
                    String.join("\n", lines),
                    colour(Ink.LINE),
                    colour(Ink.PART_WASH),
                    List.of(button("banner.close", () -> notice.setVisible(false))));
        }
    }

    /** What is told at this moment; blank if nothing is. */
    String told() {
        return notice.isVisible() ? notice.said() : "";
    }

    private JButton button(String key, Runnable action) {
        JButton button = Texts.button(words.say(key));
        button.setName(key);
        button.addActionListener(pressed -> action.run());
        return button;
    }

    private Color colour(Ink ink) {
        return Looks.colour(Looks.theme(choices.get()), ink);
    }
}
