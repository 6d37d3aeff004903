package everyblade.window.author;

import java.util.Optional;

/**
 * Tells when a folder is to be read again: once its stamp differs from the one that was read and no longer changes from look
 * to look, so that nothing is read while it is being written. Never changes.
 *
 * @param read the stamp that was read last
 * @param last the stamp of the last look
 * @param isDue whether the folder is to be read now
 */
public record Watch(Optional<Stamp> read, Optional<Stamp> last, boolean isDue) {

    /** Before anything was read. */
    public static final Watch FIRST = new Watch(Optional.empty(), Optional.empty(), false);

    /** After the folder was read, and its files had this stamp just before. */
    public Watch read(Stamp before) {
        return new Watch(Optional.of(before), last, false);
    }

    /** After another look at the folder. When it says that it is due, it counts this stamp as read. */
    public Watch looked(Stamp now) {
        Optional<Stamp> seen = Optional.of(now);
        boolean settled = seen.equals(last) && !seen.equals(read);
        return new Watch(settled ? seen : read, seen, settled);
    }
}
