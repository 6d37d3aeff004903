package everyblade.record;

import everyblade.fact.Fact;
import everyblade.words.Words;
import java.util.Locale;

/** What a person reads of a fact. */
public final class English {

    private English() {}

    public static String said(Fact fact) {
        return Words.of(Locale.ENGLISH).say(fact);
    }
}
