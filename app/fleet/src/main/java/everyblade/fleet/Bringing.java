package everyblade.fleet;

import everyblade.fleet.StoreRefusal.Reason;
import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.record.RecordProblem;
import everyblade.record.ReviewFile;
import everyblade.record.ReviewWriter;
import everyblade.record.SentJob;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Adds to a job in a folder what the store has more of it, as its writer.
 *
 * @param by who asks, told to others who want to write meanwhile
 * @param now the time
 */
record Bringing(Store store, JobFolder folder, String by, Instant now) {

    private static final String PHOTOS = "photos/";
    private static final Pattern SIGNATURE = Pattern.compile("signatures/([1-9][0-9]{0,4})\\.(json|tsr)");

    /** Files come before the lines that name them; gives 0, since they are no lines. */
    int files(SentJob here, Map<String, String> there) throws StoreRefusal {
        for (Map.Entry<String, String> file : there.entrySet()) {
            if (!here.files().contains(file.getKey())) {
                keep(file.getKey(), new Contents(store).bytes(file.getValue()));
            }
        }
        return 0;
    }

    private void keep(String name, byte[] bytes) throws StoreRefusal {
        Matcher signature = SIGNATURE.matcher(name);
        if (signature.matches()) {
            int number = Integer.parseInt(signature.group(1));
            refuse(
                    signature.group(2).equals("json")
                            ? folder.signatures().keep(number, bytes)
                            : folder.signatures().keepStamp(number, bytes));
        } else if (name.startsWith(PHOTOS)) {
            try (JournalWriter writer = writer()) {
                refuse(writer.keepPhoto(name.substring(PHOTOS.length()), bytes));
            }
        }
    }

    /** Adds lines to the journal; gives how many. */
    int journal(KeptChain there, ChainDifference course) throws StoreRefusal {
        if (!(course instanceof ChainDifference.Bring bring)) {
            return 0;
        }
        List<byte[]> lines = new Chains(store).lines(there.first(), bring.from());
        try (JournalWriter writer = writer()) {
            if (writer.follow(lines) instanceof JournalWriter.NotKept not) {
                throw new StoreRefusal(Reason.UNSOUND, not.problem());
            }
            return lines.size();
        }
    }

    /** Adds lines to the review; gives how many. */
    int review(KeptChain there, ChainDifference course, String job) throws StoreRefusal {
        if (!(course instanceof ChainDifference.Bring bring)) {
            return 0;
        }
        List<byte[]> lines = new Chains(store).lines(there.first(), bring.from());
        ReviewFile.Writing writing = folder.review().write(by, now, job);
        if (writing instanceof ReviewFile.Refused refused) {
            throw new StoreRefusal(Reason.NOT_WRITTEN, refused.problem());
        }
        try (ReviewWriter writer = ((ReviewFile.Writable) writing).writer()) {
            if (writer.follow(lines) instanceof ReviewWriter.NotKept not) {
                throw new StoreRefusal(Reason.UNSOUND, not.problem());
            }
            return lines.size();
        }
    }

    private JournalWriter writer() throws StoreRefusal {
        JobFolder.Writing writing = folder.write(by, now);
        if (writing instanceof JobFolder.Writable writable) {
            return writable.writer();
        }
        throw new StoreRefusal(
                Reason.NOT_WRITTEN,
                writing instanceof JobFolder.InUse inUse ? inUse.problem() : ((JobFolder.Refused) writing).problem());
    }

    private static void refuse(Optional<RecordProblem> problem) throws StoreRefusal {
        if (problem.isPresent()) {
            throw new StoreRefusal(Reason.NOT_WRITTEN, problem.get());
        }
    }
}
