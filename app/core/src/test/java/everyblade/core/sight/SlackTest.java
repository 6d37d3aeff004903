package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What half-way to the next facet may be otherwise, of three facets in a strip, degrees. */
class SlackTest {

    private static final int[][] STRIP = {{1}, {0, 2}, {1}};

    private static ArcSet arcs(double... fromTo) {
        List<Arc> arcs = new ArrayList<>();
        for (int i = 0; i < fromTo.length; i += 2) {
            long start = Math.round(fromTo[i] * Circle.TICKS_PER_DEGREE);
            arcs.add(new Arc(
                    Circle.STANDARD,
                    Circle.STANDARD.wrap(start),
                    Math.round(fromTo[i + 1] * Circle.TICKS_PER_DEGREE) - start));
        }
        return ArcSet.of(Circle.STANDARD, arcs);
    }

    /** Start, end and length, degrees. */
    private static double[] slack(int facet, int pose, ArcSet[]... facets) {
        Grain grain = new Grain(null, null, STRIP, null, null);
        Slack slack = Slack.of(new ArcSet[][][] {facets}, grain).get(0);
        return Arrays.stream(
                        new long[] {slack.starts()[facet][pose], slack.ends()[facet][pose], slack.shorter()[facet][pose]
                        })
                .mapToDouble(ticks -> (double) ticks / Circle.TICKS_PER_DEGREE)
                .toArray();
    }

    private static ArcSet[] of(ArcSet... poses) {
        return poses;
    }

    @Test
    void isHalfOfWhatEachEndAndTheLengthChange() {
        ArcSet[] one = of(arcs(10, 30));
        ArcSet[] two = of(arcs(14, 31));

        assertThat(slack(0, 0, one, two, of(arcs()))).containsExactly(2, 0.5, 1.5);
        assertThat(slack(1, 0, one, two, of(arcs()))).containsExactly(2, 0.5, 1.5);
    }

    @Test
    void isTheMostThatAnyOneBesideItDemands() {
        assertThat(slack(1, 0, of(arcs(10, 30)), of(arcs(12, 32)), of(arcs(4, 31))))
                .containsExactly(4, 1, 3.5);
    }

    @Test
    void whereBothEndsMoveAlikeNoneIsShorter() {
        assertThat(slack(0, 0, of(arcs(10, 30)), of(arcs(15, 35)), of(arcs()))).containsExactly(2.5, 2.5, 0);
    }

    @Test
    void isCountedTheShortWayAcrossClock0() {
        assertThat(slack(0, 0, of(arcs(-2, 20)), of(arcs(3, 21)), of(arcs()))).containsExactly(2.5, 0.5, 2);
    }

    @Test
    void arcsThatOnlyTouchAreNoneThatMeet() {
        assertThat(slack(0, 0, of(arcs(10, 20)), of(arcs(20, 30)), of(arcs()))).containsOnly(0);
        assertThat(slack(1, 0, of(arcs(10, 20)), of(arcs(20, 30)), of(arcs()))).containsOnly(0);
        assertThat(slack(0, 0, of(arcs(10, 20)), of(arcs(50, 60)), of(arcs()))).containsOnly(0);
    }

    @Test
    void ofSeveralArcsThoseThatMeetAreCompared() {
        assertThat(slack(0, 0, of(arcs(10, 20, 100, 130)), of(arcs(12, 20, 106, 130)), of(arcs())))
                .containsExactly(3, 0, 3);
    }

    @Test
    void isToldOfEachPoseByItself() {
        ArcSet[] one = of(arcs(10, 30), arcs(10, 30));
        ArcSet[] two = of(arcs(10, 30), arcs(11, 32));

        assertThat(slack(0, 0, one, two, of(arcs(), arcs()))).containsOnly(0);
        assertThat(slack(0, 1, one, two, of(arcs(), arcs()))).containsExactly(0.5, 1, 0.5);
    }

    @Test
    void isToldOfEachKindByItself() {
        Grain grain = new Grain(null, null, new int[][] {{1}, {0}}, null, null);
        ArcSet[][][] kinds = {{of(arcs(10, 30)), of(arcs(10, 30))}, {of(arcs(10, 30)), of(arcs(16, 30))}};

        List<Slack> slack = Slack.of(kinds, grain);

        assertThat(slack.get(0).starts()[1][0]).isZero();
        assertThat(slack.get(1).starts()[1][0]).isEqualTo(3 * Circle.TICKS_PER_DEGREE);
    }
}
