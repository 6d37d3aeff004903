package everyblade.window.view;

import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.Optional;

/**
 * Where the row in view and the scope tip stand; clock angles in degrees, unrolled, so that half of the way between two of
 * them is half of the way that was gone.
 *
 * @param row in view
 * @param first where its first airfoil stands
 * @param tip where the scope tip looks at it
 */
public record RotorPose(Row row, double first, double tip) {

    /** Empty while nothing is in view, or nobody knows where the row stands. */
    public static Optional<RotorPose> of(Situation now) {
        return now.seat().flatMap(seat -> of(now, seat));
    }

    private static Optional<RotorPose> of(Situation now, Seat seat) {
        Row row = seat.row();
        Optional<SmoothedTrack.Place> place =
                now.placing(row).at(row.id(), row.rock(), now.stop(row)).place();
        if (!now.counting(row) || place.isEmpty()) {
            return Optional.empty();
        }
        double best = place.get().best().degrees();
        double reference = seat.view().reference();
        if (row.kind() == RowKind.ROTOR) {
            return Optional.of(new RotorPose(row, best, reference));
        }
        // Of a row that stands still it is known where it stands to the scope tip, which is drawn round.
        double first = ((best - now.reading(row).degrees()) % 360 + 360) % 360;
        return Optional.of(new RotorPose(row, first, first + reference - best));
    }

    /** Where both stand some way on towards another pose; there already if that is of another row. */
    public RotorPose towards(RotorPose next, double share) {
        return row.id().equals(next.row.id())
                ? new RotorPose(row, first + share * (next.first - first), tip + share * (next.tip - tip))
                : this;
    }

    /** Where an airfoil stands, degrees from 0 to 360. */
    public double clock(int airfoil) {
        double further = (airfoil - 1) * 360.0 / row.count() * row.numbering().sign();
        return ((first + further) % 360 + 360) % 360;
    }
}
