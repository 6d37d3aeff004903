package everyblade.record;

import everyblade.record.signing.CheckedSignature;
import everyblade.record.signing.Kept;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The signatures of a job, in files beside the journal, which stays as it is: {@code signatures/1.json} and so on, each with
 * its time stamp, {@code signatures/1.tsr}, if it has one.
 */
public final class Signatures {

    private static final String FOLDER = "signatures";

    private static final Pattern NAME = Pattern.compile("([1-9][0-9]{0,4})\\.json");
    private static final long LARGEST = 1 << 20;

    private final JobFiles files;

    Signatures(JobFiles files) {
        this.files = files;
    }

    /** All in their order, each held against the journal. */
    public List<CheckedSignature> of(Journal journal) {
        return CheckedSignature.all(
                all(),
                journal.lines().size(),
                k -> k == 0 ? journal.firstHash() : journal.lines().get(k - 1).hash());
    }

    /** Whether there are any, be they sound or not; cheap, since it asks nothing of the journal. */
    public boolean hasAny() {
        return !all().isEmpty();
    }

    /** The bytes of a signature; empty if there is none of this number. */
    public Optional<byte[]> bytes(int number) {
        return all().stream()
                .filter(kept -> kept.number() == number)
                .map(Kept::signature)
                .filter(Kept.Bytes.class::isInstance)
                .map(found -> ((Kept.Bytes) found).all())
                .findFirst();
    }

    /**
     * Keeps a signature.
     *
     * @param number that no signature of the job has
     * @return why it could not be kept; empty if it is safe on disk
     */
    public Optional<RecordProblem> keep(int number, byte[] signature) {
        return keep(number + ".json", signature);
    }

    /** The same for the time stamp of a signature. */
    public Optional<RecordProblem> keepStamp(int number, byte[] stamp) {
        return keep(number + ".tsr", stamp);
    }

    private List<Kept> all() {
        Path folder = files.root().resolve(FOLDER);
        List<Kept> all = new ArrayList<>();
        if (files.disk().exists(folder)) {
            try {
                files.disk().requireFolder(folder);
                for (String name : files.disk().list(folder)) {
                    Matcher matcher = NAME.matcher(name);
                    if (matcher.matches()) {
                        all.add(kept(Integer.parseInt(matcher.group(1))));
                    }
                }
            } catch (IOException failure) {
                all.add(new Kept(1, new Kept.Unreadable(DiskFailure.of(failure)), Optional.empty()));
            }
        }
        all.sort(java.util.Comparator.comparingInt(Kept::number));
        return List.copyOf(all);
    }

    private Kept kept(int number) {
        return new Kept(number, found(number + ".json"), stamp(number + ".tsr"));
    }

    private Kept.Found found(String name) {
        try {
            return new Kept.Bytes(files.read(FOLDER + "/" + name, LARGEST));
        } catch (IOException failure) {
            return new Kept.Unreadable(DiskFailure.of(failure));
        }
    }

    private Optional<byte[]> stamp(String name) {
        if (!files.disk().exists(files.root().resolve(FOLDER).resolve(name))) {
            return Optional.empty();
        }
        return Optional.of(found(name) instanceof Kept.Bytes bytes ? bytes.all() : new byte[0]);
    }

    private Optional<RecordProblem> keep(String name, byte[] bytes) {
        Path folder = files.root().resolve(FOLDER);
        try {
            if (!files.disk().exists(folder)) {
                files.disk().createFolder(folder);
                files.disk().forceFolder(files.root());
            }
            Path place = files.place(FOLDER + "/" + name);
            try (Disk.OpenFile file = files.disk().create(place)) {
                file.write(0, bytes);
                file.force();
            } catch (java.nio.file.FileAlreadyExistsException taken) {
                throw taken;
            } catch (IOException failure) {
                files.disk().delete(place);
                throw failure;
            }
            files.disk().forceFolder(folder);
            return Optional.empty();
        } catch (IOException failure) {
            return Optional.of(RecordProblem.inFile(
                    RecordProblem.What.NOT_SIGNED,
                    FOLDER + "/" + name,
                    DiskFailure.of(failure),
                    Remedy.SEE_TO_DISK_AND_SIGN));
        }
    }
}
