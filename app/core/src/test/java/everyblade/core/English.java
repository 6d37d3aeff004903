package everyblade.core;

import everyblade.fact.Fact;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;

/** What people are told of facts, in English. */
public final class English {

    private static final Words WORDS = Words.of(Locale.ENGLISH);

    private English() {}

    public static String say(Fact fact) {
        return WORDS.say(fact);
    }

    public static List<String> say(List<? extends Fact> facts) {
        return WORDS.say(facts);
    }
}
