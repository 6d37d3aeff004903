package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Scene;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;

/**
 * The map of all rows, on A3 across: one wheel of the rows that turn and one of those that stand still, so that each
 * ring is twice as deep as in one wheel; under them a line for each row, the legend and the title block.
 */
final class AllRows {

    private static final double RADIUS = 88;
    private static final double WHEEL_Y = 119;
    private static final double FOOT_Y = 223;
    private static final double FOOT_HEIGHT = 66;

    private AllRows() {}

    static Scene of(Coverage coverage, MapFacts facts, MapStyle style) {
        List<Group> groups = new ArrayList<>();
        groups.add(Sheet.heading(facts, facts.words().say("sheet.all")));
        List<List<RowCoverage>> wheels = wheels(coverage.rows());
        for (int i = 0; i < wheels.size(); i++) {
            List<RowCoverage> rows = wheels.get(i);
            String name = facts.words().say(rows.stream().anyMatch(AllRows::turns) ? "rows.turn" : "rows.stand");
            double x = Sheet.WIDTH * (2 * i + 1) / (2 * wheels.size());
            Polar polar = new Polar(new Point(x, WHEEL_Y), style.facing().mirrors());
            groups.addAll(new Wheel(name, polar, RADIUS, style.facing(), facts.words()).rings(coverage, rows));
            groups.add(RowTable.at(
                    new Point(Sheet.MARGIN + 104 * i, FOOT_Y), 100, FOOT_HEIGHT, name, coverage, rows, facts.words()));
        }
        groups.add(Legend.at(new Point(223, FOOT_Y), 2, 47, facts.words()));
        groups.addAll(keys(coverage.rows(), facts.words()));
        groups.add(TitleBlock.at(new Point(322, FOOT_Y), 89, coverage, coverage.rows(), facts, style));
        return new Scene(
                Sheet.WIDTH,
                Sheet.HEIGHT,
                facts.words().say("sheet.title", facts.model(), facts.serial()),
                facts.words()
                        .say(
                                "sheet.summary",
                                facts.words().say("sheet.rows"),
                                facts.words().facing(style.facing()),
                                Shares.summary(coverage.rows(), facts.words())),
                groups);
    }

    private static boolean turns(RowCoverage row) {
        return row.row().kind() == RowKind.ROTOR;
    }

    private static List<List<RowCoverage>> wheels(List<RowCoverage> rows) {
        return List.of(
                        rows.stream().filter(AllRows::turns).toList(),
                        rows.stream().filter(row -> !turns(row)).toList())
                .stream()
                .filter(wheel -> !wheel.isEmpty())
                .toList();
    }

    /** Keys to as many kinds of airfoil as there is room for. */
    private static List<Group> keys(List<RowCoverage> rows, MapWords words) {
        double column = 9;
        double room = 95;
        List<AirfoilKey> drawn = new ArrayList<>();
        List<Group> groups = new ArrayList<>();
        Point at = new Point(222, FOOT_Y + 46);
        for (AirfoilKey key : rows.stream().map(AirfoilKey::of).toList()) {
            if (key.zoning().size() > 1
                    && drawn.stream().noneMatch(key::isLike)
                    && at.x() + key.width(column) <= 222 + room) {
                Group group = key.at(at, column, 8, 1.9, words);
                groups.add(group);
                drawn.add(key);
                at = at.plus(key.width(column) + 2, 0);
            }
        }
        if (!drawn.isEmpty()) {
            groups.add(Group.of(List.of(Item.of(
                    Text.upright(new Point(223, FOOT_Y + 43.5), words.say("key.heading"), 2.1, Anchor.START),
                    Ink.FAINT))));
        }
        return groups;
    }
}
