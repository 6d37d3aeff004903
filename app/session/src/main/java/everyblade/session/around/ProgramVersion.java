package everyblade.session.around;

import java.util.Optional;

/** Which version of the program this is. */
public final class ProgramVersion {

    private ProgramVersion() {}

    /** Its number, as the build wrote it; says so where the program was not packaged. */
    public static String number() {
        return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
                .orElse("(not packaged)");
    }
}
