package everyblade.core.entry;

import everyblade.fact.Fact;

/** A setting that cannot be as it is given. */
public final class UnfitSetting extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Fact why;

    UnfitSetting(SettingProblem why) {
        super(why.toString());
        this.why = why;
    }

    /** What is wrong, and what may be given. */
    public Fact why() {
        return why;
    }
}
