package everyblade.core.coverage;

/** Why a cell is not seen. */
public enum Why {
    /** Never watched while it was in sight. */
    SKIPPED("skipped"),
    /** No view of the engine model shows it. */
    NO_ACCESS("noAccess"),
    /** Only views that are too coarse for the detail asked show it. */
    COARSE("coarse"),
    /** In sight for less than the least time. */
    FAST("fast"),
    /** The count was lost, or never started, while it may have been watched. */
    COUNT_LOST("count lost"),
    /** The turning tool has too much play to be sure. */
    PLAY("play"),
    /** It depends on where within its tolerance the scope tip stood. */
    PLACEMENT("placement");

    private final String word;

    Why(String word) {
        this.word = word;
    }

    /** The word in files. */
    public String word() {
        return word;
    }
}
