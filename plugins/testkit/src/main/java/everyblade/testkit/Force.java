package everyblade.testkit;

import java.util.Locale;

/** How binding a rule is. */
public enum Force {
    /** A model that breaks it must not be used. */
    REQUIRED,
    /** A model that breaks it can be used, and its author should know why it does. */
    OPTIONAL,
    /** No program can tell; a person must look. */
    UNTESTED;

    /** In lower case. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
