package everyblade.core.sight;

import everyblade.core.surface.Mesh;
import everyblade.spi.Row;
import java.util.Optional;

/**
 * A row of another ring between a row that is looked at and a scope tip.
 *
 * @param row that stands there
 * @param airfoil one of it, standing at clock 0
 * @param among whether the scope tip stands, or within its tolerance may stand, in what the row sweeps
 * @param span where its first airfoil may stand: in the engine if the row that is looked at turns, else when the first airfoil
 *     of that one stands at clock 0; empty if it turns, or is of one piece, so that it hides all that it sweeps
 */
record Neighbour(Row row, Mesh airfoil, boolean among, Optional<Span> span) {

    boolean isExact() {
        return span.filter(Span::exact).isPresent();
    }

    /** A row whose place is not known hides, as a whole, all that it sweeps, unless the scope tip stands in it. */
    boolean isSwept() {
        return span.isEmpty() || !isExact() && !among;
    }

    /** As a ring, its first airfoil where it stands if that is known exactly. */
    Ring ring() {
        return new Ring(
                airfoil,
                row.count(),
                everyblade.core.angle.Turn.ofDegrees(
                                Math.toDegrees(span.orElseThrow().from()))
                        .wrapped());
    }
}
