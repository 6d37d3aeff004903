package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import java.util.Arrays;

/**
 * A set of patches of the airfoils of one row, facet by facet: a facet is kept as one as long as all its patches belong to the
 * same airfoils. Grows by runs of airfoils; copied before it is shared.
 */
final class PatchBits {

    private final int airfoils;
    /** Null where nothing of a facet belongs to it: most facets, from most places. */
    private final CellBits[] facets;
    /** How many parts each facet has here: one, or its patches. */
    private final int[] parts;

    private PatchBits(int airfoils, CellBits[] facets, int[] parts) {
        this.airfoils = airfoils;
        this.facets = facets;
        this.parts = parts;
    }

    static PatchBits none(int airfoils, int facets) {
        int[] parts = new int[facets];
        Arrays.fill(parts, 1);
        return new PatchBits(airfoils, new CellBits[facets], parts);
    }

    PatchBits copy() {
        CellBits[] copies = new CellBits[facets.length];
        for (int facet = 0; facet < facets.length; facet++) {
            copies[facet] = facets[facet] == null ? null : facets[facet].copy();
        }
        return new PatchBits(airfoils, copies, parts.clone());
    }

    /** Adds one patch of a facet, of so many; all of it, if that is the only one. */
    void add(IndexRun run, int facet, int patch, int patches) {
        if (run.length() == 0) {
            return;
        }
        if (facets[facet] == null) {
            facets[facet] = CellBits.none(airfoils, parts[facet]);
        }
        divide(facet, patches);
        if (patches > 1) {
            facets[facet].add(run, patch);
            return;
        }
        for (int part = 0; part < parts[facet]; part++) {
            facets[facet].add(run, part);
        }
    }

    private void divide(int facet, int patches) {
        if (parts[facet] < patches) {
            facets[facet] = facets[facet].repeated(patches);
            parts[facet] = patches;
        }
    }

    /** Adds all that another set of the same row holds. */
    void add(PatchBits other) {
        for (int facet = 0; facet < facets.length; facet++) {
            if (facets[facet] == null) {
                facets[facet] = other.facets[facet] == null ? null : other.facets[facet].copy();
                parts[facet] = other.parts[facet];
            } else if (other.facets[facet] != null) {
                divide(facet, other.parts[facet]);
                facets[facet].add(other.as(facet, parts[facet]));
            }
        }
    }

    /** Takes out all that another set of the same row does not hold. */
    void keep(PatchBits other) {
        for (int facet = 0; facet < facets.length; facet++) {
            if (other.facets[facet] == null) {
                facets[facet] = null;
                parts[facet] = 1;
            } else if (facets[facet] != null) {
                divide(facet, other.parts[facet]);
                facets[facet].keep(other.as(facet, parts[facet]));
            }
        }
    }

    private CellBits as(int facet, int patches) {
        return parts[facet] < patches ? facets[facet].repeated(patches) : facets[facet];
    }

    /** Whether all patches of a facet belong to the same airfoils, so that any of them tells of all. */
    boolean whole(int facet) {
        return parts[facet] == 1;
    }

    /** Whether all patches of a facet of every airfoil belong to it. */
    boolean isFull(int facet) {
        if (facets[facet] == null) {
            return false;
        }
        for (int part = 0; part < parts[facet]; part++) {
            if (!facets[facet].isFull(part)) {
                return false;
            }
        }
        return true;
    }

    /** Whether one patch of a facet, of so many, of every airfoil belongs to it; all of it, if that is the only one. */
    boolean isFull(int facet, int patch, int patches) {
        return patches == 1
                ? isFull(facet)
                : facets[facet] != null && facets[facet].isFull(parts[facet] == 1 ? 0 : patch);
    }

    /** The airfoils of a word of {@link CellBits} to which a patch of a facet belongs. */
    long word(int word, int facet, int patch) {
        return facets[facet] == null ? 0 : facets[facet].word(word, parts[facet] == 1 ? 0 : patch);
    }

    /** Whether a patch of a facet of airfoil number n (from 1) belongs to it. */
    boolean contains(int n, int facet, int patch) {
        return facets[facet] != null && facets[facet].contains(n, parts[facet] == 1 ? 0 : patch);
    }
}
