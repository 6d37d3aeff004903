package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Shape.Anchor;
import everyblade.picture.scene.Shape.Text;
import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Row;
import everyblade.spi.Spool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is to be read in the corners of a map on a screen. */
final class CornerCards {

    private static final double LARGE = 4;
    private static final double SIZE = 3.5;
    private static final double SMALL = 3.1;
    private static final double LEAST = 2.7;
    private static final double IN_VIEW = 27;
    private static final double WIDTH = 50;

    private CornerCards() {}

    /** A line of a card. */
    private record Line(String words, double size, Ink ink) {}

    /** From where the engine is seen, and which way it turns for those who stand there and at the pad. */
    static Card facing(Coverage coverage, ScreenView view) {
        String words = view.style().facing().words();
        int cut = words.indexOf(" looking");
        List<Line> lines = new ArrayList<>(List.of(
                new Line(words.substring(0, cut), LARGE, Ink.LINE),
                new Line(words.substring(cut + 1), LARGE, Ink.LINE)));
        if (!view.turning()) {
            lines.add(new Line("airfoil 1 stays on top", SMALL, Ink.LINE));
        }
        Card told = lines(lines, Anchor.START);
        Optional<Spool> spool = spool(coverage, view);
        if (spool.isEmpty()) {
            return told;
        }
        Situation situation = coverage.situation();
        Pad pad = situation.padOf(spool.get());
        Direction shaft = spool.get().normal();
        Direction tool = pad.ratio().numerator() < 0 ? shaft.opposite() : shaft;
        boolean here = shaft == Direction.CW ^ view.style().facing().mirrors();
        TurningArrow rotor = new TurningArrow(here, "rotor, in this view");
        TurningArrow hand = new TurningArrow(tool == Direction.CW, "tool at " + pad.id() + ", facing it");
        double height = told.height() + 2 * TurningArrow.HEIGHT + 1;
        return new Card(Math.max(told.width(), TurningArrow.WIDTH), height, at -> {
            List<Item> items = new ArrayList<>(told.items().apply(at));
            items.addAll(rotor.at(at.plus(0, told.height() + 1)));
            items.addAll(hand.at(at.plus(0, told.height() + 1 + TurningArrow.HEIGHT)));
            return items;
        });
    }

    /** The spool of the enlarged row; else the one that is turned now. */
    private static Optional<Spool> spool(Coverage coverage, ScreenView view) {
        Situation situation = coverage.situation();
        Optional<Row> row = view.enlarged()
                .map(id -> coverage.row(id).row())
                .or(() -> situation.seat().map(seat -> seat.row()));
        return row.isPresent()
                ? situation.engine().spool(row.get())
                : situation.engine().model().spools().stream().findFirst();
    }

    /** The row that is enlarged, and what the scope tip has before it. */
    static Card inView(Coverage coverage, ScreenView view) {
        List<Line> lines = new ArrayList<>();
        view.enlarged().ifPresent(id -> {
            RowCoverage of = coverage.row(id);
            Row row = of.row();
            Tally tally = Shares.tally(of);
            String airfoils = row.kind().airfoil() + (row.count() == 1 ? "" : "s");
            wrap(lines, row.name() + " (" + id + "), " + row.count() + " " + airfoils, LARGE, 2, Ink.LINE);
            wrap(lines, Shares.percent(tally) + " % inspected, " + of.basis().word(), SIZE, 2, Ink.LINE);
            String doubt = Standing.of(coverage.situation(), row).doubt();
            if (!doubt.isEmpty()) {
                wrap(lines, doubt + ": where its " + airfoils + " stand is not known", SIZE, 2, Ink.ALERT);
            }
            coverage.situation()
                    .seat()
                    .filter(seat -> seat.row().id().equals(id))
                    .ifPresent(seat -> wrap(lines, scopeTip(coverage.situation(), seat), SIZE, 2, Ink.LINE));
        });
        if (coverage.lostCount()) {
            wrap(lines, Shares.lost(coverage).get(0), LEAST, 5, Ink.ALERT);
        }
        Card told = lines(lines, Anchor.END);
        double spare = WIDTH - told.width();
        // Room for what may have to be said, lest the rings jump when it is.
        return new Card(
                WIDTH, Math.max(told.height(), IN_VIEW), at -> told.items().apply(at.plus(spare, 0)));
    }

    private static String scopeTip(Situation situation, Seat seat) {
        return "scope tip: " + seat.view().id()
                + situation
                        .airfoilAtReference(seat)
                        .map(n -> ", " + seat.row().kind().airfoil() + " " + n)
                        .orElse("");
    }

    /** What each look means. */
    static Card legend() {
        return new Card(Legend.NAMES_WIDTH, Legend.NAMES_HEIGHT, Legend::names);
    }

    /** The rows in the order of their rings, and what must be said of the engine model. */
    static Card rows(Coverage coverage, MapFacts facts) {
        List<Line> lines = new ArrayList<>();
        String ids = String.join(
                ", ", coverage.rows().stream().map(row -> row.row().id()).toList());
        lines.add(new Line("rings from inside", SMALL, Ink.FAINT));
        wrap(lines, ids, SMALL, 4, Ink.LINE);
        facts.notice().ifPresent(notice -> wrap(lines, notice, LEAST, 6, Ink.ALERT));
        return lines(lines, Anchor.END);
    }

    private static void wrap(List<Line> lines, String words, double size, int most, Ink ink) {
        Lettering.wrapped(words, size, WIDTH, most).forEach(line -> lines.add(new Line(line, size, ink)));
    }

    private static Card lines(List<Line> lines, Anchor anchor) {
        double width = lines.stream()
                .mapToDouble(line -> Math.min(WIDTH, Lettering.length(line.words(), line.size()) * Lettering.SLACK))
                .max()
                .orElse(0);
        double height = lines.stream().mapToDouble(line -> 1.3 * line.size()).sum();
        return new Card(width, height, at -> {
            List<Item> items = new ArrayList<>();
            double down = 0;
            for (Line line : lines) {
                down += 1.3 * line.size();
                Point base = at.plus(anchor.share() * width, down - 0.35 * line.size());
                items.add(Item.of(
                        Text.upright(base, Lettering.fitted(line.words(), line.size(), WIDTH), line.size(), anchor),
                        line.ink()));
            }
            return items;
        });
    }
}
