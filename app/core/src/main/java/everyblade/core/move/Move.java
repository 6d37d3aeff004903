package everyblade.core.move;

import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One watched sweep, and the way there. Angles are degrees to five decimals, amounts positive clockwise.
 *
 * @param row that is in view
 * @param view through which
 * @param station where the scope tip stands, if the view has stations
 * @param seated whether the scope tip is newly seated for it
 * @param way how far the shaft turns unwatched before; 0 if not at all
 * @param from reading of the shaft at which watching begins; of a row that stands still the clock angle to which the
 *     scope tip is fed
 * @param sweep how far it turns watched; 0 for a look at rest
 * @param drawn whether the scope tip is fed and drawn round the row instead of the shaft being turned
 * @param watch the zones that are watched
 * @param closes what it closes
 */
public record Move(
        Row row,
        View view,
        Optional<String> station,
        boolean seated,
        BigDecimal way,
        BigDecimal from,
        BigDecimal sweep,
        boolean drawn,
        ZoneSet watch,
        List<Closing> closes) {

    public Move {
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
