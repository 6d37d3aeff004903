package everyblade.window;

import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTextField;

/** Words at the end of a text field, which never take the room of what is typed. */
final class Aside extends JLabel {

    private static final long serialVersionUID = 1;
    private static final double MOST = 0.7;

    private final transient JTextField field;

    Aside(JTextField field) {
        this.field = field;
        setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 8));
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension wanted = super.getPreferredSize();
        int typed = field.getFontMetrics(field.getFont()).stringWidth(field.getText());
        int room = field.getWidth() - typed - field.getHeight();
        return new Dimension(
                Math.max(0, Math.min(wanted.width, Math.min(room, (int) (MOST * field.getWidth())))), wanted.height);
    }
}
