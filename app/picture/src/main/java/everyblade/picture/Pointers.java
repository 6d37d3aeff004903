package everyblade.picture;

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
import everyblade.spi.Landmark;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.List;

/**
 * What points at a ring from its hub: the landmarks of its airfoils, and the reference of each view with the range of
 * clock angles that its window shows.
 *
 * @param polar the ring
 * @param rim radius at which its cells begin, mm
 */
record Pointers(Polar polar, double rim) {

    private static final double SIZE = 2.2;
    private static final int DECIMALS = 9;
    private static final double LABELS_END = 11;
    private static final double LABELS_LEAST = 15;
    /** Degrees past the vertical up to which words still read upwards, so that neighbours there read alike. */
    private static final double UPRIGHT = 20;

    /** A triangle under each airfoil that can be told from the others. */
    Group landmarks(Standing standing, MapWords words) {
        List<Item> items = new ArrayList<>();
        for (Landmark landmark : standing.row().landmarks()) {
            double clock = standing.clock(landmark.airfoil());
            items.add(Item.of(triangle(clock, rim - 0.8, rim - 4.4, 1.7), Style.filled(Ink.LINE)));
        }
        return new Group(words.say("group.landmarks"), items);
    }

    /** A pointer with its name for each view. */
    List<Group> views(List<View> views, MapWords words) {
        double longest = views.stream()
                .mapToDouble(view -> Lettering.length(label(view, words), SIZE) * Lettering.SLACK)
                .max()
                .orElse(0);
        double inner = Math.max(LABELS_LEAST, rim - LABELS_END - longest);
        double least = 1.3 * SIZE / new Polar(polar.centre(), false).scale(inner);
        List<Double> directions = Spread.of(views.stream().map(View::reference).toList(), least);
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i < views.size(); i++) {
            groups.add(view(views.get(i), directions.get(i), rim - LABELS_END - inner, words));
        }
        return groups;
    }

    private Item arc(double clock, double half, double radius, double width) {
        List<Point> arc = new ArrayList<>();
        int pieces = Math.max(1, (int) Math.ceil(half));
        for (int i = -pieces; i <= pieces; i++) {
            arc.add(polar.at(clock + half * i / pieces, radius));
        }
        return Item.of(new Strokes(List.of(arc)), Style.lined(Ink.LINE, width));
    }

    private Group view(View view, double direction, double room, MapWords words) {
        List<Item> items = new ArrayList<>();
        view.window().ifPresent(window -> items.add(arc(view.reference(), window.halfWidth(), rim - 5.4, 0.5)));
        double middle = view.reference();
        items.add(Item.of(triangle(middle, rim - 5.6, rim - 8, 0.8), Style.filled(Ink.LINE)));
        items.add(Item.of(
                Strokes.line(polar.at(middle, rim - 8), polar.at(direction, rim - LABELS_END + 0.5)),
                Style.lined(Ink.FAINT, 0.15)));
        items.add(radial(direction, rim - LABELS_END, Lettering.fitted(label(view, words), SIZE, room)));
        return new Group(words.say("group.view", view.id(), degrees(view.reference(), words)), items);
    }

    /** Words along the radius, never upside down, that end at a distance from the axis. */
    private Item radial(double clock, double end, String words) {
        double sheet = CurvedText.wrapped(polar.onSheet(clock));
        boolean right = sheet <= 180 + UPRIGHT || sheet >= 360 - UPRIGHT;
        double half = Lettering.CAPITAL * SIZE / 2;
        double turned = Math.toRadians(sheet);
        Point at = polar.at(clock, end);
        // Down the page of the turned words, by half a capital.
        double sign = right ? 1 : -1;
        Point base = at.plus(sign * half * StrictMath.cos(turned), sign * half * StrictMath.sin(turned));
        return Item.of(
                new Text(base, words, SIZE, right ? Anchor.END : Anchor.START, right ? sheet - 90 : sheet + 90),
                Ink.LINE);
    }

    private Polygon triangle(double clock, double tip, double foot, double half) {
        double reach = half / polar.scale(foot);
        return new Polygon(List.of(polar.at(clock, tip), polar.at(clock - reach, foot), polar.at(clock + reach, foot)));
    }

    static String label(View view, MapWords words) {
        return view.id() + "  " + degrees(view.reference(), words);
    }

    private static String degrees(double angle, MapWords words) {
        return words.number(angle, DECIMALS) + "°";
    }
}
