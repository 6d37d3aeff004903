package everyblade.picture.sight;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Mesh;
import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Borders of the zones over the facets, and in a corner of each zone the letters by which entries name it.
 *
 * @param zoning of the row
 * @param mesh of one airfoil
 * @param sides where its facets lie
 * @param words in which they are told
 */
record ZoneMarks(Zoning zoning, Mesh mesh, BothSides sides, Words words) {

    private static final double SIZE = 2.2;
    private static final double BORDER = 0.45;

    /** A box on the sheet. */
    private record Box(double left, double top, double right, double bottom) {

        static Box of(DrawnShape shape) {
            List<Point> corners = shape instanceof Patch patch
                    ? List.of(patch.at(0, 0), patch.at(1, 1))
                    : ((Polygon) shape).corners();
            return new Box(
                    corners.stream().mapToDouble(Point::x).min().orElseThrow(),
                    corners.stream().mapToDouble(Point::y).min().orElseThrow(),
                    corners.stream().mapToDouble(Point::x).max().orElseThrow(),
                    corners.stream().mapToDouble(Point::y).max().orElseThrow());
        }

        Box with(Box other) {
            return new Box(
                    Math.min(left, other.left),
                    Math.min(top, other.top),
                    Math.max(right, other.right),
                    Math.max(bottom, other.bottom));
        }
    }

    /** A group for each zone on each side. */
    List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        for (int zone = 0; zone < zoning.size(); zone++) {
            for (int side = 0; side < 2; side++) {
                int inZone = zone;
                int onSide = side;
                String name = zoning.names().get(zone);
                IntStream.range(0, mesh.faceCount())
                        .filter(facet -> mesh.zone(facet) == inZone && sides.sides()[facet] == onSide)
                        .mapToObj(facet -> Box.of(sides.shapes().get(facet)))
                        .reduce(Box::with)
                        .ifPresent(box -> groups.add(new Group(words.say("unrolled.zone", name), marked(box, name))));
            }
        }
        return groups;
    }

    private List<Item> marked(Box box, String name) {
        List<Item> items = new ArrayList<>();
        // Only on a grid do zones fill boxes.
        if (sides.inStrips()) {
            items.add(Item.of(
                    Polygon.box(box.left, box.top, box.right - box.left, box.bottom - box.top),
                    Style.lined(Ink.LINE, BORDER)));
        }
        String letters = letters(name);
        double width = Lettering.length(letters, SIZE) * Lettering.SLACK + 1.2;
        items.add(
                Item.of(Polygon.box(box.left + 0.6, box.top + 0.6, width, 3.2), Style.both(Ink.PAPER, Ink.LINE, 0.12)));
        items.add(Item.of(
                Text.upright(new Point(box.left + 0.6 + width / 2, box.top + 3), letters, SIZE, Anchor.MIDDLE),
                Ink.LINE));
        return items;
    }

    /** First letters run together; a numbered span band keeps its number. */
    static String letters(String zone) {
        StringBuilder letters = new StringBuilder();
        for (String word : zone.split("/")) {
            letters.append(word.matches("s[0-9]+") || word.equals("all") ? word : word.substring(0, 1));
        }
        return letters.toString();
    }
}
