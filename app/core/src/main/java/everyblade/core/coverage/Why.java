package everyblade.core.coverage;

import everyblade.fact.Fact;

/** Why a cell is not seen: found once, and told everywhere as the same fact. */
public enum Why implements Fact {
    /** Turned past unwatched, never turned to, or watched where too little of it was in sight. */
    SKIPPED("skipped"),
    /** Enough of it was in sight, but something else was being watched. */
    NOT_WATCHED("not watched"),
    /** No view of the engine model shows it, however coarse. */
    NO_ACCESS("noAccess"),
    /** Only views that are too coarse for the detail asked show it. */
    COARSE("coarse"),
    /** Only its outermost strip at the leading or trailing edge, where nicks sit, was not in sight. */
    EDGE("edge"),
    /** In sight for less than the least time. */
    FAST("fast"),
    /** The count was lost while it may have been watched. */
    COUNT_LOST("count lost"),
    /** Watched while the row may have stood anywhere. */
    SLIP("slip"),
    /** Where the row stood is not known well enough. */
    PLAY("play"),
    /** It depends on where within its tolerance, or where on its way, the scope tip stood. */
    PLACEMENT("placement");

    private final String word;

    Why(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** Whether nothing that is done at the views of the engine model can mend it. */
    public boolean outOfReach() {
        return this == NO_ACCESS || this == COARSE;
    }
}
