package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.util.Optional;

/**
 * Everything said about the angle of one shaft, or of the scope tip's way round a static row: each stop with its counted
 * angle, and the sightings that tie it down.
 *
 * <p>For a static row the scope tip is drawn round the annulus; its track keeps the row's angle relative to the scope
 * tip, so that the same mathematics serves both.
 *
 * @param id of the spool, or of the static row
 * @param stops at least one
 * @param fixes what is known after each sighting, in order
 * @param reading number of the frame of the shaft's reading in force; a slip or a new setting ends it
 * @param label reading less counted and corrected angle, when the reading was last set
 * @param lastSense sign of the last move that was not zero, 0 before the first
 */
record Track(String id, Trail<Stop> stops, Trail<Fix> fixes, int reading, Turn label, int lastSense) {

    /** At rest at reading zero. */
    static Track start(String id) {
        return new Track(id, Trail.<Stop>empty().with(Stop.FIRST), Trail.empty(), 0, Turn.ZERO, 0)
                .labelled(0, Turn.ZERO);
    }

    /** Index of the present stop. */
    int here() {
        return stops.size() - 1;
    }

    private String readingFrame() {
        return "reading/" + reading;
    }

    private Optional<Fix> lastFix() {
        return fixes.isEmpty() ? Optional.empty() : Optional.of(fixes.last());
    }

    /** Best value of the shaft's reading at the present stop, 0 to a turn. */
    Turn readingNow() {
        Turn counted = stops.last().counted();
        if (fixes.isEmpty()) {
            return counted.plus(label).wrapped();
        }
        Fix fix = fixes.last();
        int frame = fix.frame(readingFrame());
        return frame < 0
                ? counted.plus(label).plus(Turn.ofDegrees(fix.state()[0])).wrapped()
                : counted.plus(fix.origins().get(frame))
                        .plus(Turn.ofDegrees(fix.state()[0] + fix.state()[frame + 1]))
                        .wrapped();
    }

    /** Whether a reading of the shaft says where it is. */
    boolean readingKnown() {
        return lastFix().map(fix -> fix.frame(readingFrame()) >= 0).orElse(false);
    }

    /** What a row may be off at the present stop; empty if it was not identified since the count was last broken. */
    Optional<Uncertainty> off(String row) {
        return lastFix()
                .filter(fix -> fix.frame(row) >= 0)
                .filter(fix -> stops.get(fix.sighting().stop()).stretch()
                        == stops.last().stretch())
                .map(fix -> fix.off()[fix.frame(row)].and(stops.last()
                        .total()
                        .since(stops.get(fix.sighting().stop()).total())));
    }

    /** Whether only counted moves led from a stop to the present one, with no sighting after it. */
    boolean onlyCountedSince(int stop) {
        return lastFix().map(fix -> fix.sighting().stop() <= stop).orElse(true)
                && stops.get(stop).stretch() == stops.last().stretch();
    }

    /** Whether a row was ever identified. */
    boolean knows(String row) {
        return fixes.stream().anyMatch(fix -> fix.sighting().frame().equals(row));
    }

    /** After a counted move. */
    Track moved(int entry, Turn amount, Uncertainty error) {
        return at(stops.with(stops.last().moved(entry, amount, error)), amount);
    }

    /** After a move to a reading that is good to ± so many degrees, whatever went before. */
    Track read(int entry, Turn amount, double plusMinus) {
        if (!readingKnown()) {
            return moved(entry, amount, Uncertainty.of(plusMinus));
        }
        Turn target = readingNow().plus(amount);
        Track there = at(stops.with(stops.last().cutOff(entry, amount)), amount);
        return there.sighted(new Sighting(entry, there.here(), readingFrame(), target, 0, plusMinus, 0, 360));
    }

    /** After a move by an unknown amount; readings say nothing any more. */
    Track slipped(int entry) {
        return new Track(id, stops.with(stops.last().cutOff(entry, Turn.ZERO)), fixes, reading + 1, label, lastSense);
    }

    /** With the shaft's reading set to this angle, here. */
    Track labelled(int entry, Turn angle) {
        Turn correction =
                fixes.isEmpty() ? Turn.ZERO : Turn.ofDegrees(fixes.last().state()[0]);
        Turn set = angle.minus(stops.last().counted()).minus(correction);
        Track renamed = new Track(id, stops, fixes, reading + 1, set, lastSense);
        return renamed.sighted(new Sighting(entry, here(), renamed.readingFrame(), angle, 0, 0, 0, 360));
    }

    /** With one more sighting at the present stop. */
    Track sighted(Sighting sighting) {
        return new Track(id, stops, fixes.with(Fix.after(lastFix(), stops, sighting)), reading, label, lastSense);
    }

    private Track at(Trail<Stop> longer, Turn amount) {
        return new Track(id, longer, fixes, reading, label, amount.signum() == 0 ? lastSense : amount.signum());
    }
}
