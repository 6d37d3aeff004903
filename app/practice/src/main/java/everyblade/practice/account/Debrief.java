package everyblade.practice.account;

import everyblade.core.entry.Kind;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Finding;
import everyblade.practice.account.Outcome.Fate;
import everyblade.practice.drill.Truth;
import everyblade.practice.harm.Harm;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The truth of a drill beside what was called. Each finding is taken for one piece of damage at most, the one that it fits best;
 * what is left over is a false call.
 *
 * @param outcomes of each piece of damage, in the order of the truth
 * @param falseCalls findings where nothing is
 * @param trials airfoils looked at, and what was said of them
 */
public record Debrief(List<Outcome> outcomes, List<Finding> falseCalls, Trials trials) {

    /** A call so many airfoils off is taken for a lost count. */
    private static final int MOST_OFF = 3;

    /**
     * Airfoils that were looked at, each a trial.
     *
     * @param hits with damage that was well in sight, and called
     * @param misses with such damage, and not called
     * @param falseAlarms without damage, and called
     * @param rejections without damage, and not called
     */
    public record Trials(int hits, int misses, int falseAlarms, int rejections) {

        Trials and(boolean damaged, boolean called) {
            return new Trials(
                    hits + (damaged && called ? 1 : 0),
                    misses + (damaged && !called ? 1 : 0),
                    falseAlarms + (!damaged && called ? 1 : 0),
                    rejections + (!damaged && !called ? 1 : 0));
        }

        /** All of several drills. */
        public Trials and(Trials other) {
            return new Trials(
                    hits + other.hits,
                    misses + other.misses,
                    falseAlarms + other.falseAlarms,
                    rejections + other.rejections);
        }
    }

    /** The truth beside the findings, where nobody was told of anything before the end. */
    public static Debrief of(Truth truth, SeenFacets seen, List<Finding> findings) {
        return of(truth, seen, findings, Map.of());
    }

    /**
     * The truth beside the findings.
     *
     * @param told harms of which the trainee was told, by their index in the truth, and how many entries there were by then:
     *     a call after that is none
     */
    public static Debrief of(Truth truth, SeenFacets seen, List<Finding> findings, Map<Integer, Integer> told) {
        List<Harm> damage = truth.damage();
        List<Optional<Finding>> calls = new ArrayList<>();
        List<Fate> fates = new ArrayList<>();
        damage.forEach(harm -> {
            calls.add(Optional.empty());
            fates.add(null);
        });
        List<Finding> left = new ArrayList<>(findings);
        for (Fate fate : List.of(Fate.CALLED, Fate.OTHER_KIND, Fate.OTHER_ZONE, Fate.OTHER_AIRFOIL)) {
            for (int i = 0; i < damage.size(); i++) {
                Harm harm = damage.get(i);
                if (calls.get(i).isEmpty()) {
                    Optional<Finding> call = left.stream()
                            .filter(fits(fate, harm))
                            .min(Comparator.comparingInt(finding -> off(finding, harm)));
                    calls.set(i, call);
                    fates.set(i, call.isPresent() ? fate : null);
                    call.ifPresent(left::remove);
                }
            }
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < damage.size(); i++) {
            int harm = truth.harms().indexOf(damage.get(i));
            TargetSighting sighting = seen.harms().get(harm);
            Optional<Finding> call =
                    calls.get(i).filter(found -> found.entry() <= told.getOrDefault(harm, Integer.MAX_VALUE));
            Fate fate = call.isPresent() ? fates.get(i) : calls.get(i).isPresent() ? Fate.NOT_CALLED : missed(sighting);
            outcomes.add(new Outcome(damage.get(i), sighting, fate, call));
        }
        List<Finding> own = new ArrayList<>(findings);
        for (int i = 0; i < damage.size(); i++) {
            if (outcomes.get(i).call().isEmpty()) {
                calls.get(i).ifPresent(own::remove);
            }
        }
        return new Debrief(outcomes, List.copyOf(left), trials(truth, seen, own));
    }

    private static Fate missed(TargetSighting sighting) {
        if (!sighting.atAll()) {
            return Fate.NEVER_IN_SIGHT;
        }
        return sighting.enough() ? Fate.NOT_CALLED : Fate.TOO_LITTLE;
    }

    private static Predicate<Finding> fits(Fate fate, Harm harm) {
        Kind kind = harm.kind().called().orElseThrow();
        return finding -> {
            if (!finding.row().id().equals(harm.row())) {
                return false;
            }
            boolean here = finding.airfoil() == harm.airfoil();
            return switch (fate) {
                case CALLED -> here && meet(finding, harm) && finding.kind() == kind;
                case OTHER_KIND -> here && meet(finding, harm);
                case OTHER_ZONE -> here && finding.kind() == kind;
                case OTHER_AIRFOIL ->
                    !here && off(finding, harm) <= MOST_OFF && meet(finding, harm) && finding.kind() == kind;
                case NEVER_IN_SIGHT, TOO_LITTLE, NOT_CALLED -> false;
            };
        };
    }

    private static boolean meet(Finding finding, Harm harm) {
        return !finding.zones()
                .intersection(harm.zones(Zoning.of(finding.row())))
                .isEmpty();
    }

    private static int off(Finding finding, Harm harm) {
        int apart =
                Math.floorMod(finding.airfoil() - harm.airfoil(), finding.row().count());
        return Math.min(apart, finding.row().count() - apart);
    }

    private static Trials trials(Truth truth, SeenFacets seen, List<Finding> findings) {
        Set<String> damaged = new HashSet<>();
        Set<String> inSight = new HashSet<>();
        for (Harm harm : truth.damage()) {
            String airfoil = harm.row() + " " + harm.airfoil();
            damaged.add(airfoil);
            if (seen.harms().get(truth.harms().indexOf(harm)).enough()) {
                inSight.add(airfoil);
            }
        }
        Set<String> called = new HashSet<>();
        findings.forEach(finding -> called.add(finding.row().id() + " " + finding.airfoil()));
        Trials trials = new Trials(0, 0, 0, 0);
        for (String row : truth.recipe().rows()) {
            double[] seconds = seen.seconds().get(row);
            for (int i = 0; i < seconds.length; i++) {
                String airfoil = row + " " + (i + 1);
                if (seconds[i] >= TargetSighting.LEAST && (inSight.contains(airfoil) || !damaged.contains(airfoil))) {
                    trials = trials.and(damaged.contains(airfoil), called.contains(airfoil));
                }
            }
        }
        return trials;
    }
}
