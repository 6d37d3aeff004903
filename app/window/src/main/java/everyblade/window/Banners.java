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
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * What must not be overlooked, across the whole window: a disk that refuses, cautions, interruptions, who else is writing. The
 * gravest stands in room that is kept for it, and how many more there are; nothing shifts by itself when one comes, however
 * much it says: the rest unfolds.
 */
final class Banners {

    /** What is kept free, in lines. */
    private static final int ROOM = 2;

    /**
     * One of them.
     *
     * @param buttons what can be done about it
     */
    private record Banner(String text, Color ink, Color ground, List<JButton> buttons) {}

    private final Words words;
    private final Supplier<Choices> choices;
    private final JPanel panel = new JPanel() {

        private static final long serialVersionUID = 1;

        @Override
        public Dimension getPreferredSize() {
            Dimension wanted = super.getPreferredSize();
            int room = measure.height(ROOM);
            return new Dimension(wanted.width, unfolded ? Math.max(room, wanted.height) : room);
        }
    };
    private Runnable saveAgain = () -> {};
    private Runnable saveElsewhere = () -> {};
    private Runnable tryWriting = () -> {};
    private Consumer<String> showRow = row -> {};
    private Optional<Shown> shown = Optional.empty();
    private List<String> notices = List.of();
    /** Says how high the room is. */
    private final Strip measure = new Strip();

    private boolean unfolded;
    private int width;

    Banners(Words words, Supplier<Choices> choices) {
        this.words = words;
        this.choices = choices;
        panel.setName("banners");
        panel.setLayout(new MigLayout("insets 0, fillx, wrap, gap 0", "[grow, fill]"));
        panel.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent resized) {
                if (panel.getWidth() != width) {
                    width = panel.getWidth();
                    lay(); // whether a text finds room depends on it
                }
            }
        });
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

    /** What shows a row. */
    void onShow(Consumer<String> shows) {
        showRow = shows;
    }

    void show(Shown now) {
        shown = Optional.of(now);
        notices = List.of();
        lay();
    }

    private void lay() {
        List<Banner> all = all();
        panel.removeAll();
        boolean more = all.size() > 1 || all.stream().anyMatch(this::isLong);
        unfolded &= more;
        for (int i = 0; i < (unfolded ? all.size() : Math.min(1, all.size())); i++) {
            panel.add(
                    strip(all.get(i), i == 0 && more ? Optional.of(fold(all.size() - 1)) : Optional.empty()), "wmin 0");
        }
        panel.revalidate();
        panel.repaint();
    }

    private Strip strip(Banner one, Optional<JButton> fold) {
        List<JButton> buttons = new ArrayList<>(one.buttons());
        fold.ifPresent(buttons::add);
        Strip strip = new Strip();
        strip.show(one.text(), one.ink(), one.ground(), buttons);
        if (!unfolded) {
            strip.cut(ROOM);
        }
        return strip;
    }

    /** Whether it says more than there is room for. */
    private boolean isLong(Banner one) {
        Strip strip = strip(one, Optional.empty());
        strip.cut(ROOM);
        return strip.isCut(panel.getWidth());
    }

    private JButton fold(int others) {
        JButton fold = Texts.button(
                unfolded
                        ? words.say("banner.fewer")
                        : others == 0 ? words.say("banner.whole") : words.say("banner.more", others));
        fold.setName("banner.fold");
        fold.addActionListener(pressed -> {
            unfolded = !unfolded;
            lay();
        });
        return fold;
    }

    /** The gravest first: what may be lost, what was just said of an entry, what is barred, what is in doubt. */
    private List<Banner> all() {
        List<Banner> all = new ArrayList<>();
        Optional<Keeping> keeping = shown.map(now -> now.state().keeping());
        List<CautionsNow> cautions = shown.map(Shown::cautions).orElse(List.of());
        keeping.filter(Keeping.InMemory.class::isInstance)
                .map(Keeping.InMemory.class::cast)
                .map(this::inMemory)
                .ifPresent(all::add);
        for (String notice : notices) {
            all.add(banner(
                    notice, Ink.PART_WASH, all.stream().noneMatch(this::isNotice) ? List.of(read()) : List.of()));
        }
        cautions.stream()
                .filter(CautionsNow::bars)
                .map(one -> banner("⚠ " + one.text(), Ink.MAYBE_WASH, List.of()))
                .forEach(all::add);
        cautions.stream()
                .filter(one -> one.row().isPresent())
                .map(one -> banner(
                        "⚠ " + one.text(),
                        Ink.MAYBE_WASH,
                        List.of(leads(one.row().orElseThrow()))))
                .forEach(all::add);
        keeping.filter(Keeping.ReadOnly.class::isInstance)
                .map(Keeping.ReadOnly.class::cast)
                .map(this::readOnly)
                .ifPresent(all::add);
        cautions.stream()
                .filter(one -> !one.bars() && one.row().isEmpty())
                .map(one -> banner(one.text(), Ink.PAPER, List.of()))
                .forEach(all::add);
        return all;
    }

    private boolean isNotice(Banner banner) {
        return notices.contains(banner.text());
    }

    private Banner banner(String text, Ink ground, List<JButton> buttons) {
        return new Banner(text, colour(Ink.LINE), colour(ground), buttons);
    }

    private JButton read() {
        return button("banner.close", () -> {
            notices = List.of();
            lay();
        });
    }

    /** A lost count stays told until it is made good, and leads to its row. */
    private JButton leads(String row) {
        JButton button = Texts.button(words.say("banner.show", row));
        button.setName("banner.show " + row);
        button.addActionListener(pressed -> showRow.accept(row));
        return button;
    }

    private Banner inMemory(Keeping.InMemory now) {
        return new Banner(
                words.say("keeping.memory", now.unsaved().size(), now.problem()),
                loud(),
                colour(Ink.ALERT),
                List.of(
                        button("keeping.again", () -> saveAgain.run()),
                        button("keeping.elsewhere", () -> saveElsewhere.run())));
    }

    private Banner readOnly(Keeping.ReadOnly now) {
        return new Banner(
                now.holder()
                        .map(holder -> words.say("keeping.inUse", holder))
                        .orElseGet(() -> words.say("keeping.readOnly", now.reason())),
                loud(),
                colour(Ink.FAINT),
                now.mayChange() ? List.of(button("keeping.tryWriting", () -> tryWriting.run())) : List.of());
    }

    private Color loud() {
        return choices.get().dark() ? Color.BLACK : Color.WHITE;
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
        String last = words.say("back.last", where.last());
        tell(List.of(next.map(step -> last + "\n" + words.say("back.next", step.words()))
                .orElse(last)));
    }

    private void tell(List<String> lines) {
        if (!lines.isEmpty()) {
            notices = List.copyOf(lines);
            lay();
        }
    }

    /** What is told at this moment that is not a lasting caution; blank if nothing is. */
    String told() {
        return String.join("\n", notices);
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
