package everyblade.core.finding;

import everyblade.fact.Fact;

/** What the entered limits say of a finding, from the best to the worst. */
public enum Verdict implements Fact {
    /** Surely within the limits. */
    WITHIN,
    /** Within as far as it was seen, but the other face of that place was not. */
    OTHER_FACE,
    /** The uncertainty reaches over a limit. */
    CLOSE,
    /** Something that a limit is about was not entered. */
    NOT_MEASURED,
    /** No rule of the limits is about such a finding. */
    NO_RULE,
    /** Surely beyond the limits. */
    BEYOND;

    /** The worse of two. */
    Verdict and(Verdict other) {
        return compareTo(other) < 0 ? other : this;
    }
}
