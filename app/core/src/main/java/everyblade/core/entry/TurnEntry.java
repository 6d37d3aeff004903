package everyblade.core.entry;

import static everyblade.core.entry.EntryForm.kind;
import static everyblade.core.entry.Written.movement;
import static everyblade.core.entry.Written.name;
import static everyblade.core.entry.Written.plusMinus;
import static everyblade.core.entry.Written.seconds;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Entries that turn a shaft or draw the scope tip round, and those that start, check or break the count. */
public sealed interface TurnEntry extends Entry {

    /** Their kinds, in the order of the sheet. */
    List<EntryKind> KINDS = List.of(
            kind(Datum.class, "datum", TurnEntry::datum, TurnEntry::written)
                    .usage("datum ROW N [at ANGLE]", "datum")
                    .next(Slot.Named.ROW)
                    .weighing(EntryKind.Weight.IDENTIFICATION)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(
                            Turn.class,
                            "turn",
                            TurnEntry::turn,
                            turn -> movement(turn.movement())
                                    + seconds(turn.seconds())
                                    + Written.through(turn.through()))
                    .usage("turn AMOUNT [in 45s]", "turn")
                    .usage("turn to 210, skip to 210", "turnTo")
                    .next(Slot.Named.TURNING)
                    .with(EntryKind.Trait.GOES_ON)
                    .with(EntryKind.Trait.MOVES)
                    .with(EntryKind.Trait.WATCHES)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(Skip.class, "skip", line -> new Skip(AmountReader.ofTurning(line)), skip -> movement(skip.movement()))
                    .usage("skip AMOUNT", "skip")
                    .next(Slot.Named.TURNING)
                    .with(EntryKind.Trait.GOES_ON)
                    .with(EntryKind.Trait.MOVES)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(
                            Round.class,
                            "round",
                            TurnEntry::round,
                            round -> round.airfoil().value() + plusMinus(round.plusMinus()) + seconds(round.seconds()))
                    .usage("round N [in 60s]", "round")
                    .weighing(EntryKind.Weight.IDENTIFICATION)
                    .with(EntryKind.Trait.MOVES)
                    .with(EntryKind.Trait.WATCHES)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(
                            Here.class,
                            "here",
                            line -> new Here(line.whole(Expected.AIRFOIL), AmountReader.plusMinus(line)),
                            here -> here.airfoil().value() + plusMinus(here.plusMinus()))
                    .usage("here N [\u00b1 2]", "here")
                    .weighing(EntryKind.Weight.IDENTIFICATION)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(Slip.class, "slip", line -> new Slip(), slip -> "")
                    .usage("slip", "slip")
                    .weighing(EntryKind.Weight.SLIP),
            kind(Pad.class, "pad", line -> new Pad(line.name(Expected.PAD)), pad -> name(pad.pad()))
                    .usage("pad ID", "pad")
                    .next(Slot.Named.PAD),
            kind(Draw.class, "draw", TurnEntry::draw, draw -> movement(draw.movement()) + seconds(draw.seconds()))
                    .usage("draw AMOUNT, feed AMOUNT", "draw")
                    .next(Slot.Named.DRAWING)
                    .with(EntryKind.Trait.GOES_ON)
                    .with(EntryKind.Trait.MOVES)
                    .with(EntryKind.Trait.WATCHES)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(Feed.class, "feed", line -> new Feed(AmountReader.ofDrawing(line)), feed -> movement(feed.movement()))
                    .next(Slot.Named.DRAWING)
                    .with(EntryKind.Trait.GOES_ON)
                    .with(EntryKind.Trait.MOVES)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(
                            Vanes.class,
                            "vanes",
                            line -> new Vanes(line.name(Expected.ROW), line.name(Expected.POSITION)),
                            vanes -> name(vanes.row()) + " " + name(vanes.position()))
                    .usage("vanes ROW POSITION", "vanes")
                    .next(Slot.Named.ROW));

    /** Start of counting: this airfoil of this row is at the reference of the view in use. */
    record Datum(
            Said<String> row,
            Said<Integer> airfoil,
            Optional<Said<BigDecimal>> shaftAngle,
            Optional<BigDecimal> plusMinus)
            implements TurnEntry, Placing {}

    /** Turned while watching. */
    record Turn(Said<Movement> movement, Optional<BigDecimal> seconds, Optional<Through> through)
            implements TurnEntry, Moving, Timed {}

    /** Turned without watching. */
    record Skip(Said<Movement> movement) implements TurnEntry, Moving {}

    /** One full watched turn that began and ended with this airfoil at the reference. */
    record Round(Said<Integer> airfoil, Optional<BigDecimal> plusMinus, Optional<BigDecimal> seconds)
            implements TurnEntry, Timed, Placing {}

    /** This airfoil of the row in view is at the reference now. */
    record Here(Said<Integer> airfoil, Optional<BigDecimal> plusMinus) implements TurnEntry, Placing {}

    /** The rotor may have moved unwatched by an unknown angle. */
    record Slip() implements TurnEntry {}

    /** From now on turned at this pad. */
    record Pad(Said<String> pad) implements TurnEntry {}

    /** The scope tip was drawn round the annulus while watching. */
    record Draw(Said<Movement> movement, Optional<BigDecimal> seconds) implements TurnEntry, Moving, Timed {}

    /** The scope tip was fed round the annulus without watching. */
    record Feed(Said<Movement> movement) implements TurnEntry, Moving {}

    /** Movable vanes stand at this position of the model. */
    record Vanes(Said<String> row, Said<String> position) implements TurnEntry {}

    private static Entry datum(Line line) throws Refusal {
        Said<String> row = line.name(Expected.ROW);
        Said<Integer> airfoil = line.whole(Expected.AIRFOIL);
        Optional<Said<BigDecimal>> shaftAngle = Optional.empty();
        if (line.take("at")) {
            shaftAngle = Optional.of(line.signed(Expected.SHAFT_ANGLE));
            AmountReader.takeDegrees(line);
        }
        return new Datum(row, airfoil, shaftAngle, AmountReader.plusMinus(line));
    }

    private static String written(Datum datum) {
        return name(datum.row()) + " " + datum.airfoil().value()
                + datum.shaftAngle()
                        .map(angle -> " at " + Written.number(angle.value()))
                        .orElse("")
                + plusMinus(datum.plusMinus());
    }

    private static Entry turn(Line line) throws Refusal {
        Said<Movement> movement = AmountReader.ofTurning(line);
        Optional<BigDecimal> seconds = AmountReader.seconds(line);
        Optional<Through> through = AmountReader.through(line);
        return new Turn(movement, seconds.isPresent() ? seconds : AmountReader.seconds(line), through);
    }

    private static Entry round(Line line) throws Refusal {
        Said<Integer> airfoil = line.whole(Expected.AIRFOIL);
        Optional<BigDecimal> plusMinus = AmountReader.plusMinus(line);
        return new Round(airfoil, plusMinus, AmountReader.seconds(line));
    }

    private static Entry draw(Line line) throws Refusal {
        return new Draw(AmountReader.ofDrawing(line), AmountReader.seconds(line));
    }
}
