package everyblade.core.entry;

import everyblade.core.entry.Entry.Interval;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How entries are read that keep account of things, people, conditions and of the record itself. */
final class RecordRules {

    static final Map<String, EntryRule> BY_VERB = Map.ofEntries(
            Map.entry("open", RecordRules::open),
            Map.entry("shut", line -> new Entry.Shut(thing(line), line.text().value())),
            Map.entry("tool", RecordRules::tool),
            Map.entry("lost", line -> new Entry.Lost(nameToEnd(line, "the name of what is missing"))),
            Map.entry("vanes", line -> new Entry.Vanes(line.name("a row"), line.name("a position"))),
            Map.entry("heat", RecordRules::heat),
            Map.entry("proof", RecordRules::proof),
            Map.entry("condition", line -> new Entry.Condition(text(line, "words such as clean or oily"))),
            Map.entry("fact", RecordRules::fact),
            Map.entry("refer", line -> new Entry.Refer(text(line, "a question"))),
            Map.entry("again", RecordRules::again),
            Map.entry("pause", line -> new Entry.Pause(line.take("held"))),
            Map.entry(
                    "handover",
                    line -> new Entry.Handover(nameToEnd(line, "a name").value())),
            Map.entry("takeover", RecordRules::takeover),
            Map.entry("settle", line -> new Entry.Settle(line.whole("an entry's number"), because(line))),
            Map.entry("void", line -> new Entry.Void(line.whole("an entry's number"), because(line))),
            Map.entry("note", line -> new Entry.Note(text(line, "a text"))));

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
            throw line.expected("\"because\" and a reason");
        }
        return text(line, "a reason");
    }

    private static String text(Line line, String expected) throws Refusal {
        return line.text(expected).value();
    }

    private static Said<String> thing(Line line) throws Refusal {
        return line.name("a port, cover or panel");
    }

    private static Entry open(Line line) throws Refusal {
        Said<String> thing = thing(line);
        line.endAfterName();
        return new Entry.Open(thing);
    }

    private static Entry tool(Line line) throws Refusal {
        if (line.take("out")) {
            return new Entry.ToolOut(nameToEnd(line, "the name of the tool"));
        }
        if (line.take("in")) {
            return new Entry.ToolIn(nameToEnd(line, "the name of the tool"));
        }
        throw line.expected("\"out\" or \"in\"");
    }

    /** A name that runs to the end of the line, or stands in double quotes. */
    private static Said<String> nameToEnd(Line line, String expected) throws Refusal {
        return line.peek().startsWith("\"") ? line.name(expected) : line.text(expected);
    }

    private static Entry heat(Line line) throws Refusal {
        Said<BigDecimal> temperature = line.signed("a temperature such as 40 C");
        String unit = line.peek();
        if (!unit.matches("\u00b0?[cf]")) {
            throw line.expected("C or F");
        }
        line.take(unit);
        boolean fahrenheit = unit.endsWith("f");
        BigDecimal coldest = fahrenheit ? COLDEST_F : COLDEST_C;
        if (temperature.value().compareTo(coldest) < 0) {
            throw new Refusal(
                    temperature.column(),
                    "no metal here is colder than " + coldest + (fahrenheit ? " F" : " C")
                            + ": check the number and its sign");
        }
        return new Entry.Heat(temperature, fahrenheit);
    }

    private static Entry fact(Line line) throws Refusal {
        boolean quoted = line.peek().startsWith("\"");
        Said<String> name = line.name("what the fact is about");
        String second = line.peek();
        if (!quoted && isFact(name.value(), second)) {
            line.take(second);
            name = new Said<>(name.value() + " " + second, name.column());
        }
        Said<String> value = line.text("its value");
        Optional<String> doubt = DecimalComma.doubt(value.value());
        if (doubt.isPresent()) {
            throw new Refusal(value.column(), doubt.get());
        }
        return new Entry.Fact(name, value.value());
    }

    /** Whether a first word and what follows it begin a fact whose name is two words. */
    static boolean isFact(String first, String following) {
        String second = following.split("\\s", 2)[0];
        return OF_TWO_WORDS.contains((first + " " + second).toLowerCase(Locale.ROOT));
    }

    private static Entry proof(Line line) throws Refusal {
        Said<BigDecimal> size = millimetres(line, "the width of the line");
        if (!line.take("at")) {
            throw line.expected("\"at\" and the distance");
        }
        return new Entry.Proof(size, millimetres(line, "the distance"));
    }

    private static Said<BigDecimal> millimetres(Line line, String expected) throws Refusal {
        Said<BigDecimal> length = line.positive(expected);
        if (!line.take("mm")) {
            throw line.expected("mm");
        }
        return length;
    }

    private static Entry again(Line line) throws Refusal {
        if (!line.take("in")) {
            throw line.expected("\"in\" and an interval such as 25 cycles");
        }
        Said<BigDecimal> number = line.positive("a number");
        String word = line.peek();
        if (!INTERVALS.containsKey(word)) {
            throw line.expected("cycles, hours or days");
        }
        line.take(word);
        return new Entry.Again(number, INTERVALS.get(word));
    }

    private static Entry takeover(Line line) throws Refusal {
        if (line.peek().equals("held") && line.peek(1).isEmpty()) {
            throw line.expected("a name before \"held\"");
        }
        boolean held = line.takeLast("held");
        return new Entry.Takeover(nameToEnd(line, "a name").value(), held);
    }
}
