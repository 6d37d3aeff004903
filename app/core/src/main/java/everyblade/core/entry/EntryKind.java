package everyblade.core.entry;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every kind of entry: what is decided for each of them in a switch cannot forget one. */
public enum EntryKind {
    VIEW(Entry.View.class),
    AT(Entry.At.class),
    WATCH(Entry.Watch.class),
    IN(Entry.In.class),
    CLEAR(Entry.Clear.class),
    OUT(Entry.Out.class),
    TURN(Entry.Turn.class),
    SKIP(Entry.Skip.class),
    ROUND(Entry.Round.class),
    LOOK(Entry.Look.class),
    DRAW(Entry.Draw.class),
    FEED(Entry.Feed.class),
    PAD(Entry.Pad.class),
    DATUM(Entry.Datum.class),
    HERE(Entry.Here.class),
    SLIP(Entry.Slip.class),
    FIND(Entry.Find.class),
    RECHECK(Entry.Recheck.class),
    PHOTO(Entry.Photo.class),
    SAW(Entry.Saw.class),
    NO_ACCESS(Entry.NoAccess.class),
    ASK(Entry.Ask.class),
    OPEN(Entry.Open.class),
    SHUT(Entry.Shut.class),
    TOOL_OUT(Entry.ToolOut.class),
    TOOL_IN(Entry.ToolIn.class),
    LOST(Entry.Lost.class),
    VANES(Entry.Vanes.class),
    HEAT(Entry.Heat.class),
    PROOF(Entry.Proof.class),
    CONDITION(Entry.Condition.class),
    FACT(Entry.Fact.class),
    REFER(Entry.Refer.class),
    AGAIN(Entry.Again.class),
    PAUSE(Entry.Pause.class),
    HANDOVER(Entry.Handover.class),
    TAKEOVER(Entry.Takeover.class),
    SETTLE(Entry.Settle.class),
    VOID(Entry.Void.class),
    NOTE(Entry.Note.class);

    private static final Map<Class<?>, EntryKind> BY_TYPE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(kind -> kind.type, Function.identity()));

    private final Class<? extends Entry> type;

    EntryKind(Class<? extends Entry> type) {
        this.type = type;
    }

    /** The kind of an entry; every one has its own. */
    public static EntryKind of(Entry entry) {
        return BY_TYPE.get(entry.getClass());
    }
}
