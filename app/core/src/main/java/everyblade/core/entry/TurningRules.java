package everyblade.core.entry;

import static everyblade.core.entry.Written.movement;
import static everyblade.core.entry.Written.name;
import static everyblade.core.entry.Written.names;
import static everyblade.core.entry.Written.number;
import static everyblade.core.entry.Written.plusMinus;
import static everyblade.core.entry.Written.seconds;
import static everyblade.core.entry.Written.through;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How entries are read and written that say where the scope tip is, what is watched and how the rotor stands. */
final class TurningRules {

    static final List<EntryForm<?>> FORMS = List.of(
            EntryForm.of(
                    Entry.View.class,
                    "view",
                    TurningRules::view,
                    view -> name(view.view())
                            + view.scopeTip().map(tip -> " with " + name(tip)).orElse("")),
            EntryForm.of(
                    Entry.At.class, "at", line -> new Entry.At(line.name(Expected.STATION)), at -> name(at.station())),
            EntryForm.of(
                    Entry.Watch.class, "watch", line -> new Entry.Watch(parts(line)), watch -> names(watch.parts())),
            EntryForm.of(
                    Entry.Ask.class,
                    "ask",
                    line -> new Entry.Ask(line.name(Expected.ROW), parts(line)),
                    ask -> name(ask.row()) + " " + names(ask.parts())),
            EntryForm.of(Entry.In.class, "in", line -> new Entry.In(), in -> ""),
            EntryForm.of(Entry.Clear.class, "clear", line -> new Entry.Clear(), clear -> ""),
            EntryForm.of(Entry.Out.class, "out", line -> new Entry.Out(), out -> ""),
            EntryForm.of(
                    Entry.Turn.class,
                    "turn",
                    TurningRules::turn,
                    turn -> movement(turn.movement()) + seconds(turn.seconds()) + through(turn.through())),
            EntryForm.of(
                    Entry.Skip.class,
                    "skip",
                    line -> new Entry.Skip(AmountReader.movement(line, AmountReader.OF_TURNING)),
                    skip -> movement(skip.movement())),
            EntryForm.of(
                    Entry.Round.class,
                    "round",
                    TurningRules::round,
                    round -> round.airfoil().value() + plusMinus(round.plusMinus()) + seconds(round.seconds())),
            EntryForm.of(
                    Entry.Look.class,
                    "look",
                    TurningRules::look,
                    look -> seconds(look.seconds()) + through(look.through())),
            EntryForm.of(
                    Entry.Draw.class,
                    "draw",
                    TurningRules::draw,
                    draw -> movement(draw.movement()) + seconds(draw.seconds())),
            EntryForm.of(
                    Entry.Feed.class,
                    "feed",
                    line -> new Entry.Feed(AmountReader.movement(line, AmountReader.OF_DRAWING)),
                    feed -> movement(feed.movement())),
            EntryForm.of(
                    Entry.Pad.class, "pad", line -> new Entry.Pad(line.name(Expected.PAD)), pad -> name(pad.pad())),
            EntryForm.of(
                    Entry.Datum.class,
                    "datum",
                    TurningRules::datum,
                    datum -> name(datum.row()) + " " + datum.airfoil().value()
                            + datum.shaftAngle()
                                    .map(angle -> " at " + number(angle.value()))
                                    .orElse("")
                            + plusMinus(datum.plusMinus())),
            EntryForm.of(
                    Entry.Here.class,
                    "here",
                    line -> new Entry.Here(line.whole(Expected.AIRFOIL), AmountReader.plusMinus(line)),
                    here -> here.airfoil().value() + plusMinus(here.plusMinus())),
            EntryForm.of(Entry.Slip.class, "slip", line -> new Entry.Slip(), slip -> ""));

    private TurningRules() {}

    private static Entry view(Line line) throws Refusal {
        Said<String> view = line.name(Expected.VIEW);
        return new Entry.View(view, line.take("with") ? Optional.of(line.name(Expected.SCOPE_TIP)) : Optional.empty());
    }

    private static List<Said<String>> parts(Line line) throws Refusal {
        List<Said<String>> parts = new ArrayList<>();
        do {
            parts.add(line.name(Expected.PART));
        } while (!line.atEnd());
        return List.copyOf(parts);
    }

    private static Entry turn(Line line) throws Refusal {
        Said<Movement> movement = AmountReader.movement(line, AmountReader.OF_TURNING);
        Optional<BigDecimal> seconds = AmountReader.seconds(line);
        Optional<Entry.Through> through = AmountReader.through(line);
        return new Entry.Turn(movement, seconds.isPresent() ? seconds : AmountReader.seconds(line), through);
    }

    private static Entry look(Line line) throws Refusal {
        Optional<BigDecimal> seconds = AmountReader.seconds(line);
        Optional<Entry.Through> through = AmountReader.through(line);
        return new Entry.Look(seconds.isPresent() ? seconds : AmountReader.seconds(line), through);
    }

    private static Entry round(Line line) throws Refusal {
        Said<Integer> airfoil = line.whole(Expected.AIRFOIL);
        Optional<BigDecimal> plusMinus = AmountReader.plusMinus(line);
        return new Entry.Round(airfoil, plusMinus, AmountReader.seconds(line));
    }

    private static Entry draw(Line line) throws Refusal {
        return new Entry.Draw(AmountReader.movement(line, AmountReader.OF_DRAWING), AmountReader.seconds(line));
    }

    private static Entry datum(Line line) throws Refusal {
        Said<String> row = line.name(Expected.ROW);
        Said<Integer> airfoil = line.whole(Expected.AIRFOIL);
        Optional<Said<BigDecimal>> shaftAngle = Optional.empty();
        if (line.take("at")) {
            shaftAngle = Optional.of(line.signed(Expected.SHAFT_ANGLE));
            AmountReader.takeDegrees(line);
        }
        return new Entry.Datum(row, airfoil, shaftAngle, AmountReader.plusMinus(line));
    }
}
