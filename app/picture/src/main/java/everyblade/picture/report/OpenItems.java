package everyblade.picture.report;

import everyblade.core.entry.Entry;
import java.util.ArrayList;
import java.util.List;

/**
 * What hinders calling the job done, told one thing a line; as long as there is anything, every page says so.
 *
 * @param gaps how many runs of airfoils are left to see
 * @param questions rechecks, questions, repeats and lost tools that nobody settled
 * @param closing openings, tools and the scope tip
 * @param people a hand-over that nobody accepted
 */
record OpenItems(int gaps, List<String> questions, List<String> closing, List<String> people) {

    static OpenItems of(Reported job) {
        List<String> questions = new ArrayList<>();
        job.situation().ledger().questions().forEach((entry, what) -> questions.add("entry " + entry + ": " + what));
        List<String> closing = new ArrayList<>();
        job.situation()
                .ledger()
                .openings()
                .forEach((thing, entry) -> closing.add(Things.name(job, thing) + " is open since entry " + entry));
        job.situation()
                .ledger()
                .toolsOut()
                .forEach((tool, entry) -> closing.add(tool + " is out since entry " + entry));
        if (job.situation().among()) {
            closing.add("the scope tip is still among the blades");
        }
        return new OpenItems(job.gaps().size(), questions, closing, handedOver(job));
    }

    private static List<String> handedOver(Reported job) {
        return job.told(Entry.Handover.class).stream()
                .reduce((earlier, later) -> later)
                .filter(last -> job.told(Entry.Takeover.class).stream()
                        .noneMatch(
                                taken -> taken.logged().number() > last.logged().number()))
                .map(last -> List.of("handed over to " + last.entry().name() + " by entry "
                        + last.logged().number() + ", and nobody has taken over"))
                .orElse(List.of());
    }

    boolean any() {
        return gaps > 0 || !rest().isEmpty();
    }

    /** Everything but the gaps. */
    List<String> rest() {
        List<String> all = new ArrayList<>(questions);
        all.addAll(closing);
        all.addAll(people);
        return all;
    }
}
