package everyblade.fleet;

import everyblade.record.JobFolder;
import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes a folder of a job of the store.
 *
 * @param store that has it
 */
public record StoreArrival(Store store) {

    /**
     * The one job whose first hash begins so.
     *
     * @throws StoreRefusal if there is none, or several
     */
    public KeptChain find(String beginning) throws StoreRefusal {
        return new Chains(store).job(beginning);
    }

    /** The jobs that were taken off with their year, and when, by the hash of their first line. */
    public Map<String, Instant> retired() throws StoreRefusal {
        return new Chains(store).retired();
    }

    /** All jobs that the user may see, by site, engine and time. */
    public List<KeptChain> jobs() throws StoreRefusal {
        return new Chains(store).jobs();
    }

    /**
     * Brings a job as a whole; it is verified before it is there.
     *
     * @param folder one that is not there yet, or empty
     * @return what verifying found; of anything but {@link JobFolder.Sound} there is no folder
     */
    public JobFolder.Verification into(JobFolder folder, KeptChain job) throws StoreRefusal {
        return folder.arrive((JobFolder.Arriving<StoreRefusal>) receiver -> {
            Contents contents = new Contents(store);
            Chains chains = new Chains(store);
            // In this order everything that is named is there: what a remark is about came before it, and a picture
            // before
            // the line that names it.
            Optional<KeptChain> review = chains.review(job.first());
            byte[] reviewed = review.isEmpty()
                    ? new byte[0]
                    : text(chains.lines(review.get().first(), 0));
            byte[] journal = text(chains.lines(job.first(), 0));
            for (Map.Entry<String, String> file : contents.of(job.first()).entrySet()) {
                receiver.file(file.getKey(), contents.bytes(file.getValue()));
            }
            if (reviewed.length > 0) {
                receiver.file("review.jsonl", reviewed);
            }
            receiver.file("journal.jsonl", journal);
        });
    }

    private static byte[] text(List<byte[]> lines) {
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        for (byte[] line : lines) {
            text.writeBytes(line);
            text.write('\n');
        }
        return text.toByteArray();
    }
}
