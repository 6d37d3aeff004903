package everyblade.core.finding.review;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Remark;
import everyblade.fact.Fact;
import java.util.Optional;

/**
 * What a record says of the cells at a place.
 *
 * @param cells how many there are
 * @param done those seen, or seen as far as they can be
 * @param maybe those maybe seen
 * @param accepted those of the others that were accepted as not seen
 */
public record CellsThere(int cells, int done, int maybe, int accepted) {

    /** Empty if the engine has no such place. */
    public static Optional<CellsThere> of(Coverage coverage, ReviewedPlace place) {
        ZoneSet zones;
        try {
            zones = place.zones(coverage.situation().engine());
        } catch (Refusal noSuchPlace) {
            return Optional.empty();
        }
        RowCoverage row = coverage.row(place.row());
        int count = row.row().count();
        int airfoils = Math.floorMod(place.last() - place.first(), count) + 1;
        int done = 0;
        int maybe = 0;
        int accepted = 0;
        for (int i = 0; i < airfoils; i++) {
            int n = (place.first() - 1 + i) % count + 1;
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                if (zones.contains(zone)) {
                    State state = row.state(n, zone);
                    boolean isDone = state.isDone();
                    done += isDone ? 1 : 0;
                    maybe += state.grade() == State.Grade.DOUBTFUL ? 1 : 0;
                    accepted += !isDone && row.remarked(Remark.What.ACCEPTED, n, zone) ? 1 : 0;
                }
            }
        }
        return Optional.of(new CellsThere(airfoils * zones.size(), done, maybe, accepted));
    }

    /** Such as {@code 12 of 18 cells seen, 2 maybe, 4 not, of which 1 accepted}. */
    public Fact told() {
        return new Told(cells, done, maybe, cells - done - maybe, accepted);
    }

    /** All of them, parted by their states; {@code not} is neither done nor maybe. */
    record Told(int cells, int done, int maybe, int not, int accepted) implements Fact {}
}
