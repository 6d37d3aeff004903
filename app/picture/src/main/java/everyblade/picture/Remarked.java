package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Remark;
import java.util.List;

/**
 * What people said of single cells of one row that shows in their looks; gathered once, for it is asked of thousands of
 * cells.
 *
 * @param stated seen, by a picture
 * @param found damaged
 */
record Remarked(List<Remark> stated, List<Remark> found) {

    static Remarked of(Coverage coverage, String row) {
        return new Remarked(of(coverage, row, Remark.What.STATED), of(coverage, row, Remark.What.FOUND));
    }

    private static List<Remark> of(Coverage coverage, String row, Remark.What what) {
        return coverage.situation().ledger().remarks().stream()
                .filter(remark -> remark.what() == what && remark.row().equals(row))
                .toList();
    }

    boolean isStated(int airfoil, int zone) {
        return any(stated, airfoil, zone);
    }

    boolean isDamaged(int airfoil, int zone) {
        return any(found, airfoil, zone);
    }

    private static boolean any(List<Remark> remarks, int airfoil, int zone) {
        for (Remark remark : remarks) {
            if (remark.airfoils().get(airfoil - 1) && remark.zones().contains(zone)) {
                return true;
            }
        }
        return false;
    }
}
