package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.turning.Seat;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Shape.Dots;
import everyblade.picture.scene.Style;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands round and between the rings of a map on a screen: clock, numbers, names, signs, where the scope tip looks.
 *
 * @param plan where the rings lie
 * @param coverage that is shown
 * @param view how it is looked at
 */
record RingWords(RingPlan plan, Coverage coverage, ScreenView view) {

    private static final double LETTERS = 3.4;

    /** The groups, always as many in the same order. */
    List<Group> of(List<Ring> rings, Optional<Ring> large) {
        List<Group> groups = new ArrayList<>();
        for (Ring ring : rings) {
            groups.add(plan.hasLanes() ? names(ring) : Group.of(List.of()));
        }
        if (large.isPresent() || view.turning()) {
            double noon = large.map(this::noon).orElse(0.0);
            groups.add(Group.of(new ClockScale(plan.polar(), plan.rim(), noon, view.words(), LETTERS).items()));
        }
        large.ifPresent(ring -> {
            Signs signs = Signs.of(coverage, ring.coverage().row().id());
            double middle = ring.high() + RingPlan.NUMBERS + RingPlan.SIGNS / 2;
            groups.add(Group.of(ring.numbers(List.of())));
            groups.add(airfoilOne(ring));
            groups.add(new Pointers(plan.polar(), ring.low()).landmarks(ring.standing()));
            groups.add(
                    signs.round(plan.polar(), ring.standing(), ring.high() + RingPlan.NUMBERS - 0.4, middle, LETTERS));
            groups.add(scopeTip(ring));
        });
        return groups;
    }

    private Group names(Ring ring) {
        String id = ring.coverage().row().id();
        String name = ring.standing().doubt().isEmpty()
                ? id
                : id + ": " + ring.standing().doubt(view.words());
        List<String> labels = List.of(name, name);
        List<Item> items = new ArrayList<>(ring.labels(labels));
        items.addAll(ring.numbers(labels));
        return Group.of(items);
    }

    /** A badge over the number of airfoil 1, which tells at a glance how the row stands. */
    private Group airfoilOne(Ring ring) {
        double clock = ring.standing().clock(1);
        double middle = ring.high() + RingPlan.NUMBERS / 2;
        List<Item> items = new ArrayList<>();
        items.add(Item.of(
                new Dots(List.of(plan.polar().at(clock, middle)), 0.5 * RingPlan.NUMBERS), Style.filled(Ink.LINE)));
        items.addAll(new ArcText(plan.polar(), middle, 0.84 * RingPlan.NUMBERS).at(clock, "1", Ink.PAPER));
        return Group.of(items);
    }

    /** Where on the wheel 12 o'clock is. */
    private double noon(Ring ring) {
        Standing now = Standing.of(coverage.situation(), ring.coverage().row());
        return ring.standing().first().minus(now.first()).wrapped().degrees();
    }

    private Group scopeTip(Ring ring) {
        Optional<Seat> seat = coverage.situation()
                .seat()
                .filter(inUse -> inUse.row().id().equals(ring.coverage().row().id()));
        return Group.of(seat.map(inUse -> scopeTip(ring, inUse)).orElse(List.of()));
    }

    private List<Item> scopeTip(Ring ring, Seat seat) {
        // What is kept of a row that stands still is its angle to the scope tip, which grows as the tip goes back.
        double drawn = seat.row().kind() == RowKind.ROTOR
                ? 0
                : coverage.situation().reading(seat.row()).degrees();
        double clock = noon(ring) + seat.reference().degrees() - drawn;
        return new Pointers(plan.polar(), ring.low() - 4.6).scopeTip(clock, seat.view(), view.words());
    }
}
