package everyblade.core.entry;

import static everyblade.core.entry.Written.after;
import static everyblade.core.entry.Written.name;
import static everyblade.core.entry.Written.number;

import everyblade.core.entry.Entry.Interval;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How entries are read and written that keep account of things, people, conditions and of the record itself. */
final class RecordRules {

    static final List<EntryForm<?>> FORMS = List.of(
            EntryForm.of(Entry.Open.class, "open", RecordRules::open, open -> name(open.thing())),
            EntryForm.of(
                    Entry.Shut.class,
                    "shut",
                    line -> new Entry.Shut(thing(line), line.text().value()),
                    shut -> name(shut.thing()) + after(shut.text())),
            EntryForm.of(
                    Entry.ToolOut.class,
                    "tool",
                    RecordRules::tool,
                    out -> "out " + Written.nameToEnd(out.tool().value())),
            EntryForm.of(
                    Entry.ToolIn.class,
                    "tool",
                    RecordRules::tool,
                    in -> "in " + Written.nameToEnd(in.tool().value())),
            EntryForm.of(
                    Entry.Lost.class,
                    "lost",
                    line -> new Entry.Lost(nameToEnd(line, Expected.WHAT_IS_MISSING)),
                    lost -> Written.nameToEnd(lost.tool().value())),
            EntryForm.of(
                    Entry.Vanes.class,
                    "vanes",
                    line -> new Entry.Vanes(line.name(Expected.ROW), line.name(Expected.POSITION)),
                    vanes -> name(vanes.row()) + " " + name(vanes.position())),
            EntryForm.of(
                    Entry.Heat.class,
                    "heat",
                    RecordRules::heat,
                    heat -> number(heat.temperature().value()) + (heat.fahrenheit() ? " F" : " C")),
            EntryForm.of(
                    Entry.Proof.class,
                    "proof",
                    RecordRules::proof,
                    proof -> number(proof.size().value()) + " mm at "
                            + number(proof.distance().value()) + " mm"),
            EntryForm.of(
                    Entry.Condition.class,
                    "condition",
                    line -> new Entry.Condition(text(line, Expected.CONDITION)),
                    Entry.Condition::words),
            EntryForm.of(Entry.Fact.class, "fact", RecordRules::fact, RecordRules::written),
            EntryForm.of(
                    Entry.Refer.class,
                    "refer",
                    line -> new Entry.Refer(text(line, Expected.QUESTION)),
                    Entry.Refer::text),
            EntryForm.of(
                    Entry.Again.class,
                    "again",
                    RecordRules::again,
                    again -> "in " + number(again.number().value()) + " " + Written.word(again.interval())),
            EntryForm.of(
                    Entry.Pause.class,
                    "pause",
                    line -> new Entry.Pause(line.take("held")),
                    pause -> pause.held() ? "held" : ""),
            EntryForm.of(
                    Entry.Handover.class,
                    "handover",
                    line -> new Entry.Handover(nameToEnd(line, Expected.NAME).value()),
                    handover -> Written.nameToEnd(handover.name())),
            EntryForm.of(
                    Entry.Takeover.class,
                    "takeover",
                    RecordRules::takeover,
                    takeover -> Written.nameBeforeHeld(takeover.name()) + (takeover.held() ? " held" : "")),
            EntryForm.of(
                    Entry.Settle.class,
                    "settle",
                    line -> new Entry.Settle(line.whole(Expected.ENTRY_NUMBER), because(line)),
                    settle -> settle.entry().value() + Written.because(settle.reason())),
            EntryForm.of(
                    Entry.Void.class,
                    "void",
                    line -> new Entry.Void(line.whole(Expected.ENTRY_NUMBER), because(line)),
                    struck -> struck.entry().value() + Written.because(struck.reason())),
            EntryForm.of(
                    Entry.Note.class, "note", line -> new Entry.Note(text(line, Expected.TEXT)), Entry.Note::text));

    private static final Map<String, Interval> INTERVALS = Map.of(
            "cycles", Interval.CYCLES,
            "cycle", Interval.CYCLES,
            "hours", Interval.HOURS,
            "hour", Interval.HOURS,
            "days", Interval.DAYS,
            "day", Interval.DAYS);

    /** Facts whose name is two words, which people say without quotes. */
    private static final Set<String> OF_TWO_WORDS = Set.of("scope serial", "eye test");

    /** Nowhere on Earth was it ever colder than about this, °C and °F. */
    private static final BigDecimal COLDEST_C = BigDecimal.valueOf(-90);

