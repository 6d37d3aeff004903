package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
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
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All rows as rings about the axis, 12 o'clock on top. */
final class RingsLayout implements ScreenLayout {

    private static final int CIRCLE = 120;
    private static final double LETTERS = 3;
    /** Share of a wheel's half width that a line in its corner may take. */
    private static final double CORNER = 0.7;

    /** Radius below which an arrow in the hub is not told from a spot, mm. */
    private static final double ARROW_LEAST = 1.2;

    private final Coverage coverage;
    private final ScreenView view;
    private final List<RingPlan> wheels;
    private final List<MapRing> rings;

    RingsLayout(Coverage coverage, ScreenView view) {
        this.coverage = coverage;
        this.view = view;
        double high = view.height() - view.foot();
        wheels = RingPlan.of(view.width(), high, view.style().facing().mirrors(), coverage.rows());
        rings = wheels.stream()
                .flatMap(wheel -> wheel.rings(coverage.situation()).stream())
                .toList();
    }

    @Override
    public List<MapRing> rows() {
        return rings;
    }

    @Override
    public List<Group> words() {
        List<Group> groups = new ArrayList<>();
        for (RingPlan wheel : wheels) {
            groups.add(Group.of(new ClockScale(wheel.polar(), wheel.rim(), view.words(), LETTERS).hours()));
            groups.add(Group.of(arrow(wheel)));
            groups.add(Group.of(name(wheel)));
        }
        groups.add(Group.of(chosen()));
        groups.add(Group.of(scopeTip()));
        groups.add(view.legendAtFoot());
        return groups;
    }

    /** Of one of two wheels, what its rows have in common, in the corner that a circle leaves free. */
    private List<Item> name(RingPlan wheel) {
        if (wheels.size() == 1) {
            return List.of();
        }
        String name = view.words().say(wheel.turns() ? "rings.turning" : "rings.standing");
        double half = wheel.rim() + RingPlan.CLOCK;
        Point at = wheel.polar().centre().plus(-half, LETTERS - half);
        return List.of(Item.of(
                Text.upright(at, Lettering.fitted(name, LETTERS, CORNER * half), LETTERS, Anchor.START), Ink.LINE));
    }

    /** Which way its rows turn, if they do. */
    private List<Item> arrow(RingPlan wheel) {
        Optional<Spool> spool = spool();
        double radius = 0.55 * wheel.hub();
        if (spool.isEmpty() || radius < ARROW_LEAST || !wheel.turns()) {
            return List.of();
        }
        boolean clockwise =
                spool.get().normal() == Direction.CW ^ view.style().facing().mirrors();
        Polar turned = new Polar(wheel.polar().centre(), !clockwise);
        List<Point> arc = new ArrayList<>();
        for (int degrees = -120; degrees <= 90; degrees += 10) {
            arc.add(turned.at(degrees, radius));
        }
        double head = 0.4 * radius;
        return List.of(
                Item.of(new Strokes(List.of(arc)), Style.lined(Ink.LINE, 0.4)),
                Item.of(
                        new Polygon(List.of(
                                turned.at(130, radius), turned.at(88, radius - head), turned.at(88, radius + head))),
                        Style.filled(Ink.LINE)));
    }

    /** The spool that is turned now, else the first. */
    private Optional<Spool> spool() {
        Situation now = coverage.situation();
        return now.seat()
                .flatMap(seat -> now.engine().spool(seat.row()))
                .or(() -> now.engine().model().spools().stream().findFirst());
    }

    /** A line inside and outside the chosen row. */
    private List<Item> chosen() {
        List<Item> items = new ArrayList<>();
        for (MapRing ring : rings) {
            if (view.chosen().filter(ring.coverage().row().id()::equals).isPresent()) {
                double aside = ring.lane() / 2;
                items.add(circle(ring.polar(), ring.low() - aside));
                items.add(circle(ring.polar(), ring.high() + aside));
            }
        }
        return items;
    }

    private static Item circle(Polar polar, double radius) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < CIRCLE; i++) {
            points.add(polar.at(360.0 * i / CIRCLE, radius));
        }
        return Item.of(new Polygon(points), Style.lined(Ink.LINE, 0.45));
    }

    /** Outside the wheel of the row in view, where the scope tip looks. */
    private List<Item> scopeTip() {
        Optional<Seat> seat = coverage.situation().seat();
        if (seat.isEmpty()) {
            return List.of();
        }
        Row row = seat.get().row();
        RingPlan wheel = wheels.stream()
                .filter(one -> one.rows().stream().anyMatch(each -> each.row().equals(row)))
                .findFirst()
                .orElseThrow();
        double clock = Standing.scopeTip(coverage.situation(), seat.get());
        double foot = wheel.rim() + RingPlan.CLOCK - 0.4;
        double reach = 2 / wheel.polar().scale(foot);
        Polygon triangle = new Polygon(List.of(
                wheel.polar().at(clock, wheel.rim() + 0.6),
                wheel.polar().at(clock - reach, foot),
                wheel.polar().at(clock + reach, foot)));
        return List.of(Item.of(triangle, Style.both(Ink.MAYBE, Ink.LINE, 0.25)));
    }

    @Override
    public Cell next(Cell from, MapStep step) {
        return new RingWalk(rings).next(from, step);
    }

    @Override
    public String title() {
        return view.words().say("screen.rings", rings.size());
    }

    @Override
    public String summary() {
        return view.words().facing(view.style().facing());
    }
}
