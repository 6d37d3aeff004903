package everyblade.cli;

import everyblade.fleet.Store;
import everyblade.fleet.StoreAddress;
import everyblade.fleet.StoreRefusal;
import everyblade.fleet.StoreSecret;
import everyblade.record.JobFolder.Verification;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
import everyblade.session.fleet.ShopStore;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The store that a command under {@code fleet} works with, and how it tells people of it.
 *
 * @param around the world outside
 * @param shop the store
 */
record FleetStore(Surroundings around, ShopStore shop) {

    private static final String COMMAND = "everyblade fleet: ";
    private static final int SHORT = 12;

    /** The store that was named, or that the environment names. */
    static FleetStore at(Surroundings around, Optional<String> store, Optional<Path> passwordFile) {
        String named = store.or(() -> around.variable(ShopStore.VARIABLE))
                .orElseThrow(() -> new Failure(COMMAND + around.words().say("fleet.noStore")));
        try {
            return new FleetStore(around, ShopStore.at(named, around.environment(), passwordFile.map(around::path)));
        } catch (StoreRefusal refusal) {
            throw new Failure(COMMAND + ShopStore.told(refusal, around.words()));
        }
    }

    StoreAddress address() {
        return shop.address();
    }

    StoreSecret secret() {
        return shop.secret();
    }

    /** Something that is done with the store, and the exit status that it leads to. */
    @FunctionalInterface
    interface Work {

        int with(Store store) throws StoreRefusal;
    }

    int open(Work work) {
        try (Store store = opened()) {
            return work.with(store);
        } catch (StoreRefusal refusal) {
            throw failure(refusal);
        }
    }

    private Store opened() throws StoreRefusal {
        return asking(shop::open);
    }

    /** Asks the store something of which nothing is told meanwhile. */
    <T> T asking(Waiting.Work<T, StoreRefusal> work) throws StoreRefusal {
        return Waiting.during(around, "wait.fleet", work);
    }

    Failure failure(StoreRefusal refusal) {
        return new Failure(COMMAND + told(refusal));
    }

    /** A refusal in the words of whoever reads it. */
    String told(StoreRefusal refusal) {
        return ShopStore.told(refusal, around.words());
    }

    void say(String key, Object... parts) {
        around.out().println(OneLine.of(around.words().say(key, parts)));
        around.out().flush();
    }

    /** A job as lists call it. */
    static String shorter(String job) {
        return job.substring(0, SHORT);
    }

    /** What is not sound, for people. */
    String problem(Verification found) {
        return ShopStore.problem(found, around.words());
    }
}
