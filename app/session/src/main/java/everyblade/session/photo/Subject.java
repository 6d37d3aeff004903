package everyblade.session.photo;

import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.spi.Row;
import java.util.Optional;

/**
 * What a picture shows.
 *
 * @param row of the airfoil
 * @param airfoil its number, from 1
 * @param zone as an entry names it; {@code all} if nobody said it
 * @param zones the same
 */
public record Subject(Row row, int airfoil, String zone, ZoneSet zones) {

    private static final String ALL = "all";

    /**
     * The row that was in view, with the airfoil and the zone that a person named, else the likely airfoil and all of it.
     *
     * @param airfoil that goes before these
     * @param zone that goes before these
     * @return empty if no row was in view, or no airfoil is known
     * @throws Refusal if the row has no such zone
     */
    public static Optional<Subject> of(JobPhoto photo, Optional<Integer> airfoil, Optional<String> zone)
            throws Refusal {
        Optional<Row> row = photo.place().row();
        Optional<Integer> shown = airfoil.or(photo::airfoil);
        if (row.isEmpty()
                || shown.isEmpty()
                || shown.get() < 1
                || shown.get() > row.get().count()) {
            return Optional.empty();
        }
        String word = zone.or(photo::zone).orElse(ALL);
        ZoneSet zones = ZoneWords.zone(Zoning.of(row.get()), new Said<>(word, 1));
        return Optional.of(new Subject(row.get(), shown.get(), word, zones));
    }
}
