package everyblade.core.finding.growth;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.gap.Gap;
import java.util.Comparator;
import java.util.List;

/** Gaps, those first that were not seen last time either. */
public final class LeftAgain {

    private LeftAgain() {}

    /**
     * A gap.
     *
     * @param gap of this record
     * @param lastTimeToo whether any of its cells was not seen last time either
     */
    public record Left(Gap gap, boolean lastTimeToo) {}

    /** All gaps, in their order but for that. */
    public static List<Left> first(List<Gap> gaps, Coverage lastTime) {
        return gaps.stream()
                .map(gap -> new Left(gap, isLeftIn(gap, lastTime)))
                .sorted(Comparator.comparing(left -> !left.lastTimeToo()))
                .toList();
    }

    private static boolean isLeftIn(Gap gap, Coverage lastTime) {
        if (!lastTime.situation().engine().rows().containsKey(gap.row().id())) {
            return false;
        }
        RowCoverage row = lastTime.row(gap.row().id());
        return gap.airfoils().stream().filter(n -> n <= row.row().count()).anyMatch(n -> {
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                State state = row.state(n, zone);
                if (gap.zones().contains(zone) && !state.isDone()) {
                    return true;
                }
            }
            return false;
        });
    }
}
