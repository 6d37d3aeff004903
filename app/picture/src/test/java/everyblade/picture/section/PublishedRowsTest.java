package everyblade.picture.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import everyblade.spi.EngineModel;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the sections of a row say, held against published rows. */
class PublishedRowsTest {

    private static final double INCH = 25.4;
    private static final double HUB = 177.8;
    private static final double TIP = 252;

    /**
     * NASA TP-1337 (1978), appendix C: 36 blades; at a radius of 7, 8 and 9 in the chord and the stagger. Solidity is chord
     * over pitch, 36 · c / (2π r).
     */
    @ParameterizedTest
    @CsvSource({"7, 2.1518, 36.53", "8, 2.1887, 46.58", "9, 2.1974, 55.43"})
    void rotor_37_has_the_published_chord_stagger_and_solidity(double radius, double chord, double stagger) {
        // A cut exactly at the root would only touch the surface.
        double share = Math.max(1e-6, (radius * INCH - HUB) / (TIP - HUB));
        SpanCut cut = Models.cut(Models.rotor37(), share);

        assertThat(cut.radius()).isCloseTo(radius * INCH, within(0.05 * INCH));
        assertThat(cut.chordLength()).isCloseTo(chord * INCH, Percentage.withPercentage(0.5));
        // The drawn surface is straight between facets' corners, an eighth of the span apart.
        assertThat(-cut.stagger()).isCloseTo(stagger, offset(1.0));
        assertThat(cut.solidity()).isCloseTo(36 * chord / (2 * Math.PI * radius), Percentage.withPercentage(0.7));
    }

    @Test
    void rotor_37_has_a_pitch_of_ten_degrees() {
        SpanCut cut = Models.cut(Models.rotor37(), 0.5);

        assertThat(Math.toDegrees(cut.pitch() / cut.radius())).isCloseTo(10, within(1e-9));
    }

    /** From memory: the tip solidity of Rotor 37 is given as 1.29. */
    @Test
    void rotor_37_has_about_the_published_tip_solidity() {
        assertThat(Models.cut(Models.rotor37(), 0.99).solidity()).isCloseTo(1.29, Percentage.withPercentage(3));
    }

    /**
     * Rotors 1 to 10 of the NASA/GE Energy Efficient Engine compressor: count, root radius and airfoil length in cm, tip
     * chord in cm, tip stagger, printed tip solidity, which is good to 0.3 %. E³ High Pressure Compressor Detail Design
     * Report (NTRS 19850002690), tables X and XXII.
     */
    @ParameterizedTest
    @CsvSource({
        "28, 19.068, 15.657, 10.276, 65.21, 1.318",
        "38, 22.837, 10.617, 7.034, 60.93, 1.271",
        "50, 25.143, 7.579, 5.034, 58.98, 1.224",
        "60, 26.312, 5.717, 4.002, 57.50, 1.19",
        "70, 26.866, 4.582, 3.427, 56.32, 1.212",
        "80, 27.102, 3.691, 2.919, 55.91, 1.207",
        "82, 27.287, 3.078, 2.845, 54.07, 1.222",
        "84, 27.308, 2.616, 2.718, 55.53, 1.214",
        "86, 27.341, 2.332, 2.540, 57.95, 1.17",
        "94, 27.343, 2.094, 2.286, 57.48, 1.164"
    })
    void compressor_rotors_have_their_printed_tip_solidity(
            int count, double root, double length, double chord, double stagger, double solidity) {
        EngineModel rotor = Models.plate(count, 10 * root, 10 * (root + length), 10 * chord, stagger);

        SpanCut tip = Models.cut(rotor, 1 - 1e-6);

        assertThat(tip.solidity()).isCloseTo(solidity, Percentage.withPercentage(0.5));
        assertThat(tip.stagger()).isCloseTo(stagger, offset(0.3));
    }
}
