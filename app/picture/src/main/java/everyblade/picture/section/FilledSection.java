package everyblade.picture.section;

import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Style;
import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import everyblade.spi.Wall;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The upper half of an engine cut along its axis, forward left, each row filled from the hub as far as it was seen, and its
 * ports: a triangle that is full where one is open. The surfaces are worked out once; a scene of them is then quickly made.
 */
public final class FilledSection {

    private static final double LETTERS = 3.8;
    private static final double ABOVE = 7.4;
    private static final double EDGE = 1.5;
    private static final double BETWEEN_NAMES = 1.2;
    private static final double PORT = 1.3;
    private static final double PORT_HIGH = 2.6;
    /** Room above the ports is kept where the axis would take it from the rows. */
    private static final double TO_AXIS = 0.1;

    /**
     * How far a row is, shares of what views show, together at most 1.
     *
     * @param seen seen
     * @param part seen as far as it can be
     * @param maybe only maybe seen
     */
    public record Fill(double seen, double part, double maybe) {}

    private final Drawn drawn;
    private final SectionBounds bounds;
    private final Map<String, List<RowSurface.Extent>> outlines = new HashMap<>();

    private FilledSection(Drawn drawn, SectionBounds bounds) {
        this.drawn = drawn;
        this.bounds = bounds;
        drawn.surfaces().forEach(surface -> outlines.put(surface.row().id(), surface.outline()));
    }

    /**
     * Empty of a model that says nothing of where things lie along the axis.
     *
     * @param files contents of the model's mesh files, by name
     */
    public static Optional<FilledSection> of(EngineModel model, Map<String, byte[]> files, Words words) {
        Drawn drawn = Drawn.of(model, files, words);
        SectionBounds bounds = SectionBounds.of(drawn);
        return bounds.isEmpty() || drawn.surfaces().isEmpty()
                ? Optional.empty()
                : Optional.of(new FilledSection(drawn, bounds));
    }

    /**
     * The picture on a sheet of this size, mm.
     *
     * @param fills by id of each row
     * @param chosen id of the row that is looked into; empty for none
     * @param open ids of ports that are open
     */
    public Scene scene(Map<String, Fill> fills, String chosen, Set<String> open, double width, double height) {
        Box field = new Box(new Point(EDGE, ABOVE), width - 2 * EDGE, height - ABOVE - EDGE);
        CutPlane plane = CutPlane.of(bounds, field, TO_AXIS);
        List<Group> groups = new ArrayList<>();
        for (Row row : drawn.model().rows()) {
            row(plane, row, fills.get(row.id()), row.id().equals(chosen)).ifPresent(groups::add);
        }
        for (Wall wall : drawn.model().walls()) {
            groups.add(Group.of(List.of(line(plane, wall.curve(), Style.lined(Ink.LINE, 0.3)))));
        }
        List<String> said = drawn.model().ports().stream()
                .map(Port::id)
                .filter(open::contains)
                .toList();
        groups.addAll(ports(plane, open, width));
        Words words = drawn.words();
        String ports =
                said.isEmpty() ? words.say("section.noneOpen") : words.say("section.open", String.join(", ", said));
        return new Scene(width, height, words.say("section.filled"), ports, groups);
    }

    private Optional<Group> row(CutPlane plane, Row row, Fill fill, boolean chosen) {
        Style frame = Style.lined(Ink.LINE, chosen ? 0.6 : 0.15);
        String told = SideSection.told(row, drawn.words());
        if (row.shape().orElse(null) instanceof Shape.Liner liner) {
            List<Item> items = new ArrayList<>();
            items.add(liner(plane, liner.outer(), fill));
            items.add(liner(plane, liner.inner(), fill));
            return Optional.of(new Group(told, items));
        }
        List<RowSurface.Extent> outline = outlines.get(row.id());
        if (outline == null || outline.size() < 2) {
            return Optional.empty();
        }
        List<Item> items = new ArrayList<>();
        items.add(Item.of(band(plane, outline, 0, 1), Style.filled(Ink.PAPER)));
        double part = fill.seen() + fill.part();
        double maybe = part + fill.maybe();
        fill(items, plane, outline, 0, fill.seen(), Ink.SEEN);
        fill(items, plane, outline, fill.seen(), part, Ink.PART);
        fill(items, plane, outline, part, maybe, Ink.MAYBE);
        items.add(Item.of(band(plane, outline, 0, 1), frame));
        return Optional.of(new Group(told, items));
    }

