package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import everyblade.core.turning.SmoothedTrack.Place;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where an airfoil may stand. */
class SpanTest {

    private static final Offset<Double> ROUNDING = within(1e-12);

    @Test
    void aPlaceThatIsKnownExactlyHasNoWidth() {
        Span span = Span.at(Turn.ofDegrees(90));

        assertThat(span.from()).isCloseTo(Math.PI / 2, ROUNDING);
        assertThat(span.exact()).isTrue();
        assertThat(Span.anywhere(9).exact()).isFalse();
    }

    @Test
    void aPlaceOfTheJournalIsAsWideAsItsDoubt() {
        Span span = Span.of(new Place(Turn.ofDegrees(30), Turn.ofDegrees(40), Turn.ofDegrees(33)));

        assertThat(Math.toDegrees(span.from())).isCloseTo(30, ROUNDING);
        assertThat(Math.toDegrees(span.width())).isCloseTo(10, ROUNDING);
    }

    @Test
    void anywhereIsWithinAPitch() {
        assertThat(Span.anywhere(12).from()).isZero();
        assertThat(Math.toDegrees(Span.anywhere(12).width())).isCloseTo(30, ROUNDING);
    }

    @Test
    void aClockAngleIsATurnWithinTheCircle() {
        assertThat(Span.turn(-Math.PI / 2).degrees()).isCloseTo(270, ROUNDING);
        assertThat(Span.turn(Math.PI / 3).degrees()).isCloseTo(60, ROUNDING);
    }

    /** From 50 to 60 less 20 to 23 is from 27 to 40. */
    @Test
    void oneAfterAnotherGoesFromTheLeastDifferenceToTheGreatest() {
        Span after = new Span(50, 10).after(new Span(20, 3));

        assertThat(after.from()).isCloseTo(27, ROUNDING);
        assertThat(after.width()).isCloseTo(13, ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"6, 2, 3", "6.1, 2, 4", "5.9, 2, 3", "6, 6, 1", "6.0000000001, 6, 1", "2.5, 2, 2", "0.1, 2, 1"})
    void piecesCoverAllOfItAndNoneOfThemReachesBeyondIt(double width, double piece, int count) {
        Span span = new Span(1, width);

        List<Double> pieces = span.pieces(piece);

        assertThat(pieces).hasSize(count).isSorted();
        double covered = pieces.get(0);
        for (double begin : pieces) {
            assertThat(begin).isLessThanOrEqualTo(covered + 1e-9);
            covered = begin + piece;
        }
        double over = Math.max(0, piece - width) / 2;
        assertThat(pieces.get(0)).as("begins").isCloseTo(1 - over, within(1e-9));
        assertThat(covered).as("ends").isCloseTo(1 + width + over, within(1e-9));
    }

    @Test
    void aPieceOfNoWidthIsThePlaceItself() {
        assertThat(new Span(4, 0).pieces(0)).containsExactly(4.0);
    }
}
