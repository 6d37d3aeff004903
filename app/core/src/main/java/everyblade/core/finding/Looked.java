package everyblade.core.finding;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;

/** What was looked at, as far as a judgement of findings asks. */
public interface Looked {

    /** Whether all these zones of an airfoil were seen as far as they can be. */
    boolean at(String row, int airfoil, ZoneSet zones);

    /** Whether nothing that the task asks for is left of a row. */
    boolean atAllOf(String row);

    /** What a coverage says. */
    static Looked in(Coverage coverage) {
        return new Looked() {

            @Override
            public boolean at(String row, int airfoil, ZoneSet zones) {
                RowCoverage seen = coverage.row(row);
                for (int zone = 0; zone < seen.zoning().size(); zone++) {
                    State state = seen.state(airfoil, zone);
                    if (zones.contains(zone) && !state.isDone()) {
                        return false;
                    }
                }
                return true;
            }

            @Override
            public boolean atAllOf(String row) {
                return !Gaps.in(coverage.row(row));
            }
        };
    }
}
