package everyblade.core.move;

import everyblade.core.entry.Entry;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One watched sweep, and the way there. Angles are degrees to five decimals, amounts positive clockwise.
 *
 * @param row that is in view
 * @param view through which
 * @param station where the scope tip stands, if the view has stations
 * @param seated whether the scope tip is newly seated for it
 * @param identifies the airfoil that must first be brought to the reference, if one must
 * @param closing how far a shaft is first turned unwatched to close the count on an airfoil that is known
 * @param way how far the shaft turns unwatched before, as far as anybody knows; 0 if not at all
 * @param from reading of the shaft at which watching begins; of a row that stands still the clock angle to which the
 *     scope tip is fed; empty if nobody knows
 * @param sweep how far it turns watched; 0 for a look at rest
 * @param drawn whether the scope tip is fed and drawn round the row instead of the shaft being turned
 * @param round whether it is a whole turn from an airfoil at the reference until it is back
 * @param watch the zones that are watched
 * @param entries that say it, in order
 * @param minutes that it takes
 * @param closes what it closes
 */
public record Move(
        Row row,
        View view,
        Optional<String> station,
        boolean seated,
        OptionalInt identifies,
        BigDecimal closing,
        BigDecimal way,
        Optional<BigDecimal> from,
        BigDecimal sweep,
        boolean drawn,
        boolean round,
        ZoneSet watch,
        List<Entry> entries,
        double minutes,
        List<Closing> closes) {

    public Move {
        entries = List.copyOf(entries);
        closes = List.copyOf(closes);
    }

    /**
     * The same zones of some airfoils.
     *
     * @param airfoils their numbers, rising
     * @param zones at least one
     */
    public record Closing(List<Integer> airfoils, ZoneSet zones) {

        public Closing {
            airfoils = List.copyOf(airfoils);
        }
    }
}
