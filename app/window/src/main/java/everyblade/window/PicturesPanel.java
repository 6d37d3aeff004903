package everyblade.window;

import everyblade.core.entry.Stated;
import everyblade.core.turning.Logged;
import everyblade.session.JobState;
import everyblade.window.view.Shortcut;
import everyblade.words.Words;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.IntConsumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The entries that name pictures, each to be opened. */
final class PicturesPanel {

    private final JPanel panel = new JPanel(new MigLayout("insets 4, fill", "[grow, fill][]", "[grow]"));
    private final LineList<Logged> list = new LineList<>("pictures", logged -> logged.number() + "  " + logged.text());
    private final IntConsumer open;

    PicturesPanel(Words words, IntConsumer open) {
        this.open = open;
        Texts.name(list, words.say("page.pictures"));
        Keys.on(list, "ENTER", this::open);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                if (click.getClickCount() == 2) {
                    open();
                }
            }
        });
        JButton look = Texts.button(words.say("pictures.open"));
        look.setName("pictures.open");
        Texts.tip(
                look,
                words.say(Shortcut.PICTURE.words()) + " ("
                        + KeyNames.of(Shortcut.PICTURE.keys().get(0), words) + ")");
        look.addActionListener(pressed -> open());
        panel.setOpaque(false);
        panel.add(list.scrolled(), "grow, hmin 40");
        panel.add(look, "top");
    }

    JComponent component() {
        return panel;
    }

    void show(JobState state) {
        list.show(state.fold().entries().stream()
                .filter(logged -> Stated.file(logged.entry()).isPresent())
                .filter(logged -> !state.fold().isVoid(logged.number()))
                .toList());
    }

    private void open() {
        int last = list.getModel().getSize() - 1;
        int chosen = list.getSelectedIndex() < 0 ? last : list.getSelectedIndex();
        if (chosen >= 0) {
            open.accept(list.getModel().getElementAt(chosen).number());
        }
    }
}