    private static void fill(
            List<Item> items, CutPlane plane, List<RowSurface.Extent> outline, double from, double to, Ink ink) {
        if (to > from) {
            items.add(Item.of(band(plane, outline, from, to), Style.filled(ink)));
        }
    }

    /** A liner has no hub to be filled from: it is done, or begun, or neither. */
    private static Item liner(CutPlane plane, List<MeridionalPoint> curve, Fill fill) {
        double done = fill.seen() + fill.part();
        Ink ink = done >= 1 ? fill.seen() >= 1 ? Ink.SEEN : Ink.PART : done + fill.maybe() > 0 ? Ink.MAYBE : Ink.FAINT;
        return line(plane, curve, Style.lined(ink, 0.8));
    }

    /** What of an airfoil lies between two shares of its height. */
    private static Polygon band(CutPlane plane, List<RowSurface.Extent> outline, double from, double to) {
        List<Point> front = new ArrayList<>();
        List<Point> rear = new ArrayList<>();
        int last = outline.size() - 1;
        add(plane, outline, from * last, front, rear);
        for (int i = (int) Math.floor(from * last) + 1; i < to * last; i++) {
            add(plane, outline, i, front, rear);
        }
        add(plane, outline, to * last, front, rear);
        java.util.Collections.reverse(rear);
        front.addAll(rear);
        return new Polygon(front);
    }

    private static void add(
            CutPlane plane, List<RowSurface.Extent> outline, double level, List<Point> front, List<Point> rear) {
        int below = Math.min(outline.size() - 2, (int) Math.floor(level));
        double share = level - below;
        RowSurface.Extent a = outline.get(below);
        RowSurface.Extent b = outline.get(below + 1);
        double radius = a.radius() + share * (b.radius() - a.radius());
        front.add(plane.at(a.front() + share * (b.front() - a.front()), radius));
        rear.add(plane.at(a.rear() + share * (b.rear() - a.rear()), radius));
    }

    /** From left to right, so that the names of open ones can give way to each other. */
    private List<Group> ports(CutPlane plane, Set<String> open, double width) {
        List<Port> placed = drawn.model().ports().stream()
                .filter(port -> port.x().isPresent())
                .sorted(Comparator.comparingDouble(port -> port.x().orElseThrow()))
                .toList();
        List<Group> groups = new ArrayList<>();
        double free = EDGE;
        for (Port port : placed) {
            boolean isOpen = open.contains(port.id());
            Point end = plane.at(port.x().orElseThrow(), plane.casingAt(port.x().orElseThrow()))
                    .plus(0, -0.4);
            List<Item> items = new ArrayList<>();
            Polygon sign = new Polygon(List.of(end, end.plus(-PORT, -PORT_HIGH), end.plus(PORT, -PORT_HIGH)));
            items.add(Item.of(sign, Style.both(isOpen ? Ink.ALERT : Ink.PAPER, Ink.LINE, 0.2)));
            if (isOpen) {
                double length = Lettering.length(port.id(), LETTERS) * Lettering.SLACK;
                double left = Math.min(Math.max(free, end.x() - length / 2), width - length);
                free = left + length + BETWEEN_NAMES;
                items.add(Item.of(
                        Text.upright(new Point(left, end.y() - PORT_HIGH - 0.6), port.id(), LETTERS, Anchor.START),
                        Ink.ALERT));
            }
            Words words = drawn.words();
            groups.add(new Group(
                    words.say(isOpen ? "section.portOpen" : "section.portShut", port.id(), port.name()), items));
        }
        return groups;
    }

    private static Item line(CutPlane plane, List<MeridionalPoint> points, Style style) {
        return Item.of(
                new Strokes(List.of(points.stream()
                        .map(point -> plane.at(point.x(), point.r()))
                        .toList())),
                style);
    }
}
