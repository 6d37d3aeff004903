package everyblade.core.finding.review;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Logged;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a reviewer is told of a place, and what of a record they are shown before they have said anything. */
class CellsThereTest {

    /** Ten blades of two halves; 1 to 4 were seen whole, 5 to 7 at the root, the others not. */
    private static Job job() {
        return new Job(new Engines()
                        .row("r", RowKind.ROTOR, 10, Direction.CCW, 2, List.of(), false, 0)
                        .view("v", "r", 0, 2)
                        .built())
                .enter("view v", "datum r 1", "turn on 108", "watch root", "turn on 108");
    }

    private static Optional<CellsThere> at(Job job, String place) throws Refusal {
        return CellsThere.of(
                job.coverage(), ReviewedPlace.of(place, job.fold().situation().engine()));
    }

    @Test
    void cellsAreCountedOfTheAirfoilsAndZonesNamed() throws Refusal {
        Job job = job();
        assertThat(at(job, "r 1")).contains(new CellsThere(2, 2, 0, 0));
        assertThat(at(job, "r 4-6")).contains(new CellsThere(6, 4, 0, 0));
        assertThat(at(job, "r 4-6 tip")).contains(new CellsThere(3, 1, 0, 0));
        assertThat(at(job, "r 1-10")).contains(new CellsThere(20, 11, 0, 0));
    }

    @Test
    void aRunGoesOverTheSeam() throws Refusal {
        assertThat(at(job(), "r 10-1")).contains(new CellsThere(4, 2, 0, 0));
        assertThat(at(job(), "r 9-2")).contains(new CellsThere(8, 4, 0, 0));
    }

    @Test
    void onlyWhatIsNotSeenCountsAsAccepted() throws Refusal {
        Job job = job().enter("noaccess tip 4-6 because in the dark");
        CellsThere there = at(job, "r 4-6").orElseThrow();
        assertThat(there).isEqualTo(new CellsThere(6, 4, 0, 2));
        assertThat(there.told()).isEqualTo(new CellsThere.Told(6, 4, 0, 2, 2));
    }

    @Test
    void whatIsMaybeSeenIsToldApart() throws Refusal {
        Job job = new Job(new Engines()
                        .rotor("r", 10)
                        .view("v", "r", 0, 2)
                        .pad("pad", Ratio.ONE, 40, 0, 0)
                        .built())
                .enter("view v", "datum r 1", "turn on 108");
        CellsThere there = at(job, "r 1-10").orElseThrow();
        assertThat(there.maybe()).isPositive();
        assertThat(there.told())
                .isEqualTo(new CellsThere.Told(
                        there.cells(), there.done(), there.maybe(), there.cells() - there.done() - there.maybe(), 0));
    }

    @Test
    void ofAPlaceThatTheEngineLacksNothingIsSaid() {
        assertThat(CellsThere.of(job().coverage(), new ReviewedPlace("r", 9, 11, "")))
                .isEmpty();
        assertThat(CellsThere.of(job().coverage(), new ReviewedPlace("r", 0, 1, "")))
                .isEmpty();
        assertThat(CellsThere.of(job().coverage(), new ReviewedPlace("q", 1, 1, "")))
                .isEmpty();
    }

    @Test
    void aBlindReviewerIsShownDeedsAndNoOpinions() {
        Job job = job().enter("find nick 3 tip", "recheck 4 shiny", "note all fine", "noaccess tip 9 because dark");
        assertThat(Blind.shown(job.fold()))
                .extracting(Logged::text)
                .containsExactly("view v", "datum r 1", "turn on 108", "watch root", "turn on 108", "find nick 3 tip");
    }

    @Test
    void blindTheRecordKeepsItsNumbersAndWhatWasStruckStaysStruck() {
        Job job = job().enter("noaccess tip 9 because dark", "turn on 30", "void 7 because slipped of the tongue");
        var blind = Blind.fold(job.fold());
        assertThat(blind.entries()).extracting(Logged::number).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(blind.entries().get(5).text()).isEmpty();
        assertThat(blind.isVoid(7)).isTrue();
        assertThat(blind.situation().ledger().remarks()).isEmpty();
        assertThat(job.fold().situation().ledger().remarks()).isNotEmpty();
    }

    /** A take-over that was shown hangs on a hand-over that was: blind, the journal can still be folded. */
    @Test
    void blindARecordCanBeFoldedWhateverOpinionsWereInIt() {
        Job job = job().enter(
                        "refer is it in",
                        "settle 6 because yes",
                        "void 7 because not yet",
                        "handover Bo",
                        "takeover Bo");
        var blind = Blind.fold(job.fold());
        assertThat(blind.entries()).hasSize(10);
        assertThat(blind.entries().get(5).text()).isEmpty();
        assertThat(blind.isVoid(7)).isTrue();
        assertThat(Blind.shown(job.fold())).extracting(Logged::text).doesNotContain("refer is it in");
    }

    @ParameterizedTest
    @EnumSource(ReviewRemark.What.class)
    void eachSortOfRemarkHasAWordInFiles(ReviewRemark.What what) {
        assertThat(what.word()).isEqualTo(what.name().toLowerCase(java.util.Locale.ROOT));
    }
}
