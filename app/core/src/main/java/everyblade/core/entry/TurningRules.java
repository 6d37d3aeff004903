package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How entries are read that say where the scope tip is, what is watched and how the rotor stands. */
final class TurningRules {

    static final Map<String, EntryRule> BY_VERB = Map.ofEntries(
            Map.entry("view", TurningRules::view),
            Map.entry("at", line -> new Entry.At(line.name(Expected.STATION))),
            Map.entry("watch", line -> new Entry.Watch(parts(line))),
            Map.entry("ask", line -> new Entry.Ask(line.name(Expected.ROW), parts(line))),
            Map.entry("in", line -> new Entry.In()),
            Map.entry("clear", line -> new Entry.Clear()),
            Map.entry("out", line -> new Entry.Out()),
            Map.entry("turn", TurningRules::turn),
            Map.entry("skip", line -> new Entry.Skip(AmountReader.movement(line, AmountReader.OF_TURNING))),
            Map.entry("round", TurningRules::round),
            Map.entry("look", TurningRules::look),
            Map.entry("draw", TurningRules::draw),
            Map.entry("feed", line -> new Entry.Feed(AmountReader.movement(line, AmountReader.OF_DRAWING))),
            Map.entry("pad", line -> new Entry.Pad(line.name(Expected.PAD))),
            Map.entry("datum", TurningRules::datum),
            Map.entry("here", line -> new Entry.Here(line.whole(Expected.AIRFOIL), AmountReader.plusMinus(line))),
            Map.entry("slip", line -> new Entry.Slip()));

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
