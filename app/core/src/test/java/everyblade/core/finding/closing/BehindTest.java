package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What stands behind "nothing is left", and what is worst of what is open. */
class BehindTest {

    private static Job job() {
        return new Job(new Engines()
                .row("r", RowKind.ROTOR, 10, Direction.CW, 2, List.of(), false, 0)
                .row("s", RowKind.STATOR, 4, Direction.CW, 2, List.of(), false, 0)
                .view("tips", "r", 0, 2, "tip")
                .built());
    }

    private static Behind behind(Job job) {
        return Behind.of(job.fold(), job.coverage());
    }

    @Test
    void nothingStandsBehindAPlainRecord() {
        Job job = job().enter("view tips", "round 1");
        assertThat(behind(job)).isEqualTo(new Behind(0, 0, 0, 0));
        assertThat(behind(job).any()).isFalse();
    }

    @Test
    void whatIsAcceptedIsToldFromWhatCanBeSeen() {
        Job job = job().enter("view tips", "noaccess root all because no view", "noaccess tip 3-5 because no time");
        assertThat(behind(job)).isEqualTo(new Behind(13, 3, 0, 0));
        assertThat(behind(job).any()).isTrue();
    }

    @Test
    void whatWasSeenIsNotAcceptedAsNotSeen() {
        Job job = job().enter("view tips", "noaccess tip 3-5 because no time", "round 1");
        assertThat(behind(job).accepted()).isZero();
    }

    @Test
    void rowsOfWhichLessIsAskedAreCounted() {
        Job job = job().enter("ask r tip", "ask s tip");
        assertThat(behind(job)).isEqualTo(new Behind(0, 0, 2, 0));
        assertThat(behind(job).any()).isTrue();
    }

    @Test
    void whatWasTakenOutWeighs() {
        Job job = job().enter("view tips", "datum r 1", "find nick 3 tip", "void 3 because dirt", "note so it was");
        assertThat(behind(job)).isEqualTo(new Behind(0, 0, 0, 1));
        assertThat(behind(job).any()).isTrue();
    }

    @Test
    void eachAloneIsEnough() {
        assertThat(new Behind(1, 0, 0, 0).any()).isTrue();
        assertThat(new Behind(0, 0, 1, 0).any()).isTrue();
        assertThat(new Behind(0, 0, 0, 1).any()).isTrue();
        assertThat(new Behind(2, 0, 1, 1).any()).isTrue();
    }

    @Test
    void theWorstOfTheListComesFirstAndTheLargestOfItsGaps() {
        Job job = job().enter(
                        "view tips",
                        "datum r 1",
                        "turn on 72",
                        "watch root",
                        "turn on 72",
                        "open p1",
                        "again in 50 cycles",
                        "recheck 3 tip");
        ClosingList list = ClosingList.of(job.fold(), job.coverage(), Optional.empty(), List.of());
        List<OpenItem> sorted = Risk.worstFirst(list);

        assertThat(sorted).hasSize(list.items().size() + list.told().size());
        assertThat(sorted).extracting(item -> Risk.of(item.kind()).number()).isSortedAccordingTo((a, b) -> b - a);
        assertThat(sorted.get(0).kind()).isEqualTo(Kind.OPENING);
        assertThat(sorted.get(sorted.size() - 1).kind()).isNotEqualTo(Kind.GAP);
        assertThat(sorted)
                .filteredOn(item -> item.kind() == Kind.GAP)
                .hasSizeGreaterThan(1)
                .extracting(item -> item.gap().orElseThrow().airfoils().size()
                        * item.gap().orElseThrow().zones().size())
                .isSortedAccordingTo((a, b) -> b - a);
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyKindPutsSomethingAtRisk(Kind kind) {
        assertThat(Risk.of(kind).number())
                .isEqualTo(Arrays.asList(Risk.values()).indexOf(Risk.of(kind)) + 1);
    }
}
