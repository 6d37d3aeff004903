package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Reach;
import java.util.BitSet;
import java.util.Optional;

/** The cells of one row as they were seen; airfoils are numbered from 1, zones from 0. */
interface Cells {

    Basis basis();

    State state(int n, int zone);

    /** Why a cell is not seen; empty if it is. */
    Optional<Why> why(int n, int zone);

    /** Whether enough of a cell was seen, but not of its outermost strip at the leading or trailing edge. */
    boolean lacksEdgeAlone(int n, int zone);

    /** What mostly keeps a cell that is not within reach out of sight, where that is known. */
    Optional<Hindrance> hindrance(int n, int zone);

    /**
     * Whether a cell would be seen, or seen in part, if these parts of it and no others were surely seen: patches, or zones.
     *
     * @param whole of these, patches along an edge of sight that would be seen as a whole
     */
    boolean doneBy(int n, int zone, BitSet parts, BitSet whole);

    /** The parts of airfoil n that were surely seen: patches, or zones. */
    BitSet surely(int n);

    /** Of these, patches along an edge of sight that were surely seen as a whole. */
    BitSet wholly(int n);

    /** Shares of the surface of these zones of one airfoil. */
    Areas areas(int n, ZoneSet zones);

    /** Surface of these zones of one airfoil, mm²; where none is known, how many they are. */
    double surface(ZoneSet zones);

    /** What stations can show of the row; empty where nothing is computed. */
    Optional<Reach> reach();
}
