package everyblade.core.sight;

import everyblade.core.surface.Mesh;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Rows between that do not stand alike round every airfoil of the row that is looked at, or of which nobody knows quite where
 * they stand. Past a ring of another count every airfoil has its own sight, the same again after N / gcd(N, M) of them: its
 * kind. A row whose place is not known may stand in several ways; in each of them it hides all that it hides while it stands
 * anywhere in a piece of a pitch, so that no place is missed. Never changes.
 */
final class Environment {

    /** A row that may stand anywhere in a pitch is told apart in so many ways. */
    private static final int PIECES_A_PITCH = 18;

    /** So many ways at most are told apart over all kinds. */
    private static final int MOST = 64;

    /**
     * One way of standing round an airfoil.
     *
     * @param turning rings that keep their place to the airfoil
     * @param fixed rings that keep their place to the scope tip
     */
    record Way(List<RingShade> turning, List<RingShade> fixed) {}

    /**
     * A row whose place is not known quite.
     *
     * @param ring all places of its airfoils within a piece of the span
     * @param shade what that hides
     * @param piece its width, radians
     * @param span where its first airfoil may stand
     * @param turns whether it keeps its place to the airfoil that is looked at, else to the scope tip
     * @param together whether the scope tip is moved past it, so that only what shows wherever it stands is sure
     * @param room which places leave the scope tip its room, if it stands among the airfoils
     */
    private record Doubtful(
            Neighbour row,
            Ring ring,
            RingShade shade,
            double piece,
            Span span,
            boolean turns,
            boolean together,
            Optional<VaneRoom> room) {

        /** Where the pieces begin, radians. */
        List<Double> pieces(Pose pose, double radius) {
            List<Span> spans = room.map(among -> among.of(span, pose, radius)).orElse(List.of(span));
            return spans.stream().flatMap(each -> each.pieces(piece).stream()).toList();
        }

        /** Over a whole pitch it hides, at one moment or another, all that it sweeps. */
        Setting.Between hides(Pose pose, double radius) {
            boolean all = room.isEmpty() && anywhere(row);
            List<Ring> rings = all
                    ? List.of()
                    : pieces(pose, radius).stream()
                            .map(from -> new Ring(ring.airfoil(), ring.count(), Span.turn(from)))
                            .toList();
            return new Setting.Between(row.row(), rings, false, turns);
        }
    }

    private final int count;
    private final double radius;
    private final int kinds;
    /** Rows that keep their place to the airfoils, and where they stand when the first one stands at clock 0, radians. */
    private final List<RingShade> mates;

    private final List<Double> offsets;
    private final Optional<Doubtful> doubtful;
    private final Revolved swept;

    private Environment(
            int count, double radius, int kinds, List<Neighbour> mates, Optional<Doubtful> doubtful, List<Mesh> swept) {
        this.count = count;
        this.radius = radius;
        this.kinds = kinds;
        this.mates = mates.stream().map(mate -> new RingShade(mate.ring())).toList();
        this.offsets =
                mates.stream().map(mate -> mate.span().orElseThrow().from()).toList();
        this.doubtful = doubtful;
        this.swept = Revolved.of(List.of(), swept);
    }

    /**
     * What stands round the airfoils of a row.
     *
     * @param mates exactly known rows that keep their place to the airfoils
     * @param doubtful a row that is not known quite
     * @param radius of the scope tip, mm
     */
    static Environment of(Row row, List<Neighbour> mates, Optional<Neighbour> doubtful, double radius) {
        boolean rotor = row.kind() == RowKind.ROTOR;
        int kinds = 1;
        for (Neighbour mate : mates) {
            kinds = together(kinds, row.count(), mate.row().count());
        }
        if (doubtful.isPresent() && !rotor && !anywhere(doubtful.get())) {
            kinds = together(kinds, row.count(), doubtful.get().row().count());
        }
        List<Mesh> swept = new ArrayList<>();
        mates.forEach(mate -> swept.add(mate.airfoil()));
        doubtful.ifPresent(other -> swept.add(other.airfoil()));
        int told = kinds;
        return new Environment(
                row.count(), radius, kinds, mates, doubtful.map(other -> doubtful(other, rotor, told)), swept);
    }

    private static Doubtful doubtful(Neighbour other, boolean rotor, int kinds) {
        int count = other.row().count();
        boolean anywhere = anywhere(other);
        Span span = anywhere ? Span.anywhere(count) : other.span().orElseThrow();
        double finest = 2 * Math.PI / count / PIECES_A_PITCH;
        double pieces = Math.ceil(span.width() / finest);
        double piece = pieces <= 1 || kinds * pieces > MOST && !anywhere ? span.width() : finest;
        boolean turns = !rotor && !(other.among() && anywhere);
        Ring ring = new Ring(Smear.of(other.airfoil(), piece), count);
        return new Doubtful(
                other,
                ring,
                new RingShade(ring),
                piece,
                span,
                turns,
                !rotor && !turns,
                other.among() && !turns ? Optional.of(new VaneRoom(other.airfoil(), count)) : Optional.empty());
    }

    /** Whether what is known of a row's place says nothing. */
    private static boolean anywhere(Neighbour other) {
        return other.span().orElseThrow().width() >= 2 * Math.PI / other.row().count();
    }

    /** After how many airfoils of a ring of so many it looks alike again past one of another count, too. */
    private static int together(int kinds, int count, int other) {
        int own = count / greatestDivisor(count, other);
        return kinds / greatestDivisor(kinds, own) * own;
    }

    private static int greatestDivisor(int a, int b) {
        return b == 0 ? a : greatestDivisor(b, a % b);
    }

    /** How many kinds of airfoils there are. */
    int kinds() {
        return kinds;
    }

    /** Of which of so many kinds airfoil n of a row is: in turn clockwise from the first. */
    static int kind(Row row, int n, int kinds) {
        return Math.floorMod(row.numbering().sign() * (n - 1), kinds);
    }

    /** The ways in which the rows may stand round an airfoil of each kind in turn, seen from a pose; as many for each. */
    List<Way> ways(Pose pose) {
        return IntStream.range(0, kinds)
                .boxed()
                .flatMap(kind -> ways(kind, pose).stream())
                .toList();
    }

    private List<Way> ways(int kind, Pose pose) {
        double turned = 2 * Math.PI * kind / count;
        List<RingShade> known = new ArrayList<>();
        for (int i = 0; i < mates.size(); i++) {
            known.add(mates.get(i).at(offsets.get(i) - turned));
        }
        if (doubtful.isEmpty()) {
            return List.of(new Way(known, List.of()));
        }
        Doubtful other = doubtful.get();
        List<RingShade> pieces = other.pieces(pose, radius).stream()
                .map(from -> other.shade().at(from - (other.turns() ? turned : 0)))
                .toList();
        if (other.together()) {
            return List.of(new Way(known, pieces));
        }
        return pieces.stream()
                .map(piece -> other.turns() ? new Way(with(known, piece), List.of()) : new Way(known, List.of(piece)))
                .toList();
    }

    private static List<RingShade> with(List<RingShade> known, RingShade more) {
        List<RingShade> longer = new ArrayList<>(known);
        longer.add(more);
        return longer;
    }

    /** What the row that is not known quite may hide from a pose; empty if this is none, or another. */
    Optional<Setting.Between> between(Row row, Pose pose) {
        return doubtful.filter(other -> other.row().row().equals(row)).map(other -> other.hides(pose, radius));
    }

    /** All that any of these rows may hide. */
    Revolved swept() {
        return swept;
    }
}
