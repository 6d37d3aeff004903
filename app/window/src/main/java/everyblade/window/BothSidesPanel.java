package everyblade.window;

import everyblade.core.coverage.Basis;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.session.JobState;
import everyblade.window.view.RiskLine;
import everyblade.window.view.SaidLine;
import everyblade.words.Words;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What the record says beside what reviewers said: everything by what it puts at risk, each line with its place. */
final class BothSidesPanel {

    private final Words words;
    private final Door door;
    private final JPanel panel = new JPanel(new MigLayout(
            "insets 0, fill, wrap, hidemode 3, gapy 4", "[grow, fill]", "[][][grow 62, fill][][grow 38, fill][][]"));
    private final Paragraph figures = new Paragraph();
    private final JLabel title = Texts.bold(new JLabel(), 1.1f);
    private final LineList<RiskLine> risks = new LineList<>("risks", this::text);
    private final LineList<SaidLine> said = new LineList<>("said", BothSidesPanel::text);
    private final SayForm form;

    /**
     * An empty panel.
     *
     * @param turnTo shows a line on the map, or the record when it was entered
     * @param select shows what a reviewer said on the map
     */
    BothSidesPanel(
            Words words,
            Door door,
            SayForm.Saying saying,
            Consumer<RiskLine> turnTo,
            Consumer<SaidLine> select,
            Runnable compare) {
        this.words = words;
        this.door = door;
        this.form = new SayForm(words, "say", List.of(What.QUESTION, What.REMARK), saying);
        risks.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && risks.getSelectedValue() != null) {
                turnTo.accept(risks.getSelectedValue());
            }
        });
        said.addListSelectionListener(chosen -> {
            if (!chosen.getValueIsAdjusting() && said.getSelectedValue() != null) {
                select.accept(said.getSelectedValue());
            }
        });
        risks.getAccessibleContext().setAccessibleName(words.say("review.risks.name"));
        said.getAccessibleContext().setAccessibleName(words.say("review.said"));
        title.setLabelFor(risks);
        JLabel saidTitle = Texts.bold(Texts.label(words.say("review.said")), 1.1f);
        saidTitle.setLabelFor(said);
        panel.add(figures, "wmin 0");
        panel.add(title, "wmin 0");
        panel.add(risks.scrolled(), "wmin 0, h 90:300:");
        panel.add(saidTitle, "wmin 0");
        panel.add(said.scrolled(), "wmin 0, h 60:130:");
        panel.add(form.component(), "wmin 0");
        JButton other = Texts.button(words.say("review.compare"));
        other.setName("review.compare");
        other.addActionListener(pressed -> compare.run());
        panel.add(other, "wmin 0, hmin 34, grow 0");
    }

    private String text(RiskLine line) {
        return words.say("review.risk." + line.risk().number()) + "   " + line.text();
    }

    private static String text(SaidLine line) {
        return line.beside().isEmpty() ? line.said() : line.said() + "\n→ " + line.beside();
    }

    JComponent component() {
        return panel;
    }

    SayForm form() {
        return form;
    }

    void focusList() {
        risks.requestFocusInWindow();
    }

    void focusSaid() {
        said.requestFocusInWindow();
    }

    void show(JobState state) {
        figures.say(Stream.of(Basis.values())
                .filter(basis -> state.coverage().tally(basis).cells() > 0)
                .map(basis -> MapWords.of(words).basis(basis) + ": "
                        + new ShareFigures(state.coverage().headline(basis), MapWords.of(words)).line())
                .collect(Collectors.joining("\n")));
        said.show(SaidLine.of(state, words));
        door.latest("risks", () -> RiskLine.of(state, words), lines -> {
            Texts.say(title, words.say("review.risks", lines.size()));
            risks.show(lines);
        });
    }
}
