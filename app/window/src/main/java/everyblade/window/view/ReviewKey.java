package everyblade.window.view;

import java.util.List;
import java.util.Locale;

/**
 * Every key of the reviewer's screen: no two do the same, and none does what it does on the start screen already. Written as
 * {@code javax.swing.KeyStroke} reads them.
 */
public enum ReviewKey {
    PLAY("F5"),
    BACK_ONE("F6"),
    ON_ONE("F7"),
    SLOWER("F8"),
    FASTER("F9"),
    FIRST("ctrl HOME"),
    LAST("ctrl END"),
    GO_MAP("ctrl M"),
    GO_LIST("ctrl G"),
    GO_SAID("ctrl U"),
    GO_WORDS("ctrl L"),
    SHOW_ALL("ctrl ENTER"),
    COMPARE("ctrl K"),
    BACK("ctrl O");

    private final List<String> keys;

    ReviewKey(String... keys) {
        this.keys = List.of(keys);
    }

    /** The key, and others for the same. */
    public List<String> keys() {
        return keys;
    }

    /** The key of the text that says what it does. */
    public String words() {
        return "review.key." + name().toLowerCase(Locale.ROOT);
    }
}
