package everyblade.practice.drill;

import everyblade.practice.harm.Harm;
import everyblade.practice.harm.Recipe;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What nobody knows before a drill ends.
 *
 * @param seed from which it was invented
 * @param recipe by which
 * @param harms what is on the airfoils
 * @param standing clock angle of airfoil 1 of each row when the drill begins, degrees
 */
public record Truth(long seed, Recipe recipe, List<Harm> harms, Map<String, Double> standing) {

    public Truth {
        harms = List.copyOf(harms);
        standing = new TreeMap<>(standing);
    }

    /** The damage, which is to be called. */
    public List<Harm> damage() {
        return harms.stream().filter(harm -> harm.kind().isDamage()).toList();
    }
}
