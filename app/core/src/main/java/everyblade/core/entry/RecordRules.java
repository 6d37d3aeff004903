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
            Map.entry("lost", line -> new Entry.Lost(nameToEnd(line, Expected.WHAT_IS_MISSING))),
            Map.entry("vanes", line -> new Entry.Vanes(line.name(Expected.ROW), line.name(Expected.POSITION))),
            Map.entry("heat", RecordRules::heat),
            Map.entry("proof", RecordRules::proof),
            Map.entry("condition", line -> new Entry.Condition(text(line, Expected.CONDITION))),
            Map.entry("fact", RecordRules::fact),
            Map.entry("refer", line -> new Entry.Refer(text(line, Expected.QUESTION))),
            Map.entry("again", RecordRules::again),
            Map.entry("pause", line -> new Entry.Pause(line.take("held"))),
            Map.entry(
                    "handover",
                    line -> new Entry.Handover(nameToEnd(line, Expected.NAME).value())),
            Map.entry("takeover", RecordRules::takeover),
            Map.entry("settle", line -> new Entry.Settle(line.whole(Expected.ENTRY_NUMBER), because(line))),
            Map.entry("void", line -> new Entry.Void(line.whole(Expected.ENTRY_NUMBER), because(line))),
            Map.entry("note", line -> new Entry.Note(text(line, Expected.TEXT))));

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
