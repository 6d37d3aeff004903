package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a scope tip shows that stands somewhere within the tolerance of a station: the sight arcs of each facet from each
 * pose of the family, those under 0.2° left out as marginal. A station without a tolerance has one pose, the nominal one,
 * which always comes first. Never changes.
 */
public final class StationSight {

    /** Facets in sight over less than this are marginal and do not count. */
    static final long LEAST_ARC = Circle.TICKS_PER_DEGREE / 5;

    private final ArcSet[][] arcs;
    private final byte[] why;

    private StationSight(ArcSet[][] arcs, byte[] why) {
        this.arcs = arcs;
        this.why = why;
    }

    static StationSight of(List<SightArcs> family) {
        int facets = family.get(0).facetCount();
        ArcSet[][] arcs = new ArcSet[family.size()][facets];
        byte[] why = new byte[facets];
        for (int facet = 0; facet < facets; facet++) {
            why[facet] = -1;
            for (int pose = 0; pose < family.size(); pose++) {
                arcs[pose][facet] = counted(family.get(pose).arcs(facet));
                if (arcs[pose][facet].isEmpty() && why[facet] < 0) {
                    why[facet] = (byte)
                            family.get(pose).why(facet).orElse(Hindrance.HIDDEN).ordinal();
                }
            }
        }
        return new StationSight(arcs, why);
    }

    private static ArcSet counted(ArcSet arcs) {
        List<Arc> wide =
                arcs.arcs().stream().filter(arc -> arc.length() >= LEAST_ARC).toList();
        return wide.size() == arcs.arcs().size() ? arcs : ArcSet.of(Circle.STANDARD, wide);
    }

    /** How many poses stand for the tolerance. */
    public int poses() {
        return arcs.length;
    }

    /** How many facets an airfoil has. */
    public int facets() {
        return why.length;
    }

    /** The clock angles of the airfoil at which a facet is in sight from a pose. */
    public ArcSet arcs(int pose, int facet) {
        return arcs[pose][facet];
    }

    /** Whether every pose shows a facet at some clock angle. */
    public boolean reaches(int facet) {
        return why[facet] < 0;
    }

    /** What keeps a facet out of sight from the first pose that does not show it; empty if every pose does. */
    public Optional<Hindrance> why(int facet) {
        return reaches(facet) ? Optional.empty() : Optional.of(Hindrance.values()[why[facet]]);
    }

    /** What {@link #read} reads. */
    byte[] written() {
        int arcCount = 0;
        for (ArcSet[] pose : arcs) {
            for (ArcSet set : pose) {
                arcCount += set.arcs().size();
            }
        }
        ByteBuffer bytes = ByteBuffer.allocate(
                2 * Integer.BYTES + why.length + arcs.length * why.length + 2 * Long.BYTES * arcCount);
        bytes.putInt(arcs.length).putInt(why.length).put(why);
        for (ArcSet[] pose : arcs) {
            for (ArcSet set : pose) {
                bytes.put((byte) set.arcs().size());
                set.arcs().forEach(arc -> bytes.putLong(arc.start()).putLong(arc.length()));
            }
        }
        return bytes.array();
    }

    /** What was written for an airfoil of so many facets; empty if these bytes are something else. */
    static Optional<StationSight> read(byte[] content, int facets) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        try {
            int poses = bytes.getInt();
            if (poses < 1 || poses > PoseFamily.SIZE || bytes.getInt() != facets) {
                return Optional.empty();
            }
            byte[] why = new byte[facets];
            bytes.get(why);
            ArcSet[][] arcs = new ArcSet[poses][facets];
            for (ArcSet[] pose : arcs) {
                for (int facet = 0; facet < facets; facet++) {
                    pose[facet] = arcs(bytes);
                }
            }
            boolean known = !bytes.hasRemaining();
            for (byte reason : why) {
                known &= reason >= -1 && reason < Hindrance.values().length;
            }
            return known ? Optional.of(new StationSight(arcs, why)) : Optional.empty();
        } catch (BufferUnderflowException | IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }

    private static ArcSet arcs(ByteBuffer bytes) {
        int count = bytes.get();
        List<Arc> list = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            list.add(new Arc(Circle.STANDARD, bytes.getLong(), bytes.getLong()));
        }
        return ArcSet.of(Circle.STANDARD, list);
    }
}
