package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What a track keeps of each identification, and what it tells anew, does not grow with what lies before. */
class GrowthTest {

    private static final int TRACKS = Boolean.getBoolean("everyblade.campaign") ? 20_000 : 300;

    @Test
    void knowsNoMoreOfTheDialAfterManyLossesThanAfterOne() {
        Track track = identified(Track.start("shaft"), "c1", 0);
        for (int loss = 1; loss <= 100; loss++) {
            track = identified(track.moved(2 * loss, Turn.ofDegrees(30), Uncertainty.EXACT), "c1", 90 * loss);
        }

        assertThat(track.countErrors()).hasSize(100).allMatch(CountError::lost);
        assertThat(track.fixes()).allSatisfy(fix -> assertThat(fix.frames()).hasSizeLessThanOrEqualTo(2));
        assertThat(track.readingKnown()).isTrue();
    }

    @Test
    void keepsNothingOfTheWayOfAnIdentificationThatAgrees() {
        Track track = identified(Track.start("shaft"), "c1", 0);
        for (int turn = 1; turn <= 100; turn++) {
            track = identified(track.moved(turn, Turn.ofDegrees(360), Uncertainty.of(1)), "c1", 0);
        }

        assertThat(track.countErrors()).hasSize(100).noneMatch(CountError::outside);
        assertThat(track.checks()).allMatch(check -> check.steps().isEmpty());
        assertThat(track.suspicion().cleared().cardinality()).isEqualTo(100);
    }

    @Test
    void tellsWhatIsDoubtfulFromTheFirstStepOnThatAnIdentificationChangesAsItWouldFromTheStart() {
        int doubtful = 0;
        for (int seed = 0; seed < TRACKS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Track track = Track.start("shaft");
            for (int entry = 1; entry <= 40; entry++) {
                int checks = track.checks().size();
                track = further(track, entry, random);
                if (track.checks().size() > checks
                        && track.suspicion().judged() == track.stops().size()) {
                    BitSet whole = track.suspicion().doubtful(track.stops(), track.settings(), 1);
                    assertThat(flags(track.stops()))
                            .as("track %d, entry %d", seed, entry)
                            .isEqualTo(whole);
                    doubtful += whole.cardinality();
                }
                assertThat(track.stops()).isEqualTo(numbered(track.stops()));
            }
        }
        assertThat(doubtful).isGreaterThan(TRACKS);
    }

    @Test
    void goesOnFromWhatWasKnownBeforeADoubtThatMovedAsIfAllWereToldAnew() {
        for (int seed = 0; seed < TRACKS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Track track = Track.start("shaft");
            for (int entry = 1; entry <= 40; entry++) {
                track = further(track, entry, random);
            }
            int moved = random.nextInt(1, track.stops().size());
            List<Stop> stops = withDoubtMoved(track.stops(), moved);

            assertThat(FoldWriter.of(Fixes.of(stops, track.sightings(), track.fixes(), moved)))
                    .as("track %d, stop %d", seed, moved)
                    .isEqualTo(FoldWriter.of(Fixes.of(stops, track.sightings(), Trail.empty(), 0)));
        }
    }

    @Test
    void readsTheDialNowAsIsToldOfTheStopWhereItStandsAndTellsWhereItWasSetWhatItWasSetTo() {
        for (int seed = 0; seed < TRACKS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Track track = Track.start("shaft");
            for (int entry = 1; entry <= 40; entry++) {
                track = further(track, entry, random);
            }
            SmoothedTrack placing = SmoothedTrack.of(track);
            if (sinceSet(track)) {
                assertThat(apart(placing.adjusted(track.here()), track.readingNow()))
                        .as("track %d", seed)
                        .isCloseTo(0, within(1e-6));
            }
            for (Track.Label label : track.labels()) {
                Track.Label inForce = track.label(label.from());
                Turn set = track.stops().get(label.from()).counted().plus(inForce.offset());
                assertThat(apart(placing.adjusted(label.from()), set))
                        .as("track %d, setting %d", seed, inForce.number())
                        .isCloseTo(0, within(1e-6));
            }
        }
    }

    /** Whether what is known now is of the era in which the dial was set. */
    private static boolean sinceSet(Track track) {
        KalmanUpdate set =
                track.fixes().get(track.fixesUpTo(track.labels().last().from()) - 1);
        return set.era() == track.fixes().last().era();
    }

    /** Degrees from one angle to another, −180 to 180. */
    private static double apart(Turn one, Turn other) {
        double degrees = one.minus(other).degrees();
        return degrees - 360 * Math.rint(degrees / 360);
    }

    private static Track further(Track track, int entry, SplittableRandom random) {
        Turn amount = Turn.ofDegrees(30 * random.nextInt(-3, 4));
        return switch (random.nextInt(9)) {
            case 0, 1, 2 -> track.moved(entry, amount, Uncertainty.of(1));
            case 3 -> track.read(entry, amount, 1);
            case 4 -> random.nextInt(3) == 0 ? track.slipped(entry) : track.moved(entry, amount, Uncertainty.EXACT);
            case 5 -> track.labelled(entry, Turn.ofDegrees(30 * random.nextInt(12)));
            default -> identified(track, random.nextBoolean() ? "c1" : "c2", seen(track, random));
        };
    }

    /** Mostly where it is counted to be, at times elsewhere. */
    private static double seen(Track track, SplittableRandom random) {
        return track.stops().last().counted().degrees() + (random.nextInt(4) == 0 ? 60 : 0);
    }

    private static Track identified(Track track, String row, double degrees) {
        return track.identified(new Sighting(
                track.stops().last().entry(),
                track.here(),
                row,
                Turn.ofDegrees(degrees).wrapped(),
                1,
                0.5,
                0,
                20));
    }

    private static BitSet flags(List<Stop> stops) {
        BitSet doubtful = new BitSet();
        for (int stop = 0; stop < stops.size(); stop++) {
            doubtful.set(stop, stops.get(stop).doubtful());
        }
        return doubtful;
    }

    private static List<Stop> withDoubtMoved(List<Stop> stops, int moved) {
        Trail<Stop> anew = Trail.<Stop>empty().with(stops.get(0));
        for (int stop = 1; stop < stops.size(); stop++) {
            anew = anew.with(stops.get(stop).after(anew.last(), stops.get(stop).doubtful() != (stop == moved)));
        }
        return anew;
    }

    /** The same with parts and stretches counted from the start. */
    private static List<Stop> numbered(List<Stop> stops) {
        Trail<Stop> anew = Trail.<Stop>empty().with(stops.get(0));
        for (Stop stop : stops.subList(1, stops.size())) {
            anew = anew.with(stop.after(anew.last(), stop.doubtful()));
        }
        return anew;
    }
}
