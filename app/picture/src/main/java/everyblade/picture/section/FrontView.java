package everyblade.picture.section;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Dots;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Style;
import everyblade.spi.Landmark;
import everyblade.spi.Port;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One row seen from aft looking forward, airfoil 1 where its phase puts it, else at 12 o'clock: every airfoil as the
 * cylinders round the axis tell it, numbers, landmarks, and the ports through which the row is looked at.
 */
final class FrontView {

    private static final double RIM = 11;
    private static final double LETTERS = 2.3;
    /** What the name of a port takes round the rim, degrees to either side. */
    private static final double PORT_LETTERS = 10;

    private static final double NUMBERS_APART = 5;
    /** How far in an airfoil reaches of which only the count is known, as a share of the rim. */
    private static final double COUNTED_ONLY = 0.62;

    private final Drawn drawn;
    private final Row row;
    private final Optional<RowSurface> surface;
    private final Polar polar;
    private final double radius;
    private final double scale;

    private FrontView(Drawn drawn, Row row, Box box) {
        this.drawn = drawn;
        this.row = row;
        this.surface = drawn.surface(row);
        this.polar = new Polar(box.middle(), false);
        this.radius = Math.min(box.width(), box.height()) / 2 - RIM;
        this.scale = surface.map(one -> radius / one.mostRadius()).orElse(1.0);
    }

    static List<Group> of(Drawn drawn, Row row, Box box) {
        return new FrontView(drawn, row, box).groups();
    }

    private List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        groups.add(clock());
        List<RowSurface.Extent> outline = surface.map(RowSurface::outline).orElse(List.of());
        for (int airfoil = 1; airfoil <= row.count(); airfoil++) {
            Polygon area = outline.isEmpty() ? counted(airfoil) : airfoil(outline, clockOf(airfoil));
            groups.add(new Group(
                    drawn.words().say("section.airfoil", drawn.words().airfoil(row), airfoil),
                    List.of(Item.of(area, SideSection.style(row)))));
        }
        groups.add(Group.of(numbers()));
        ports().forEach(port -> groups.add(port(port)));
        return groups;
    }

    private double clockOf(int airfoil) {
        return row.phase().orElse(0) + row.numbering().sign() * (airfoil - 1) * 360.0 / row.count();
    }

    private Group clock() {
        List<Item> items = new ArrayList<>();
        items.add(Item.of(new Patch(polar, 0, 360, radius + 0.3, radius + 0.3), Style.lined(Ink.FAINT, 0.12)));
        for (int clock = 0; clock < 360; clock += 30) {
            items.add(Item.of(
                    Strokes.line(polar.at(clock, radius + 0.3), polar.at(clock, radius + (clock % 90 == 0 ? 2 : 1.2))),
                    Style.lined(Ink.FAINT, 0.12)));
            if (clock % 90 == 0 && portsAwayFrom(clock)) {
                Point at = polar.at(clock, radius + 8.5).plus(0, 0.8);
                items.add(Item.of(Text.upright(at, clock + "°", LETTERS, Anchor.MIDDLE), Ink.FAINT));
            }
        }
        return new Group(drawn.words().say("section.clock"), items);
    }

    private boolean portsAwayFrom(double clock) {
        return ports().stream()
                .noneMatch(port ->
                        Math.abs(StrictMath.IEEEremainder(port.clock().orElseThrow() - clock, 360)) < PORT_LETTERS);
    }

    private Polygon airfoil(List<RowSurface.Extent> outline, double clock) {
        List<Point> first = new ArrayList<>();
        List<Point> last = new ArrayList<>();
        for (RowSurface.Extent extent : outline) {
            first.add(polar.at(clock + StrictMath.toDegrees(extent.first()), scale * extent.radius()));
            last.add(polar.at(clock + StrictMath.toDegrees(extent.last()), scale * extent.radius()));
        }
        Collections.reverse(last);
        first.addAll(last);
        return new Polygon(first);
    }

    /** A sign for an airfoil whose shape is not known. */
    private Polygon counted(int airfoil) {
        double clock = clockOf(airfoil);
        double half = 360.0 / row.count() / 6;
        double root = COUNTED_ONLY * radius;
        return new Polygon(List.of(
                polar.at(clock - half, root),
                polar.at(clock - half, radius),
                polar.at(clock + half, radius),
                polar.at(clock + half, root)));
    }

    /** As many as there is room for; airfoil 1 and the landmarks always, with a dot at the landmarks. */
    private List<Item> numbers() {
        int step = (int) Math.ceil(NUMBERS_APART * row.count() / (2 * Math.PI * (radius + 4)));
        List<Integer> marked = row.landmarks().stream().map(Landmark::airfoil).toList();
        List<Item> items = new ArrayList<>();
        for (int airfoil = 1; airfoil <= row.count(); airfoil++) {
            boolean landmark = marked.contains(airfoil);
            if (landmark) {
                items.add(Item.of(
                        new Dots(List.of(polar.at(clockOf(airfoil), radius + 1.4)), 0.7), Style.filled(Ink.ALERT)));
            }
            int number = airfoil;
            boolean hasRoom = airfoil + step <= row.count() + 1
                    && marked.stream().noneMatch(mark -> Math.abs(mark - number) < step);
            if (landmark || airfoil == 1 || (airfoil - 1) % step == 0 && hasRoom) {
                Point at = polar.at(clockOf(airfoil), radius + 4.2).plus(0, 0.8);
                items.add(Item.of(
                        Text.upright(at, Integer.toString(airfoil), LETTERS, Anchor.MIDDLE),
                        landmark ? Ink.ALERT : Ink.LINE));
            }
        }
        return items;
    }

    /** Those through which the row is looked at and whose clock angle is stated. */
    private List<Port> ports() {
        return drawn.model().views().stream()
                .filter(view -> view.row().equals(row.id()))
                .map(view -> view.port().flatMap(drawn.model()::port).orElse(null))
                .filter(Objects::nonNull)
                .distinct()
                .filter(port -> port.clock().isPresent())
                .toList();
    }

    private Group port(Port port) {
        double clock = port.clock().orElseThrow();
        Point tip = polar.at(clock, radius + 0.3);
        Point words = polar.at(clock, radius + 9.5).plus(0, 0.8);
        return new Group(
                drawn.words().say("section.port", port.id(), port.name()),
                List.of(
                        Item.of(
                                new Polygon(List.of(
                                        tip, polar.at(clock - 1.5, radius + 2.6), polar.at(clock + 1.5, radius + 2.6))),
                                Style.filled(Ink.SEEN)),
                        Item.of(Text.upright(words, port.id(), LETTERS, Anchor.MIDDLE), Ink.SEEN)));
    }
}
