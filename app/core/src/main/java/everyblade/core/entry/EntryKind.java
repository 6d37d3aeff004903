package everyblade.core.entry;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A kind of entry: how it is read and written, how the sheet of entries tells it, what may be typed behind its verb, and
 * what those ask of it who treat many kinds alike. It is made where the records of its group stand.
 *
 * <p>Unless more is said of it, an entry tells what was done, stands in the record and changes nothing else.
 */
public final class EntryKind {

    private final EntryForm<?> form;
    private final Set<Trait> traits;
    private final Optional<Weight> weight;
    private final List<Usage> usages;
    private final List<Slot> slots;

    /** What hangs on an entry, so that nobody takes it out unasked. */
    public enum Weight {
        FINDING,
        IDENTIFICATION,
        /** Breaks the count. */
        SLIP,
        /** Opens what is to be shut. */
        OPENING,
        /** Takes out what is to come back. */
        TOOL,
        /** Leaves something missing open until it is settled. */
        LOST,
        /** Leaves a question open until it is settled. */
        QUESTION
    }

    /** What is said of some kinds; {@link Weight} aside. */
    enum Trait {
        /** Moves what turns, or the scope tip round the annulus. */
        MOVES,
        /** Something was watched, at rest or while it moved. */
        WATCHES,
        /** Work stops or changes hands. */
        BREAK,
        /** Says what is made of the deeds, not what was done or found. */
        OPINION,
        /** A closing list may ask about it, though it is no question by itself; a person may answer by {@code settle}. */
        ANSWERABLE,
        /** What may stand at the last slot may stand at all places behind it. */
        GOES_ON
    }

    /**
     * A line of the sheet of entries.
     *
     * @param typed how an entry is typed; the same in every language
     * @param meaning the key behind {@code sheet.} in the bundles
     */
    public record Usage(String typed, String meaning) {}

    private EntryKind(
            EntryForm<?> form, Set<Trait> traits, Optional<Weight> weight, List<Usage> usages, List<Slot> slots) {
        this.form = form;
        this.traits = Set.copyOf(traits);
        this.weight = weight;
        this.usages = List.copyOf(usages);
        this.slots = List.copyOf(slots);
    }

    /** A kind said in this way, of which nothing more is known. */
    static EntryKind of(EntryForm<?> form) {
        return new EntryKind(form, Set.of(), Optional.empty(), List.of(), List.of());
    }

    /** The same with one more line on the sheet. */
    EntryKind usage(String typed, String meaning) {
        List<Usage> more = new ArrayList<>(usages);
        more.add(new Usage(typed, meaning));
        return new EntryKind(form, traits, weight, more, slots);
    }

    /** The same, behind whose verb this may stand, place by place. */
    EntryKind next(Slot... places) {
        return new EntryKind(form, traits, weight, usages, List.of(places));
    }

    /** The same, on which this hangs. */
    EntryKind weighing(Weight what) {
        return new EntryKind(form, traits, Optional.of(what), usages, slots);
    }

    /** The same with one more trait. */
    EntryKind with(Trait trait) {
        Set<Trait> more = EnumSet.of(trait);
        more.addAll(traits);
        return new EntryKind(form, more, weight, usages, slots);
    }

    /** The kind of an entry; every one has its own. */
    public static EntryKind of(Entry entry) {
        return EntryKinds.of(entry.getClass());
    }

    /** The kind whose line begins with this verb in lower case; of several that share it, the first. */
    public static Optional<EntryKind> of(String verb) {
        return EntryKinds.of(verb);
    }

    /** Every kind, group by group. */
    public static List<EntryKind> all() {
        return EntryKinds.ALL;
    }

    EntryForm<?> form() {
        return form;
    }

    /** The record that such an entry is. */
    public Class<? extends Entry> type() {
        return form.type();
    }

    /** With what its line begins; several may share it. */
    public String verb() {
        return form.verb();
    }

    /** Its lines on the sheet of entries; none where the line of another kind tells it too. */
    public List<Usage> usages() {
        return usages;
    }

    /**
     * What may stand at a place of its line.
     *
     * @param place from 1, behind the verb
     */
    public Slot at(int place) {
        if (place > slots.size() && !traits.contains(Trait.GOES_ON)) {
            return Slot.Named.UNTOLD;
        }
        return slots.isEmpty() ? Slot.Named.UNTOLD : slots.get(Math.min(place, slots.size()) - 1);
    }

    /** What hangs on it, if anything does. */
    public Optional<Weight> weight() {
        return weight;
    }

    /** Whether it moves what turns, or the scope tip round the annulus. */
    public boolean moves() {
        return traits.contains(Trait.MOVES);
    }

    /** Whether something was watched, at rest or while it moved. */
    public boolean watches() {
        return traits.contains(Trait.WATCHES);
    }

    /** Whether it says which airfoil stands at the reference. */
    public boolean identifies() {
        return weighs(Weight.IDENTIFICATION);
    }

    /** Whether it may be made again as it stands: what checks the count is never said blindly. */
    public boolean repeats() {
        return (moves() || watches()) && !identifies();
    }

    /** Whether it is a finding, of which somebody says what comes of it. */
    public boolean isFinding() {
        return weighs(Weight.FINDING);
    }

    /** Whether it leaves open something that is to be settled. */
    public boolean asks() {
        return weighs(Weight.QUESTION) || weighs(Weight.LOST);
    }

    /** Whether a closing list may ask about it, so that a person may answer for it, though it is no question by itself. */
    public boolean isAnswerable() {
        return traits.contains(Trait.ANSWERABLE);
    }

    /** Whether work stops or changes hands with it. */
    public boolean isBreak() {
        return traits.contains(Trait.BREAK);
    }

    /** Whether it says what was done or found, and not what is made of it. */
    public boolean tellsDeeds() {
        return !traits.contains(Trait.OPINION);
    }

    private boolean weighs(Weight what) {
        return weight.filter(what::equals).isPresent();
    }

    @Override
    public String toString() {
        return verb();
    }
}
