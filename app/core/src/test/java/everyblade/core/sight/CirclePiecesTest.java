package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CirclePiecesTest {

    private static final double WIDTH = 2 * Math.PI / CirclePieces.COUNT;

    /** The polynomial over the weight (1 − s)² + 2 w s (1 − s) + s² is the function at the angle of s. */
    @Test
    void aLinearFunctionOfCosineAndSineIsAPolynomialOfDegreeTwoOnEachPiece() {
        double a = 0.7;
        double b = -1.3;
        double c = 2.1;
        for (int piece = 0; piece < CirclePieces.COUNT; piece++) {
            for (double s = 0; s <= 1; s += 0.125) {
                double[] shares = {(1 - s) * (1 - s), 2 * s * (1 - s), s * s};
                double value = 0;
                for (int k = 0; k < 3; k++) {
                    value += shares[k] * CirclePieces.coefficient(piece, k, a, b, c);
                }
                double weight = shares[0] + shares[1] * CirclePieces.WEIGHT + shares[2];
                double angle = CirclePieces.angle(piece, s);
                assertThat(value / weight).isCloseTo(a + b * Math.cos(angle) + c * Math.sin(angle), within(1e-12));
            }
        }
    }

    @Test
    void theEndsOfAPieceAreExactlyThoseOfThePiecesBesideIt() {
        for (int piece = 0; piece + 1 < CirclePieces.COUNT; piece++) {
            assertThat(CirclePieces.angle(piece, 1)).isEqualTo(CirclePieces.angle(piece + 1, 0));
        }
        assertThat(CirclePieces.angle(0, 0)).isZero();
        assertThat(CirclePieces.angle(CirclePieces.COUNT - 1, 1)).isEqualTo(2 * Math.PI);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.5, 0", "1, 1", "11.5, 11", "12.5, 0", "-0.5, 11", "-11.5, 0", "23.5, 11"})
    void anAngleLiesOnThePieceThatBeginsBeforeIt(double pieces, int piece) {
        assertThat(CirclePieces.at(pieces * WIDTH)).isEqualTo(piece);
    }
}
