package everyblade.fleet;

import java.util.List;

/**
 * Jobs that were gone on with in two ways: what the store did not take.
 *
 * @param store in which they are told of
 */
public record StorePartings(Store store) {

    /**
     * One of them.
     *
     * @param chain hash of the first line of the journal or review
     * @param at number of the first line that differs
     * @param by who said that line there
     * @param when they said it
     * @param place where the other continuation is
     * @param toldBy who wanted to bring it
     */
    public record Parting(String chain, int at, String by, String when, String place, String toldBy) {}

    /** All that the user may see, the newest last. */
    public List<Parting> all() throws StoreRefusal {
        return store.ask(
                "SELECT chain, n, said_by, said_at, place, told_by FROM everyblade.parting ORDER BY id",
                row -> new Parting(
                        row.getString(1),
                        row.getInt(2),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        row.getString(6)));
    }
}
