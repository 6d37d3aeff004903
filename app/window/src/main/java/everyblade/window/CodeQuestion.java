package everyblade.window;

import everyblade.json.jar.CodeJar;
import everyblade.words.Visible;
import everyblade.words.Words;
import java.awt.Component;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Asks a person whether the code in a jar may run, with all that is known of it before it does. */
record CodeQuestion(JPanel panel, Words words) {

    static CodeQuestion of(CodeJar jar, Words words) {
        JPanel panel = new JPanel(new MigLayout("insets 0, wrap 2", "[]16[580!, fill]"));
        panel.add(new Paragraph(words.say("code.what", jar.plugin())), "span 2, wmin 0, growx");
        fact(panel, words.say("code.jar"), jar.jar().toString());
        fact(panel, words.say("code.hash"), jar.sha256());
        fact(
                panel,
                words.say("code.signer"),
                jar.signer().map(name -> words.say("code.signed", name)).orElseGet(() -> words.say("code.unsigned")));
        panel.add(new Paragraph(words.say("code.may")), "span 2, wmin 0, growx");
        return new CodeQuestion(panel, words);
    }

    /** In a field, so that it can be copied and compared. */
    private static void fact(JPanel panel, String name, String value) {
        JTextField field = new JTextField(Visible.text(value));
        field.setEditable(false);
        field.setCaretPosition(0);
        field.getAccessibleContext().setAccessibleName(name);
        panel.add(Texts.label(name));
        panel.add(field, "wmin 0");
    }

    /** Whether the person says yes; no is what Enter and Escape say. */
    boolean asked(Component parent) {
        Object[] answers = {words.say("code.yes"), words.say("code.no")};
        return JOptionPane.showOptionDialog(
                        parent,
                        panel,
                        words.say("code.title"),
                        JOptionPane.YES_NO_OPTION,
                        JOptionPane.WARNING_MESSAGE,
                        null,
                        answers,
                        answers[1])
                == JOptionPane.YES_OPTION;
    }
}
