package everyblade.core.sight;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a station shows as bytes and back, for those who keep it. Of poses that show the same one after the other only the
 * first is written.
 */
final class StationBytes {

    private static final byte AS_THE_ONE_BEFORE = -1;
    private static final byte AS_ITS_FACET = -2;
    private static final byte NONE = 0;
    private static final byte FOLLOW = 1;

    private final ByteBuffer bytes;
    private boolean known = true;

    private StationBytes(ByteBuffer bytes) {
        this.bytes = bytes;
    }

    /**
     * The bytes.
     *
     * @param arcs by kind, facet and pose
     * @param why by kind, number of the hindrance of each facet, −1 if there is none
     * @param divided by kind, facet, patch and pose; null where a facet is not divided, or a patch is as its facet
     * @param whole by kind, facet, patch and pose; null where it says nothing of a facet
     */
    static byte[] of(ArcSet[][][] arcs, byte[][] why, ArcSet[][][][] divided, ArcSet[][][][] whole) {
        int facets = arcs[0].length;
        int size = 3 * Integer.BYTES + 3 * arcs.length * facets;
        for (ArcSet[][] kind : arcs) {
            size += size(kind);
        }
        for (ArcSet[][][][] ofPatches : List.of(divided, whole)) {
            for (int kind = 0; kind < arcs.length; kind++) {
                for (int facet = 0; facet < facets; facet++) {
                    size += patchesHead(ofPatches, kind, facet) == FOLLOW ? size(ofPatches[kind][facet]) : 0;
                }
            }
        }
        StationBytes to = new StationBytes(ByteBuffer.allocate(size));
        to.bytes.putInt(arcs.length).putInt(arcs[0][0].length).putInt(facets);
        for (byte[] kind : why) {
            to.bytes.put(kind);
        }
        for (ArcSet[][] kind : arcs) {
            to.put(kind);
        }
        for (ArcSet[][][][] ofPatches : List.of(divided, whole)) {
            for (int kind = 0; kind < arcs.length; kind++) {
                for (int facet = 0; facet < facets; facet++) {
                    byte head = patchesHead(ofPatches, kind, facet);
                    to.bytes.put(head);
                    if (head == FOLLOW) {
                        to.put(ofPatches[kind][facet]);
                    }
                }
            }
        }
        return to.bytes.array();
    }

    /** Whether what patches of a facet show follows, or why it does not. */
    private static byte patchesHead(ArcSet[][][][] of, int kind, int facet) {
        if (of[kind][facet] == null) {
            return NONE;
        }
        return kind > 0 && Arrays.deepEquals(of[kind][facet], of[kind - 1][facet]) ? AS_THE_ONE_BEFORE : FOLLOW;
    }

    private static int size(ArcSet[][] places) {
        int size = 0;
        for (ArcSet[] place : places) {
            for (int pose = 0; pose < place.length; pose++) {
                size += 1
                        + (head(place, pose) < 0
                                ? 0
                                : 2 * Long.BYTES * place[pose].arcs().size());
            }
        }
        return size;
    }

    /** How many arcs follow, or why none do. */
    private static byte head(ArcSet[] place, int pose) {
        if (place[pose] == null) {
            return AS_ITS_FACET;
        }
        boolean repeated = pose > 0 && place[pose].equals(place[pose - 1]);
        return repeated ? AS_THE_ONE_BEFORE : (byte) place[pose].arcs().size();
    }

    private void put(ArcSet[][] places) {
        for (ArcSet[] place : places) {
            for (int pose = 0; pose < place.length; pose++) {
                byte head = head(place, pose);
                bytes.put(head);
                if (head > 0) {
                    place[pose].arcs().forEach(arc -> bytes.putLong(arc.start()).putLong(arc.length()));
                }
            }
        }
    }

    /** What was written for an airfoil of this grain; empty if these bytes are something else. */
    static Optional<StationSight> read(byte[] content, Grain grain) {
        try {
            return new StationBytes(ByteBuffer.wrap(content)).read(grain);
        } catch (BufferUnderflowException | IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }

    private Optional<StationSight> read(Grain grain) {
        int kinds = bytes.getInt();
        int poses = bytes.getInt();
        int facets = grain.patches().facetCount();
        if (kinds < 1 || poses < 1 || bytes.getInt() != facets || (long) kinds * poses * facets > bytes.capacity()) {
            return Optional.empty();
        }
        byte[][] why = new byte[kinds][facets];
        for (byte[] kind : why) {
            bytes.get(kind);
            for (byte reason : kind) {
                known &= reason >= -1 && reason < Hindrance.values().length;
            }
        }
        ArcSet[][][] arcs = new ArcSet[kinds][facets][poses];
        for (ArcSet[][] kind : arcs) {
            get(kind, false);
        }
        ArcSet[][][][] divided = ofPatches(grain, kinds, poses, true);
        ArcSet[][][][] whole = ofPatches(grain, kinds, poses, false);
        return known && !bytes.hasRemaining()
                ? Optional.of(StationSight.of(arcs, why, divided, whole, grain))
                : Optional.empty();
    }

    /** @param asFacets whether a patch may be as its facet */
    private ArcSet[][][][] ofPatches(Grain grain, int kinds, int poses, boolean asFacets) {
        ArcSet[][][][] of = new ArcSet[kinds][grain.patches().facetCount()][][];
        for (int kind = 0; kind < kinds; kind++) {
            for (int facet = 0; facet < of[kind].length; facet++) {
                byte head = bytes.get();
                if (head == FOLLOW) {
                    of[kind][facet] = new ArcSet[grain.patches().count(facet)][poses];
                    get(of[kind][facet], asFacets);
                } else if (head == AS_THE_ONE_BEFORE && kind > 0) {
                    of[kind][facet] = of[kind - 1][facet];
                } else {
                    known &= head == NONE;
                }
            }
        }
        return of;
    }

    private void get(ArcSet[][] places, boolean asFacets) {
        for (ArcSet[] place : places) {
            for (int pose = 0; pose < place.length; pose++) {
                int head = bytes.get();
                if (head == AS_THE_ONE_BEFORE && pose > 0) {
                    place[pose] = place[pose - 1];
                } else if (head >= 0) {
                    place[pose] = arcs(head);
                } else {
                    known &= head == AS_ITS_FACET && asFacets;
                }
            }
        }
    }

    private ArcSet arcs(int count) {
        List<Arc> list = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            list.add(new Arc(Circle.STANDARD, bytes.getLong(), bytes.getLong()));
        }
        return ArcSet.of(Circle.STANDARD, list);
    }
}
