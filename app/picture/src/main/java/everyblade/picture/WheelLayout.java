package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Dots;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Style;
import everyblade.spi.Row;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The row in view as it stands now: numbers round it, the scope tip and what it looks at, and in the middle which airfoil
 * that is.
 */
final class WheelLayout implements ScreenLayout {

    private static final double SIGNS = 4.8;
    private static final double NUMBERS = 3.3;
    private static final double RING_SHARE = 0.24;
    /** A wheel no larger than this leaves its middle as much room as it can, mm. */
    private static final double SMALL = 33;

    private static final double RING_SHARE_SMALL = 0.15;
    private static final double SIGNS_SMALL = 3.6;
    private static final double NUMBERS_SMALL = 2.6;
    private static final double CONE_SMALL = 0.84;
    private static final double LETTERS = 3;
    /** Letters in the middle are at least such a share of the usual ones, before words are cut. */
    private static final double LEAST_SHARE = 0.7;

    private static final double NUMBER_SHARE = 0.62;
    private static final double SWEPT_SHARE = 0.9;
    private static final double SWEPT = 0.8;
    /** Half of what is drawn as the scope tip's view where the model states no window, degrees. */
    private static final double HALF_VIEW = 7;

    private final Coverage coverage;
    private final ScreenView view;
    private final Optional<Seat> seat;
    private final Polar polar;
    private final double rim;
    private final Optional<MapRing> ring;

    WheelLayout(Coverage coverage, ScreenView view) {
        this.coverage = coverage;
        this.view = view;
        Situation now = coverage.situation();
        seat = now.seat();
        polar = new Polar(
                new Point(view.width() / 2, view.height() / 2),
                view.style().facing().mirrors());
        rim = Math.min(view.width(), view.height()) / 2 - 0.5;
        double high = rim - signs() - numbers();
        ring = seat.map(Seat::row)
                .map(row -> new MapRing(
                        coverage.row(row.id()),
                        Standing.of(now, row),
                        polar,
                        high - (small() ? RING_SHARE_SMALL : RING_SHARE) * rim,
                        high,
                        numbers()));
    }

    private boolean small() {
        return rim < SMALL;
    }

    private double signs() {
        return small() ? SIGNS_SMALL : SIGNS;
    }

    private double numbers() {
        return small() ? NUMBERS_SMALL : NUMBERS;
    }

    @Override
    public List<MapRing> rows() {
        return ring.stream().toList();
    }

    @Override
    public List<Group> words() {
        if (ring.isEmpty()) {
            return List.of();
        }
        MapRing round = ring.get();
        Signs signs = Signs.of(coverage, round.coverage().row().id());
        double middle = round.high() + numbers() + signs() / 2;
        List<Group> groups = new ArrayList<>();
        groups.add(
                Group.of(new ClockScale(polar, rim - signs(), view.words(), Math.min(LETTERS, signs() - 0.8)).hours()));
        groups.add(Group.of(round.numbers(List.of())));
        groups.add(airfoilOne(round));
        groups.add(new Pointers(polar, round.low()).landmarks(round.standing(), view.words()));
        groups.add(signs.round(polar, round.standing(), round.high() + numbers() - 0.4, middle, LETTERS, view.words()));
        groups.add(Group.of(swept(round)));
        groups.add(Group.of(cone(round)));
        groups.add(Group.of(inTheMiddle(round)));
        return groups;
    }

    /** A badge over the number of airfoil 1, which tells at a glance how the row stands. */
    private Group airfoilOne(MapRing round) {
        double clock = round.standing().clock(1);
        double middle = round.high() + numbers() / 2;
        List<Item> items = new ArrayList<>();
        items.add(Item.of(new Dots(List.of(polar.at(clock, middle)), 0.5 * numbers()), Style.filled(Ink.LINE)));
        items.addAll(new CurvedText(polar, middle, 0.84 * numbers()).at(clock, "1", Ink.PAPER));
        return Group.of(items);
    }

    /** Inside the ring, along all that passed the scope tip since it was placed. */
    private List<Item> swept(MapRing round) {
        double clock = Standing.scopeTip(coverage.situation(), seat.orElseThrow());
        return SweptArc.of(coverage.situation(), seat.get()).stream()
                .map(arc -> arc.drawn(polar, clock, SWEPT_SHARE * round.low(), SWEPT))
                .toList();
    }

