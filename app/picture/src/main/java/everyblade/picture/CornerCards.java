package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
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

/**
 * What is to be read in the corners of a map on a screen.
 *
 * @param coverage that is shown
 * @param view how it is looked at, and in which words
 * @param width of a card, mm; letters are as large as it allows
 */
record CornerCards(Coverage coverage, ScreenView view, double width) {

    private static final double LARGE = 4;
    private static final double SIZE = 3.5;
    private static final double SMALL = 3.2;
    private static final double LEAST = 3;
    /** Width for which these are the sizes of letters, mm. */
    private static final double USUAL_WIDTH = 50;

    private static final double LEAST_WIDTH = 44;
    private static final double MOST_WIDTH = 62;
    private static final double WIDTH_SHARE = 0.2;
    private static final double IN_VIEW = 27;

    /** The cards of a map: the wider its sheet, the wider they are. */
    static CornerCards of(Coverage coverage, ScreenView view) {
        return new CornerCards(coverage, view, Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, WIDTH_SHARE * view.width())));
    }

    /** A line of a card. */
    private record Line(String words, double size, Ink ink) {}

    private double letters(double size) {
        return size * Math.max(1, width / USUAL_WIDTH);
    }

    /** From where the engine is seen, and which way it turns for those who stand there and at the pad. */
    Card facing() {
        MapWords words = view.words();
        List<Line> lines = new ArrayList<>(List.of(
                new Line(words.from(view.style().facing()), letters(LARGE), Ink.LINE),
                new Line(words.towards(view.style().facing()), letters(LARGE), Ink.LINE)));
        if (!view.turning()) {
            lines.add(new Line(words.say("top"), letters(SMALL), Ink.LINE));
        }
        Card told = lines(lines, Anchor.START);
        Optional<Spool> spool = spool();
        if (spool.isEmpty()) {
            return told;
        }
        Pad pad = coverage.situation().padOf(spool.get());
        Direction shaft = spool.get().normal();
        Direction tool = pad.ratio().numerator() < 0 ? shaft.opposite() : shaft;
        boolean here = shaft == Direction.CW ^ view.style().facing().mirrors();
        double size = letters(SMALL);
        TurningArrow rotor = new TurningArrow(here, words.say("turns.rotor"), words, size, width);
        TurningArrow hand =
                new TurningArrow(tool == Direction.CW, words.say("turns.tool", pad.id()), words, size, width);
        double height = told.height() + 2 * rotor.height() + 1;
        return new Card(Math.max(told.width(), width), height, at -> {
            List<Item> items = new ArrayList<>(told.items().apply(at));
            items.addAll(rotor.at(at.plus(0, told.height() + 1)));
            items.addAll(hand.at(at.plus(0, told.height() + 1 + rotor.height())));
            return items;
        });
    }

    /** The spool of the enlarged row; else the one that is turned now. */
    private Optional<Spool> spool() {
        Situation situation = coverage.situation();
        Optional<Row> row = view.enlarged()
                .map(id -> coverage.row(id).row())
                .or(() -> situation.seat().map(seat -> seat.row()));
        return row.isPresent()
                ? situation.engine().spool(row.get())
                : situation.engine().model().spools().stream().findFirst();
    }

    /** The row that is enlarged, and what the scope tip has before it. */
    Card inView() {
        List<Line> lines = new ArrayList<>();
        view.enlarged().ifPresent(id -> tell(coverage.row(id), lines));
        if (coverage.lostCount()) {
            wrap(lines, Shares.lost(coverage, view.words()).get(0), LEAST, 5, Ink.ALERT);
        }
        Card told = lines(lines, Anchor.END);
        double spare = width - told.width();
        // Room for what may have to be said, lest the rings jump when it is.
        return new Card(
                width,
                Math.max(told.height(), letters(IN_VIEW)),
                at -> told.items().apply(at.plus(spare, 0)));
    }

    private void tell(RowCoverage of, List<Line> lines) {
        MapWords words = view.words();
        Row row = of.row();
        String airfoils = words.some(row, row.count());
        wrap(lines, words.say("row.title", row.name(), row.id(), row.count(), airfoils), LARGE, 2, Ink.LINE);
        wrap(lines, new Figures(of.headline(), words).brief(of.basis()), SMALL, 4, Ink.LINE);
        String doubt = Standing.of(coverage.situation(), row).doubt(words);
        if (!doubt.isEmpty()) {
            wrap(lines, words.say("doubt.where", doubt, airfoils), SIZE, 2, Ink.ALERT);
        }
        coverage.situation()
                .seat()
                .filter(seat -> seat.row().id().equals(row.id()))
                .ifPresent(seat -> wrap(lines, scopeTip(seat), SIZE, 2, Ink.LINE));
    }

    private String scopeTip(Seat seat) {
        MapWords words = view.words();
        String id = seat.view().id();
        return coverage.situation()
                .airfoilAtReference(seat)
                .map(n -> words.say("tip.airfoil", id, words.airfoil(seat.row()), n))
                .orElseGet(() -> words.say("tip.view", id));
    }

    /** What each look means. */
    Card legend() {
        double size = Math.max(1, width / USUAL_WIDTH);
        return new Card(
                size * Legend.NAMES_WIDTH,
                size * Legend.NAMES_HEIGHT,
                corner -> Legend.names(corner, size, view.words()));
    }

    /** The rows in the order of their rings, and what must be said of the engine model. */
    Card rows(MapFacts facts) {
        List<Line> lines = new ArrayList<>();
        String ids = String.join(
                ", ", coverage.rows().stream().map(row -> row.row().id()).toList());
        lines.add(new Line(view.words().say("rings"), letters(SMALL), Ink.FAINT));
        wrap(lines, ids, SMALL, 4, Ink.LINE);
        facts.notice().ifPresent(notice -> wrap(lines, notice, LEAST, 6, Ink.ALERT));
        return lines(lines, Anchor.END);
    }

    private void wrap(List<Line> lines, String words, double size, int most, Ink ink) {
        Lettering.wrapped(words, letters(size), width, most)
                .forEach(line -> lines.add(new Line(line, letters(size), ink)));
    }

    private Card lines(List<Line> lines, Anchor anchor) {
        double wide = lines.stream()
                .mapToDouble(line -> Math.min(width, Lettering.length(line.words(), line.size()) * Lettering.SLACK))
                .max()
                .orElse(0);
        double height = lines.stream().mapToDouble(line -> 1.3 * line.size()).sum();
        return new Card(wide, height, at -> {
            List<Item> items = new ArrayList<>();
            double down = 0;
            for (Line line : lines) {
                down += 1.3 * line.size();
                Point base = at.plus(anchor.share() * wide, down - 0.35 * line.size());
                items.add(Item.of(
                        Text.upright(base, Lettering.fitted(line.words(), line.size(), width), line.size(), anchor),
                        line.ink()));
            }
            return items;
        });
    }
}
