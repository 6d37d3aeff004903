package everyblade.core.turning;

import everyblade.core.entry.ZoneSet;
import java.util.BitSet;

/**
 * Something said about single cells of a row.
 *
 * @param entry the entry that says so
 * @param what is said
 * @param row of the cells
 * @param airfoils bit i stands for airfoil i + 1
 * @param zones of each of these airfoils
 */
public record Remark(int entry, What what, String row, BitSet airfoils, ZoneSet zones) {

    /** What is said. */
    public enum What {
        /** Something was found wrong there. */
        FOUND,
        /** Someone means to come back there. */
        RECHECK,
        /** Someone states with a picture that it was seen. */
        STATED,
        /** Someone accepts, with a reason, that it was not seen. */
        ACCEPTED,
        /** Someone accepts so whatever of it no view shows. */
        ACCEPTED_UNSHOWN;

        /** Whether it is one way to say this. */
        public boolean says(What what) {
            return this == what || this == ACCEPTED_UNSHOWN && what == ACCEPTED;
        }
    }
}
