package everyblade.core.finding.closing;

import everyblade.core.entry.EntryKind;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Entries with the same fault, told as one thing by the first of them, so that a habit does not fill a page. An answer
 * covers those before it; what comes after it is a thing by itself.
 *
 * @param answered what was answered for
 */
record Several(Answered answered) {

    /**
     * One thing for each run of these entries that a single answer covers.
     *
     * @param faulty in their order
     * @param what tells of the first of a run and of how many there are
     */
    List<OpenItem> items(Kind kind, List<Logged> faulty, Fact advice, BiFunction<Logged, List<Logged>, Fact> what) {
        List<OpenItem> items = new ArrayList<>();
        List<Logged> left = faulty;
        while (!left.isEmpty()) {
            Optional<Logged> about =
                    left.stream().filter(Several::answersForItself).findFirst();
            Optional<Logged> answer = about.flatMap(one -> answered.answer(one.number()));
            List<Logged> run = left.stream()
                    .filter(one ->
                            answer.isEmpty() || one.number() < answer.get().number())
                    .toList();
            items.add(about.map(one -> answered.item(kind, one, what.apply(one, run), Optional.empty(), advice))
                    .orElseGet(() -> ofFindings(kind, run.get(0), what.apply(run.get(0), run))));
            left = left.subList(run.size(), left.size());
        }
        return items;
    }

    /** Of a finding, an answer says what comes of it, and nothing else. */
    private static boolean answersForItself(Logged logged) {
        return !EntryKind.of(logged.entry()).isFinding();
    }

    private static OpenItem ofFindings(Kind kind, Logged first, Fact what) {
        String again = "void " + first.number() + " because ";
        return new OpenItem(kind, Optional.of(first), what, Optional.empty(), new ToDo.SayAnew(again.strip()), again);
    }
}
