package everyblade.core.entry;

import static everyblade.core.entry.EntryForm.kind;
import static everyblade.core.entry.Written.name;
import static everyblade.core.entry.Written.number;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Entries that say where the scope tip is, what is watched, and under which conditions. */
public sealed interface LookEntry extends Entry {

    /** Their kinds, in the order of the sheet. */
    List<EntryKind> KINDS = List.of(
            kind(View.class, "view", LookEntry::view, LookEntry::written)
                    .usage("view ID [with SCOPETIP]", "view")
                    .next(Slot.Named.VIEW, Slot.words("with"), Slot.Named.SCOPE_TIP)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(At.class, "at", line -> new At(line.name(Expected.STATION)), at -> name(at.station()))
                    .usage("at STATION", "at")
                    .next(Slot.Named.STATION),
            kind(
                            Watch.class,
                            "watch",
                            line -> new Watch(line.names(Expected.PART)),
                            watch -> Written.names(watch.parts()))
                    .usage("watch PART ...", "watch")
                    .next(Slot.Named.PART)
                    .with(EntryKind.Trait.GOES_ON),
            kind(
                            Look.class,
                            "look",
                            LookEntry::look,
                            look -> Written.seconds(look.seconds()) + Written.through(look.through()))
                    .usage("look [through S1 S2]", "look")
                    .with(EntryKind.Trait.WATCHES)
                    .with(EntryKind.Trait.ANSWERABLE),
            kind(In.class, "in", line -> new In(), in -> "").usage("in, clear", "in"),
            kind(Clear.class, "clear", line -> new Clear(), clear -> ""),
            kind(Out.class, "out", line -> new Out(), out -> "").usage("out", "out"),
            kind(
                            Proof.class,
                            "proof",
                            LookEntry::proof,
                            proof -> number(proof.size().value()) + " mm at "
                                    + number(proof.distance().value()) + " mm")
                    .usage("proof SIZE mm at DISTANCE mm", "proof"),
            kind(
                            Heat.class,
                            "heat",
                            LookEntry::heat,
                            heat -> number(heat.temperature().value()) + (heat.fahrenheit() ? " F" : " C"))
                    .usage("heat NUMBER C", "heat")
                    .next(Slot.Named.UNTOLD, Slot.words("C", "F")),
            kind(
                            Condition.class,
                            "condition",
                            line -> new Condition(line.text(Expected.CONDITION).value()),
                            Condition::words)
                    .usage("condition WORDS", "condition"));

    /** Seated at a view, at its first station; a new placement, watching everything. */
    record View(Said<String> view, Optional<Said<String>> scopeTip) implements LookEntry {}

    /** Moved to another station of the view in use. */
    record At(Said<String> station) implements LookEntry {}

    /** From now on only these parts are watched; parts of one kind unite, of different kinds intersect. */
    record Watch(List<Said<String>> parts) implements LookEntry {}

    /** Watched at rest. */
    record Look(Optional<BigDecimal> seconds, Optional<Through> through) implements LookEntry, Timed {}

    /** The scope tip is among the blades. */
    record In() implements LookEntry {}

    /** The scope tip is clear of the blades. */
    record Clear() implements LookEntry {}

    /** The scope was taken out of the port in use. */
    record Out() implements LookEntry {}

    /** The finest line seen on today's test target, and at what distance; mm. */
    record Proof(Said<BigDecimal> size, Said<BigDecimal> distance) implements LookEntry {}

    /** Metal temperature read, in °C or °F as {@code fahrenheit} says. */
    record Heat(Said<BigDecimal> temperature, boolean fahrenheit) implements LookEntry {}

    /** How the surfaces are from here on. */
    record Condition(String words) implements LookEntry {}

    private static Entry view(Line line) throws Refusal {
        Said<String> view = line.name(Expected.VIEW);
        return new View(view, line.take("with") ? Optional.of(line.name(Expected.SCOPE_TIP)) : Optional.empty());
    }

    private static String written(View view) {
        return name(view.view())
                + view.scopeTip().map(tip -> " with " + name(tip)).orElse("");
    }

    private static Entry look(Line line) throws Refusal {
        Optional<BigDecimal> seconds = AmountReader.seconds(line);
        Optional<Through> through = AmountReader.through(line);
        return new Look(seconds.isPresent() ? seconds : AmountReader.seconds(line), through);
    }

    private static Entry proof(Line line) throws Refusal {
        Said<BigDecimal> size = AmountReader.millimetres(line, Expected.LINE_WIDTH);
        if (!line.take("at")) {
            throw line.expected(Expected.AT_AND_DISTANCE);
        }
        return new Proof(size, AmountReader.millimetres(line, Expected.DISTANCE));
    }

    private static Entry heat(Line line) throws Refusal {
        Said<BigDecimal> temperature = line.signed(Expected.TEMPERATURE);
        String unit = line.peek();
        if (!unit.matches("\u00b0?[cf]")) {
            throw line.expected(Expected.TEMPERATURE_UNIT);
        }
        line.take(unit);
        boolean fahrenheit = unit.endsWith("f");
        BigDecimal coldest = coldest(fahrenheit);
        if (temperature.value().compareTo(coldest) < 0) {
            throw new Refusal(temperature.column(), new SyntaxProblem.TooCold(coldest, fahrenheit));
        }
        return new Heat(temperature, fahrenheit);
    }

    /** Nowhere on Earth was it ever colder than about this, °C or °F. */
    private static BigDecimal coldest(boolean fahrenheit) {
        return BigDecimal.valueOf(fahrenheit ? -130 : -90);
    }
}
