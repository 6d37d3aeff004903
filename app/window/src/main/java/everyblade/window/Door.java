package everyblade.window;

import everyblade.core.sight.Progress;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/**
 * The one way for work off the event thread: what is handed in runs elsewhere, what came of it is given back on the event
 * thread. Work on the job runs in the order in which it was handed in, one piece at a time.
 */
interface Door extends AutoCloseable {

    /**
     * Works on the job.
     *
     * @param what is done, for the person if it takes long
     */
    <T> void run(String what, Callable<T> work, Consumer<T> then);

    /** Works on the job unless something newer of this kind is handed in before its turn comes. */
    <T> void latest(String kind, Callable<T> work, Consumer<T> then);

    /**
     * Works beside the job, on values that never change, as long as it may take; a person can stop waiting for it.
     *
     * @param what is done, for the person
     */
    <T> void aside(String what, Callable<T> work, Consumer<T> then);

    /** Work that says how far it is, and ends early once nobody wants it any more. */
    interface Watched<T> {

        T done(Progress progress) throws Exception;
    }

    /**
     * Works beside the job on something that can be stopped, by a person or by whoever handed it in.
     *
     * @param what is done, for the person
     * @param then is given what came of it, or nothing if a person stopped it
     * @return stops it; then nothing is given back at all
     */
    <T> Runnable watched(String what, Watched<T> work, Consumer<Optional<T>> then);

    /** Something happened that should not have: it is kept for whoever can mend it, and told. */
    void fault(Throwable fault);

    /** Takes nothing more. */
    @Override
    void close();
}
