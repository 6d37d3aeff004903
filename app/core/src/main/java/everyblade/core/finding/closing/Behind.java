package everyblade.core.finding.closing;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Remark;
import everyblade.fact.Fact;

/**
 * What stands behind the words that nothing is left: what was accepted as not seen, what is not asked for, what was taken
 * out. Nowhere is it said without them.
 *
 * @param accepted cells that were accepted as not seen and are not
 * @param canBeSeen of these, those that views can show
 * @param narrowed rows of which the task asks only for parts
 * @param taken entries of weight that were taken out
 */
public record Behind(int accepted, int canBeSeen, int narrowed, int taken) implements Fact {

    /** Of a record. */
    public static Behind of(Fold fold, Coverage coverage) {
        return of(coverage, TakenOut.voided(new TakenOut(fold).items()));
    }

    /** @param taken entries of weight that were taken out */
    static Behind of(Coverage coverage, int taken) {
        int accepted = 0;
        int canBeSeen = 0;
        for (var row : coverage.rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    var why = row.why(n, zone);
                    if (why.isPresent() && row.remarked(Remark.What.ACCEPTED, n, zone)) {
                        accepted++;
                        canBeSeen += why.get().outOfReach() ? 0 : 1;
                    }
                }
            }
        }
        int narrowed = (int) coverage.rows().stream()
                .filter(row -> !row.asked().equals(row.zoning().all()))
                .count();
        return new Behind(accepted, canBeSeen, narrowed, taken);
    }

    /** Whether there is anything. */
    public boolean any() {
        return accepted + narrowed + taken > 0;
    }
}
