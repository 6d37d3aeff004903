package everyblade.core.entry;

import static everyblade.core.entry.EntryForm.kind;
import static everyblade.core.entry.Written.name;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Entries that keep account of things, people and facts, and of the record itself. */
public sealed interface RecordEntry extends Entry {

    /** Their kinds, in the order of the sheet. */
    List<EntryKind> KINDS = List.of(
            kind(Open.class, "open", RecordEntry::open, open -> name(open.thing()))
                    .usage("open THING, shut THING [TEXT]", "open")
                    .next(Slot.Named.THING)
                    .weighing(EntryKind.Weight.OPENING),
            kind(
                            Shut.class,
                            "shut",
                            line -> new Shut(
                                    line.name(Expected.THING_TO_OPEN),
                                    line.text().value()),
                            shut -> name(shut.thing()) + Written.after(shut.text()))
                    .next(Slot.Named.THING_OPEN),
            kind(
                            ToolOut.class,
                            "tool",
                            RecordEntry::tool,
                            out -> "out " + Written.nameToEnd(out.tool().value()))
                    .usage("tool out NAME, tool in NAME", "tool")
                    .next(Slot.words("out", "in"), Slot.Named.TOOL)
                    .weighing(EntryKind.Weight.TOOL),
            kind(
                    ToolIn.class,
                    "tool",
                    RecordEntry::tool,
                    in -> "in " + Written.nameToEnd(in.tool().value())),
            kind(
                            Lost.class,
                            "lost",
                            line -> new Lost(line.nameToEnd(Expected.WHAT_IS_MISSING)),
                            lost -> Written.nameToEnd(lost.tool().value()))
                    .weighing(EntryKind.Weight.LOST),
            kind(Pause.class, "pause", line -> new Pause(line.take("held")), pause -> pause.held() ? "held" : "")
                    .usage("pause, handover NAME, takeover NAME", "pause")
                    .next(Slot.words("held"))
                    .with(EntryKind.Trait.BREAK),
            kind(
                            Handover.class,
                            "handover",
                            line -> new Handover(line.nameToEnd(Expected.NAME).value()),
                            handover -> Written.nameToEnd(handover.name()))
                    .with(EntryKind.Trait.BREAK)
                    .with(EntryKind.Trait.OPINION),
            kind(
                            Takeover.class,
                            "takeover",
                            RecordEntry::takeover,
                            takeover -> Written.nameBeforeHeld(takeover.name()) + (takeover.held() ? " held" : ""))
                    .with(EntryKind.Trait.BREAK),
            kind(Fact.class, "fact", RecordEntry::fact, RecordEntry::written)
                    .usage("fact NAME VALUE", "fact")
                    .next(Slot.words(
                            "hours", "cycles", "position", "manual", "revision", "\"scope serial\"", "\"eye test\"")),
            kind(Note.class, "note", line -> new Note(line.text(Expected.TEXT).value()), Note::text)
                    .usage("note TEXT", "note")
                    .with(EntryKind.Trait.OPINION),
            kind(
                            Void.class,
                            "void",
                            line -> new Void(line.whole(Expected.ENTRY_NUMBER), line.because()),
                            struck -> struck.entry().value() + Written.because(struck.reason()))
                    .usage("void K because TEXT", "void")
                    .next(Slot.Named.UNTOLD, Slot.words("because"))
                    .with(EntryKind.Trait.OPINION));

    /** A port, cover or panel is open. */
    record Open(Said<String> thing) implements RecordEntry {}

    /** A port, cover or panel is shut again. */
    record Shut(Said<String> thing, String text) implements RecordEntry {}

    /** A tool, light or plug left its place. */
    record ToolOut(Said<String> tool) implements RecordEntry {}

    /** A tool, light or plug is back. */
    record ToolIn(Said<String> tool) implements RecordEntry {}

    /** A tool, light or plug is missing. */
    record Lost(Said<String> tool) implements RecordEntry {}

    /** Work stops; {@code held} if the rotor surely stays. */
    record Pause(boolean held) implements RecordEntry {}

    /** Work is handed over. */
    record Handover(String name) implements RecordEntry {}

    /** Work is accepted; {@code held} if the rotor surely stayed. */
    record Takeover(String name, boolean held) implements RecordEntry {}

    /** A fact for the record, such as hours or the manual's revision. */
    record Fact(Said<String> name, String value) implements RecordEntry {}

    /** Anything. */
    record Note(String text) implements RecordEntry {}

    /** Entry K does not count. */
    record Void(Said<Integer> entry, String reason) implements RecordEntry {}

    private static Entry open(Line line) throws Refusal {
        Said<String> thing = line.name(Expected.THING_TO_OPEN);
        line.endAfterName();
        return new Open(thing);
    }

    private static Entry tool(Line line) throws Refusal {
        if (line.take("out")) {
            return new ToolOut(line.nameToEnd(Expected.TOOL));
        }
        if (line.take("in")) {
            return new ToolIn(line.nameToEnd(Expected.TOOL));
        }
        throw line.expected(Expected.OUT_OR_IN);
    }

    private static Entry takeover(Line line) throws Refusal {
        if (line.peek().equals("held") && line.peek(1).isEmpty()) {
            throw line.expected(Expected.NAME_BEFORE_HELD);
        }
        boolean held = line.takeLast("held");
        return new Takeover(line.nameToEnd(Expected.NAME).value(), held);
    }

    private static Entry fact(Line line) throws Refusal {
        boolean quoted = line.peek().startsWith("\"");
        Said<String> name = line.name(Expected.FACT_NAME);
        String second = line.peek();
        if (!quoted && isOfTwoWords(name.value(), second)) {
            line.take(second);
            name = new Said<>(name.value() + " " + second, name.column());
        }
        Said<String> value = line.text(Expected.FACT_VALUE);
        Optional<DecimalComma.TwoWays> doubt = DecimalComma.doubt(value.value());
        if (doubt.isPresent()) {
            throw new Refusal(value.column(), doubt.get());
        }
        return new Fact(name, value.value());
    }

    private static String written(Fact fact) {
        String name = fact.name().value();
        return (isOfTwoWords(name, fact.value()) ? Written.quoted(name) : name(name)) + " " + fact.value();
    }

    /** Whether a first word and what follows it begin a fact whose name is two words, which people say without quotes. */
    private static boolean isOfTwoWords(String first, String following) {
        String second = following.split("\\s", 2)[0];
        return Set.of("scope serial", "eye test").contains((first + " " + second).toLowerCase(Locale.ROOT));
    }
}
