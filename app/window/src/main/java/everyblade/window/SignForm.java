package everyblade.window;

import everyblade.record.signing.SignedAs;
import everyblade.words.Words;
import java.awt.Component;
import java.util.Arrays;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JPasswordField;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Asks a person what they say of the record by signing it, and for the key that only they can open. */
final class SignForm {

    /**
     * What was filled in.
     *
     * @param as what is said of the record
     * @param key file with the key
     * @param passphrase that opens it
     * @param because why; may be empty
     */
    record Filled(SignedAs as, String key, String passphrase, String because) {}

    private final Words words;
    private final JPanel panel = new JPanel(new MigLayout("insets 0, wrap 2", "[]12[420!, fill]"));
    private final JComboBox<String> as = new JComboBox<>();
    private final JTextField key = new JTextField();
    private final JPasswordField passphrase = new JPasswordField();
    private final JTextField because = new JTextField();

    SignForm(Words words) {
        this.words = words;
        for (SignedAs meaning : SignedAs.values()) {
            as.addItem(words.say("sign." + meaning.word()));
        }
        panel.add(new Paragraph(words.say("sign.what")), "span 2, wmin 0, growx");
        Form form = new Form(panel, words);
        form.field("sign.as", as);
        form.field("sign.key", key);
        JButton choose = Texts.button(words.say("sign.choose"));
        choose.addActionListener(pressed -> choose());
        panel.add(choose, "skip 1, growx 0, gapbottom 6");
        form.field("sign.passphrase", passphrase);
        form.field("sign.because", because);
    }

    JPanel component() {
        return panel;
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser();
        if (chooser.showOpenDialog(panel) == JFileChooser.APPROVE_OPTION) {
            key.setText(chooser.getSelectedFile().toString());
        }
    }

    /** What was filled in, if the person signs; Escape and closing say no. */
    Optional<Filled> asked(Component parent) {
        Object[] answers = {words.say("sign.yes"), words.say("sign.no")};
        int answer = JOptionPane.showOptionDialog(
                parent,
                panel,
                words.say("sign.title"),
                JOptionPane.YES_NO_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[1]);
        return answer == JOptionPane.YES_OPTION ? Optional.of(filled()) : Optional.empty();
    }

    /** As it stands; the passphrase is forgotten here. */
    Filled filled() {
        char[] secret = passphrase.getPassword();
        Filled filled = new Filled(
                SignedAs.values()[as.getSelectedIndex()],
                key.getText().strip(),
                new String(secret),
                because.getText().strip());
        Arrays.fill(secret, ' ');
        passphrase.setText("");
        return filled;
    }
}
