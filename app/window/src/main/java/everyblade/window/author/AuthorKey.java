package everyblade.window.author;

import java.util.List;
import java.util.Locale;

/**
 * Every key of the author's screen: no two do the same, and none does what it does on the start screen already. Written as
 * {@code javax.swing.KeyStroke} reads them.
 */
public enum AuthorKey {
    BACK("ESCAPE"),
    READ("F5"),
    STOP("ctrl PERIOD"),
    GO_DRAWING("ctrl M"),
    GO_MESSAGES("ctrl G"),
    GO_TEXT("ctrl L"),
    NEXT_PAGE("ctrl PAGE_DOWN"),
    LAST_PAGE("ctrl PAGE_UP"),
    ZOOM_IN("ctrl PLUS", "ctrl ADD"),
    ZOOM_OUT("ctrl MINUS", "ctrl SUBTRACT"),
    FIT("ctrl 0", "ctrl NUMPAD0"),
    SHOW("ENTER");

    private final List<String> keys;

    AuthorKey(String... keys) {
        this.keys = List.of(keys);
    }

    /** The key, and others for the same. */
    public List<String> keys() {
        return keys;
    }

    /** The key of the text that says what it does. */
    public String words() {
        return "author.key." + name().toLowerCase(Locale.ROOT);
    }
}
