package everyblade.window.author;

import everyblade.words.Words;
import java.time.ZoneId;

/**
 * How things stand, in one sentence.
 *
 * @param kind whether there is something to mend
 * @param text for a person
 */
public record StatusLine(Kind kind, String text) {

    /** How it is to look. */
    public enum Kind {
        /** Nothing was read yet. */
        WAITING,
        /** Nothing refuses the model. */
        VALID,
        /** Something must be mended. */
        BROKEN
    }

    /** The status of a state, in the person's words and at the person's time. */
    public static StatusLine of(AuthorState state, Words words, ZoneId zone) {
        if (state.last().isEmpty()) {
            return new StatusLine(Kind.WAITING, words.say("author.status.reading"));
        }
        Attempt last = state.last().get();
        String read = words.second(last.at(), zone);
        if (last.errors() == 0) {
            String text = last.warnings() == 0
                    ? words.say("author.status.valid", read)
                    : words.say("author.status.warned", warnings(last, words), read);
            return new StatusLine(Kind.VALID, text);
        }
        String what = last.there() ? errors(last, words) : words.say("author.status.gone");
        return new StatusLine(Kind.BROKEN, what + "; " + drawings(state, read, words, zone));
    }

    private static String drawings(AuthorState state, String read, Words words, ZoneId zone) {
        if (state.drawn().isEmpty()) {
            return words.say("author.status.nothing", read);
        }
        if (state.last().orElseThrow().model().isPresent()) {
            return words.say("author.status.asItStands", read);
        }
        ReadModel drawn = state.drawn().get();
        return words.say(
                drawn.sound() ? "author.status.lastValid" : "author.status.lastRead", words.second(drawn.at(), zone));
    }

    private static String errors(Attempt last, Words words) {
        return last.errors() == 1 ? words.say("author.error") : words.say("author.errors", last.errors());
    }

    private static String warnings(Attempt last, Words words) {
        return last.warnings() == 1 ? words.say("author.warning") : words.say("author.warnings", last.warnings());
    }
}
