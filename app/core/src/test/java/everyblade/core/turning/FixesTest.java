package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import everyblade.core.angle.Turn;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is told anew of the sightings where a doubt has moved, and in which order. */
class FixesTest {

    private static final int SLIP = 0;
    private static final int DOUBT = 1;

    private static Sighting airfoil(int stop, String row) {
        return new Sighting(stop, stop, row, Turn.ZERO, 1, 0.5, 0, 40);
    }

    private static Sighting reading(int stop, int setting) {
        return Sighting.ofReading(stop, stop, "reading/" + setting, Turn.ZERO, 0);
    }

    /** Stops 10° apart, each reached in this way. */
    private static List<Stop> stops(int... ways) {
        Trail<Stop> stops = Trail.<Stop>empty().with(Stop.FIRST);
        for (int way : ways) {
            Stop next = way == SLIP
                    ? stops.last().slipped(stops.size())
                    : stops.last()
                            .moved(stops.size(), Turn.ofDegrees(10), Uncertainty.of(1))
                            .after(stops.last(), way == DOUBT);
            stops = stops.with(next);
        }
        return stops;
    }

    private static Trail<KalmanUpdate> told(List<Stop> stops, Sighting... sightings) {
        return Fixes.of(stops, List.of(sightings), Trail.empty(), 0);
    }

    @Test
    void whereAPartBeginsWithADoubtAirfoilsComeBeforeTheReadingsOfThatStop() {
        assertThat(told(
                        stops(DOUBT, DOUBT),
                        airfoil(0, "r"),
                        reading(0, 1),
                        reading(1, 2),
                        airfoil(1, "r"),
                        reading(1, 3),
                        airfoil(1, "q"),
                        airfoil(2, "r"),
                        reading(2, 4)))
                .extracting(fix -> fix.sighting().stop(), fix -> fix.sighting().frame())
                .containsExactly(
                        tuple(0, "r"),
                        tuple(0, "reading/1/0"),
                        tuple(1, "r"),
                        tuple(1, "q"),
                        tuple(1, "reading/2/1"),
                        tuple(1, "reading/3/1"),
                        tuple(2, "r"),
                        tuple(2, "reading/4/2"));
    }

    @Test
    void elsewhereTheyComeAsTheyWereSaid() {
        assertThat(told(stops(SLIP), reading(0, 1), airfoil(0, "r"), reading(1, 2), airfoil(1, "r")))
                .extracting(fix -> fix.sighting().frame())
                .containsExactly("reading/1/0", "r", "reading/2/1", "r");
    }

    @Test
    void aReadingTellsNothingInAPartThatBeginsWithADoubtAndInWhichNoAirfoilWasSeen() {
        assertThat(told(stops(DOUBT, DOUBT), airfoil(0, "r"), reading(1, 2), airfoil(2, "r")))
                .extracting(fix -> fix.sighting().frame())
                .containsExactly("r", "r");
    }

    @Test
    void whatWasKnownBeforeTheFirstStopThatIsNotAsItWasIsTakenAsItIs() {
        List<Stop> stops = stops(DOUBT, DOUBT);
        List<Sighting> sightings = List.of(airfoil(0, "r"), airfoil(1, "q"), airfoil(2, "r"));
        Trail<KalmanUpdate> before = Fixes.of(stops, sightings, Trail.empty(), 0);

        Trail<KalmanUpdate> after = Fixes.of(stops, sightings, before, 2);

        assertThat(IntStream.range(0, 3).filter(fix -> after.get(fix) == before.get(fix)))
                .containsExactly(0, 1);
    }
}
