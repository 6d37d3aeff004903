package everyblade.core.entry;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Every kind of entry, what is said most first, and what those ask who treat many kinds alike. What is decided for each of
 * them in a switch that gives a value cannot forget one.
 */
public enum EntryKind {
    VIEW(Entry.View.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    TURN(Entry.Turn.class, Motion.WATCHED, Weight.PLAIN, Tells.DEED),
    LOOK(Entry.Look.class, Motion.AT_REST, Weight.PLAIN, Tells.DEED),
    WATCH(Entry.Watch.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    HERE(Entry.Here.class, Motion.NONE, Weight.IDENTIFICATION, Tells.DEED),
    ROUND(Entry.Round.class, Motion.WATCHED, Weight.IDENTIFICATION, Tells.DEED),
    DATUM(Entry.Datum.class, Motion.NONE, Weight.IDENTIFICATION, Tells.DEED),
    SKIP(Entry.Skip.class, Motion.UNWATCHED, Weight.PLAIN, Tells.DEED),
    HEAT(Entry.Heat.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    AT(Entry.At.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    IN(Entry.In.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    CLEAR(Entry.Clear.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    OUT(Entry.Out.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    DRAW(Entry.Draw.class, Motion.WATCHED, Weight.PLAIN, Tells.DEED),
    FEED(Entry.Feed.class, Motion.UNWATCHED, Weight.PLAIN, Tells.DEED),
    PAD(Entry.Pad.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    FIND(Entry.Find.class, Motion.NONE, Weight.FINDING, Tells.DEED),
    RECHECK(Entry.Recheck.class, Motion.NONE, Weight.QUESTION, Tells.OPINION),
    PHOTO(Entry.Photo.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    SAW(Entry.Saw.class, Motion.NONE, Weight.PLAIN, Tells.OPINION),
    NO_ACCESS(Entry.NoAccess.class, Motion.NONE, Weight.PLAIN, Tells.OPINION),
    ASK(Entry.Ask.class, Motion.NONE, Weight.PLAIN, Tells.OPINION),
    SLIP(Entry.Slip.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    OPEN(Entry.Open.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    SHUT(Entry.Shut.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    TOOL_OUT(Entry.ToolOut.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    TOOL_IN(Entry.ToolIn.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    LOST(Entry.Lost.class, Motion.NONE, Weight.QUESTION, Tells.DEED),
    VANES(Entry.Vanes.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    PROOF(Entry.Proof.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    CONDITION(Entry.Condition.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    FACT(Entry.Fact.class, Motion.NONE, Weight.PLAIN, Tells.DEED),
    REFER(Entry.Refer.class, Motion.NONE, Weight.QUESTION, Tells.OPINION),
    AGAIN(Entry.Again.class, Motion.NONE, Weight.QUESTION, Tells.OPINION),
    PAUSE(Entry.Pause.class, Motion.NONE, Weight.BREAK, Tells.DEED),
    HANDOVER(Entry.Handover.class, Motion.NONE, Weight.BREAK, Tells.OPINION),
    TAKEOVER(Entry.Takeover.class, Motion.NONE, Weight.BREAK, Tells.DEED),
    SETTLE(Entry.Settle.class, Motion.NONE, Weight.PLAIN, Tells.OPINION),
    VOID(Entry.Void.class, Motion.NONE, Weight.PLAIN, Tells.OPINION),
    NOTE(Entry.Note.class, Motion.NONE, Weight.PLAIN, Tells.OPINION);

    /** What it moves: what turns, or the scope tip round the annulus. */
    private enum Motion {
        NONE,
        AT_REST,
        WATCHED,
        UNWATCHED
    }

    /** What hangs on it. */
    private enum Weight {
        PLAIN,
        IDENTIFICATION,
        FINDING,
        QUESTION,
        BREAK
    }

    /** Whether it says what was done or found, or what is made of it. */
    private enum Tells {
        DEED,
        OPINION
    }

    private static final Map<Class<?>, EntryKind> BY_TYPE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(kind -> kind.type, Function.identity()));

    private final Class<? extends Entry> type;
    private final Motion motion;
    private final Weight weight;
    private final Tells tells;

    EntryKind(Class<? extends Entry> type, Motion motion, Weight weight, Tells tells) {
        this.type = type;
        this.motion = motion;
        this.weight = weight;
        this.tells = tells;
    }

    /** The kind of an entry; every one has its own. */
    public static EntryKind of(Entry entry) {
        return BY_TYPE.get(entry.getClass());
    }

    /** The kind whose line begins with this verb in lower case; of several that share it, the first. */
    public static Optional<EntryKind> of(String verb) {
        return EntryForms.of(verb).map(form -> BY_TYPE.get(form.type()));
    }

    /** With what its line begins; several may share it. */
    public String verb() {
        return EntryForms.of(type).verb();
    }

    /** Whether it moves what turns, or the scope tip round the annulus. */
    public boolean moves() {
        return motion == Motion.WATCHED || motion == Motion.UNWATCHED;
    }

    /** Whether something was watched, at rest or while it moved. */
    public boolean watches() {
        return motion == Motion.WATCHED || motion == Motion.AT_REST;
    }

    /** Whether it says which airfoil stands at the reference. */
    public boolean identifies() {
        return weight == Weight.IDENTIFICATION;
    }

    /** Whether it may be made again as it stands: what checks the count is never said blindly. */
    public boolean repeats() {
        return motion != Motion.NONE && !identifies();
    }

    /** Whether it is a finding, of which somebody says what comes of it. */
    public boolean isFinding() {
        return weight == Weight.FINDING;
    }

    /** Whether it leaves open something that is to be settled. */
    public boolean asks() {
        return weight == Weight.QUESTION;
    }

    /** Whether work stops or changes hands with it. */
    public boolean isBreak() {
        return weight == Weight.BREAK;
    }

    /** Whether it says what was done or found, and not what is made of it. */
    public boolean tellsDeeds() {
        return tells == Tells.DEED;
    }
}
