package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything said about the angle of one shaft, or of the scope tip's way round a static row: each stop with its counted
 * angle, and the sightings that tie it down.
 *
 * <p>For a static row the scope tip is drawn round the annulus; its track keeps the row's angle relative to the scope
 * tip, so that the same mathematics serves both.
 *
 * <p>The rotor and the dial that shows its angle are two frames. A reading ties the angle to the dial; only a seen
 * airfoil ties the rotor to it, and only a second one of the same row tells that nothing was lost between ({@link Check}).
 *
 * @param id of the spool, or of the static row
 * @param stops at least one
 * @param sightings in order; a reading's frame is named by its setting alone
 * @param fixes what is known after each sighting that tells something, in order; at least what the first reading tells
 * @param checks what the identifications found, in order
 * @param labels from which stop on which setting of the reading is in force, in order
 * @param suspicion what all checks together say of the steps
 * @param lastSense sign of the last move that was not zero, 0 before the first
 */
record Track(
        String id,
        Trail<Stop> stops,
        Trail<Sighting> sightings,
        Trail<KalmanUpdate> fixes,
        Trail<Check> checks,
        Trail<Label> labels,
        Suspicion suspicion,
        int lastSense) {

    /**
     * A setting of the shaft's reading.
     *
     * @param number of the setting
     * @param from index of the stop from which on it is in force
     * @param offset reading less counted angle, when it was set
     */
    record Label(int number, int from, Turn offset) {}

    /** At rest at reading zero. */
    static Track start(String id) {
        return new Track(
                        id,
                        Trail.<Stop>empty().with(Stop.FIRST),
                        Trail.empty(),
                        Trail.empty(),
                        Trail.empty(),
                        Trail.<Label>empty().with(new Label(0, 0, Turn.ZERO)),
                        Suspicion.none(),
                        0)
                .labelled(0, Turn.ZERO);
    }

    /** Index of the present stop. */
    int here() {
        return stops.size() - 1;
    }

    private String setting() {
        return "reading/" + labels.last().number();
    }

    /** The frame of the reading in force; what is known now may not know it. */
    private String readingFrame() {
        return Fixes.readingFrame(setting(), stops.last());
    }

    /** The frame of the reading in force where it was set; after a slip nothing but this tells how the dial went on. */
    private String frameWhenSet() {
        return Fixes.readingFrame(setting(), stops.get(labels.last().from()));
    }

    /** The number of fixes at or before a stop. */
    int fixesUpTo(int stop) {
        int known = 0;
        for (int after = fixes.size(); known < after; ) {
            int middle = (known + after) >>> 1;
            if (fixes.get(middle).sighting().stop() <= stop) {
                known = middle + 1;
            } else {
                after = middle;
            }
        }
        return known;
    }

    /** Best value of the shaft's reading at the present stop, 0 to a turn. */
    Turn readingNow() {
        Turn counted = stops.last().counted();
        KalmanUpdate fix = fixes.last();
        int frame = fix.frame(readingKnown() ? readingFrame() : frameWhenSet());
        if (frame < 0) {
            Dial dial = new Dial(fixes, known -> fixes.get(known).state()[0]);
            double beyond = dial.beyondCounted(fixesUpTo(labels.last().from()) - 1, fixes.size() - 1, fix.state()[0]);
            return counted.plus(labels.last().offset())
                    .plus(Turn.ofDegrees(beyond))
                    .wrapped();
        }
        return counted.plus(fix.origins().get(frame))
                .plus(Turn.ofDegrees(fix.state()[0] + fix.state()[frame + 1]))
                .wrapped();
    }

    /** Whether a reading of the shaft says where it is. */
    boolean readingKnown() {
        return fixes.last().knows(readingFrame());
    }

    /** What the reading may be off at the present stop. */
    Uncertainty readingOff() {
        return readingKnown() ? off(readingFrame()).orElse(Uncertainty.EXACT) : Uncertainty.EXACT;
    }

    /** What a row may be off at the present stop; empty if it was not identified since the count was last broken. */
    Optional<Uncertainty> off(String row) {
        return Optional.of(fixes.last())
                .filter(fix -> fix.knows(row))
                .filter(fix -> stops.get(fix.sighting().stop()).stretch()
                        == stops.last().stretch())
                .map(fix -> fix.off()[fix.frame(row)].and(stops.last()
                        .total()
                        .since(stops.get(fix.sighting().stop()).total())));
    }

    /** Whether only counted moves led from a stop to the present one, with no sighting after it. */
    boolean onlyCountedSince(int stop) {
        return fixes.last().sighting().stop() <= stop
                && stops.get(stop).stretch() == stops.last().stretch();
    }

    /** Whether a row was ever identified. */
    boolean knows(String row) {
        return sightings.stream().anyMatch(sighting -> sighting.frame().equals(row));
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
        Track there = at(stops.with(stops.last().read(entry, amount, plusMinus)), amount);
        return there.sighted(Sighting.ofReading(entry, there.here(), setting(), target, plusMinus));
    }

    /** After a move by an unknown amount; readings say nothing any more. */
    Track slipped(int entry) {
        return new Track(
                id, stops.with(stops.last().slipped(entry)), sightings, fixes, checks, labels, suspicion, lastSense);
    }

    /** With the shaft's reading set to this angle, here. */
    Track labelled(int entry, Turn angle) {
        Label set = new Label(
                labels.last().number() + 1, here(), angle.minus(stops.last().counted()));
        Track renamed = new Track(id, stops, sightings, fixes, checks, labels.with(set), suspicion, lastSense);
        return renamed.sighted(Sighting.ofReading(entry, here(), renamed.setting(), angle, 0));
    }

    /**
     * With an airfoil seen at the present stop. Where it tells that the count was lost, the steps that may hold the loss
     * tie nothing together any more, and the dial goes on from what it reads here. Where no step may hold it, the rotor
     * was turned without a word since the last identification.
     */
    Track identified(Sighting sighting) {
        Turn dial = readingNow();
        Track track = this;
        Optional<Check> check = Check.of(track, sighting);
        boolean lost = check.filter(Check::lost).isPresent();
        while (check.filter(Check::lost).isPresent()) {
            if (Check.suspect(track, check.get()).isEmpty()) {
                Track turned = track.checked(check.get().unlogged()).slipped(sighting.entry());
                return turned.sighted(sighting.at(turned.here())).labelled(sighting.entry(), dial);
            }
            track = track.checked(check.get());
            check = Check.known(track, sighting).map(Check::again);
        }
        track = check.map(track::checked).orElse(track).sighted(sighting);
        return lost ? track.labelled(sighting.entry(), dial) : track;
    }

    /** With one more sighting at the present stop that agrees with what is known, or ties down what is not. */
    private Track sighted(Sighting sighting) {
        return new Track(
                id,
                stops,
                sightings.with(sighting),
                fixes.with(KalmanUpdate.after(fixes, stops, Fixes.framed(sighting, stops))),
                checks,
                labels,
                suspicion,
                lastSense);
    }

    /** With what an identification found; what follows the first step whose doubt that moves is told anew. */
    private Track checked(Check check) {
        Suspicion all = suspicion.with(check, stops.size());
        int from = suspicion.changing(check, stops, settings());
        BitSet doubtful = all.doubtful(stops, settings(), from);
        int moved = from;
        while (moved < stops.size() && stops.get(moved).doubtful() == doubtful.get(moved)) {
            moved++;
        }
        Trail<Check> longer = checks.with(check.kept());
        if (moved == stops.size()) {
            return new Track(id, stops, sightings, fixes, longer, labels, all, lastSense);
        }
        Trail<Stop> anew = stops.first(moved);
        for (int stop = moved; stop < stops.size(); stop++) {
            anew = anew.with(stops.get(stop).after(anew.last(), doubtful.get(stop)));
        }
        return new Track(id, anew, sightings, Fixes.of(anew, sightings, fixes, moved), longer, labels, all, lastSense);
    }

    /** The stops at which the shaft's reading was set. */
    BitSet settings() {
        BitSet settings = new BitSet();
        labels.forEach(label -> settings.set(label.from()));
        return settings;
    }

    /** The setting of the reading that was in force at a stop. */
    Label label(int stop) {
        int in = 0;
        for (int after = labels.size(); after - in > 1; ) {
            int middle = (in + after) >>> 1;
            if (labels.get(middle).from() <= stop) {
                in = middle;
            } else {
                after = middle;
            }
        }
        return labels.get(in);
    }

    /** The count errors that identifications found, in order. */
    List<CountError> countErrors() {
        return checks.stream().flatMap(check -> check.found().stream()).toList();
    }

    /** Those that were not found in another state of this track, in order; an entry taken back may lie between the two. */
    List<CountError> countErrorsSince(Track before) {
        int known = before.checks.size();
        if (known <= checks.size() && (known == 0 || checks.get(known - 1) == before.checks.last())) {
            return checks.subList(known, checks.size()).stream()
                    .flatMap(check -> check.found().stream())
                    .toList();
        }
        Set<CountError> found = new HashSet<>(before.countErrors());
        return countErrors().stream().filter(error -> !found.contains(error)).toList();
    }

    private Track at(Trail<Stop> longer, Turn amount) {
        return new Track(
                id,
                longer,
                sightings,
                fixes,
                checks,
                labels,
                suspicion,
                amount.signum() == 0 ? lastSense : amount.signum());
    }
}
