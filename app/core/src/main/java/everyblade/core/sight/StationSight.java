package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.spi.Row;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a scope tip shows that stands somewhere within the tolerance of a station: the sight arcs of each facet from each
 * pose of the family, those under 0.2° left out as marginal. A station without a tolerance has one pose, the nominal one,
 * which always comes first. Where a row between may stand in several ways, each way from each pose counts as a pose of its
 * own. Past rows of another count the airfoils are of several kinds, in turn clockwise from the first. Never changes.
 */
public final class StationSight {

    /** Facets in sight over less than this are marginal and do not count. */
    static final long LEAST_ARC = Circle.TICKS_PER_DEGREE / 5;

    /** Stands for the number of arcs of a facet that a pose shows as the one before does. */
    private static final byte REPEATED = -1;

    /** By kind, facet and pose. */
    private final ArcSet[][][] arcs;
    /** By kind and facet. */
    private final byte[][] why;

    private StationSight(ArcSet[][][] arcs, byte[][] why) {
        this.arcs = arcs;
        this.why = why;
    }

    /** Of each kind of airfoils what the poses of the family show, in each way. */
    static StationSight of(List<List<SightArcs>> kinds) {
        int facets = kinds.get(0).get(0).facetCount();
        ArcSet[][][] arcs = new ArcSet[kinds.size()][facets][];
        byte[][] why = new byte[kinds.size()][facets];
        for (int kind = 0; kind < kinds.size(); kind++) {
            List<SightArcs> family = kinds.get(kind);
            for (int facet = 0; facet < facets; facet++) {
                arcs[kind][facet] = new ArcSet[family.size()];
                why[kind][facet] = -1;
                for (int pose = 0; pose < family.size(); pose++) {
                    ArcSet found = counted(family.get(pose).arcs(facet));
                    arcs[kind][facet][pose] = found;
                    if (found.isEmpty() && why[kind][facet] < 0) {
                        why[kind][facet] = (byte) family.get(pose)
                                .why(facet)
                                .orElse(Hindrance.HIDDEN)
                                .ordinal();
                    }
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
        return arcs[0][0].length;
    }

    /** How many facets an airfoil has. */
    public int facets() {
        return arcs[0].length;
    }

    /** How many kinds of airfoils there are: 1 if what a pose shows of one it shows of all. */
    public int kinds() {
        return arcs.length;
    }

    /** Of which kind airfoil n of a row is, counted from 1. */
    public int kind(Row row, int n) {
        return Math.floorMod(row.numbering().sign() * (n - 1), kinds());
    }

    /** The clock angles of the first airfoil, and of all that are of its kind, at which a facet is in sight from a pose. */
    public ArcSet arcs(int pose, int facet) {
        return arcs(0, pose, facet);
    }

    /** The clock angles of airfoils of a kind at which a facet is in sight from a pose. */
    public ArcSet arcs(int kind, int pose, int facet) {
        return arcs[kind][facet][pose];
    }

    /** Whether every pose shows a facet of each airfoil at some clock angle. */
    public boolean reaches(int facet) {
        return hiding(facet) < 0;
    }

    /** Whether every pose shows a facet of airfoils of a kind at some clock angle. */
    public boolean reaches(int kind, int facet) {
        return why[kind][facet] < 0;
    }

    /** What keeps a facet out of sight from the first pose that does not show it; empty if every pose does, of each airfoil. */
    public Optional<Hindrance> why(int facet) {
        int hiding = hiding(facet);
        return hiding < 0 ? Optional.empty() : Optional.of(Hindrance.values()[hiding]);
    }

    private int hiding(int facet) {
        for (byte[] kind : why) {
            if (kind[facet] >= 0) {
                return kind[facet];
            }
        }
        return -1;
    }

    /** What {@link #read} reads: of poses that show the same one after the other only the first. */
    byte[] written() {
        int length = 3 * Integer.BYTES + kinds() * facets();
        for (ArcSet[][] kind : arcs) {
            for (ArcSet[] facet : kind) {
                for (int pose = 0; pose < facet.length; pose++) {
                    length += 1
                            + (isRepeated(facet, pose)
                                    ? 0
                                    : 2 * Long.BYTES * facet[pose].arcs().size());
                }
            }
        }
        ByteBuffer bytes = ByteBuffer.allocate(length);
        bytes.putInt(kinds()).putInt(poses()).putInt(facets());
        for (byte[] kind : why) {
            bytes.put(kind);
        }
        for (ArcSet[][] kind : arcs) {
            for (ArcSet[] facet : kind) {
                for (int pose = 0; pose < facet.length; pose++) {
                    if (isRepeated(facet, pose)) {
                        bytes.put(REPEATED);
                    } else {
                        bytes.put((byte) facet[pose].arcs().size());
                        facet[pose]
                                .arcs()
                                .forEach(arc -> bytes.putLong(arc.start()).putLong(arc.length()));
                    }
                }
            }
        }
        return bytes.array();
    }

    private static boolean isRepeated(ArcSet[] facet, int pose) {
        return pose > 0 && facet[pose].equals(facet[pose - 1]);
    }

    /** What was written for an airfoil of so many facets; empty if these bytes are something else. */
    static Optional<StationSight> read(byte[] content, int facets) {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        try {
            int kinds = bytes.getInt();
            int poses = bytes.getInt();
            if (kinds < 1 || poses < 1 || bytes.getInt() != facets || (long) kinds * poses * facets > content.length) {
                return Optional.empty();
            }
            byte[][] why = new byte[kinds][facets];
            boolean known = true;
            for (byte[] kind : why) {
                bytes.get(kind);
                for (byte reason : kind) {
                    known &= reason >= -1 && reason < Hindrance.values().length;
                }
            }
            ArcSet[][][] arcs = new ArcSet[kinds][facets][poses];
            for (ArcSet[][] kind : arcs) {
                for (ArcSet[] facet : kind) {
                    for (int pose = 0; pose < poses; pose++) {
                        int count = bytes.get();
                        known &= count >= 0 || count == REPEATED && pose > 0;
                        facet[pose] = count == REPEATED && pose > 0 ? facet[pose - 1] : arcs(bytes, count);
                    }
                }
            }
            return known && !bytes.hasRemaining() ? Optional.of(new StationSight(arcs, why)) : Optional.empty();
        } catch (BufferUnderflowException | IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }

    private static ArcSet arcs(ByteBuffer bytes, int count) {
        List<Arc> list = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            list.add(new Arc(Circle.STANDARD, bytes.getLong(), bytes.getLong()));
        }
        return ArcSet.of(Circle.STANDARD, list);
    }
}
