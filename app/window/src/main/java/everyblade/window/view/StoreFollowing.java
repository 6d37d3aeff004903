package everyblade.window.view;

import everyblade.fleet.Store;
import everyblade.fleet.StoreExchange;
import everyblade.fleet.StoreRefusal;
import everyblade.record.JobFolder;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.fleet.FleetFacts;
import everyblade.session.fleet.ShopStore;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Keeps a job in a shop's store while it is worked on. The job folder is what counts: nothing here writes into it, and
 * nobody waits for what the store says. {@link #next} is for one thread, all else for any.
 */
public final class StoreFollowing implements AutoCloseable {

    /** What the server tells is a hint; after so long we look all the same. */
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private static final Duration SLICE = Duration.ofMillis(500);

    private final ShopStore shop;
    private final Surroundings around;
    private final Path job;
    private final Duration patience;
    private final String place;
    private final Semaphore nudges = new Semaphore(1);
    private volatile boolean ended;
    private Optional<Store> store = Optional.empty();

    /**
     * Of a job.
     *
     * @param job its folder
     * @param place where that is, in words for people at other sites, such as the name of the machine
     */
    public StoreFollowing(ShopStore shop, Surroundings around, Path job, String place) {
        this(shop, around, job, place, PATIENCE);
    }

    /** @param patience after which we look all the same */
    StoreFollowing(ShopStore shop, Surroundings around, Path job, String place, Duration patience) {
        this.shop = shop;
        this.around = around;
        this.job = job;
        this.place = place;
        this.patience = patience;
    }

    /** How it stands. */
    public sealed interface News {

        /**
         * The store has all up to this entry.
         *
         * @param entry its number
         * @param sent how many lines went there just now
         * @param lacking how many entries it has that were made elsewhere, and that the folder lacks
         */
        record AsOf(int entry, int sent, int lacking) implements News {}

        /** The store does not take it, or nobody answers. */
        record Refused(StoreRefusal why) implements News {}
    }

    /** There is something new in the folder. */
    public void nudge() {
        nudges.drainPermits();
        nudges.release();
    }

    /** Waits until there is something new here or there, or it is time to look, and brings the store what it lacks. */
    public News next() {
        try {
            boolean quiet = !hasNews();
            if (ended) {
                leave();
                return new News.Refused(new StoreRefusal(StoreRefusal.Reason.CUT, ""));
            }
            if (store.isEmpty()) {
                store = Optional.of(shop.open());
            }
            StoreExchange.Done done =
                    new StoreExchange(store.get(), place).push(new JobFolder(around.disk(), job), Optional.empty());
            if (quiet) {
                compute(done.job());
            }
            return new News.AsOf(done.entries(), done.sent(), done.lacking());
        } catch (StoreRefusal refusal) {
            leave();
            return new News.Refused(refusal);
        }
    }

    /** Waits for something new; false if nothing came until it was time to look. */
    private boolean hasNews() throws StoreRefusal {
        long until = System.nanoTime() + patience.toNanos();
        while (!ended && System.nanoTime() < until) {
            boolean nudged = store.isPresent() ? nudges.tryAcquire() : pause();
            if (nudged || store.isPresent() && !store.get().awaitNews(SLICE).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** What questions are answered from, once nothing has been entered for a while: it takes longer than sending an entry. */
    private void compute(String first) throws StoreRefusal {
        try {
            new FleetFacts(around, store.get()).renew(job, first);
        } catch (Failure unreadable) {
            // Whoever works on the job is told of it there; the store says how many it has no answer of.
            return;
        }
    }

    private boolean pause() {
        try {
            return nudges.tryAcquire(SLICE.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException givenUp) {
            ended = true; // and so the one thread that comes here goes
            return false;
        }
    }

    private void leave() {
        store.ifPresent(Store::close);
        store = Optional.empty();
    }

    /** Ends it; what is under way comes to its end by itself. */
    @Override
    public void close() {
        ended = true;
    }

    /** Whether it was ended. */
    public boolean isEnded() {
        return ended;
    }
}
