package everyblade.record;

import everyblade.fact.Fact;
import java.util.Optional;

/** Why a folder is none, or does not become one, that holds a job. */
sealed interface FolderFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements FolderFlaw {
        NO_JOURNAL,
        SOMETHING_THERE,
        WHOLE_DISK,
        OTHER_FILE
    }

    /** What the job would begin with cannot be written. */
    record Unkeepable(Fact why) implements FolderFlaw {}

    /** @param left what could not be removed again */
    record NotMade(Fact why, Optional<String> left) implements FolderFlaw {}

    /** A file came that no job has. */
    record NoFileOfAJob(String name) implements FolderFlaw {}

    record InUse(LockHolder holder) implements FolderFlaw {}

    record TooManyFiles(int most) implements FolderFlaw {}

    record TooLarge(long megabytes) implements FolderFlaw {}
}
