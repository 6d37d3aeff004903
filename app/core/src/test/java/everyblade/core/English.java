package everyblade.core;

import everyblade.core.entry.Refusal;
import everyblade.fact.Fact;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;

/** What facts say, in English. */
public final class English {

    private static final Words WORDS = Words.of(Locale.ENGLISH);

    private English() {}

    public static String say(Fact fact) {
        return WORDS.say(fact);
    }

    public static List<String> say(List<? extends Fact> facts) {
        return WORDS.say(facts);
    }

    /** Why a line is refused that was expected to be. */
    public static String why(Throwable refusal) {
        return say((Refusal) refusal);
    }

    /** Why a line is refused. */
    public static String say(Refusal refusal) {
        return say(refusal.why());
    }
}
