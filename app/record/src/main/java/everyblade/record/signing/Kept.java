package everyblade.record.signing;

import everyblade.fact.Fact;
import java.util.Optional;

/**
 * A signature of a job as it lies in the folder.
 *
 * @param number in the order in which they were made, from 1
 * @param signature its bytes, or why it cannot be read
 * @param stamp the bytes of a time stamp of it, if there is one
 */
public record Kept(int number, Found signature, Optional<byte[]> stamp) {

    /** What was found where a file is named. */
    public sealed interface Found {}

    /** A file. */
    public record Bytes(byte[] all) implements Found {}

    /** A file that cannot be read, or none. */
    public record Unreadable(Fact why) implements Found {}
}
