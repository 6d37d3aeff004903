package everyblade.window;

import everyblade.core.entry.Kind;
import everyblade.words.Words;

/** Kinds of findings in the person's language, with the word that entries use. */
final class KindCells extends VisibleCells {

    private static final long serialVersionUID = 1;

    private final transient Words words;

    KindCells(Words words) {
        this.words = words;
    }

    @Override
    String told(Object value) {
        String word = ((Kind) value).word();
        String told = words.say((Kind) value);
        return told.equals(word) ? word : told + " (" + word + ")";
    }
}
