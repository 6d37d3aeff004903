package everyblade.session.around;

import everyblade.core.sight.Progress;
import java.io.PrintStream;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicBoolean;

/** Tells a person who has waited for two seconds what takes so long, once. */
public final class Patience implements Progress {

    private static final Duration LONG = Duration.ofSeconds(2);

    private final PrintStream err;
    private final InstantSource clock;
    private final String what;
    private final Instant since;
    private final AtomicBoolean told = new AtomicBoolean();

    /** @param what takes so long, a sentence */
    public Patience(PrintStream err, InstantSource clock, String what) {
        this.err = err;
        this.clock = clock;
        this.what = what;
        this.since = clock.instant();
    }

    @Override
    public void done(int parts, int all) {
        if (Duration.between(since, clock.instant()).compareTo(LONG) > 0 && told.compareAndSet(false, true)) {
            err.println(what);
        }
    }
}
