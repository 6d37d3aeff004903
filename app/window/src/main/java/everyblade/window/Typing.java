package everyblade.window;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Runs something whenever the text of a field changes. */
record Typing(Runnable changed) implements DocumentListener {

    @Override
    public void insertUpdate(DocumentEvent change) {
        changed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent change) {
        changed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent change) {
        changed.run();
    }
}
