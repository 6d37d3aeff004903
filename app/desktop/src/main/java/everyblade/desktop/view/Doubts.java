package everyblade.desktop.view;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.Unit;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.desktop.command.Speech;
import everyblade.desktop.words.Words;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Why a person should look twice at an entry before it is kept. Nothing here refuses; what is doubted is asked about
 * once.
 *
 * @param state of the job before the entry
 * @param at the time now
 */
public record Doubts(JobState state, Words words, Instant at) {

    /** A typing slip moves the decimal mark; hands do not turn eight times as far as they did. */
    private static final double FAR_MORE = 8;

    private static final int ENOUGH_TO_COMPARE = 3;

    /** What is doubtful about a line, a sentence each; nothing if it would be refused anyway. */
    public List<String> about(String line) {
        try {
            Speech.Said said = state.speech().with(line, at, Optional.empty(), true);
            List<String> doubts = new ArrayList<>();
            Entry entry = said.addition().means();
            Situation after = said.after().fold().situation();
            movement(entry).ifPresent(movement -> {
                offByTen(entry, movement).ifPresent(doubts::add);
                skipsBlades(entry, movement, after).ifPresent(doubts::add);
            });
            size(entry).flatMap(this::sizeOffByTen).ifPresent(doubts::add);
            lostCount(after).ifPresent(doubts::add);
            return doubts;
        } catch (Refusal refused) {
            return List.of();
        }
    }

    private static Optional<Movement> movement(Entry entry) {
        Said<Movement> said = entry instanceof Entry.Turn turn
                ? turn.movement()
                : entry instanceof Entry.Skip skip
                        ? skip.movement()
                        : entry instanceof Entry.Draw draw
                                ? draw.movement()
                                : entry instanceof Entry.Feed feed ? feed.movement() : null;
        return Optional.ofNullable(said).map(Said::value);
    }

    private Optional<String> offByTen(Entry entry, Movement movement) {
        if (!(movement instanceof Movement.By by)) {
            return Optional.empty();
        }
        List<BigDecimal> before = counted().stream()
                .filter(logged -> logged.entry().getClass() == entry.getClass())
                .flatMap(logged -> movement(logged.entry()).stream())
                .filter(other -> other instanceof Movement.By same && same.unit() == by.unit())
                .map(other -> ((Movement.By) other).number())
                .toList();
        return unlike(by.number(), before)
                .map(usual -> words.say(
                        "doubt.offByTen",
                        number(by.number()),
                        number(usual),
                        by.unit().name().toLowerCase(java.util.Locale.ROOT)));
    }

    private static Optional<BigDecimal> size(Entry entry) {
        return entry instanceof Entry.Find find && find.size().unit() == Entry.LengthUnit.MM
                ? find.size().length()
                : Optional.empty();
    }

    private Optional<String> sizeOffByTen(BigDecimal length) {
        List<BigDecimal> before = counted().stream()
                .flatMap(logged -> size(logged.entry()).stream())
                .toList();
        return unlike(length, before).map(usual -> words.say("doubt.size", number(length), number(usual)));
    }

    /** The median of those before, if this number is far from every one of them. */
    private static Optional<BigDecimal> unlike(BigDecimal number, List<BigDecimal> before) {
        double here = Math.abs(number.doubleValue());
        List<BigDecimal> sorted = before.stream()
                .map(BigDecimal::abs)
                .filter(one -> one.signum() > 0)
                .sorted()
                .toList();
        if (sorted.size() < ENOUGH_TO_COMPARE || here == 0) {
            return Optional.empty();
        }
        boolean far = here >= FAR_MORE * sorted.get(sorted.size() - 1).doubleValue()
                || here * FAR_MORE <= sorted.get(0).doubleValue();
        return far ? Optional.of(sorted.get(sorted.size() / 2)) : Optional.empty();
    }

    /** A step that shares a factor with the count stands, however often, only at some of the airfoils. */
    private Optional<String> skipsBlades(Entry entry, Movement movement, Situation after) {
        Optional<Seat> seat = state.seat().filter(inUse -> inUse.row().kind() == RowKind.ROTOR);
        boolean step = movement instanceof Movement.By by && (by.unit() == Unit.BLADES || entry instanceof Entry.Skip);
        if (seat.isEmpty() || !step) {
            return Optional.empty();
        }
        Row row = seat.get().row();
        Turn pitches = after.placing(row)
                .counted(state.situation().stop(row), after.stop(row))
                .abs()
                .times(row.count(), 1);
        int whole = (int) Math.round(pitches.degrees() / 360);
        int common = gcd(row.count(), whole);
        if (!pitches.equals(Turn.FULL.times(whole, 1)) || whole % row.count() == 0 || common == 1) {
            return Optional.empty();
        }
        int here = state.situation().airfoilAtReference(seat.get()).orElse(1);
        List<Integer> missed = IntStream.rangeClosed(1, row.count())
                .filter(n -> Math.floorMod(n - here, common) != 0)
                .boxed()
                .toList();
        return Optional.of(words.say(
                "doubt.step",
                whole,
                row.count(),
                CountWords.airfoils(words, row),
                CountWords.some(words, row, missed)));
    }

    private Optional<String> lostCount(Situation after) {
        List<CountError> errors = after.countErrors();
        return errors.stream()
                .filter(error ->
                        error.lost() && !state.situation().countErrors().contains(error))
                .findFirst()
                .map(error -> words.say("doubt.lost", error.airfoils(), words.say("unit.airfoils")));
    }

    private List<Logged> counted() {
        return state.fold().entries().stream()
                .filter(logged -> !state.fold().isVoid(logged.number()))
                .toList();
    }

    private String number(BigDecimal number) {
        return words.number(number.doubleValue(), 2);
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
