package everyblade.picture.section;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Dots;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Shape;
import everyblade.spi.Station;
import everyblade.spi.View;
import everyblade.spi.Wall;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The upper half of the engine cut along its axis: walls, what each row takes of the annulus, ports where they sit along the
 * axis, and stations with the way they look. Ids of rows stand below, those of ports above.
 */
final class SideSection {

    private static final double LETTERS = 2.1;
    private static final double APART = 2.7;
    private static final double ABOVE = 19;
    private static final double BELOW = 17;
    private static final double LOOK = 4;
    /** Below this share of the greatest radius it is worth showing the axis. */
    private static final double SHOWN_TO_AXIS = 0.45;

    private final Drawn drawn;
    private final CutPlane plane;

    private SideSection(Drawn drawn, CutPlane plane) {
        this.drawn = drawn;
        this.plane = plane;
    }

    /** Empty if the model says nothing of where things lie along the axis. */
    static Optional<List<Group>> of(Drawn drawn, Box box) {
        SectionBounds bounds = SectionBounds.of(drawn);
        if (bounds.isEmpty()) {
            return Optional.empty();
        }
        Box field = box.inside(4, ABOVE, 4, BELOW);
        SideSection section = new SideSection(drawn, CutPlane.of(bounds, field, SHOWN_TO_AXIS));
        return Optional.of(section.groups());
    }

