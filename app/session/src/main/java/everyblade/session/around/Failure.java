package everyblade.session.around;

import everyblade.fact.Fact;
import everyblade.fact.Keyed;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;

/** A command cannot do what was asked: wrong use or unreadable input. */
public final class Failure extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Fact told;

    /** @param told what, where, why, what to do, on one line */
    public Failure(Fact told) {
        super(told.key(), null, false, false);
        this.told = told;
    }

    /** @param line that somebody else worded */
    public Failure(String line) {
        this(new Keyed("stopped.worded", List.of(line)));
    }

    /** What is told by the text of this key, with its places filled in. */
    public static Failure of(String key, Object... parts) {
        return new Failure(new Keyed(key, List.of(parts)));
    }

    /** The line for the person. */
    public String line(Words words) {
        return words.say(told);
    }

    /** The line in English, for whoever looks for a fault. */
    @Override
    public String getMessage() {
        return line(Words.of(Locale.ENGLISH));
    }
}
