package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.spi.Row;
import java.util.List;

/** The ways in which cells are laid out on a screen. */
public enum ScreenKind {
    /** All rows as rings about the axis, equally deep, each airfoil where it stands now. */
    RINGS,
    /** All rows unrolled one under the other, the chosen one zone by zone. */
    STRIPS,
    /** One row alone, unrolled over the whole sheet, each finding with its sign. */
    ROW,
    /** The row in view alone, as it stands now, with what the scope tip has before it. */
    WHEEL;

    /** Whether rows are so many that rings show those that turn and those that stand as a wheel each, side by side. */
    public static boolean twoWheels(List<Row> rows) {
        return RingPlan.isDivided(rows);
    }

    ScreenLayout layout(Coverage coverage, ScreenView view) {
        return switch (this) {
            case RINGS -> new RingsLayout(coverage, view);
            case STRIPS -> new StripsLayout(coverage, view);
            case ROW -> new RowLayout(coverage, view);
            case WHEEL -> new WheelLayout(coverage, view);
        };
    }
}
