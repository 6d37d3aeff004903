package everyblade.core.turning;

/**
 * What an identification found: counted angle less seen angle.
 *
 * @param entry the identification
 * @param since the identification before it, from which was counted
 * @param row whose airfoil was identified
 * @param airfoil which
 * @param degrees counted less seen angle of the shaft
 * @param explained what the stated errors allow for
 * @param pitch degrees from one airfoil to the next
 * @param outside whether it is more than the stated errors allow for
 * @param lost whether the count was lost: outside, and at least half a pitch
 * @param unlogged whether no move that was entered can hold the loss: turned without a word since a good identification
 */
public record CountError(
        int entry,
        int since,
        String row,
        int airfoil,
        double degrees,
        Uncertainty explained,
        double pitch,
        boolean outside,
        boolean lost,
        boolean unlogged) {

    /** The same, where no move that was entered can hold the loss. */
    CountError ofUnlogged() {
        return new CountError(entry, since, row, airfoil, degrees, explained, pitch, outside, lost, true);
    }

    /** By how many airfoils the count was off, without sign. */
    public long airfoils() {
        return Math.max(1, Math.round(Math.abs(degrees) / pitch));
    }
}
