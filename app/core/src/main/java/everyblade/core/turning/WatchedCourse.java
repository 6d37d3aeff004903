package everyblade.core.turning;

import everyblade.core.angle.Turn;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * All that a journal says of the watching of one row, as bytes: every leg, and of every stop of it where the row stood and
 * how surely. Two journals of the same engine that give the same bytes say the same of what was in sight of the row while
 * it was watched, whatever else they say; the other way round is not promised.
 */
public final class WatchedCourse {

    /** A stance whose vanes stand in an order that is always the same. */
    private record From(
            String view,
            List<String> stations,
            boolean moved,
            Optional<String> scopeTip,
            Map<String, String> vanes,
            Optional<Stance.Proof> proof) {

        static From of(Stance stance) {
            return new From(
                    stance.view(),
                    stance.stations(),
                    stance.moved(),
                    stance.scopeTip(),
                    new TreeMap<>(stance.vanes()),
                    stance.proof());
        }
    }

    /** All that a {@link SmoothedTrack} tells of a stop, whichever entry led there. */
    private record Stood(
            SmoothedTrack.Stand stand,
            Turn counted,
            Uncertainty total,
            int stretch,
            boolean doubtful,
            Turn offset,
            Turn adjusted) {

        static Stood of(Track track, SmoothedTrack placing, Row row, int index) {
            Stop stop = track.stops().get(index);
            return new Stood(
                    placing.at(row.id(), row.rock(), index),
                    stop.counted(),
                    stop.total(),
                    stop.stretch(),
                    stop.doubtful(),
                    track.label(index).offset(),
                    placing.adjusted(index));
        }
    }

    /** A leg, whichever entry said so. */
    private record Watching(
            From from, int placement, ZoneSet watched, List<Stood> stops, int first, int run, OptionalDouble seconds) {}

    private WatchedCourse() {}

    /** What a situation says of the watching of a row. */
    public static byte[] of(Situation situation, Row row) {
        Track track = situation.trackOf(row);
        SmoothedTrack placing = SmoothedTrack.of(track);
        List<Watching> all = new ArrayList<>();
        for (Leg leg : situation.legsOf(row)) {
            List<Stood> stops = new ArrayList<>();
            for (int stop = leg.from(); stop <= leg.to(); stop++) {
                stops.add(Stood.of(track, placing, row, stop));
            }
            all.add(new Watching(
                    From.of(leg.stance()),
                    leg.placement(),
                    leg.watched(),
                    stops,
                    leg.from(),
                    leg.run(),
                    leg.seconds()));
        }
        return FoldWriter.of(all);
    }
}
