package everyblade.window;

import everyblade.window.view.Completion;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The words that may come next as buttons for a mouse or a finger; for keys, Tab does the same. */
final class Chips {

    private static final int MOST = 14;

    private final Consumer<String> begin;
    private final JPanel panel = new WholeChips();
    private List<String> shown = List.of();

    Chips(Words words, Consumer<String> begin) {
        this.begin = begin;
        panel.setName("chips");
        panel.getAccessibleContext().setAccessibleName(words.say("chips.name"));
    }

    JComponent component() {
        return panel;
    }

    /** Shows what may come next; on an empty line, what is to be done next stands first. */
    void show(Completion completion, String text, Optional<String> next) {
        List<String> texts = new ArrayList<>();
        if (text.isEmpty()) {
            next.ifPresent(texts::add);
        }
        completion.words().stream()
                .map(word -> completion.typed() + word + " ")
                .filter(word -> texts.stream().noneMatch(first -> first.strip().equals(word.strip())))
                .forEach(texts::add);
        List<String> some = texts.subList(0, Math.min(MOST, texts.size()));
        if (some.equals(shown)) {
            return;
        }
        shown = List.copyOf(some);
        panel.removeAll();
        shown.forEach(one -> panel.add(chip(one, label(one, completion))));
        panel.revalidate();
        panel.repaint();
    }

    private static String label(String text, Completion completion) {
        return text.startsWith(completion.typed())
                ? text.substring(completion.typed().length()).strip()
                : text;
    }

    /** One beside the other, as many as there is room for as a whole. */
    private static final class WholeChips extends JPanel {

        private static final long serialVersionUID = 1;
        private static final int GAP = 6;
        private static final int HIGH = 30;

        WholeChips() {
            super(null);
        }

        @Override
        public Dimension getPreferredSize() {
            return new Dimension(0, Looks.scaled(HIGH));
        }

        @Override
        public void doLayout() {
            int high = Math.min(getHeight(), Looks.scaled(HIGH));
            int x = 0;
            for (Component chip : getComponents()) {
                int wide = chip.getPreferredSize().width;
                chip.setBounds(x, (getHeight() - high) / 2, wide, high);
                chip.setVisible(x + wide <= getWidth());
                x += wide + GAP;
            }
        }
    }

    private JButton chip(String text, String label) {
        JButton chip = Texts.button(label);
        chip.setName("chip " + label);
        Texts.leaveFocus(chip);
        chip.putClientProperty("JButton.buttonType", "roundRect");
        chip.addActionListener(pressed -> begin.accept(text));
        return chip;
    }
}