    private static final BigDecimal COLDEST_F = BigDecimal.valueOf(-130);

    private RecordRules() {}

    /** {@code because TEXT}; a comma may stand before it. */
    static String because(Line line) throws Refusal {
        line.takeComma();
        if (!line.take("because")) {
            throw line.expected(Expected.BECAUSE_AND_REASON);
        }
        return text(line, Expected.REASON);
    }

    private static String text(Line line, Expected expected) throws Refusal {
        return line.text(expected).value();
    }

    private static Said<String> thing(Line line) throws Refusal {
        return line.name(Expected.THING_TO_OPEN);
    }

    private static Entry open(Line line) throws Refusal {
        Said<String> thing = thing(line);
        line.endAfterName();
        return new Entry.Open(thing);
    }

    private static Entry tool(Line line) throws Refusal {
        if (line.take("out")) {
            return new Entry.ToolOut(nameToEnd(line, Expected.TOOL));
        }
        if (line.take("in")) {
            return new Entry.ToolIn(nameToEnd(line, Expected.TOOL));
        }
        throw line.expected(Expected.OUT_OR_IN);
    }

    /** A name that runs to the end of the line, or stands in double quotes. */
    private static Said<String> nameToEnd(Line line, Expected expected) throws Refusal {
        return line.peek().startsWith("\"") ? line.name(expected) : line.text(expected);
    }

    private static Entry heat(Line line) throws Refusal {
        Said<BigDecimal> temperature = line.signed(Expected.TEMPERATURE);
        String unit = line.peek();
        if (!unit.matches("\u00b0?[cf]")) {
            throw line.expected(Expected.TEMPERATURE_UNIT);
        }
        line.take(unit);
        boolean fahrenheit = unit.endsWith("f");
        BigDecimal coldest = fahrenheit ? COLDEST_F : COLDEST_C;
        if (temperature.value().compareTo(coldest) < 0) {
            throw new Refusal(temperature.column(), new SyntaxProblem.TooCold(coldest, fahrenheit));
        }
        return new Entry.Heat(temperature, fahrenheit);
    }

    private static Entry fact(Line line) throws Refusal {
        boolean quoted = line.peek().startsWith("\"");
        Said<String> name = line.name(Expected.FACT_NAME);
        String second = line.peek();
        if (!quoted && isFact(name.value(), second)) {
            line.take(second);
            name = new Said<>(name.value() + " " + second, name.column());
        }
        Said<String> value = line.text(Expected.FACT_VALUE);
        Optional<DecimalComma.TwoWays> doubt = DecimalComma.doubt(value.value());
        if (doubt.isPresent()) {
            throw new Refusal(value.column(), doubt.get());
        }
        return new Entry.Fact(name, value.value());
    }

    private static String written(Entry.Fact fact) {
        String name = fact.name().value();
        return (isFact(name, fact.value()) ? Written.quoted(name) : name(name)) + " " + fact.value();
    }

    /** Whether a first word and what follows it begin a fact whose name is two words. */
    static boolean isFact(String first, String following) {
        String second = following.split("\\s", 2)[0];
        return OF_TWO_WORDS.contains((first + " " + second).toLowerCase(Locale.ROOT));
    }

    private static Entry proof(Line line) throws Refusal {
        Said<BigDecimal> size = millimetres(line, Expected.LINE_WIDTH);
        if (!line.take("at")) {
            throw line.expected(Expected.AT_AND_DISTANCE);
        }
        return new Entry.Proof(size, millimetres(line, Expected.DISTANCE));
    }

    private static Said<BigDecimal> millimetres(Line line, Expected expected) throws Refusal {
        Said<BigDecimal> length = line.positive(expected);
        if (!line.take("mm")) {
            throw line.expected(Expected.MILLIMETRES);
        }
        return length;
    }

    private static Entry again(Line line) throws Refusal {
        if (!line.take("in")) {
            throw line.expected(Expected.IN_AND_INTERVAL);
        }
        Said<BigDecimal> number = line.positive(Expected.NUMBER);
        String word = line.peek();
        if (!INTERVALS.containsKey(word)) {
            throw line.expected(Expected.INTERVAL);
        }
        line.take(word);
        return new Entry.Again(number, INTERVALS.get(word));
    }

    private static Entry takeover(Line line) throws Refusal {
        if (line.peek().equals("held") && line.peek(1).isEmpty()) {
            throw line.expected(Expected.NAME_BEFORE_HELD);
        }
        boolean held = line.takeLast("held");
        return new Entry.Takeover(nameToEnd(line, Expected.NAME).value(), held);
    }
}
