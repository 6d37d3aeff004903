package everyblade.window;

import everyblade.core.coverage.Tally;
import everyblade.picture.RowProgress;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.session.JobState;
import everyblade.words.Words;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The whole job as one bar with four numbers: seen, seen as far as it can be, maybe, left. */
final class Overview {

    private final Words words;
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fill, wrap 4, gap 10 1", "[]8:push[]8:push[]8:push[]"));
    private final RowList.ShareStroke bar = new RowList.ShareStroke();
    private final List<JLabel> figures = List.of(new JLabel(), new JLabel(), new JLabel(), new JLabel());

    Overview(Words words) {
        this.words = words;
        panel.setName("overview");
        panel.add(bar, "span 4, growx, w 60:400px:, h 12!");
        figures.forEach(figure -> panel.add(Texts.bold(figure, Looks.large() ? 0.74f : 0.92f), "wmin 0"));
    }

    JComponent component() {
        return panel;
    }

    void show(JobState state, Theme theme) {
        RowProgress all = RowProgress.of(state.coverage().rows());
        bar.show(all, theme);
        Tally cells = all.cells();
        say(0, words.say("overview.seen", share(cells.seen(), cells)), Looks.colour(theme, Ink.SEEN));
        say(1, words.say("overview.part", share(cells.part(), cells)), Looks.letters(theme, Ink.PART));
        say(2, words.say("overview.maybe", share(cells.maybe(), cells)), Looks.letters(theme, Ink.MAYBE));
        say(3, words.say("overview.left", cells.left()), Looks.colour(theme, Ink.LINE));
        String told = String.join(", ", figures.stream().map(JLabel::getText).toList());
        Texts.tip(panel, words.say("overview.told", told, cells.within(), cells.cells() - cells.within()));
        Texts.name(panel, told);
    }

    /** In whole per cent of what views can show, never rounded up, and never nothing where there is something. */
    private static String share(int some, Tally of) {
        long whole = of.within() == 0 ? 0 : 100L * some / of.within();
        return whole == 0 && some > 0 ? "<1 %" : whole + " %";
    }

    private void say(int at, String text, java.awt.Color ink) {
        Texts.say(figures.get(at), text);
        figures.get(at).setForeground(ink);
    }
}
