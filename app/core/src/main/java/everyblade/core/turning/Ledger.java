package everyblade.core.turning;

import everyblade.core.entry.ZoneSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What people said beside the turning: about cells, about what the task asks for, and what is still open.
 *
 * @param cells what was said of cells
 * @param pending what awaits a person's word
 * @param outOfPlace what is to be put back
 * @param seeing what bears on how well is seen
 * @param inCharge who took over last
 */
public record Ledger(Cells cells, Pending pending, OutOfPlace outOfPlace, Seeing seeing, Optional<String> inCharge) {

    static final Ledger BLANK = new Ledger(
            new Cells(Trail.empty(), Map.of()),
            new Pending(Map.of(), Map.of(), Set.of()),
            new OutOfPlace(Map.of(), Map.of()),
            new Seeing(Map.of(), Optional.empty()),
            Optional.empty());

    /**
     * What was said of cells.
     *
     * @param remarks about single cells, in order
     * @param asked the zones that the task asks for, by row; a row that is not named is asked for whole
     */
    record Cells(Trail<Remark> remarks, Map<String, ZoneSet> asked) {}

    /**
     * What awaits a person's word.
     *
     * @param questions what is open until settled, by the entry that opened it
     * @param outcomes by the entry of a finding or of one that awaits its reason, the entry in which a person said it
     * @param awaiting entries that took something out of the record or out of the task, for which a reason may be said
     */
    record Pending(Map<Integer, Question> questions, Map<Integer, Integer> outcomes, Set<Integer> awaiting) {}

    /**
     * What is to be put back.
     *
     * @param openings ports, covers and panels that are open, and the entry that opened each
     * @param toolsOut tools that have left their place, and the entry that says so
     */
    record OutOfPlace(Map<String, Integer> openings, Map<String, Integer> toolsOut) {}

    /**
     * What bears on how well is seen.
     *
     * @param vanes positions of movable vanes by row
     * @param proof the finest line seen on the latest test target
     */
    record Seeing(Map<String, String> vanes, Optional<Stance.Proof> proof) {}

    /** About single cells, in order. */
    public Trail<Remark> remarks() {
        return cells.remarks();
    }

    /** The zones that the task asks for, by row; a row that is not named is asked for whole. */
    public Map<String, ZoneSet> asked() {
        return cells.asked();
    }

    /** What is open until settled, by the entry that opened it. */
    public Map<Integer, Question> questions() {
        return pending.questions();
    }

    /** By the entry of a finding or of one that awaits its reason, the entry in which a person said it. */
    public Map<Integer, Integer> outcomes() {
        return pending.outcomes();
    }

    /** Ports, covers and panels that are open, and the entry that opened each. */
    public Map<String, Integer> openings() {
        return outOfPlace.openings();
    }

    /** Tools that have left their place, and the entry that says so. */
    public Map<String, Integer> toolsOut() {
        return outOfPlace.toolsOut();
    }

    /** Positions of movable vanes by row. */
    public Map<String, String> vanes() {
        return seeing.vanes();
    }

    /** The finest line seen on the latest test target. */
    public Optional<Stance.Proof> proof() {
        return seeing.proof();
    }

    Ledger remarked(Remark remark) {
        return with(new Cells(remarks().with(remark), asked()));
    }

    /** With these remarks instead of all others. */
    Ledger remarked(List<Remark> instead) {
        Trail<Remark> trail = Trail.empty();
        for (Remark remark : instead) {
            trail = trail.with(remark);
        }
        return with(new Cells(trail, asked()));
    }

    Ledger asking(String row, ZoneSet zones, int entry) {
        return with(new Cells(remarks(), put(asked(), row, zones))).awaiting(entry);
    }

    Ledger questioned(int entry, Question what) {
        return with(new Pending(put(questions(), entry, what), outcomes(), pending.awaiting()));
    }

    Ledger lost(int entry, String thing) {
        return questioned(entry, new Question.Lost(thing));
    }

    /** What was lost under this name is there again. */
    Ledger found(String thing) {
        Ledger after = this;
        for (Map.Entry<Integer, Question> question : questions().entrySet()) {
            after = question.getValue().equals(new Question.Lost(thing)) ? after.settled(question.getKey()) : after;
        }
        return after;
    }

    /** What is missing, by the name under which it was said to be. */
    public List<String> missing() {
        return questions().values().stream()
                .filter(Question.Lost.class::isInstance)
                .map(question -> ((Question.Lost) question).thing())
                .toList();
    }

    Ledger settled(int entry) {
        return with(new Pending(without(questions(), entry), outcomes(), pending.awaiting()));
    }

    Ledger decided(int finding, int entry) {
        return with(new Pending(questions(), put(outcomes(), finding, entry), pending.awaiting()));
    }

    Ledger awaiting(int entry) {
        Set<Integer> more = new LinkedHashSet<>(pending.awaiting());
        more.add(entry);
        return with(new Pending(questions(), outcomes(), Collections.unmodifiableSet(more)));
    }

    /** Whether an entry is a finding of which nobody has said yet what comes of it, or awaits its reason. */
    boolean isUndecided(int entry) {
        return !outcomes().containsKey(entry)
                && (pending.awaiting().contains(entry)
                        || remarks().stream()
                                .anyMatch(remark -> remark.entry() == entry && remark.what() == Remark.What.FOUND));
    }

    Ledger opened(String thing, int entry) {
        return with(new OutOfPlace(put(openings(), thing, entry), toolsOut()));
    }

    Ledger shut(String thing) {
        return with(new OutOfPlace(without(openings(), thing), toolsOut()));
    }

    Ledger toolOut(String tool, int entry) {
        return with(new OutOfPlace(openings(), put(toolsOut(), tool, entry)));
    }

    Ledger toolIn(String tool) {
        return with(new OutOfPlace(openings(), without(toolsOut(), tool)));
    }

    Ledger vanesAt(String row, String position) {
        return with(new Seeing(put(vanes(), row, position), proof()));
    }

    Ledger proved(Stance.Proof finest) {
        return with(new Seeing(vanes(), Optional.of(finest)));
    }

    Ledger takenOver(String name) {
        return new Ledger(cells, pending, outOfPlace, seeing, Optional.of(name));
    }

    private Ledger with(Cells said) {
        return new Ledger(said, pending, outOfPlace, seeing, inCharge);
    }

    private Ledger with(Pending left) {
        return new Ledger(cells, left, outOfPlace, seeing, inCharge);
    }

    private Ledger with(OutOfPlace things) {
        return new Ledger(cells, pending, things, seeing, inCharge);
    }

    private Ledger with(Seeing conditions) {
        return new Ledger(cells, pending, outOfPlace, conditions, inCharge);
    }

    private static <K, V> Map<K, V> put(Map<K, V> map, K key, V value) {
        Map<K, V> result = new LinkedHashMap<>(map);
        result.put(key, value);
        return Collections.unmodifiableMap(result);
    }

    private static <K, V> Map<K, V> without(Map<K, V> map, K key) {
        Map<K, V> result = new LinkedHashMap<>(map);
        result.remove(key);
        return Collections.unmodifiableMap(result);
    }
}
