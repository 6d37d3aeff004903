package everyblade.window;

import everyblade.core.sight.Progress;
import everyblade.session.around.Failure;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * The door of a real window: one thread for the job, one for what goes beside it. The job's thread is never interrupted,
 * since an interrupted thread loses the file that it is writing.
 */
final class Workers implements Door {

    private final ExecutorService onJob = Executors.newSingleThreadExecutor(daemon("job"));
    private final ExecutorService beside = Executors.newSingleThreadExecutor(daemon("beside the job"));
    private final Map<String, Object> newest = new ConcurrentHashMap<>();
    private final Waiting waiting;
    private final Consumer<Failure> failed;
    private final Consumer<Throwable> faults;

    /**
     * @param waiting is told what goes on
     * @param failed is told, on the event thread, why something could not be done
     * @param faults is given, on any thread, what should not have happened
     */
    Workers(Waiting waiting, Consumer<Failure> failed, Consumer<Throwable> faults) {
        this.waiting = waiting;
        this.failed = failed;
        this.faults = faults;
    }

    private static java.util.concurrent.ThreadFactory daemon(String name) {
        return task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        };
    }

    @Override
    public <T> void run(String what, Callable<T> work, Consumer<T> then) {
        Waiting.Ticket ticket = waiting.begin(what, false);
        hand(onJob, () -> finish(work, then, ticket));
    }

    @Override
    public <T> void latest(String kind, Callable<T> work, Consumer<T> then) {
        Object mine = new Object();
        newest.put(kind, mine);
        hand(onJob, () -> {
            if (newest.get(kind) == mine) {
                finish(
                        work,
                        value -> {
                            if (newest.get(kind) == mine) {
                                then.accept(value);
                            }
                        },
                        Waiting.Ticket.NONE);
            }
        });
    }

    @Override
    public <T> void aside(String what, Callable<T> work, Consumer<T> then) {
        Waiting.Ticket ticket = waiting.begin(what, true);
        hand(beside, () -> {
            if (ticket.wanted()) {
                finish(work, then, ticket);
            }
        });
    }

    @Override
    public <T> Runnable watched(String what, Watched<T> work, Consumer<Optional<T>> then) {
        Waiting.Ticket ticket = waiting.begin(what, () -> then.accept(Optional.empty()));
        Progress progress = waiting.progress(ticket);
        hand(beside, () -> {
            if (ticket.wanted()) {
                finish(() -> work.done(progress), value -> then.accept(Optional.of(value)), ticket);
            }
        });
        return ticket::drop;
    }

    /** Once the window is closed, what came late is not taken any more. */
    private static void hand(ExecutorService to, Runnable work) {
        if (!to.isShutdown()) {
            to.execute(work);
        }
    }

    private <T> void finish(Callable<T> work, Consumer<T> then, Waiting.Ticket ticket) {
        try {
            T value = work.call();
            SwingUtilities.invokeLater(() -> {
                boolean wanted = ticket.wanted();
                ticket.end();
                if (wanted) {
                    then.accept(value);
                }
            });
        } catch (Failure failure) {
            over(ticket, () -> failed.accept(failure));
        } catch (CancellationException stopped) {
            over(ticket, () -> {});
        } catch (Exception | Error fault) {
            over(ticket, () -> {});
            fault(fault);
        }
    }

    private static void over(Waiting.Ticket ticket, Runnable tell) {
        SwingUtilities.invokeLater(() -> {
            boolean wanted = ticket.wanted();
            ticket.end();
            if (wanted) {
                tell.run();
            }
        });
    }

    @Override
    public void fault(Throwable fault) {
        faults.accept(fault);
    }

    @Override
    public void close() {
        onJob.shutdown();
        beside.shutdownNow();
    }
}
