package everyblade.core.entry;

import everyblade.fact.Fact;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is wrong in a finding. */
public enum Kind implements Fact {
    NICK,
    DENT,
    CRACK,
    TEAR,
    MISSING,
    BURN,
    EROSION,
    RUB,
    COATING,
    DEPOSIT,
    CORROSION,
    CURL,
    BOW,
    BULGE,
    HOLE,
    SPATTER,
    DISCOLOUR,
    LOOSE,
    OTHER;

    /** The word used in entries. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The kind with this word in lower case, if there is one. */
    static Optional<Kind> named(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    /** The words of all kinds. */
    static List<String> words() {
        return Arrays.stream(values()).map(Kind::word).toList();
    }
}
