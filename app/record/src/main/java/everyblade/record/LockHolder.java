package everyblade.record;

import everyblade.fact.Fact;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Who has a job or its review open for writing, as they left it in the file of their lock. */
sealed interface LockHolder extends Fact {

    /** Nothing is left there yet. */
    enum Unnamed implements LockHolder {
        SOMEBODY,
        JUST_BEGUN
    }

    /**
     * Somebody who works with this program.
     *
     * @param since ISO 8601, UTC
     * @param process number that their operating system gave it
     */
    record Named(String by, String since, String process) implements LockHolder {

        private static final Pattern TEXT = Pattern.compile("(.*) since (\\S+) \\(process ([0-9]+)\\)");
    }

    /** What another program left. */
    record Other(String text) implements LockHolder {}

    /** What this process leaves there. */
    static String text(String by, Instant since) {
        return by.replaceAll("\\R", " ") + " since " + since.truncatedTo(ChronoUnit.SECONDS) + " (process "
                + ProcessHandle.current().pid() + ")\n";
    }

    /** Who left a text that is not empty. */
    static LockHolder of(String text) {
        Matcher named = Named.TEXT.matcher(text);
        return named.matches() ? new Named(named.group(1), named.group(2), named.group(3)) : new Other(text);
    }
}
