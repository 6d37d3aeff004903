package everyblade.core.entry;

import static everyblade.core.entry.EntryForm.kind;
import static everyblade.core.entry.EntryForm.kindOfRow;
import static everyblade.core.entry.Written.name;
import static everyblade.core.entry.Written.row;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Entries that say something about certain airfoils or ask for some, and questions with what became of them. */
public sealed interface FindingEntry extends Entry {

    /** Their kinds, in the order of the sheet. */
    List<EntryKind> KINDS = List.of(
            kindOfRow(
                            Find.class,
                            "find",
                            FindingRules::find,
                            find -> row(find.row()) + find.kind().word() + " "
                                    + find.airfoil().value() + " " + name(find.zone()) + Written.size(find.size()))
                    .usage("KIND N ZONE [LENGTH]", "finding")
                    .next(
                            Slot.Named.KIND_OF_FINDING,
                            Slot.Named.UNTOLD,
                            Slot.Named.ZONE,
                            Slot.words("length", "depth", "width", "\u00b1", "mm"))
                    .with(EntryKind.Trait.GOES_ON)
                    .weighing(EntryKind.Weight.FINDING),
            kindOfRow(
                            Recheck.class,
                            "recheck",
                            FindingRules::recheck,
                            recheck -> row(recheck.row())
                                    + recheck.airfoil().value()
                                    + Written.after(recheck.rest().value()))
                    .usage("recheck N [of ROW] [ZONE] [TEXT]", "recheck")
                    .next(Slot.Named.UNTOLD, Slot.Named.ZONE)
                    .weighing(EntryKind.Weight.QUESTION)
                    .with(EntryKind.Trait.OPINION),
            kind(Photo.class, "photo", FindingRules::photo, FindingEntry::written)
                    .usage("photo FILE [of N [ZONE]]", "photo")
                    .with(EntryKind.Trait.ANSWERABLE),
            kindOfRow(
                            Saw.class,
                            "saw",
                            FindingRules::saw,
                            saw -> row(saw.row()) + Written.zones(saw.zone()) + " " + Written.airfoils(saw.airfoils())
                                    + " photo " + name(saw.file()))
                    .usage("saw ZONE N photo FILE", "saw")
                    .next(Slot.Named.ZONE, Slot.words("all"), Slot.words("because", "photo"))
                    .with(EntryKind.Trait.GOES_ON)
                    .with(EntryKind.Trait.OPINION)
                    .with(EntryKind.Trait.ANSWERABLE),
            kindOfRow(
                            NoAccess.class,
                            "noaccess",
                            FindingRules::noAccess,
                            noAccess -> row(noAccess.row()) + Written.zones(noAccess.zone()) + " "
                                    + Written.airfoils(noAccess.airfoils()) + Written.because(noAccess.reason()))
                    .usage("noaccess ZONE N because TEXT", "noaccess")
                    .usage("noaccess unshown because TEXT", "unshown")
                    .next(Slot.Named.ZONE, Slot.words("all"), Slot.words("because", "photo"))
                    .with(EntryKind.Trait.GOES_ON)
                    .with(EntryKind.Trait.OPINION)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(
                            Ask.class,
                            "ask",
                            line -> new Ask(line.name(Expected.ROW), line.names(Expected.PART)),
                            ask -> name(ask.row()) + " " + Written.names(ask.parts()))
                    .usage("ask ROW PART ...", "ask")
                    .next(Slot.Named.ROW, Slot.Named.PART)
                    .with(EntryKind.Trait.GOES_ON)
                    .with(EntryKind.Trait.OPINION),
            kind(
                            Refer.class,
                            "refer",
                            line -> new Refer(line.text(Expected.QUESTION).value()),
                            Refer::text)
                    .usage("refer TEXT", "refer")
                    .weighing(EntryKind.Weight.QUESTION)
                    .with(EntryKind.Trait.OPINION),
            kind(
                            Again.class,
                            "again",
                            FindingEntry::again,
                            again -> "in " + Written.number(again.number().value()) + " "
                                    + Written.word(again.interval()))
                    .usage("again in NUMBER cycles", "again")
                    .next(Slot.words("in"), Slot.Named.UNTOLD, Slot.words("cycles", "hours", "days"))
                    .weighing(EntryKind.Weight.QUESTION)
                    .with(EntryKind.Trait.OPINION),
            kind(
                            Settle.class,
                            "settle",
                            line -> new Settle(line.whole(Expected.ENTRY_NUMBER), line.because()),
                            settle -> settle.entry().value() + Written.because(settle.reason()))
                    .usage("settle K because TEXT", "settle")
                    .next(Slot.Named.QUESTION, Slot.words("because"))
                    .with(EntryKind.Trait.OPINION));

    /** A finding on an airfoil of the row in view, or of the row named. */
    record Find(Optional<Said<String>> row, Kind kind, Said<Integer> airfoil, Said<String> zone, Size size)
            implements FindingEntry {}

    /** Something to come back to; {@code rest} may begin with a zone and goes on in free words. */
    record Recheck(Optional<Said<String>> row, Said<Integer> airfoil, Said<String> rest) implements FindingEntry {}

    /** A picture. */
    record Photo(Said<String> file, Optional<Said<Integer>> airfoil, Optional<Said<String>> zone)
            implements FindingEntry, Pictured {}

    /** Stated with a picture, where the computation cannot tell. */
    record Saw(Optional<Said<String>> row, Said<String> zone, Airfoils airfoils, Said<String> file)
            implements FindingEntry, Pictured, OfAirfoils {}

    /** Accepted as not seen. */
    record NoAccess(Optional<Said<String>> row, Said<String> zone, Airfoils airfoils, String reason)
            implements FindingEntry, OfAirfoils {}

    /** The task asks for these parts of a row only. */
    record Ask(Said<String> row, List<Said<String>> parts) implements FindingEntry {}

    /** A question to someone who decides; open until settled. */
    record Refer(String text) implements FindingEntry {}

    /** A repeat inspection is due; open until settled. */
    record Again(Said<BigDecimal> number, Interval interval) implements FindingEntry {}

    /** What entry K left open is settled. */
    record Settle(Said<Integer> entry, String reason) implements FindingEntry {}

    private static String written(Photo photo) {
        return name(photo.file())
                + photo.airfoil().map(airfoil -> " of " + airfoil.value()).orElse("")
                + photo.zone().map(zone -> " " + name(zone)).orElse("");
    }

    private static Entry again(Line line) throws Refusal {
        if (!line.take("in")) {
            throw line.expected(Expected.IN_AND_INTERVAL);
        }
        Said<BigDecimal> number = line.positive(Expected.NUMBER);
        String word = line.peek();
        Map<String, Interval> intervals = Map.of(
                "cycles", Interval.CYCLES,
                "cycle", Interval.CYCLES,
                "hours", Interval.HOURS,
                "hour", Interval.HOURS,
                "days", Interval.DAYS,
                "day", Interval.DAYS);
        if (!intervals.containsKey(word)) {
            throw line.expected(Expected.INTERVAL);
        }
        line.take(word);
        return new Again(number, intervals.get(word));
    }
}
