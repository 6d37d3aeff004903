package everyblade.window;

import everyblade.picture.scene.Ink;
import java.awt.CardLayout;
import java.awt.Color;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;

/**
 * What is told at the entry line: beside what is typed what it will do or what became of it; over the line, where words to
 * pick come while something is typed, what is wrong or doubtful. None of it moves anything.
 */
final class Told {

    private static final String CHIPS = "chips";
    private static final String ALARM = "alarm";

    private final JTextField field;
    private final Function<Ink, Color> colour;
    private final JPanel above = new JPanel(new CardLayout());
    private final Paragraph alarm = new Paragraph(" ");
    private final Aside aside;
    private boolean picking;

    /**
     * Nothing told yet.
     *
     * @param field of the line
     * @param chips what stands over it while nothing is wrong
     * @param colour of an ink at the time
     */
    Told(JTextField field, JComponent chips, Function<Ink, Color> colour) {
        this.field = field;
        this.colour = colour;
        this.aside = new Aside(field);
        alarm.setName("alarm");
        aside.setName("aside");
        field.putClientProperty("JTextField.trailingComponent", aside);
        above.setName("over the line");
        chips.setOpaque(false);
        above.add(chips, CHIPS);
        above.add(alarm, ALARM);
        turn();
    }

    /** Whether words to pick are wanted now. */
    void picking(boolean wanted) {
        picking = wanted;
        turn();
    }

    private void turn() {
        boolean alarms = !alarm.getText().isBlank();
        ((CardLayout) above.getLayout()).show(above, alarms ? ALARM : CHIPS);
        above.setVisible(alarms || picking);
        if (above.isVisible()) {
            above.revalidate(); // as high as its words need
        }
    }

    /** What comes over the line. */
    JComponent above() {
        return above;
    }

    /** Tells this where it belongs: what alarms over the line, all else beside what is typed. */
    void tell(String text, Ink ink) {
        boolean alarms = ink == Ink.ALERT;
        over(alarms ? text : "");
        beside(alarms ? "" : text, ink);
    }

    /** Tells this in the line, beside what is typed. */
    void beside(String text, Ink ink) {
        Texts.say(aside, text);
        Texts.tip(aside, text.isBlank() ? null : text);
        aside.setForeground(colour.apply(ink));
        field.revalidate();
        field.repaint();
    }

    /** Tells this over the line, in place of the words to pick; blank for nothing. */
    void over(String text) {
        alarm.say(text);
        Texts.tip(alarm, text.isBlank() ? null : text);
        alarm.setForeground(colour.apply(Ink.ALERT));
        turn();
    }

    /** What is told at this moment: what is wrong or doubtful, else what there is to know. */
    String text() {
        return alarm.getText().isBlank() ? aside.getText() : alarm.getText();
    }

    /** Whether what stands beside the line tells what the text will do. */
    boolean tellsEffects() {
        return aside.getText().startsWith("→");
    }
}
