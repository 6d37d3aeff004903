package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.surface.Meridian;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
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

    /** One airfoil of each row; empty if it has no shape. */
    @FunctionalInterface
    interface Airfoils {
        Optional<Swept> of(Row row) throws UnusableShape;
    }

    /**
     * The rows of other rings whose axial extent meets the stretch from a row to a scope tip.
     *
     * @param own what the row's airfoil sweeps
     * @param ring the scene of the row's ring
     * @param pose of the scope tip
     * @param reach how far from there the scope tip may be, mm
     */
    static List<Neighbour> between(ViewScene engine, Airfoils airfoils, Meridian own, Row row, Pose pose, double reach)
            throws UnusableShape {
        double from = Math.min(own.front(), pose.x() - reach);
        double to = Math.max(own.rear(), pose.x() + reach);
        List<Neighbour> between = new ArrayList<>();
        for (Row other : engine.model().rows()) {
            boolean mate =
                    other.equals(row) || row.ring().isPresent() && other.ring().equals(row.ring());
            Optional<Swept> shape = mate ? Optional.empty() : airfoils.of(other);
            if (shape.isPresent()) {
                Meridian swept = shape.get().meridian();
                if (swept.rear() > from && swept.front() < to) {
                    boolean among = swept.distance(pose.x(), pose.r()) <= reach;
                    between.add(new Neighbour(other, shape.get().airfoil(), among, span(engine, row, other)));
                }
            }
        }
        return between;
    }

    private static Optional<Span> span(ViewScene engine, Row row, Row other) {
        if (other.kind() != RowKind.STATOR) {
            return Optional.empty();
        }
        Optional<Span> there = place(engine, other);
        Optional<Span> known = row.kind() == RowKind.ROTOR
                ? there
                : place(engine, row).flatMap(own -> there.map(standing -> standing.after(own)));
        return Optional.of(known.orElse(Span.anywhere(other.count())));
    }

    /** Where the first airfoil of a row that stands still is, by its maker or else by the journal. */
    private static Optional<Span> place(ViewScene engine, Row row) {
        return row.phase().isPresent()
                ? Optional.of(Span.at(Turn.ofDegrees(row.phase().getAsDouble())))
                : Optional.ofNullable(engine.places().get(row.id())).map(Span::of);
    }

    /** Whether its place is known exactly. */
    boolean isExact() {
        return span.filter(Span::exact).isPresent();
    }

    /** Whether it stands still, nobody knows quite where. */
    boolean isDoubtful() {
        return span.isPresent() && !isExact();
    }

    /** As a ring, its first airfoil where it stands if that is known exactly. */
    Ring ring() {
        return new Ring(airfoil, row.count(), Span.turn(span.orElseThrow().from()));
    }
}
