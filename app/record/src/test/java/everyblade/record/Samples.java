package everyblade.record;

import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.Kind;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Said;
import everyblade.core.entry.Sense;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.Unit;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Entries and beginnings to try the record with; engine, serial and people are invented. */
final class Samples {

    static final Instant TIME = Instant.parse("2026-03-01T08:00:00Z");

    static final byte[] ENGINE =
            "{\"schema\":\"everyblade/engine-model/1\",\"id\":\"invented-1\"}\n".getBytes(StandardCharsets.UTF_8);

    static final Beginning BEGINNING = new Beginning(
            TIME,
            "Ada Vane",
            "invented-1",
            "SN 0007",
            "after a bird, Überholung fällig",
            new TreeMap<>(Map.of("grazing", new BigDecimal("30"), "clearance", new BigDecimal("2.50"))),
            Optional.empty());

    private Samples() {}

    /** One entry of every kind of component: words, numbers, choices, lists, and what is left out. */
    static final List<Addition> DIVERSE = List.of(
            say("view p1-c1", new LookEntry.View(said("p1-c1"), Optional.empty())),
            say(
                    "datum c1 1 at 0 ±0.5",
                    new TurnEntry.Datum(
                            said("c1"), said(1), Optional.of(said(number("0"))), Optional.of(number("0.5")))),
            say("watch tip pressure", new LookEntry.Watch(List.of(said("tip"), said("pressure")))),
            say(
                    "turn on 38 ±1.90",
                    new TurnEntry.Turn(
                            said(new Movement.By(
                                    Optional.of(Sense.ON), number("38"), Unit.DEG, Optional.of(number("1.90")))),
                            Optional.empty(),
                            Optional.empty())),
            say(
                    "skip to 210",
                    new TurnEntry.Skip(said(new Movement.To(Optional.empty(), number("210"), Optional.empty())))),
            say(
                    "crack 14 tip/pressure/leading 1.2",
                    new FindingEntry.Find(
                            Optional.empty(),
                            Kind.CRACK,
                            said(14),
                            said("tip/pressure/leading"),
                            new Entry.Size(
                                    Optional.of(number("1.2")),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Entry.LengthUnit.MM))),
            say(
                    "noaccess root all because the port is blocked",
                    new FindingEntry.NoAccess(
                            Optional.empty(),
                            said("root"),
                            new Entry.Airfoils(Optional.empty(), Optional.empty()),
                            "the port is blocked")),
            say("heat 41 C", new LookEntry.Heat(said(number("41")), false)),
            say("slip", new TurnEntry.Slip()),
            say("again in 50 cycles", new FindingEntry.Again(said(number("50")), Entry.Interval.CYCLES)),
            say(
                    "note \"Kühlöl\" \\ 12\u202f° \uD83D\uDD29",
                    new RecordEntry.Note("\"Kühlöl\" \\ 12\u202f° \uD83D\uDD29")));

    /** A short note that names its number. */
    static Addition note(int number) {
        return say("note number " + number, new RecordEntry.Note("number " + number));
    }

    /** Notes of these numbers, ends included. */
    static List<Addition> notes(int first, int last) {
        return IntStream.rangeClosed(first, last).mapToObj(Samples::note).toList();
    }

    static Addition say(String text, Entry means) {
        return new Addition(text, means, TIME.plusSeconds(60), "Ada Vane", true);
    }

    static <T> Said<T> said(T value) {
        return new Said<>(value, 1);
    }

    static BigDecimal number(String digits) {
        return new BigDecimal(digits);
    }
}
