package everyblade.core.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What an amount of turning is counted in. */
public enum Unit {
    /** Degrees of the shaft. */
    DEG(true, "deg", "\u00b0"),
    /** Pitches of the row in view, counted by eye. */
    BLADES(true, "blades", "blade"),
    /** Turns of the shaft. */
    REV(false, "rev"),
    /** Whole turns of the tool at the pad in use. */
    TOOL(false, "tool"),
    /** Degrees of the tool at the pad in use. */
    TOOLDEG(false, "tooldeg");

    private final boolean drawing;
    private final List<String> words;

    Unit(boolean drawing, String... words) {
        this.drawing = drawing;
        this.words = List.of(words);
    }

    /** Whether moving the scope tip round the annulus can be counted in it, which no tool does. */
    public boolean ofDrawing() {
        return drawing;
    }

    /** The word by which it is written. */
    public String word() {
        return words.get(0);
    }

    /** The unit that this word in lower case says, if one does. */
    static Optional<Unit> named(String word) {
        return Arrays.stream(values()).filter(unit -> unit.words.contains(word)).findFirst();
    }
}
