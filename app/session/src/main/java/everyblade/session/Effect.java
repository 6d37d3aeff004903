package everyblade.session;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What an entry does to a situation, in words. */
public final class Effect {

    private final Words words;
    private final Situation before;
    private final Situation after;

    private Effect(Words words, Situation before, Situation after) {
        this.words = words;
        this.before = before;
        this.after = after;
    }

    /** The lines that tell what this entry does, the most important one first. */
    static List<String> of(Words words, Situation before, Situation after, Entry entry) {
        return new Effect(words, before, after).lines(entry);
    }

    private List<String> lines(Entry entry) {
        List<String> lines = new ArrayList<>();
        does(entry).ifPresent(lines::add);
        newCountError().ifPresent(error -> lines.add(told(error)));
        Optional<String> stood = before.seat().map(seat -> standing(words, before, seat));
        after.seat()
                .map(seat -> standing(words, after, seat))
                .filter(stands -> !stood.filter(stands::equals).isPresent())
                .ifPresent(lines::add);
        if (lines.isEmpty()) {
            lines.add(words.say("effect.kept"));
        }
        return lines;
    }

    /** What is told of an entry of its kind; of most the count, and where the row stands, say all. */
    private Optional<String> does(Entry entry) {
        EntryKind kind = EntryKind.of(entry);
        if (kind.moves()) {
            return after.seat().map(seat -> moved(seat.row(), kind.watches()));
        }
        if (entry instanceof RecordEntry.Void struck) {
            return Optional.of(words.say("effect.void", struck.entry().value()));
        }
        return entry instanceof LookEntry look ? does(look) : Optional.empty();
    }

    private Optional<String> does(LookEntry entry) {
        if (entry instanceof LookEntry.View || entry instanceof LookEntry.At) {
            return after.seat().map(this::seated);
        }
        if (entry instanceof LookEntry.Watch) {
            return after.seat().map(seat -> words.say("effect.watch", parts(seat)));
        }
        if (entry instanceof LookEntry.Look) {
            return after.seat().map(seat -> words.say("effect.look"));
        }
        if (entry instanceof LookEntry.In || entry instanceof LookEntry.Clear) {
            return Optional.of(words.say(after.among() ? "effect.in" : "effect.clear"));
        }
        if (entry instanceof LookEntry.Out) {
            return Optional.of(words.say("effect.out"));
        }
        return entry instanceof LookEntry.Heat
                ? after.celsius().map(celsius -> words.say("effect.heat", words.number(celsius.doubleValue(), 1)))
                : Optional.empty();
    }

    private String seated(Seat seat) {
        return words.say(
                "effect.view",
                seat.view().id(),
                seat.row().name(),
                seat.station().map(station -> " @ " + station.id()).orElse(""));
    }

    private String parts(Seat seat) {
        return ZoneText.of(after, seat.row(), seat.watching(), words);
    }

    private String moved(Row row, boolean watched) {
        SmoothedTrack placing = after.placing(row);
        Turn moved = placing.counted(before.stop(row), after.stop(row));
        boolean rotor = row.kind() == RowKind.ROTOR;
        String way = words.signed(rotor ? moved.degrees() : -moved.degrees(), 1);
        String blades = words.number(Math.abs(moved.degrees()) * row.count() / 360, 1);
        String reading = words.number(after.reading(row).degrees(), 1);
        String key = rotor ? "effect.turned" : "effect.drawn";
        return words.say(
                key,
                way,
                blades,
                words.airfoils(row),
                reading,
                words.say(watched ? "effect.watched" : "effect.unwatched"));
    }

    private Optional<CountError> newCountError() {
        List<CountError> errors = after.countErrors();
        return errors.size() > before.countErrors().size()
                ? Optional.of(errors.get(errors.size() - 1))
                : Optional.empty();
    }

    private String told(CountError error) {
        return words.say("effect.countError", words.signed(error.degrees(), 1));
    }

    /** Which airfoil stands at the reference, and how surely. */
    public static String standing(Words words, Situation now, Seat seat) {
        Row row = seat.row();
        Optional<SmoothedTrack.Place> place =
                now.placing(row).at(row.id(), row.rock(), now.stop(row)).place();
        Optional<Integer> airfoil = now.airfoilAtReference(seat);
        if (place.isEmpty() || airfoil.isEmpty()) {
            return words.say("where.uncounted", words.airfoils(row));
        }
        double off = place.get().high().minus(place.get().low()).degrees() / 2;
        return words.say("where.airfoil", words.airfoil(row), airfoil.get(), row.id(), words.number(off, 1));
    }
}
