package everyblade.window;

import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** What is painted here, not made of the parts of a toolkit: it has a name, and may say what it shows, for those who hear it. */
abstract class Painted extends JComponent implements Accessible {

    private static final long serialVersionUID = 1;

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Spoken();
        }
        return accessibleContext;
    }

    /** Says this to those who do not see it. */
    final void describe(String shown) {
        getAccessibleContext().setAccessibleDescription(everyblade.words.Visible.text(shown));
    }

    private final class Spoken extends AccessibleJComponent {

        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
