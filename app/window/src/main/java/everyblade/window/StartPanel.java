package everyblade.window;

import everyblade.window.view.RecentJob;
import everyblade.words.Words;
import java.awt.Insets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** The first screen: the demo, a recent job or drill, a new one, a folder, or a record to review. */
final class StartPanel {

    /** What a person may do here. */
    interface Doing {

        void open(Path job);

        void review(Path job);

        /** Whether a folder holds a drill. */
        boolean isDrill(Path folder);

        void newJob();

        /** Shows the drills of the course. */
        void practise();

        /** Asks for the folder of an engine model, and shows it as it is written. */
        void author();

        /** Shows a shop's fleet. */
        void fleet();

        /** Asks for a folder, and opens it or shows it for review. */
        void choose(boolean review);
    }

    /** Before and behind a sign. */
    private static final int GAP = 14;

    private final JPanel panel =
            new JPanel(new MigLayout("insets 32, fill, wrap", "[0:0:, grow, center]", "[][][grow, fill]"));
    private final JComponent buttons;

    StartPanel(Words words, Optional<Path> demo, List<RecentJob> recent, Doing doing) {
        panel.add(Texts.bold(Texts.label(words.say("start.title")), 2));
        panel.add(new Paragraph(words.say(recent.isEmpty() ? "start.first" : "start.what")), "w 10:900:900, wmin 0");
        JPanel body = new JPanel(
                new MigLayout("insets 16 0 0 0, fill", "[280:pref, fill]24[0:0:, grow, fill]", "[grow, fill]"));
        buttons = buttons(words, demo, doing);
        body.add(buttons, "aligny top");
        body.add(recent(words, recent, doing), "wmin 0");
        panel.add(body, "grow, wmin 0, wmax 900");
    }

    private static JComponent buttons(Words words, Optional<Path> demo, Doing doing) {
        JPanel buttons = new JPanel(new MigLayout("insets 0, fillx, wrap", "[grow, fill]", "[]8[]"));
        button(buttons, words, ButtonSign.NEW, "start.new", doing::newJob);
        demo.ifPresent(job -> button(buttons, words, ButtonSign.DEMO, "start.demo", () -> doing.open(job)));
        button(buttons, words, ButtonSign.FOLDER, "start.open", () -> doing.choose(false));
        button(buttons, words, ButtonSign.REVIEW, "start.review", () -> doing.choose(true));
        button(buttons, words, ButtonSign.PRACTISE, "start.drill", doing::practise);
        button(buttons, words, ButtonSign.WRITE, "start.author", doing::author);
        button(buttons, words, ButtonSign.FLEET, "start.fleet", doing::fleet);
        return buttons;
    }

    private static void button(JPanel panel, Words words, ButtonSign sign, String key, Runnable action) {
        JButton button = Texts.button(words.say(key));
        button.setIcon(sign);
        button.setHorizontalAlignment(SwingConstants.LEADING);
        button.setIconTextGap(Looks.scaled(GAP));
        button.setMargin(new Insets(2, GAP, 2, GAP));
        button.setName(key);
        button.getAccessibleContext().setAccessibleDescription(words.say(key + ".about"));
        Texts.tip(button, words.say(key + ".about"));
        button.addActionListener(pressed -> action.run());
        // Lower where the window is, so that none is cut off.
        panel.add(button, "h 44:" + Looks.GLOVE_TARGET + ":");
    }

    private static JComponent recent(Words words, List<RecentJob> recent, Doing doing) {
        JPanel panel = new JPanel(new MigLayout("insets 0, fill, wrap", "[grow, fill]", "[][grow, fill][]"));
        Set<Path> drills =
                recent.stream().map(RecentJob::folder).filter(doing::isDrill).collect(Collectors.toSet());
        LineList<RecentJob> list = new LineList<>(
                "recent",
                job -> drills.contains(job.folder())
                        ? words.say("start.recentDrill", job.told(words))
                        : job.told(words));
        list.show(recent);
        list.getAccessibleContext().setAccessibleName(words.say("start.recent"));
        JLabel title = Texts.bold(Texts.label(words.say("start.recent")), 1.1f);
        title.setLabelFor(list);
        if (!recent.isEmpty()) {
            list.setSelectedIndex(0);
        }
        Consumer<Consumer<Path>> chosen = what -> Optional.ofNullable(list.getSelectedValue())
                .map(RecentJob::folder)
                .ifPresent(what);
        Keys.on(list, "ENTER", () -> chosen.accept(doing::open));
        list.addMouseListener(new java.awt.event.MouseAdapter() {
            @Override
            public void mouseClicked(java.awt.event.MouseEvent click) {
                if (click.getClickCount() == 2) {
                    chosen.accept(doing::open);
                }
            }
        });
        JButton open = Texts.button(words.say("start.openRecent"));
        open.setIcon(ButtonSign.FOLDER);
        open.setName("start.openRecent");
        open.addActionListener(pressed -> chosen.accept(doing::open));
        JButton review = Texts.button(words.say("start.reviewRecent"));
        review.setIcon(ButtonSign.REVIEW);
        review.addActionListener(pressed -> chosen.accept(doing::review));
        open.setEnabled(!recent.isEmpty());
        review.setEnabled(!recent.isEmpty());
        panel.add(title, recent.isEmpty() ? "split 2, flowy" : "");
        if (recent.isEmpty()) {
            panel.add(new Paragraph(words.say("start.noRecent")));
        }
        panel.add(list.scrolled());
        panel.add(open, "split 2, hmin 44, sg go");
        panel.add(review, "hmin 44, sg go");
        return panel;
    }

    /** Brings the focus to what a person most often begins with. */
    void focus() {
        buttons.getComponent(0).requestFocusInWindow();
    }

    JComponent component() {
        return panel;
    }
}
