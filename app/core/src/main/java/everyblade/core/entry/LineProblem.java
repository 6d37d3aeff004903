package everyblade.core.entry;

import everyblade.fact.Fact;

/** Why a line from a file or a stream cannot be an entry, whatever it says. */
public sealed interface LineProblem extends Fact {

    /** What says all by itself. */
    enum Flaw implements LineProblem {
        TOO_LONG,
        NOT_UTF8
    }

    /** What stands where a time may stand, cut short where it is long. */
    record NoTime(String found) implements LineProblem {}
}
