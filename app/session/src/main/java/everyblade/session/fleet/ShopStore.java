package everyblade.session.fleet;

import everyblade.fleet.KeptChain;
import everyblade.fleet.Store;
import everyblade.fleet.StoreAddress;
import everyblade.fleet.StoreArrival;
import everyblade.fleet.StoreRefusal;
import everyblade.fleet.StoreSecret;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Torn;
import everyblade.record.JobFolder.Verification;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * A shop's store as it is asked. Each of its methods may take as long as a network does: none is for a thread that a screen waits
 * for.
 *
 * @param address of the store
 * @param secret that opens it
 */
public record ShopStore(StoreAddress address, StoreSecret secret) {

    /** The variable that names the store where nobody does. */
    public static final String VARIABLE = "EVERYBLADE_STORE";

    /**
     * The store at an address.
     *
     * @param environment where the password may be
     * @param passwordFile where it is looked for first, if that is said
     * @throws StoreRefusal if it is no address, or a password stands in it
     */
    public static ShopStore at(String address, Map<String, String> environment, Optional<Path> passwordFile)
            throws StoreRefusal {
        return new ShopStore(StoreAddress.of(address.strip()), new StoreSecret(environment, passwordFile));
    }

    /** Opens it. */
    public Store open() throws StoreRefusal {
        return Store.open(address, secret);
    }

    /**
     * Brings a job into a folder that is not there yet, verified before it is there.
     *
     * @param job how it begins in the store
     * @return what is wrong with it; then there is no folder
     */
    public Optional<String> bring(String job, JobFolder folder, Words words) throws StoreRefusal {
        try (Store store = open()) {
            StoreArrival arrival = new StoreArrival(store);
            KeptChain kept = arrival.find(job);
            Verification found = arrival.into(folder, kept);
            return found instanceof Sound ? Optional.empty() : Optional.of(problem(found, words));
        }
    }

    /** What is not sound. */
    public static String problem(Verification found, Words words) {
        return words.say(found instanceof Broken broken ? broken.problem() : ((Torn) found).problem());
    }

    /** Why the store cannot do something, in the words of whoever reads it. */
    public static String told(StoreRefusal refusal, Words words) {
        return words.say("fleet.refused." + refusal.reason(), refusal.facts().toArray());
    }
}
