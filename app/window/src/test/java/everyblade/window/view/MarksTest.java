package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.measure.PixelLine;
import everyblade.window.view.Marks.Tool;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MarksTest {

    private static final Marks NONE = Marks.none(640, 480);

    @Test
    void beginAsALevelLineRoundAPlaceWithItsFirstEndChosen() {
        Marks known = NONE.taken(Tool.KNOWN, 320, 240, 50);

        assertThat(known.known()).contains(new PixelLine(270, 240, 370, 240));
        assertThat(known.place()).hasValue(new double[] {270, 240});
        assertThat(known.size()).isEmpty();
    }

    @Test
    void areTakenUpAgainAsTheyWere() {
        Marks set = NONE.with(Tool.SIZE, 1, 2, 3, 4).released();

        assertThat(set.taken(Tool.SIZE, 320, 240, 50).size()).contains(new PixelLine(1, 2, 3, 4));
    }

    @Test
    void moveByTheirChosenEndOnly() {
        Marks moved = NONE.taken(Tool.KNOWN, 320, 240, 50).moved(10, -1).next().moved(0, 7);

        assertThat(moved.known()).contains(new PixelLine(280, 239, 370, 247));
        assertThat(NONE.with(Tool.KNOWN, 1, 2, 3, 4).released().moved(5, 5).known())
                .contains(new PixelLine(1, 2, 3, 4));
    }

    @Test
    void goRoundAllEndsThatAreThere() {
        Marks both =
                NONE.with(Tool.KNOWN, 0, 0, 10, 0).with(Tool.SIZE, 0, 9, 10, 9).released();

        assertThat(both.next().chosen()).isZero();
        assertThat(both.next().next().next().chosen()).isEqualTo(2);
        assertThat(both.next().next().next().next().next().chosen()).isZero();
        assertThat(NONE.next().isChosen()).isFalse();
        assertThat(NONE.with(Tool.SIZE, 0, 9, 10, 9).next().chosen()).isEqualTo(2);
    }

    @Test
    void areCaughtByWhoeverComesNear() {
        Marks both = NONE.with(Tool.KNOWN, 0, 0, 100, 0).with(Tool.SIZE, 0, 90, 100, 90);

        assertThat(both.nearest(97, 4, 10).chosen()).isEqualTo(1);
        assertThat(both.nearest(3, 88, 10).chosen()).isEqualTo(2);
        assertThat(both.nearest(50, 50, 10).isChosen()).isFalse();
    }

    @Test
    void neverLeaveThePictureAndNeverMeet() {
        SplittableRandom random = new SplittableRandom(7);
        Marks marks = NONE.taken(Tool.KNOWN, 320, 240, 50).taken(Tool.SIZE, 2, 3, 50);
        for (int i = 0; i < 5000; i++) {
            marks = random.nextInt(5) == 0
                    ? marks.next()
                    : marks.moved(random.nextInt(-900, 901), random.nextInt(-900, 901));
            for (Tool tool : Tool.values()) {
                PixelLine line = marks.line(tool).orElseThrow();
                assertThat(line.length()).isPositive();
                assertThat(List.of(line.x1(), line.x2())).allMatch(x -> x >= 0 && x <= 640);
                assertThat(List.of(line.y1(), line.y2())).allMatch(y -> y >= 0 && y <= 480);
            }
        }
    }

    @Test
    void areNotDrawnWhereBothEndsWouldBeTheSame() {
        assertThat(NONE.with(Tool.KNOWN, 5, 5, 5, 5)).isEqualTo(NONE);
        assertThat(NONE.with(Tool.KNOWN, -5, 5, -9, 5)).isEqualTo(NONE);
    }
}
