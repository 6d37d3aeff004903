package everyblade.picture;

import everyblade.core.angle.Turn;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.Optional;

/**
 * Where the airfoils of a row stand now.
 *
 * @param row whose airfoils
 * @param first clock angle of airfoil 1, 0 to a turn; 12 o'clock where it is not known
 * @param doubt why that is not known; empty if it is known
 */
record Standing(Row row, Turn first, Optional<Doubt> doubt) {

    /** Why it is not known where airfoils stand. */
    enum Doubt {
        /** None of them was ever identified. */
        NO_DATUM,
        /** The count was lost. */
        LOST
    }

    /** As far as the entries tell. */
    static Standing of(Situation situation, Row row) {
        if (!situation.counting(row)) {
            return new Standing(row, Turn.ZERO, Optional.of(Doubt.NO_DATUM));
        }
        Optional<Place> place = situation
                .placing(row)
                .at(row.id(), row.rock(), situation.stop(row))
                .place();
        // What is kept of a static row is its angle to the scope tip, which may have been drawn round since.
        Turn drawn = row.kind() == RowKind.ROTOR ? Turn.ZERO : situation.reading(row);
        return place.map(stands -> new Standing(row, stands.best().minus(drawn).wrapped(), Optional.empty()))
                .orElse(new Standing(row, Turn.ZERO, Optional.of(Doubt.LOST)));
    }

    /** Clock angle at which the scope tip looks at the row in view, degrees. */
    static double scopeTip(Situation situation, Seat seat) {
        // What is kept of a row that stands still is its angle to the scope tip, which grows as the tip goes back.
        double drawn = seat.row().kind() == RowKind.ROTOR
                ? 0
                : situation.reading(seat.row()).degrees();
        return seat.reference().degrees() - drawn;
    }

    /** Why it is not known where they stand, in words; blank if it is. */
    String doubt(MapWords words) {
        return doubt.map(why -> words.say("doubt.", why)).orElse("");
    }

    /** Clock angle of airfoil n, degrees, 0 to 360. */
    double clock(int airfoil) {
        return first.plus(Engine.fromFirst(row, airfoil)).wrapped().degrees();
    }
}
