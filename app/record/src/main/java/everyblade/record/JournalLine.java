package everyblade.record;

import everyblade.core.entry.Entry;
import java.time.Instant;

/**
 * One entry as the journal keeps it.
 *
 * @param k number of the entry, from 1
 * @param entry what was kept; in one that was read back every column is 1, since the journal does not keep columns
 * @param hash of this line and all before it, 64 hexadecimal digits
 */
public record JournalLine(int k, Addition entry, String hash) {

    /** As it was said. */
    public String text() {
        return entry.text();
    }

    /** What it says. */
    public Entry means() {
        return entry.means();
    }

    /** When, UTC. */
    public Instant at() {
        return entry.at();
    }
}
