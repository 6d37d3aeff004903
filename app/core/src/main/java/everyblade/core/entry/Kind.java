package everyblade.core.entry;

import java.util.Locale;

/** What is wrong in a finding. */
public enum Kind {
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
}
