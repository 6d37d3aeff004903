package everyblade.session.around;

import everyblade.core.sight.Progress;
import java.time.Duration;
import java.time.Instant;

/**
 * Tells a person who sits at a terminal and has waited for half a second what takes so long, once, and in a line below, which is
 * written anew and in the end taken away, how far it is. Where nobody sits it tells nothing.
 */
public final class Patience implements Progress {

    private static final Duration LONG = Duration.ofMillis(500);
    private static final Duration AGAIN = Duration.ofMillis(200);

    private final Surroundings around;
    private final String what;
    private final PassingLine line;
    private Instant next;
    private boolean told;
    private int part = 1;

    /** @param what key of the sentence that says what takes so long */
    public Patience(Surroundings around, String what) {
        this.around = around;
        this.what = what;
        this.line = new PassingLine(around.err());
        this.next = around.clock().instant().plus(LONG);
    }

    @Override
    public void done(int parts, int all) {
        if (around.terminal().watches()) {
            tell(parts, all);
        }
    }

    private synchronized void tell(int parts, int all) {
        Instant now = around.clock().instant();
        if (parts < all && !now.isBefore(next)) {
            if (!told) {
                around.err().println(around.words().say(what));
                told = true;
            }
            line.show(around.words().say("wait.part", part, 100L * parts / all));
            next = now.plus(AGAIN);
        }
        if (parts == all) {
            part++;
            line.show("");
        }
    }
}
