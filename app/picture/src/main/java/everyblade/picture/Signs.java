package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Letter signs at airfoils of which something was said: F for a finding, R for something to look at again, each with the
 * number of the entry that says so.
 *
 * @param remarks of one row, findings and rechecks only, in the order of their entries
 */
record Signs(List<Remark> remarks) {

    /** From the middle of a damaged cell to its sign, mm. */
    private static final double APART = 1.5;

    static Signs of(Coverage coverage, String row) {
        return new Signs(coverage.situation().ledger().remarks().stream()
                .filter(remark -> remark.row().equals(row))
                .filter(remark -> remark.what() == Remark.What.FOUND || remark.what() == Remark.What.RECHECK)
                .toList());
    }

    /** The signs round a ring, each joined to its airfoil; lengths in mm. */
    Group round(Polar polar, Standing standing, double from, double middle, double size, MapWords said) {
        Map<Integer, List<Remark>> byAirfoil = new TreeMap<>();
        for (Remark remark : remarks) {
            remark.airfoils().stream()
                    .forEach(index -> byAirfoil
                            .computeIfAbsent(index + 1, n -> new ArrayList<>())
                            .add(remark));
        }
        List<Integer> airfoils = List.copyOf(byAirfoil.keySet());
        List<String> words = airfoils.stream().map(n -> sign(byAirfoil.get(n))).toList();
        double widest =
                words.stream().mapToDouble(word -> width(word, size)).max().orElse(0);
        List<Double> directions =
                Spread.of(airfoils.stream().map(standing::clock).toList(), (widest + 0.6) / polar.scale(middle));
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < airfoils.size(); i++) {
            double clock = standing.clock(airfoils.get(i));
            Point at = polar.at(directions.get(i), middle);
            items.add(Item.of(Strokes.line(polar.at(clock, from), at), Style.lined(Ink.LINE, 0.2)));
            double width = width(words.get(i), size);
            items.add(Item.of(
                    Polygon.box(at.x() - width / 2, at.y() - 0.74 * size, width, 1.48 * size),
                    Style.both(Ink.PAPER, Ink.LINE, 0.25)));
            items.add(Item.of(
                    Text.upright(at.plus(0, Lettering.CAPITAL * size / 2), words.get(i), size, Anchor.MIDDLE),
                    Ink.LINE));
        }
        return new Group(said.say("group.signs"), items);
    }

    /** The signs on a row unrolled, each beside its first cell, where it covers no other if there is room. */
    Group beside(RowStrip strip, double size, MapWords said) {
        List<Box> taken = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        for (Remark remark : remarks) {
            for (int index : remark.airfoils().stream().toArray()) {
                int zone = Long.numberOfTrailingZeros(remark.zones().bits());
                Point cell = strip.patch(new Cell(strip.coverage().row().id(), index + 1, zone))
                        .middle();
                Box box = free(cell, width(sign(remark), size), size, taken);
                taken.add(box);
                items.add(Item.of(
                        Polygon.box(box.x, box.y, box.width, box.height), Style.both(Ink.PAPER, Ink.LINE, 0.2)));
                items.add(Item.of(
                        Text.upright(
                                new Point(box.x + box.width / 2, box.y + (box.height + Lettering.CAPITAL * size) / 2),
                                sign(remark),
                                size,
                                Anchor.MIDDLE),
                        Ink.LINE));
            }
        }
        return new Group(said.say("group.signs"), items);
    }

    private record Box(double x, double y, double width, double height) {

        boolean meets(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }
    }

    /** Right of a place, left of it, under or over it: the first that is free, else the first. */
    private static Box free(Point at, double width, double size, List<Box> taken) {
        double high = 1.2 * size;
        List<Box> boxes = List.of(
                new Box(at.x() + APART, at.y() - high / 2, width, high),
                new Box(at.x() - APART - width, at.y() - high / 2, width, high),
                new Box(at.x() - width / 2, at.y() + APART, width, high),
                new Box(at.x() - width / 2, at.y() - APART - high, width, high));
        return boxes.stream()
                .filter(box -> taken.stream().noneMatch(box::meets))
                .findFirst()
                .orElse(boxes.get(0));
    }

    private static double width(String words, double size) {
        return Lettering.length(words, size) + 0.6 * size;
    }

    private static String sign(List<Remark> here) {
        return sign(here.get(0)) + (here.size() > 1 ? "+" + (here.size() - 1) : "");
    }

    private static String sign(Remark remark) {
        return (remark.what() == Remark.What.FOUND ? "F" : "R") + remark.entry();
    }

    /** A line of words for each sign. */
    List<String> told(RowCoverage row, MapWords words) {
        return remarks.stream().map(remark -> told(remark, row, words)).toList();
    }

    private static String told(Remark remark, RowCoverage row, MapWords words) {
        Zoning zoning = row.zoning();
        String where =
                remark.zones().equals(zoning.all()) ? words.say("sign.whole") : words.zones(zoning, remark.zones());
        List<String> airfoils = remark.airfoils().stream()
                .mapToObj(index -> Integer.toString(index + 1))
                .toList();
        return words.say(
                "sign",
                sign(remark),
                remark.what() == Remark.What.FOUND,
                words.airfoil(row.row()),
                String.join(", ", airfoils),
                where);
    }
}
