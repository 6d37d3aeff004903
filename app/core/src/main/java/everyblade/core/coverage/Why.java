package everyblade.core.coverage;

import everyblade.fact.Fact;

/** Why a cell is not seen: found once, and told everywhere in the same words. */
public enum Why implements Fact {
    /** Turned past unwatched, never turned to, or watched where too little of it was in sight. */
    SKIPPED("skipped", "skipped, or too little of it in sight"),
    /** Enough of it was in sight, but something else was being watched. */
    NOT_WATCHED("not watched", "not watched while it was in sight"),
    /** No view of the engine model shows it, however coarse. */
    NO_ACCESS("noAccess", "no view of this engine model shows enough of it"),
    /** Only views that are too coarse for the detail asked show it. */
    COARSE("coarse", "every view that shows it is too coarse for the detail asked"),
    /** Only its outermost strip at the leading or trailing edge, where nicks sit, was not in sight. */
    EDGE("edge", "its outermost strip at the edge, where nicks sit, was not in sight"),
    /** In sight for less than the least time. */
    FAST("fast", "in view for less than the least time"),
    /** The count was lost while it may have been watched. */
    COUNT_LOST("count lost", "the count was lost"),
    /** Watched while the row may have stood anywhere. */
    SLIP("slip", "nobody knew where the row stood, after a slip, pause or takeover"),
    /** Where the row stood is not known well enough. */
    PLAY("play", "too much play or ± to be sure of the angle"),
    /** It depends on where within its tolerance, or where on its way, the scope tip stood. */
    PLACEMENT("placement", "it depends on where the scope tip stood, in its tolerance or on its way");

    private final String word;
    private final String words;

    Why(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** What it is, for people, in English. */
    public String words() {
        return words;
    }

    /** Whether nothing that is done at the views of the engine model can mend it. */
    public boolean outOfReach() {
        return this == NO_ACCESS || this == COARSE;
    }
}
