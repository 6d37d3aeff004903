package everyblade.session.around;

import java.time.Duration;
import java.time.Instant;

/**
 * Tells a person who sits at a terminal and has waited for half a second what is being done, for how long, and how to stop
 * it, in a line that is written anew and in the end taken away: for work that cannot say how far it is; else {@link Patience}
 * does. Where nobody sits it tells nothing. The work itself may not tell anything.
 */
public final class Waiting {

    private static final Duration LONG = Duration.ofMillis(500);
    private static final long TICK_MILLIS = 100;

    private final Surroundings around;
    private final String what;
    private final PassingLine line;
    private final Instant began;
    private boolean over;

    Waiting(Surroundings around, String what) {
        this.around = around;
        this.what = what;
        this.line = new PassingLine(around.err());
        this.began = around.clock().instant();
    }

    /** Work that takes its time. */
    @FunctionalInterface
    public interface Work<T, E extends Exception> {
        T done() throws E;
    }

    /**
     * Does this, and tells of it.
     *
     * @param what key of the words that say what is being done, without a full stop
     */
    public static <T, E extends Exception> T during(Surroundings around, String what, Work<T, E> work) throws E {
        if (!around.terminal().watches()) {
            return work.done();
        }
        Waiting waiting = new Waiting(around, what);
        Thread ticks = new Thread(waiting::tick, "waiting");
        ticks.setDaemon(true);
        ticks.start();
        try {
            return work.done();
        } finally {
            waiting.close();
        }
    }

    private synchronized void tick() {
        try {
            while (!over) {
                wait(TICK_MILLIS);
                tell();
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Tells how long it has been, if that is long and the last that was told is over. */
    synchronized void tell() {
        Duration waited = Duration.between(began, around.clock().instant());
        if (!over && waited.compareTo(LONG) >= 0) {
            long seconds = Math.max(1, waited.toSeconds());
            line.show(around.words().say("wait.seconds", around.words().say(what), seconds));
        }
    }

    synchronized void close() {
        over = true;
        notifyAll();
        line.show("");
    }
}
