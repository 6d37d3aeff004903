package everyblade.record;

import everyblade.fact.Fact;
import everyblade.json.PlainFile;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why a disk failed. */
public sealed interface DiskFailure extends Fact {

    /** What needs no particulars. */
    enum Known implements DiskFailure {
        NOT_THERE,
        NOT_ALLOWED,
        NAME_TAKEN
    }

    /**
     * What is there is not opened for what it is.
     *
     * @param name of the file or folder
     * @param megabytes that such a file has at most, where it has more
     */
    record NotPlain(PlainFile.NotPlain.Kind kind, String name, long megabytes) implements DiskFailure {}

    /** @param reason in the words of the operating system */
    record Refused(String reason) implements DiskFailure {}

    /** What a failure was. */
    static DiskFailure of(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return Known.NOT_THERE;
        }
        if (failure instanceof PlainFile.NotPlain notPlain) {
            return new NotPlain(notPlain.kind(), notPlain.name(), notPlain.megabytes());
        }
        if (failure instanceof AccessDeniedException) {
            return Known.NOT_ALLOWED;
        }
        if (failure instanceof FileAlreadyExistsException || failure instanceof DirectoryNotEmptyException) {
            return Known.NAME_TAKEN;
        }
        String reason = failure instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : String.valueOf(failure.getMessage());
        return new Refused(reason.replaceAll("\\R", " "));
    }
}
