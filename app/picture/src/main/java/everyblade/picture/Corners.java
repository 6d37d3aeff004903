package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Shape.Polygon;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * The words in the corners of a map on a screen, each on a card of its own: from where the engine is seen and which way
 * it turns; the row in view; the legend; the rows by name.
 *
 * @param cards in the corners of the sheet
 * @param width of the sheet, mm
 * @param height of the sheet, mm
 */
record Corners(List<Placed> cards, double width, double height) {

    static final double EDGE = 3;

    private static final double APART = 2;

    /** A card and where its upper left corner lies. */
    record Placed(Card card, Point at) {

        /** What it covers. */
        Polygon ground() {
            return Polygon.box(at.x() - EDGE / 2, at.y() - EDGE / 2, card.width() + EDGE, card.height() + EDGE);
        }

        boolean covers(Point place) {
            Point first = ground().corners().get(0);
            Point last = ground().corners().get(2);
            return card.height() > 0
                    && place.x() >= first.x()
                    && place.x() < last.x()
                    && place.y() >= first.y()
                    && place.y() < last.y();
        }
    }

    static Corners of(Coverage coverage, MapFacts facts, ScreenView view) {
        double right = view.width() - EDGE;
        double bottom = view.height() - EDGE;
        CornerCards cards = CornerCards.of(coverage, view);
        Card facing = cards.facing();
        Card row = cards.inView();
        Card legend = cards.legend();
        Card rows = cards.rows(facts);
        return new Corners(
                List.of(
                        new Placed(facing, new Point(EDGE, EDGE)),
                        new Placed(row, new Point(right - row.width(), EDGE)),
                        new Placed(legend, new Point(EDGE, bottom - legend.height())),
                        new Placed(rows, new Point(right - rows.width(), bottom - rows.height()))),
                view.width(),
                view.height());
    }

    /** Radius of the largest disc about the middle of the sheet that leaves every card free. */
    double radius() {
        double radius = Math.min(width, height) / 2 - 1;
        for (Placed placed : cards) {
            double dx = gap(placed.at().x(), placed.card().width(), width);
            double dy = gap(placed.at().y(), placed.card().height(), height);
            radius = Math.min(radius, Math.hypot(dx, dy) - APART);
        }
        return radius;
    }

    /** How far an interval lies from the middle of a length. */
    private static double gap(double from, double size, double length) {
        return Math.max(0, Math.max(from - length / 2, length / 2 - from - size));
    }

    /** Whether a card hides a place. */
    boolean cover(Point place) {
        return cards.stream().anyMatch(placed -> placed.covers(place));
    }

    /** The cards, each a group that begins with the ground it covers. */
    List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        for (Placed placed : cards) {
            List<Item> items = new ArrayList<>();
            if (placed.card().height() > 0) {
                items.add(Item.of(placed.ground(), Style.filled(Ink.PAPER)));
                items.addAll(placed.card().items().apply(placed.at()));
            }
            groups.add(Group.of(items));
        }
        return groups;
    }
}