    /** From inside the ring outwards: what the scope tip has before it. */
    private List<Item> cone(MapRing round) {
        double clock = Standing.scopeTip(coverage.situation(), seat.orElseThrow());
        double half =
                seat.get().view().window().map(window -> window.halfWidth()).orElse(HALF_VIEW);
        List<Point> corners = new ArrayList<>();
        corners.add(polar.at(clock, (small() ? CONE_SMALL : NUMBER_SHARE) * round.low()));
        int pieces = Math.max(2, (int) Math.ceil(half));
        for (int i = -pieces; i <= pieces; i++) {
            corners.add(polar.at(clock + half * i / pieces, round.high()));
        }
        return List.of(
                Item.of(new Polygon(corners), Style.lined(Ink.PAPER, 1)),
                Item.of(new Polygon(corners), Style.lined(Ink.LINE, 0.5)));
    }

    /** Which airfoil is at the scope tip, how surely, and how the shaft stands. */
    private List<Item> inTheMiddle(MapRing round) {
        Situation now = coverage.situation();
        Row row = round.coverage().row();
        MapWords words = view.words();
        Optional<Place> place =
                now.placing(row).at(row.id(), row.rock(), now.stop(row)).place();
        Optional<Integer> airfoil = place.flatMap(stands -> now.airfoilAtReference(seat.orElseThrow()));
        double radius = round.low();
        double large = NUMBER_SHARE * radius;
        List<Item> items = new ArrayList<>();
        if (!small()) {
            items.add(line(
                    -0.46 * radius,
                    words.say("wheel.at", words.airfoil(row)),
                    LETTERS,
                    within(radius, 0.46),
                    Ink.FAINT));
        }
        items.add(line(
                (small() ? 0.06 : 0.2) * radius,
                airfoil.map(String::valueOf).orElse("?"),
                large,
                1.6 * radius,
                airfoil.isPresent() ? Ink.LINE : Ink.ALERT));
        String sure = place.isPresent() && airfoil.isPresent()
                ? words.say(
                        "wheel.sure",
                        tenths(place.get().high().minus(place.get().low()).degrees() / 2),
                        row.count())
                : words.say("doubt.", round.standing().doubt().orElse(Standing.Doubt.LOST));
        double down = small() ? 0.34 : 0.42;
        items.add(line(down * radius, sure, LETTERS, within(radius, down), airfoil.isPresent() ? Ink.LINE : Ink.ALERT));
        if (now.engine().spool(row).isPresent()) {
            String shaft = words.say("wheel.shaft", tenths(now.reading(row).degrees()));
            items.add(line(0.64 * radius, shaft, LETTERS, within(radius, 0.64), Ink.LINE));
        }
        return items;
    }

    private String tenths(double degrees) {
        return new DecimalFormat(
                        "0.0", DecimalFormatSymbols.getInstance(view.words().locale()))
                .format(degrees);
    }

    /** How wide a line may be so far from the middle, shares of the radius, inside of what was swept. */
    private static double within(double radius, double down) {
        return 2 * radius * Math.sqrt(SWEPT_SHARE * SWEPT_SHARE - down * down) * 0.97;
    }

    /** A line, in letters smaller by so much, and a hair, that it finds room. */
    private Item line(double down, String words, double most, double room, Ink ink) {
        double size = Math.max(
                LEAST_SHARE * most,
                Math.min(most, 0.999 * most * room / (Lettering.length(words, most) * Lettering.SLACK)));
        return Item.of(
                Text.upright(polar.centre().plus(0, down), Lettering.fitted(words, size, room), size, Anchor.MIDDLE),
                ink);
    }

    @Override
    public Cell next(Cell from, MapStep step) {
        return new RingWalk(rows()).next(from, step);
    }

    @Override
    public String title() {
        return ring.map(round -> round.coverage().row().name() + " ("
                        + round.coverage().row().id() + ")")
                .orElseGet(() -> view.words().say("empty.wheel"));
    }

    @Override
    public String summary() {
        return view.words().facing(view.style().facing());
    }
}
