package everyblade.practice.harm;

import everyblade.core.entry.Zoning;
import everyblade.core.surface.Mesh;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Invents what is on the airfoils of some rows: one thing in a zone of an airfoil at most. */
public final class Invention {

    private static final List<HarmKind> HARMLESS = List.of(HarmKind.MARK, HarmKind.DEPOSIT, HarmKind.GLINT);
    private static final int TRIES = 200;

    private final Recipe recipe;
    private final Dice dice;
    private final TreeMap<String, Grounds> grounds = new TreeMap<>();
    private final List<String> rows;
    private final Set<String> taken = new HashSet<>();

    /**
     * What a row offers.
     *
     * @param row of the model
     * @param airfoil its surface, standing at clock 0
     * @param reachable faces on which something may be; empty for all
     */
    public record Offered(Row row, Mesh airfoil, Optional<BitSet> reachable) {}

    private record Grounds(Row row, Anatomy anatomy, Optional<BitSet> reachable) {

        boolean has(int face) {
            return reachable.map(faces -> faces.get(face)).orElse(true);
        }
    }

    private Invention(Recipe recipe, List<Offered> offered, long seed) {
        this.recipe = recipe;
        this.dice = new Dice(seed);
        this.rows = recipe.rows();
        for (Offered one : offered) {
            Anatomy anatomy = new Anatomy(one.airfoil(), Zoning.of(one.row()));
            grounds.put(one.row().id(), new Grounds(one.row(), anatomy, one.reachable()));
        }
    }

    /**
     * All that is on the rows of a recipe; fewer than asked where there is no more room.
     *
     * @param offered every row of the recipe, each with a shape
     */
    public static List<Harm> of(Recipe recipe, List<Offered> offered, long seed) {
        Invention invention = new Invention(recipe, offered, seed);
        List<Harm> harms = new ArrayList<>();
        for (int i = 0; i < recipe.damage(); i++) {
            HarmKind kind =
                    recipe.kinds().get(invention.dice.below(recipe.kinds().size()));
            invention.one(kind, invention.size()).ifPresent(harms::add);
        }
        for (int i = 0; i < recipe.harmless(); i++) {
            HarmKind kind = HARMLESS.get(invention.dice.below(HARMLESS.size()));
            double size = kind == HarmKind.DEPOSIT ? invention.dice.between(3, 9) : invention.dice.between(1.5, 4);
            invention.one(kind, size).ifPresent(harms::add);
        }
        return List.copyOf(harms);
    }

    private double size() {
        double doublings = StrictMath.log(recipe.most() / recipe.least());
        double size = recipe.least() * StrictMath.exp(dice.share() * doublings);
        return StrictMath.round(size * 100) / 100.0;
    }

    private Optional<Harm> one(HarmKind kind, double size) {
        for (int i = 0; i < TRIES; i++) {
            Grounds ground = grounds.get(rows.get(dice.below(rows.size())));
            int airfoil = 1 + dice.below(ground.row().count());
            Optional<Harm> harm = place(kind, size, ground, airfoil);
            if (harm.isPresent()
                    && harm.get().zones().stream()
                            .noneMatch(zone -> taken.contains(ground.row().id() + " " + airfoil + " " + zone))) {
                harm.get().zones().forEach(zone -> taken.add(ground.row().id() + " " + airfoil + " " + zone));
                return harm;
            }
        }
        return Optional.empty();
    }

    private Optional<Harm> place(HarmKind kind, double size, Grounds ground, int airfoil) {
        Anatomy anatomy = ground.anatomy();
        List<Anatomy.Side> sides = switch (kind.where()) {
            case EDGE -> anatomy.edges();
            case CORNER -> anatomy.corners();
            case TIP -> anatomy.tip();
            case FACE -> List.of();
        };
        if (sides.isEmpty()) {
            return onFace(kind, size, ground, airfoil);
        }
        Anatomy.Side side = sides.get(dice.below(sides.size()));
        if (!ground.has(side.face())) {
            return Optional.empty();
        }
        Vector from = anatomy.point(side.from());
        Vector to = anatomy.point(side.to());
        double share = kind.where() == HarmKind.Where.CORNER ? 1 : dice.share();
        Vector at = from.plus(to.minus(from), share);
        Vector along = to.minus(from).unit();
        Vector inward = anatomy.centroid(side.face()).minus(at);
        Vector into = inward.plus(along, -inward.dot(along)).unit();
        return Optional.of(harm(kind, size, ground, airfoil, side.face(), at, along, into));
    }

    /** On a face, as likely on each part of the surface. */
    private Optional<Harm> onFace(HarmKind kind, double size, Grounds ground, int airfoil) {
        Anatomy anatomy = ground.anatomy();
        double wanted = dice.share() * anatomy.facets().area();
        int face = 0;
        while (face + 1 < anatomy.mesh().faceCount()
                && wanted > anatomy.facets().area(face)) {
            wanted -= anatomy.facets().area(face++);
        }
        if (!ground.has(face)) {
            return Optional.empty();
        }
        Vector corner = anatomy.point(anatomy.mesh().corner(face, dice.below(3)));
        Vector at = anatomy.centroid(face).plus(corner.minus(anatomy.centroid(face)), 0.7 * dice.share());
        Vector normal = anatomy.normal(face);
        Vector axial = new Vector(1, 0, 0);
        Vector flow = axial.plus(normal, -axial.dot(normal));
        Vector into = flow.length() < 1e-6 ? normal.cross(new Vector(0, 0, 1)).unit() : flow.unit();
        return Optional.of(harm(kind, size, ground, airfoil, face, at, normal.cross(into), into));
    }

    private Harm harm(
            HarmKind kind, double size, Grounds ground, int airfoil, int face, Vector at, Vector along, Vector into) {
        Anatomy anatomy = ground.anatomy();
        return new Harm(
                kind,
                ground.row().id(),
                airfoil,
                anatomy.zones(face, at, size),
                face,
                size,
                at,
                anatomy.normal(face),
                along,
                into,
                (int) dice.next());
    }
}
