package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.Optional;

/** Reads amounts: of turning, with the errors stated and how long and through what a move went, and lengths. */
final class AmountReader {

    private AmountReader() {}

    /** {@code [on|back] number [unit] [± d]} or {@code [on|back] to angle [± d]}. */
    static Said<Movement> ofTurning(Line line) throws Refusal {
        return movement(line, false);
    }

    /** The same for the scope tip, in the units that it can be moved by. */
    static Said<Movement> ofDrawing(Line line) throws Refusal {
        return movement(line, true);
    }

    private static Said<Movement> movement(Line line, boolean drawing) throws Refusal {
        int column = line.column();
        Optional<Sense> sense = sense(line);
        if (line.take("to")) {
            BigDecimal angle = line.signed(Expected.ANGLE_TO_REACH).value();
            takeDegrees(line);
            return new Said<>(new Movement.To(sense, angle, plusMinus(line)), column);
        }
        Said<BigDecimal> number = line.signed(sense.isPresent() ? Expected.HOW_FAR : Expected.HOW_FAR_OR_SENSE);
        if (sense.isPresent() && number.value().signum() < 0) {
            throw new Refusal(number.column(), new SyntaxProblem.NegativeAfter(Written.word(sense.get())));
        }
        Unit unit = unit(line, drawing);
        return new Said<>(new Movement.By(sense, number.value(), unit, plusMinus(line)), column);
    }

    private static Optional<Sense> sense(Line line) {
        if (line.take("on")) {
            return Optional.of(Sense.ON);
        }
        return line.take("back") ? Optional.of(Sense.BACK) : Optional.empty();
    }

    private static Unit unit(Line line, boolean drawing) throws Refusal {
        String word = line.peek();
        if (word.isEmpty() || word.equals("in") || word.equals("through")) {
            return Unit.DEG;
        }
        Optional<Unit> unit = Unit.named(word);
        if (unit.isEmpty()) {
            throw line.expected(drawing ? Expected.UNIT_OF_DRAWING : Expected.UNIT_OF_TURNING);
        }
        if (drawing && !unit.get().ofDrawing()) {
            throw new Refusal(line.column(), new SyntaxProblem.NoUnitOfDrawing(word));
        }
        line.take(word);
        return unit.get();
    }

    /** {@code ± d}, if it comes next. */
    static Optional<BigDecimal> plusMinus(Line line) throws Refusal {
        if (!line.takePlusMinus()) {
            return Optional.empty();
        }
        BigDecimal number = line.unsigned(Expected.DEGREES_PLUS_MINUS).value();
        takeDegrees(line);
        return Optional.of(number);
    }

    /** Moves past a unit that may be said but changes nothing. */
    static void takeDegrees(Line line) throws Refusal {
        String word = line.peek();
        Optional<Unit> unit = Unit.named(word);
        if (unit.isPresent()) {
            if (unit.get() != Unit.DEG) {
                throw new Refusal(line.column(), new SyntaxProblem.NotDegrees(word));
            }
            line.take(word);
        }
    }

    /** {@code in 45s}, if it comes next. */
    static Optional<BigDecimal> seconds(Line line) throws Refusal {
        if (!line.take("in")) {
            return Optional.empty();
        }
        BigDecimal seconds = line.positive(Expected.SECONDS).value();
        if (!line.take("s")) {
            throw line.expected(Expected.SECONDS_UNIT);
        }
        return Optional.of(seconds);
    }

    /** {@code number mm}. */
    static Said<BigDecimal> millimetres(Line line, Expected expected) throws Refusal {
        Said<BigDecimal> length = line.positive(expected);
        if (!line.take("mm")) {
            throw line.expected(Expected.MILLIMETRES);
        }
        return length;
    }

    /** {@code through S1 S2}, if it comes next. */
    static Optional<Entry.Through> through(Line line) throws Refusal {
        if (!line.take("through")) {
            return Optional.empty();
        }
        Said<String> from = line.name(Expected.FIRST_STATION);
        return Optional.of(new Entry.Through(from, line.name(Expected.LAST_STATION)));
    }
}
