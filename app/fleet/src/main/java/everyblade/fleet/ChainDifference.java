package everyblade.fleet;

import everyblade.record.SealedLine;
import java.util.List;

/** What is to be done so that a chain is the same here and in the store. */
sealed interface ChainDifference {

    /** It is the same. */
    record Same() implements ChainDifference {}

    /** Lines from this number on are only here. */
    record Send(int from) implements ChainDifference {}

    /** Lines from this number on are only in the store. */
    record Bring(int from) implements ChainDifference {}

    /** It goes on in two ways, from this line on; nothing can be done by a program. */
    record Parted(int at) implements ChainDifference {}

    /** Tells the hash of a line of the store, by its number. */
    @FunctionalInterface
    interface There {

        String hash(int n) throws StoreRefusal;
    }

    /**
     * Compares.
     *
     * @param here all lines here
     * @param last number of the last line there; −1 if there is none
     * @param there asked for the fewest lines that tell it; hashes hold everything before them
     */
    static ChainDifference of(List<SealedLine> here, int last, There there) throws StoreRefusal {
        int common = Math.min(here.size() - 1, last);
        if (common >= 0 && !there.hash(common).equals(here.get(common).hash())) {
            return new Parted(firstOtherwise(here, common, there));
        }
        if (here.size() - 1 == last) {
            return new Same();
        }
        return here.size() - 1 > last ? new Send(last + 1) : new Bring(here.size());
    }

    /** The first line that differs, where the last common number differs: all after it do. */
    private static int firstOtherwise(List<SealedLine> here, int common, There there) throws StoreRefusal {
        int same = -1;
        int other = common;
        while (other - same > 1) {
            int middle = (same + other) >>> 1;
            if (there.hash(middle).equals(here.get(middle).hash())) {
                same = middle;
            } else {
                other = middle;
            }
        }
        return other;
    }
}
