package everyblade.core.turning;

import java.util.BitSet;
import java.util.List;

/**
 * A fold as bytes, so that a long journal need not be folded anew. It holds where everything stands, not the entries,
 * which are given again with it. Derived data: it serves only the very program that wrote it, for the same engine and the
 * same entries, and whoever keeps it sees to it that it is none other.
 */
public final class FoldSnapshot {

    private FoldSnapshot() {}

    /** What a fold holds beside its entries. */
    record Held(Situation situation, BitSet voided) {}

    /** A fold as bytes; its last warnings are not among them. */
    public static byte[] write(Fold fold) {
        return FoldWriter.of(new Held(fold.situation(), fold.voided()));
    }

    /**
     * The fold that was written. Cost: little, whatever its length; what is asked of its past is made then.
     *
     * @param engine of the same model
     * @param entries the same
     * @throws RuntimeException if the bytes are not those that this program wrote
     */
    public static Fold read(byte[] bytes, Engine engine, List<Logged> entries) {
        Held held = (Held) FoldReader.of(bytes, engine);
        return Fold.resumed(Trail.onDemand(entries.size(), entries::get), held.situation(), held.voided());
    }
}
