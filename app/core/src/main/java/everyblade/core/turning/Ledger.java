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
 * @param remarks about single cells, in order
 * @param asked the zones that the task asks for, by row; a row that is not named is asked for whole
 * @param questions what is open until settled, by the entry that opened it
 * @param openings ports, covers and panels that are open, and the entry that opened each
 * @param toolsOut tools that have left their place, and the entry that says so
 * @param vanes positions of movable vanes by row
 * @param outcomes by the entry of a finding or of one that awaits its reason, the entry in which a person said it
 * @param awaiting entries that took something out of the record or out of the task, for which a reason may be said
 * @param proof the finest line seen on the latest test target
 * @param inCharge who took over last
 */
public record Ledger(
        Trail<Remark> remarks,
        Map<String, ZoneSet> asked,
        Map<Integer, Question> questions,
        Map<String, Integer> openings,
        Map<String, Integer> toolsOut,
        Map<String, String> vanes,
        Map<Integer, Integer> outcomes,
        Set<Integer> awaiting,
        Optional<Stance.Proof> proof,
        Optional<String> inCharge) {

    static final Ledger BLANK = new Ledger(
            Trail.empty(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Set.of(),
            Optional.empty(),
            Optional.empty());

    Ledger remarked(Remark remark) {
        return new Ledger(
                remarks.with(remark), asked, questions, openings, toolsOut, vanes, outcomes, awaiting, proof, inCharge);
    }

    Ledger asking(String row, ZoneSet zones, int entry) {
        return new Ledger(
                        remarks,
                        put(asked, row, zones),
                        questions,
                        openings,
                        toolsOut,
                        vanes,
                        outcomes,
                        awaiting,
                        proof,
                        inCharge)
                .awaiting(entry);
    }

    Ledger questioned(int entry, Question what) {
        return new Ledger(
                remarks,
                asked,
                put(questions, entry, what),
                openings,
                toolsOut,
                vanes,
                outcomes,
                awaiting,
                proof,
                inCharge);
    }

    Ledger lost(int entry, String thing) {
        return questioned(entry, new Question.Lost(thing));
    }

    /** What was lost under this name is there again. */
    Ledger found(String thing) {
        Ledger after = this;
        for (Map.Entry<Integer, Question> question : questions.entrySet()) {
            after = question.getValue().equals(new Question.Lost(thing)) ? after.settled(question.getKey()) : after;
        }
        return after;
    }

    /** What is missing, by the name under which it was said to be. */
    public List<String> missing() {
        return questions.values().stream()
                .filter(Question.Lost.class::isInstance)
                .map(question -> ((Question.Lost) question).thing())
                .toList();
    }

    Ledger settled(int entry) {
        return new Ledger(
                remarks,
                asked,
                without(questions, entry),
                openings,
                toolsOut,
                vanes,
                outcomes,
                awaiting,
                proof,
                inCharge);
    }

    Ledger opened(String thing, int entry) {
        return new Ledger(
                remarks,
                asked,
                questions,
                put(openings, thing, entry),
                toolsOut,
                vanes,
                outcomes,
                awaiting,
                proof,
                inCharge);
    }

    Ledger shut(String thing) {
        return new Ledger(
                remarks,
                asked,
                questions,
                without(openings, thing),
                toolsOut,
                vanes,
                outcomes,
                awaiting,
                proof,
                inCharge);
    }

    Ledger toolOut(String tool, int entry) {
        return new Ledger(
                remarks,
                asked,
                questions,
                openings,
                put(toolsOut, tool, entry),
                vanes,
                outcomes,
                awaiting,
                proof,
                inCharge);
    }

    Ledger toolIn(String tool) {
        return new Ledger(
                remarks,
                asked,
                questions,
                openings,
                without(toolsOut, tool),
                vanes,
                outcomes,
                awaiting,
                proof,
                inCharge);
    }

    Ledger vanesAt(String row, String position) {
        return new Ledger(
                remarks,
                asked,
                questions,
                openings,
                toolsOut,
                put(vanes, row, position),
                outcomes,
                awaiting,
                proof,
                inCharge);
    }

    Ledger proved(Stance.Proof finest) {
        return new Ledger(
                remarks,
                asked,
                questions,
                openings,
                toolsOut,
                vanes,
                outcomes,
                awaiting,
                Optional.of(finest),
                inCharge);
    }

    Ledger takenOver(String name) {
        return new Ledger(
                remarks, asked, questions, openings, toolsOut, vanes, outcomes, awaiting, proof, Optional.of(name));
    }

    Ledger decided(int finding, int entry) {
        return new Ledger(
                remarks,
                asked,
                questions,
                openings,
                toolsOut,
                vanes,
                put(outcomes, finding, entry),
                awaiting,
                proof,
                inCharge);
    }

    Ledger awaiting(int entry) {
        Set<Integer> more = new LinkedHashSet<>(awaiting);
        more.add(entry);
        return new Ledger(
                remarks,
                asked,
                questions,
                openings,
                toolsOut,
                vanes,
                outcomes,
                Collections.unmodifiableSet(more),
                proof,
                inCharge);
    }

    /** Whether an entry is a finding of which nobody has said yet what comes of it, or awaits its reason. */
    boolean isUndecided(int entry) {
        return !outcomes.containsKey(entry)
                && (awaiting.contains(entry)
                        || remarks.stream()
                                .anyMatch(remark -> remark.entry() == entry && remark.what() == Remark.What.FOUND));
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
