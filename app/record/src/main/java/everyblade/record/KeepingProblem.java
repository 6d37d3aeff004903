package everyblade.record;

import everyblade.fact.Fact;

/** Why an entry, or the picture that it names, cannot be kept. */
public sealed interface KeepingProblem extends Fact {

    /** @param problem what stands against it, as the record says it */
    record NotWritten(String problem) implements KeepingProblem {}

    /** @param most megabytes */
    record PictureTooLarge(long most) implements KeepingProblem {}
}