    private List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        groups.add(axis());
        for (Row row : drawn.model().rows()) {
            row(row).ifPresent(groups::add);
        }
        for (Wall wall : drawn.model().walls()) {
            groups.add(new Group(
                    drawn.words().say("section.wall", wall.id()),
                    List.of(curve(wall.curve(), Style.lined(Ink.LINE, 0.35)))));
        }
        groups.add(Group.of(rowLabels()));
        groups.addAll(ports());
        groups.addAll(stations());
        return groups;
    }

    private Group axis() {
        if (!plane.showsAxis()) {
            Point at = new Point(plane.field().corner().x(), plane.field().bottom() + BELOW - 1);
            String words = drawn.words().say("section.axisBelow", Math.round(plane.lowest()));
            return Group.of(List.of(Item.of(Text.upright(at, words, LETTERS, Anchor.START), Ink.FAINT)));
        }
        double y = plane.at(0, 0).y();
        List<List<Point>> dashes = new ArrayList<>();
        for (double x = plane.field().corner().x(); x < plane.field().right(); x += 8) {
            dashes.add(List.of(
                    new Point(x, y), new Point(Math.min(x + 6, plane.field().right()), y)));
        }
        return new Group(
                drawn.words().say("section.axis"), List.of(Item.of(new Strokes(dashes), Style.lined(Ink.FAINT, 0.15))));
    }

    private Optional<Group> row(Row row) {
        if (row.shape().orElse(null) instanceof Shape.Liner liner) {
            return Optional.of(new Group(
                    told(row, drawn.words()),
                    List.of(
                            curve(liner.outer(), Style.lined(Ink.SEEN, 0.5)),
                            curve(liner.inner(), Style.lined(Ink.SEEN, 0.5)))));
        }
        return drawn.surface(row)
                .map(surface -> new Group(told(row, drawn.words()), List.of(Item.of(area(surface), style(row)))));
    }

    private Polygon area(RowSurface surface) {
        List<Point> front = new ArrayList<>();
        List<Point> rear = new ArrayList<>();
        for (RowSurface.Extent extent : surface.outline()) {
            front.add(plane.at(extent.front(), extent.radius()));
            rear.add(plane.at(extent.rear(), extent.radius()));
        }
        Collections.reverse(rear);
        front.addAll(rear);
        return new Polygon(front);
    }

    /** Rotors are tinted, what stands still is white. */
    static Style style(Row row) {
        return Style.both(row.kind() == RowKind.ROTOR ? Ink.PART_WASH : Ink.PAPER, Ink.LINE, 0.15);
    }

    static String told(Row row, Words words) {
        return words.say("section.row", row.name(), row.id(), row.kind(), row.count());
    }

    private Item curve(List<MeridionalPoint> points, Style style) {
        return Item.of(
                new Strokes(List.of(points.stream()
                        .map(point -> plane.at(point.x(), point.r()))
                        .toList())),
                style);
    }

    /** Each with a thin line to the foot of its row. */
    private List<Item> rowLabels() {
        List<Row> rows = new ArrayList<>();
        List<Point> feet = new ArrayList<>();
        for (Row row : drawn.model().rows()) {
            foot(row).ifPresent(foot -> {
                rows.add(row);
                feet.add(foot);
            });
        }
        double top = plane.field().bottom() + 1.5;
        List<Double> places = spread(feet);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Point at = new Point(places.get(i), top + 1);
            items.add(Item.of(
                    new Strokes(
                            List.of(List.of(feet.get(i), new Point(feet.get(i).x(), top - 1.2), at))),
                    Style.lined(Ink.FAINT, 0.1)));
            String words = rows.get(i).id() + " · " + rows.get(i).count();
            items.add(Item.of(new Text(at.plus(-0.7, 0.8), words, LETTERS, Anchor.START, 90), Ink.LINE));
        }
        return items;
    }

    private Optional<Point> foot(Row row) {
        if (row.shape().orElse(null) instanceof Shape.Liner liner) {
            List<MeridionalPoint> inner = liner.inner();
            MeridionalPoint middle = inner.get(inner.size() / 2);
            return Optional.of(plane.at(middle.x(), middle.r()));
        }
        return drawn.surface(row)
                .map(RowSurface::outline)
                .filter(outline -> !outline.isEmpty())
                .map(outline -> plane.at(
                        (outline.get(0).front() + outline.get(0).rear()) / 2,
                        outline.get(0).radius()));
    }

    private List<Group> ports() {
        List<Port> ports = drawn.model().ports().stream()
                .filter(port -> port.x().isPresent())
                .toList();
        double bottom = plane.field().corner().y() - 1.5;
        List<Point> heads = ports.stream()
                .map(port -> new Point(plane.at(port.x().getAsDouble(), 0).x(), bottom))
                .toList();
        List<Double> places = spread(heads);
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < ports.size(); i++) {
            Port port = ports.get(i);
            Point end = plane.at(port.x().getAsDouble(), plane.casingAt(port.x().getAsDouble()));
            Point bend = new Point(end.x(), bottom + 1.2);
            Point head = new Point(places.get(i), bottom - 1);
            String clock =
                    port.clock().isPresent() ? " · " + Math.round(port.clock().getAsDouble()) + "°" : "";
            groups.add(new Group(
                    drawn.words().say("section.port", port.id(), port.name()),
                    List.of(
                            Item.of(new Strokes(List.of(List.of(head, bend, end))), Style.lined(Ink.ALERT, 0.15)),
                            Item.of(
                                    new Polygon(List.of(end, end.plus(-0.8, -2), end.plus(0.8, -2))),
                                    Style.filled(Ink.ALERT)),
                            Item.of(
                                    new Text(head.plus(0.7, -0.8), port.id() + clock, LETTERS, Anchor.START, -90),
                                    Ink.LINE))));
        }
        return groups;
    }

    private List<Double> spread(List<Point> points) {
        return Labels.spread(
                points.stream().map(Point::x).toList(),
                APART,
                plane.field().corner().x(),
                plane.field().right());
    }

    /** A dot where the scope tip stands, and a line the way it looks, as far as that lies in the plane of the picture. */
    private List<Group> stations() {
        List<Group> groups = new ArrayList<>();
        for (View view : drawn.model().views()) {
            for (Station station : view.stations()) {
                Point at = plane.at(station.x(), station.r());
                Station.Heading forward = station.forward();
                double length = StrictMath.sqrt(forward.axial() * forward.axial()
                        + forward.tangential() * forward.tangential()
                        + forward.radial() * forward.radial());
                Point to = at.plus(LOOK * forward.axial() / length, -LOOK * forward.radial() / length);
                groups.add(new Group(
                        drawn.words().say("section.station", station.id(), view.id(), view.row()),
                        List.of(
                                Item.of(Strokes.line(at, to), Style.lined(Ink.SEEN, 0.2)),
                                Item.of(new Dots(List.of(at), 0.55), Style.filled(Ink.SEEN)))));
            }
        }
        return groups;
    }
}
