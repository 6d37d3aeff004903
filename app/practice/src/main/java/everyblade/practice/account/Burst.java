package everyblade.practice.account;

import everyblade.core.finding.Finding;
import everyblade.practice.account.Glance.Harms;
import everyblade.practice.account.SeenFacets.Turning;
import everyblade.practice.drill.Truth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Much damage, and an answer to each piece of it: calls are judged as they are made, and what was well in sight and has gone
 * out of it without a call is told. For one thread.
 */
public final class Burst {

    /** So many answers are one burst. */
    public static final int SIZE = 40;

    /** What has been out of sight for so long has gone by, seconds. */
    private static final double GONE = 3;

    private final Truth truth;
    private final double[] seconds;
    private final double[] gone;
    private final Set<Integer> told;
    private final Set<Integer> called = new TreeSet<>();
    private int falseCalls;

    /** @param told harms of which the trainee was told before, by their index in the truth */
    public Burst(Truth truth, Set<Integer> told) {
        this.truth = truth;
        this.seconds = new double[truth.harms().size()];
        this.gone = new double[truth.harms().size()];
        this.told = new TreeSet<>(told);
    }

    /**
     * How it stands.
     *
     * @param called pieces of damage that were called
     * @param passed pieces that went by without
     * @param falseCalls calls where nothing is
     */
    public record Tally(int called, int passed, int falseCalls) {

        /** How much was answered. */
        public int answers() {
            return called + passed + falseCalls;
        }
    }

    /** Takes in all findings so far. */
    public void called(List<Finding> findings) {
        Debrief debrief = debrief(truth, findings);
        called.clear();
        for (Outcome outcome : debrief.outcomes()) {
            int harm = truth.harms().indexOf(outcome.harm());
            if (outcome.found() && !told.contains(harm)) {
                called.add(harm);
            }
        }
        falseCalls = debrief.falseCalls().size();
    }

    /** What findings are worth, whatever was in sight. */
    public static Debrief debrief(Truth truth, List<Finding> findings) {
        Map<String, double[]> seconds = new HashMap<>();
        truth.recipe().rows().forEach(row -> seconds.put(row, new double[0]));
        List<TargetSighting> unknown =
                new ArrayList<>(Collections.nCopies(truth.harms().size(), TargetSighting.NEVER));
        return Debrief.of(truth, new SeenFacets(unknown, new TreeMap<>(), seconds, new Turning(0, 0, 0)), findings);
    }

    /**
     * Takes in what was in the picture for some time.
     *
     * @param stood seconds
     * @return damage that has gone by without a call and was not told before, by its index in the truth
     */
    public List<Integer> saw(Harms inPicture, double stood) {
        List<Integer> passed = new ArrayList<>();
        for (int harm = 0; harm < seconds.length; harm++) {
            seconds[harm] += inPicture.properly().get(harm) ? stood : 0;
            gone[harm] = inPicture.atAll().get(harm) ? 0 : gone[harm] + stood;
            if (truth.harms().get(harm).kind().isDamage()
                    && seconds[harm] >= TargetSighting.LEAST
                    && gone[harm] >= GONE
                    && !called.contains(harm)
                    && told.add(harm)) {
                passed.add(harm);
            }
        }
        return passed;
    }

    /** For how long a harm has been well in sight, seconds. */
    public double seconds(int harm) {
        return seconds[harm];
    }

    /** How it stands. */
    public Tally tally() {
        return new Tally(called.size(), told.size(), falseCalls);
    }
}
