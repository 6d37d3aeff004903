package everyblade.core.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProfileTest {

    /** NACA Report 460 (1933); the ordinates as in Abbott and von Doenhoff, Theory of Wing Sections, NACA 0012. */
    @ParameterizedTest
    @CsvSource({
        "1.25, 1.894",
        "2.5, 2.615",
        "5, 3.555",
        "10, 4.683",
        "20, 5.737",
        "30, 6.002",
        "50, 5.294",
        "70, 3.664",
        "90, 1.448"
    })
    void theHalfThicknessOfNaca0012IsThePublishedOne(double percentChord, double percentHalfThickness) {
        assertThat(100 * Profile.halfThickness(0.12, percentChord / 100))
                .isCloseTo(percentHalfThickness, within(0.001));
        assertThat(100 * new Profile(0, 0.12).at(1, percentChord / 100)[1])
                .isCloseTo(percentHalfThickness, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.12", "40, 0.1", "-75, 0.2", "120, 0.15", "1e-9, 0.05"})
    void bothFacesMeetAtTheEndsOfTheChordAndTheBandsEndAtAFifthOfIt(double camber, double thickness) {
        Profile profile = new Profile(camber, thickness);
        for (int side : new int[] {1, -1}) {
            assertThat(profile.at(side, 0)).containsExactly(new double[] {0, 0}, within(1e-12));
            assertThat(profile.at(side, 1)).containsExactly(new double[] {1, 0}, within(1e-12));
            assertThat(profile.at(side, 0.2)[0]).isCloseTo(0.2, within(1e-12));
            assertThat(profile.at(side, 0.8)[0]).isCloseTo(0.8, within(1e-12));
        }
    }

    @Test
    void theCamberLineIsAnArcWhoseBulgeIsHalfTheTangentOfAQuarterOfItsTurning() {
        double[] above = new Profile(60, 1e-9).at(1, 0.5);

        assertThat(above[0]).isCloseTo(0.5, within(1e-6));
        assertThat(above[1]).isCloseTo(0.5 * Math.tan(Math.toRadians(15)), within(1e-6));
    }
}
