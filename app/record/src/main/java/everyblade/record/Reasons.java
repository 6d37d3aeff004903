package everyblade.record;

import everyblade.json.PlainFile;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Says in words for a person why a disk failed. */
final class Reasons {

    private Reasons() {}

    static String of(IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return "it is not there";
        }
        if (failure instanceof PlainFile.NotPlain notPlain) {
            return notPlain.getMessage();
        }
        if (failure instanceof AccessDeniedException) {
            return "it may not be opened by this user";
        }
        if (failure instanceof FileAlreadyExistsException || failure instanceof DirectoryNotEmptyException) {
            return "the name is taken";
        }
        String reason = failure instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : String.valueOf(failure.getMessage());
        return "the disk refused (" + reason.replaceAll("\\R", " ") + ")";
    }
}
