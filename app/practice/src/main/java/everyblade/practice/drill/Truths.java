package everyblade.practice.drill;

import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.practice.harm.Dice;
import everyblade.practice.harm.Invention;
import everyblade.practice.harm.Invention.Offered;
import everyblade.practice.harm.Recipe;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Invents the truth of a drill: where everything stands, and what is on it. */
public final class Truths {

    private Truths() {}

    /**
     * The truth that follows from a seed; the same on every machine.
     *
     * @param reachable the faces of each row on which something may be, where that is to be told
     * @throws UnusableShape if a shape gives no surface
     * @throws IllegalArgumentException if a row of the recipe is not in the engine, or has no shape; says which in words
     */
    public static Truth of(ViewScene engine, Recipe recipe, Map<String, BitSet> reachable, long seed)
            throws UnusableShape {
        Dice dice = new Dice(seed);
        Map<String, Double> standing = new TreeMap<>();
        for (Row row : engine.model().rows()) {
            double clock = row.phase().isPresent() ? row.phase().getAsDouble() : dice.between(0, 360);
            standing.put(row.id(), StrictMath.round(clock * 1000) / 1000.0);
        }
        List<Offered> offered = new ArrayList<>();
        for (String id : recipe.rows()) {
            Row row = engine.model()
                    .row(id)
                    .orElseThrow(() -> new IllegalArgumentException("the engine has no row " + id));
            Mesh airfoil = engine.airfoil(row)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "row " + id + " has no shape, so that nothing could be shown of it"));
            offered.add(new Offered(row, airfoil, Optional.ofNullable(reachable.get(id))));
        }
        alignMates(engine, standing);
        return new Truth(seed, recipe, Invention.of(recipe, offered, dice.next()), standing);
    }

    /** Rows of one ring stand as the model says. */
    private static void alignMates(ViewScene engine, Map<String, Double> standing) {
        for (Row row : engine.model().rows()) {
            engine.model().rows().stream()
                    .filter(first -> row.ring().isPresent() && first.ring().equals(row.ring()))
                    .findFirst()
                    .filter(first -> !first.equals(row))
                    .ifPresent(first ->
                            standing.put(row.id(), standing.get(first.id()) + row.ringOffset() * 360 / row.count()));
        }
    }
}
