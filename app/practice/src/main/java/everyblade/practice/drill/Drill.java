package everyblade.practice.drill;

import everyblade.practice.harm.HarmKind;
import java.util.List;

/**
 * What a trainee may know of a drill before it ends.
 *
 * @param title in a few words
 * @param mode quiet or with feedback
 * @param task what is to be done, in a sentence
 * @param views through which it is done, the first one where it begins; at least one
 * @param kinds of damage that may be there
 * @param examined whether somebody else keeps the key to the truth
 */
public record Drill(String title, Mode mode, String task, List<String> views, List<HarmKind> kinds, boolean examined) {

    /** How it teaches. */
    public enum Mode {
        /** As in an engine: nobody says anything before the end. */
        QUIET,
        /** Much damage, and each call is answered at once. */
        BURST
    }

    public Drill {
        views = List.copyOf(views);
        kinds = List.copyOf(kinds);
        if (views.isEmpty()) {
            throw new IllegalArgumentException("a drill is done through at least one view");
        }
    }
}
