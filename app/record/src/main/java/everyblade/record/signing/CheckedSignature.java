package everyblade.record.signing;

import everyblade.fact.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/**
 * A signature held against the record that it is of, and against those before it.
 *
 * @param number in the order in which they were made, from 1
 * @param file what it says, if it can be read and its key made it
 * @param wrong why it counts for nothing; none if it is sound
 * @param after how many entries came after it
 * @param stamp when it was there, by an authority for time stamps
 */
public record CheckedSignature(
        int number, Optional<SignatureFile> file, List<Fact> wrong, int after, Optional<TimeStamp> stamp) {

    public CheckedSignature {
        wrong = List.copyOf(wrong);
    }

    /** Whether it says what it says of this record. */
    public boolean isSound() {
        return wrong.isEmpty();
    }

    /**
     * Holds all signatures of a job against its journal.
     *
     * @param entries how many the journal has
     * @param hash of the line of entry K, of the first line for 0
     */
    public static List<CheckedSignature> all(List<Kept> kept, int entries, IntFunction<String> hash) {
        List<CheckedSignature> all = new ArrayList<>();
        for (Kept one : kept) {
            all.add(of(one, all, entries, hash));
        }
        return List.copyOf(all);
    }

    private static CheckedSignature of(
            Kept kept, List<CheckedSignature> before, int entries, IntFunction<String> hash) {
        if (kept.signature() instanceof Kept.Unreadable unreadable) {
            return new CheckedSignature(
                    kept.number(), Optional.empty(), List.of(unreadable.why()), 0, Optional.empty());
        }
        byte[] bytes = ((Kept.Bytes) kept.signature()).all();
        List<Fact> wrong = new ArrayList<>();
        Optional<SignatureFile> file = Optional.empty();
        Optional<TimeStamp> stamp = Optional.empty();
        try {
            SignatureFile read = SignatureFile.read(bytes);
            file = Optional.of(read);
            ofThisRecord(read.statement(), entries, hash).ifPresent(wrong::add);
            inOrder(kept.number(), read.statement(), before).ifPresent(wrong::add);
            otherRole(read, before).ifPresent(wrong::add);
        } catch (Unsigned none) {
            wrong.add(none.why());
        }
        try {
            stamp = kept.stamp().isPresent()
                    ? Optional.of(TimeStamp.read(kept.stamp().get(), bytes))
                    : Optional.empty();
        } catch (Unsigned none) {
            wrong.add(new SignatureFlaw.BadStamp(none.why()));
        }
        int after = file.map(read -> entries - read.statement().entries()).orElse(0);
        return new CheckedSignature(kept.number(), file, wrong, after, stamp);
    }

    private static Optional<SignatureFlaw> ofThisRecord(Statement statement, int entries, IntFunction<String> hash) {
        if (!statement.journal().equals(hash.apply(0))) {
            return Optional.of(SignatureFlaw.Whole.OF_ANOTHER_JOB);
        }
        if (statement.entries() > entries) {
            return Optional.of(new SignatureFlaw.OfMoreEntries(statement.entries(), entries));
        }
        return statement.entries() >= 0 && hash.apply(statement.entries()).equals(statement.head())
                ? Optional.empty()
                : Optional.of(new SignatureFlaw.Rewritten(statement.entries()));
    }

    private static Optional<SignatureFlaw> inOrder(int number, Statement statement, List<CheckedSignature> before) {
        Optional<CheckedSignature> last =
                before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
        int there = last.map(CheckedSignature::number).orElse(0);
        if (there < number - 1) {
            return Optional.of(new SignatureFlaw.BeforeMissing(number - 1));
        }
        boolean same =
                statement.before().equals(last.flatMap(CheckedSignature::file).map(SignatureFile::sha256));
        return same || last.isPresent() && last.get().file().isEmpty()
                ? Optional.empty()
                : Optional.of(SignatureFlaw.Whole.OTHER_BEFORE);
    }

    /** Nobody accepts their own work. */
    private static Optional<SignatureFlaw> otherRole(SignatureFile read, List<CheckedSignature> before) {
        return before.stream()
                .filter(other -> other.isSound()
                        && holdsOtherRole(
                                other, read.fingerprint(), read.statement().as()))
                .findFirst()
                .map(other -> new SignatureFlaw.OtherRole(
                        other.number(), other.file().orElseThrow().statement().as()));
    }

    /** Whether a signature is of this key in the other role of the job. */
    public static boolean holdsOtherRole(CheckedSignature other, String fingerprint, SignedAs as) {
        return other.file()
                .filter(file -> file.fingerprint().equals(fingerprint))
                .filter(file -> file.statement().as().role() != as.role())
                .isPresent();
    }
}
