package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** What is closed through one view stands together, and what is nearest to do stands first. */
class GapGroupsTest {

    private static Engine engine() {
        return new Engines()
                .rotor("a", 12)
                .rotor("b", 12)
                .rotor("c", 12)
                .rotor("d", 12)
                .row("hidden", RowKind.ROTOR, 12, Direction.CW, 1, List.of(), false, 0)
                .port("p1")
                .port("p2")
                .port("p3")
                .viewThrough("p1", "va", "a")
                .viewThrough("p2", "vb", "b")
                .viewThrough("p2", "vc", "c")
                .viewThrough("p3", "vd", "d")
                .built();
    }

    private static List<String> views(Job job, List<Gap> gaps) {
        return GapGroups.of(job.fold().situation(), gaps, Function.identity()).stream()
                .map(group -> group.view().map(View::id).orElse("-"))
                .toList();
    }

    private static List<Gap> backwards(Job job) {
        List<Gap> gaps = new ArrayList<>(Gaps.of(job.coverage()));
        Collections.reverse(gaps);
        return gaps;
    }

    @Test
    void withNothingOpenPortsComeInTheModelsOrderAndWhatNothingReachesLast() {
        Job job = new Job(engine());
        assertThat(views(job, backwards(job))).containsExactly("va", "vc", "vb", "vd", "-");
    }

    @Test
    void theViewInUseComesFirstThenOthersThroughItsPort() {
        Job job = new Job(engine()).enter("open p2", "view vb");
        assertThat(views(job, backwards(job))).containsExactly("vb", "vc", "va", "vd", "-");
    }

    @Test
    void anOpenPortComesBeforeOneThatIsShut() {
        Job job = new Job(engine()).enter("open p3");
        assertThat(views(job, backwards(job))).containsExactly("vd", "va", "vc", "vb", "-");
    }

    @Test
    void whatGoesThroughTheSamePortComesBeforeAnotherThatIsOpen() {
        Job job = new Job(engine()).enter("open p3", "view vb");
        assertThat(views(job, backwards(job))).containsExactly("vb", "vc", "vd", "va", "-");
    }

    @Test
    void aViewOfWhichTheScopeWasTakenOutIsNotInUse() {
        Job job = new Job(engine()).enter("open p2", "view vb", "out");
        assertThat(views(job, backwards(job))).containsExactly("vc", "vb", "va", "vd", "-");
    }

    @Test
    void aScopeThatWasTakenOutIsNowhere() {
        Job job = new Job(engine()).enter("open p2", "view vc", "out", "open p3", "shut p2");
        assertThat(views(job, backwards(job))).containsExactly("vd", "va", "vc", "vb", "-");
    }

    @Test
    void gapsOfOneViewStandTogetherInTheirOrder() {
        Engine halves = new Engines()
                .row("r", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                .port("p1")
                .viewThrough("p1", "v", "r")
                .built();
        Job job = new Job(halves).enter("view v", "datum r 1", "watch root", "turn on 90", "watch all", "turn on 90");
        List<Gap> gaps = Gaps.of(job.coverage());
        assertThat(gaps).hasSizeGreaterThan(1);
        assertThat(GapGroups.of(job.fold().situation(), gaps, Function.identity()))
                .singleElement()
                .satisfies(group -> {
                    assertThat(group.gaps()).isEqualTo(gaps);
                    assertThat(group.port())
                            .hasValueSatisfying(port -> assertThat(port.id()).isEqualTo("p1"));
                });
    }

    @Test
    void aGapOfARowThatNobodyPlacedIsClosedThroughTheViewOfItsLandmark() {
        Job job = new Job(engine());
        assertThat(Gaps.of(job.coverage()))
                .extracting(gap -> gap.view().orElse("-"))
                .containsExactly("va", "vb", "vc", "vd", "-");
        job.enter("view va", "datum a 1");
        assertThat(Gaps.of(job.coverage()).get(0).reach()).isPresent();
        assertThat(Gaps.of(job.coverage()).get(0).view()).contains("va");
    }
}
