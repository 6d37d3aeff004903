package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Remark;
import java.util.List;

/**
 * What people said of single cells of one row; gathered once, for it is asked of thousands of cells.
 *
 * @param remarks of one kind
 */
record Remarked(List<Remark> remarks) {

    static Remarked of(Coverage coverage, String row, Remark.What what) {
        return new Remarked(coverage.situation().ledger().remarks().stream()
                .filter(remark -> remark.what() == what && remark.row().equals(row))
                .toList());
    }

    boolean has(int airfoil, int zone) {
        for (Remark remark : remarks) {
            if (remark.airfoils().get(airfoil - 1) && remark.zones().contains(zone)) {
                return true;
            }
        }
        return false;
    }
}
