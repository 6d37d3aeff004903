package everyblade.window;

import everyblade.core.finding.review.Blind;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.turning.Logged;
import everyblade.session.JobState;
import everyblade.window.view.ReviewKey;
import everyblade.window.view.SaidLine;
import everyblade.words.Words;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What a reviewer is shown first: what was done and found; they say what they would still want to see. */
final class FirstLookPanel {

    private final Words words;
    private final JPanel panel = new JPanel(new MigLayout(
            "insets 0, fill, wrap, hidemode 3, gapy 4", "[grow, fill]", "[][][][grow 60, fill][][][grow 40, fill][]"));
    private final LineList<Logged> acts = new LineList<>("acts", this::text);
    private final LineList<SaidLine> wanted = new LineList<>("wanted", SaidLine::said);
    private final SayForm form;

    /**
     * An empty panel.
     *
     * @param turnTo shows the record after an entry
     * @param select shows a line on the map
     * @param showAll shows what the technician says
     */
    FirstLookPanel(
            Words words, SayForm.Saying saying, IntConsumer turnTo, Consumer<SaidLine> select, Runnable showAll) {
        this.words = words;
        this.form = new SayForm(words, "want", List.of(What.WANTED), saying);
        acts.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && acts.getSelectedValue() != null) {
                turnTo.accept(acts.getSelectedValue().number());
            }
        });
        wanted.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && wanted.getSelectedValue() != null) {
                select.accept(wanted.getSelectedValue());
            }
        });
        panel.add(Texts.bold(Texts.label(words.say("review.first")), 1.2f));
        panel.add(new Paragraph(words.say("review.first.about")), "wmin 0");
        titled("review.acts", acts);
        JLabel title = Texts.bold(Texts.label(words.say("review.wanted")), 1.1f);
        title.setLabelFor(wanted);
        panel.add(title, "wmin 0");
        panel.add(form.component(), "wmin 0");
        panel.add(wanted.scrolled(), "wmin 0, h 50:110:");
        JButton all = Texts.button(words.say("review.showAll") + " ("
                + KeyNames.of(ReviewKey.SHOW_ALL.keys().get(0), words) + ")");
        all.setName("review.showAll");
        all.addActionListener(pressed -> showAll.run());
        panel.add(all, "wmin 0, hmin 40");
    }

    private void titled(String key, LineList<?> list) {
        JLabel title = Texts.bold(Texts.label(words.say(key)), 1.1f);
        title.setLabelFor(list);
        list.getAccessibleContext().setAccessibleName(words.say(key));
        panel.add(title, "wmin 0");
        panel.add(list.scrolled(), "wmin 0, h 80:300:");
    }

    private String text(Logged logged) {
        return logged.number() + "   " + logged.text() + "   " + words.time(logged.at(), ZoneId.systemDefault());
    }

    JComponent component() {
        return panel;
    }

    SayForm form() {
        return form;
    }

    void focusList() {
        acts.requestFocusInWindow();
    }

    void focusSaid() {
        wanted.requestFocusInWindow();
    }

    void show(JobState state) {
        acts.show(Blind.shown(state.fold()));
        wanted.show(SaidLine.blind(state, words));
    }
}
