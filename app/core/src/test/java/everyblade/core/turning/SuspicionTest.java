package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Turn;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which steps may hold a loss, where two counted moves and a reading lead from the first stop to the fourth, and one move on. */
class SuspicionTest {

    private static BitSet set(int... steps) {
        return IntStream.of(steps).collect(BitSet::new, BitSet::set, BitSet::or);
    }

    private static List<Stop> stops() {
        Stop first = Stop.FIRST.moved(1, Turn.ofDegrees(10), Uncertainty.EXACT);
        Stop second = first.moved(2, Turn.ofDegrees(10), Uncertainty.EXACT);
        Stop third = second.read(3, Turn.ofDegrees(10), 1);
        return List.of(Stop.FIRST, first, second, third, third.moved(4, Turn.ofDegrees(10), Uncertainty.EXACT));
    }

    private static BitSet doubtful(BitSet cleared, BitSet suspected, BitSet settings) {
        return new Suspicion(cleared, suspected, 1).doubtful(stops(), settings, 1);
    }

    @Test
    void aReadingAndTheMovesBeforeItAreSuspectedTogether() {
        assertThat(doubtful(set(), set(2), set(0))).isEqualTo(set(1, 2, 3));
        assertThat(doubtful(set(), set(3), set(0))).isEqualTo(set(1, 2, 3));
        assertThat(doubtful(set(), set(4), set(0))).isEqualTo(set(4));
    }

    @Test
    void noMoveIsSuspectedWithAReadingThatWasSetAfterIt() {
        assertThat(doubtful(set(), set(3), set(0, 1))).isEqualTo(set(2, 3));
        assertThat(doubtful(set(), set(1), set(0, 1))).isEqualTo(set(1));
    }

    @Test
    void whatIsClearedIsNotSuspectedWithTheOthers() {
        assertThat(doubtful(set(1), set(3), set(0))).isEqualTo(set(2, 3));
    }

    @Test
    void nothingIsSuspectedWithAMoveThatIsCleared() {
        assertThat(doubtful(set(1), set(1), set(0))).isEqualTo(set());
    }

    @Test
    void whatMayChangeBeginsWithTheMovesBeforeAReading() {
        Suspicion judged = new Suspicion(set(), set(), 3);
        Check agrees = new Check(set(), false, Optional.empty());
        assertThat(judged.changing(agrees, stops(), set(0))).isEqualTo(1);
        assertThat(judged.changing(agrees, stops(), set(0, 1))).isEqualTo(2);
        assertThat(judged.changing(new Check(set(2), true, Optional.empty()), stops(), set(0)))
                .isEqualTo(1);
        assertThat(judged.changing(new Check(set(4), true, Optional.empty()), stops(), set(0)))
                .isEqualTo(1);
        assertThat(new Suspicion(set(), set(), 5).changing(agrees, stops(), set(0)))
                .isEqualTo(5);
        assertThat(new Suspicion(set(), set(), 4).changing(agrees, stops(), set(0)))
                .isEqualTo(4);
    }
}
