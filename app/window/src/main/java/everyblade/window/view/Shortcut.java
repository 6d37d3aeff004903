package everyblade.window.view;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every key that does something beside typing: no key has two meanings in one place.
 *
 * <p>Keys are written as {@code javax.swing.KeyStroke} reads them; {@code KEYPAD_ENTER} is the Enter key of the number
 * pad, which has no name there.
 */
public enum Shortcut {
    AGAIN(Place.ENTRY, Act.AGAIN, "KEYPAD_ENTER", "F12"),
    ONE_ON(Place.EMPTY_ENTRY, Act.ONE_ON, "typed +"),
    LOOK(Place.EMPTY_ENTRY, Act.LOOK, "typed *"),
    ROUND(Place.ENTRY, Act.ROUND, "F2"),
    HERE(Place.ENTRY, Act.HERE, "F3"),
    WATCH_ROOT(Place.ENTRY, Act.WATCH_ROOT, "F4"),
    WATCH_TIP(Place.ENTRY, Act.WATCH_TIP, "F5"),
    WATCH_ALL(Place.ENTRY, Act.WATCH_ALL, "F6"),
    RECHECK(Place.ENTRY, Act.RECHECK, "F7"),
    FIND(Place.ENTRY, Act.FIND, "F8"),
    PHOTO(Place.ENTRY, Act.PHOTO, "F9"),
    SLIP(Place.ENTRY, Act.SLIP, "F11"),
    UNDO(Place.EMPTY_ENTRY, Act.UNDO, "ctrl Z"),
    REDO(Place.EMPTY_ENTRY, Act.REDO, "ctrl Y"),

    KEEP(Place.ENTRY, "ENTER"),
    DROP(Place.ENTRY, "ESCAPE"),
    COMPLETE(Place.ENTRY, "TAB"),
    OLDER(Place.ENTRY, "UP"),
    NEWER(Place.ENTRY, "DOWN"),

    KEYS(Place.WINDOW, "F1"),
    GO_ENTRY(Place.WINDOW, "ctrl L"),
    GO_MAP(Place.WINDOW, "ctrl M"),
    GO_LEFT(Place.WINDOW, "ctrl G"),
    CLOSING(Place.WINDOW, "F10"),
    ACCEPT_UNSHOWN(Place.WINDOW, "ctrl U"),
    PICTURE(Place.WINDOW, "ctrl I"),
    NEXT_PAGE(Place.WINDOW, "ctrl PAGE_DOWN"),
    ZOOM_IN(Place.WINDOW, "ctrl PLUS", "ctrl ADD"),
    ZOOM_OUT(Place.WINDOW, "ctrl MINUS", "ctrl SUBTRACT"),
    FIT(Place.WINDOW, "ctrl 0", "ctrl NUMPAD0"),
    FACING(Place.WINDOW, "ctrl R"),
    STRIPS(Place.WINDOW, "ctrl T"),
    LOOK_DARK(Place.WINDOW, "ctrl D"),
    DENSITY(Place.WINDOW, "ctrl B"),
    NUMBERS(Place.WINDOW, "ctrl N"),
    FOLDER(Place.WINDOW, "ctrl W"),
    MORE(Place.WINDOW, "ctrl J"),
    REPORT(Place.WINDOW, "ctrl P"),
    HANDOVER(Place.WINDOW, "ctrl E"),
    SAVE(Place.WINDOW, "ctrl S"),
    START(Place.WINDOW, "ctrl O");

    /** Where a key has its meaning. */
    public enum Place {
        /** In the entry line. */
        ENTRY,
        /** In the entry line while nothing is typed. */
        EMPTY_ENTRY,
        /** Anywhere in the window. */
        WINDOW
    }

    private final Place place;
    private final Optional<Act> act;
    private final List<String> keys;

    Shortcut(Place place, Act act, String... keys) {
        this.place = place;
        this.act = Optional.of(act);
        this.keys = List.of(keys);
    }

    Shortcut(Place place, String... keys) {
        this.place = place;
        this.act = Optional.empty();
        this.keys = List.of(keys);
    }

    public Place place() {
        return place;
    }

    /** What it does to the record, if it does. */
    public Optional<Act> act() {
        return act;
    }

    public List<String> keys() {
        return keys;
    }

    /** The key of the text that says what it does. */
    public String words() {
        return "key." + name().toLowerCase(Locale.ROOT);
    }

    /** The shortcut of an act. */
    public static Shortcut of(Act act) {
        return Arrays.stream(values())
                .filter(one -> one.act().filter(act::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }
}
