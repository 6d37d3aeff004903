package everyblade.picture.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.Circle;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.StationSight;
import everyblade.core.surface.Mesh;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.spi.RowKind;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * One airfoil unrolled, on A4 across: each facet in the colour of how many degrees of a turn it is in sight from the nominal
 * pose of a station, or in the pattern of the reason why it never is; with borders and letters of the zones, and a scale.
 */
public final class UnrolledScene {

    private static final double WIDTH = 297;
    private static final double MARGIN = 9;
    private static final double NOTICE = 2.5;
    private static final double TOP = 36;
    private static final double BOX_WIDTH = 137.5;
    private static final double BOX_HEIGHT = 112;
    private static final double GAP = 4;
    private static final double BELOW = TOP + BOX_HEIGHT + 10;

    private final Vantage vantage;
    private final Words words;
    private final StationSight sight;
    private final Mesh mesh;
    private final BothSides sides;

    private UnrolledScene(Vantage vantage, Words words) {
        this.vantage = vantage;
        this.words = words;
        this.sight = vantage.sight();
        this.mesh = vantage.scene().row().airfoil();
        this.sides = BothSides.of(mesh, vantage.row(), new Point(MARGIN, TOP), BOX_WIDTH, BOX_HEIGHT, GAP);
    }

    /** The picture of what a vantage shows of one airfoil, told in these words. */
    public static Scene of(Vantage vantage, Words words) {
        return new UnrolledScene(vantage, words).scene();
    }

    private Scene scene() {
        String title = words.say("unrolled.title", vantage.told(words));
        List<Group> groups = new ArrayList<>();
        groups.add(Group.of(heading(title)));
        for (int facet = 0; facet < mesh.faceCount(); facet++) {
            groups.add(facet(facet));
        }
        groups.addAll(new ZoneMarks(vantage.scene().zoning(), mesh, sides, words).groups());
        groups.add(Group.of(edges()));
        UnrolledLegend legend = new UnrolledLegend(vantage, sight, words);
        groups.addAll(legend.at(new Point(MARGIN, BELOW), WIDTH - 2 * MARGIN, sides.inStrips()));
        return new Scene(WIDTH, 210, title, legend.summary(), groups);
    }

    private List<Item> heading(String title) {
        List<Item> items = new ArrayList<>();
        double width = WIDTH - 2 * MARGIN;
        SightWords.addLine(items, new Point(MARGIN, 13), title, 4.4, width, Ink.LINE);
        SightWords.addLine(
                items, new Point(MARGIN, 18.5), vantage.engine().model().name(), 3, width, Ink.LINE);
        List<String> notice = SightWords.notice(vantage, NOTICE, width);
        for (int line = 0; line < notice.size(); line++) {
            Point at = new Point(MARGIN, 22.4 + line * 3.1);
            SightWords.addLine(items, at, notice.get(line), NOTICE, width, Ink.ALERT);
        }
        return items;
    }

    private Group facet(int facet) {
        var arcs = sight.arcs(0, facet);
        var shape = sides.shapes().get(facet);
        if (arcs.isEmpty()) {
            Hindrance why = sight.why(facet).orElse(Hindrance.HIDDEN);
            return new Group(name(facet, words.say("unrolled.never", why)), FacetDrawing.never(shape, why));
        }
        List<String> where = arcs.arcs().stream().map(this::told).toList();
        double degrees = InSight.degrees(arcs);
        return new Group(
                name(facet, words.say("unrolled.seen", InSight.written(degrees), words.airfoil(vantage.row()), where)),
                FacetDrawing.inSight(shape, degrees, sight.reaches(facet)));
    }

    private String name(int facet, String what) {
        Zoning zoning = vantage.scene().zoning();
        return words.say("unrolled.facet", facet, zoning.names().get(mesh.zone(facet)), what);
    }

    private String told(Arc arc) {
        double from = (double) arc.start() / Circle.TICKS_PER_DEGREE;
        double to = (from + (double) arc.length() / Circle.TICKS_PER_DEGREE) % 360;
        return words.say("unrolled.arc", InSight.written(from), InSight.written(to));
    }

    /** What lies at which border of the two boxes. */
    private List<Item> edges() {
        List<Item> items = new ArrayList<>();
        boolean liner = vantage.row().kind() == RowKind.LINER;
        for (int side = 0; side < 2; side++) {
            Patch box = sides.boxes().get(side);
            String name = words.say("unrolled.side", liner, side == 0);
            items.add(Item.of(Text.upright(box.at(0.5, 1).plus(0, -2), name, 3.2, Anchor.MIDDLE), Ink.LINE));
            boolean startsLeft = liner || side == 1;
            String start = words.say("unrolled.front", liner);
            String end = words.say("unrolled.rear", liner);
            items.add(word(box.at(0, 0), startsLeft ? start : end, Anchor.START));
            items.add(word(box.at(1, 0), startsLeft ? end : start, Anchor.END));
            items.add(word(box.at(0.5, 0), words.say("unrolled.foot", liner), Anchor.MIDDLE));
            items.add(word(
                    box.at(side, 1).plus(0, -5.2),
                    words.say("unrolled.head", liner),
                    side == 0 ? Anchor.START : Anchor.END));
        }
        return items;
    }

    private static Item word(Point at, String words, Anchor anchor) {
        return Item.of(Text.upright(at.plus(0, 3.2), words, 2.5, anchor), Ink.FAINT);
    }
}
