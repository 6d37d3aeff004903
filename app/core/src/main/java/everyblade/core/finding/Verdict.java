package everyblade.core.finding;

/** What the entered limits say of a finding, from the best to the worst. */
public enum Verdict {
    /** Surely within the limits. */
    WITHIN("within the limits"),
    /** Within as far as it was seen, but the other face of that place was not. */
    OTHER_FACE("look at the other face"),
    /** The uncertainty reaches over a limit. */
    CLOSE("too close to call"),
    /** Something that a limit is about was not entered. */
    NOT_MEASURED("not measured"),
    /** No rule of the limits is about such a finding. */
    NO_RULE("no limit entered for this"),
    /** Surely beyond the limits. */
    BEYOND("beyond the limits");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** For people. */
    public String words() {
        return words;
    }

    /** The worse of two. */
    public Verdict and(Verdict other) {
        return compareTo(other) < 0 ? other : this;
    }
}
