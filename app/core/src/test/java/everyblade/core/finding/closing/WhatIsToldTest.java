package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.finding.Limits;
import everyblade.core.finding.LimitsUnderTest;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.photo.Taken;
import everyblade.core.gap.Gaps;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** In which order a closing list tells things, under which words, and what it leaves untold. */
class WhatIsToldTest {

    @ParameterizedTest
    @EnumSource(Kind.class)
    void whatWasTakenAwayAcceptedOrOnlySaidIsForAReviewer(Kind kind) {
        assertThat(kind.onlySaid())
                .isEqualTo(List.of(Kind.VOIDED, Kind.NARROWED, Kind.ACCEPTED, Kind.TIME, Kind.PHOTO)
                        .contains(kind));
        assertThat(kind.word()).matches("[a-z]+");
    }

    @Test
    void kindsThatAreOneToAReaderOfFilesShareAWord() {
        assertThat(Kind.TIP.word()).isEqualTo(Kind.TOOL.word()).isEqualTo("tool");
        assertThat(Kind.SENT_BACK.word()).isEqualTo(Kind.QUESTION.word()).isEqualTo("question");
        assertThat(Kind.REPEAT.word()).isEqualTo(Kind.INTERVAL.word()).isEqualTo("interval");
    }

    @Test
    void theListIsInTheOrderOfTheKindsHoweverTheyCameAbout() {
        ToldRecord record = new ToldRecord(PlantedFaults.engine())
                .enter("view v", "nick 3 tip 1", "open cover", "tool out lamp", "lost nut", "again in 5 cycles");
        assertThat(record.closing().items())
                .extracting(OpenItem::kind)
                .isSortedAccordingTo(Comparator.naturalOrder())
                .contains(Kind.TOOL, Kind.LOST, Kind.OPENING, Kind.PORT, Kind.FINDING, Kind.GAP, Kind.REPEAT);
    }

    @Test
    void limitsMayAskForFactsOfTheirOwn() {
        Limits plain = new LimitsUnderTest().built();
        Limits asking = new Limits(
                plain.name(),
                plain.notice(),
                plain.manual(),
                plain.revision(),
                plain.model(),
                plain.unit(),
                plain.guard(),
                plain.plusMinus(),
                List.of("fuel"),
                plain.rules());
        Job job = new Job(LimitsUnderTest.ENGINE).enter("note a");
        assertThat(ClosingList.of(job.fold(), job.coverage(), Optional.of(asking), List.of())
                        .of(Kind.FACT))
                .extracting(OpenItem::what)
                .contains(new RecordLack.NotStated(List.of("fuel")))
                .hasSize(ClosingList.FACTS.size() + 1);
    }

    /** Every part is shown by some view, so there is nothing that none shows. */
    @Test
    void anAcceptanceOfNothingIsNotTold() {
        Job job = new Job(LimitsUnderTest.ENGINE).enter("noaccess a unshown because no port");
        assertThat(OpenAccepting.accepted(job.fold(), job.coverage())).isEmpty();
        job.enter("noaccess a all 3 because no time");
        assertThat(OpenAccepting.accepted(job.fold(), job.coverage())).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"2026-02-28T14:00:59, true, 2026-03-01T08:01:00Z", "2026-03-02T02:02:01, false, 2026-03-01T08:02:00Z"})
    void aPictureOfAnotherDayIsHeldAgainstWhatItIsFurthestFrom(String written, boolean before, String other) {
        ToldRecord record = new ToldRecord(PlantedFaults.engine())
                .enter("note a", "photo a.jpg")
                .taken(written);
        assertThat(record.closing().of(Kind.PHOTO))
                .singleElement()
                .satisfies(item -> assertThat(item.what())
                        .isEqualTo(new PictureProblem.OtherDay("a.jpg", written + "Z", before, other)));
    }

    /** Any zone's clock may have been on the camera: 18 hours either way. */
    @ParameterizedTest
    @CsvSource({"2026-02-28T14:01:00", "2026-03-02T02:02:00"})
    void aPictureMayBeOffByTheClockOfAnyZone(String written) {
        ToldRecord record = new ToldRecord(PlantedFaults.engine())
                .enter("note a", "photo a.jpg")
                .taken(written);
        assertThat(record.closing().of(Kind.PHOTO)).isEmpty();
    }

    /** Of two rotors on one shaft and one on another, one lost its count, and one is in doubt for it. */
    @ParameterizedTest
    @CsvSource({"a, true", "b, true", "c, false"})
    void aLostCountIsOpenWhileSomethingOnItsShaftIsInDoubt(String left, boolean open) {
        Job job = new Job(new Engines()
                        .rotor("a", 12)
                        .rotor("b", 12)
                        .onSpool("other")
                        .rotor("c", 12)
                        .view("va", "a", 0, 2)
                        .view("vb", "b", 0, 2)
                        .view("vc", "c", 0, 2)
                        .built())
                .enter("view vb", "datum b 1 ± 0", "view va", "datum a 1 ± 0", "turn 120 ± 1", "view vb", "turn 30 ± 1")
                .enter("view va", "turn 30 ± 1", "here 3 ± 0");
        var gaps = Gaps.of(job.coverage()).stream()
                .filter(gap -> gap.row().id().equals(left))
                .toList();
        assertThat(gaps).isNotEmpty();
        assertThat(new OpenSeeing(job.fold(), gaps).items())
                .filteredOn(item -> item.kind() == Kind.COUNT)
                .hasSize(open ? 1 : 0);
    }

    @Test
    void soIsThatOfARowThatStandsStillAndHangsOnNoShaft() {
        Job job = new Job(new Engines().stator("s", 12).view("v", "s", 0, 2).built())
                .enter("view v", "datum s 1 ± 0", "draw 120 ± 1", "here 3 ± 0");
        assertThat(new OpenSeeing(job.fold(), Gaps.of(job.coverage())).items())
                .filteredOn(item -> item.kind() == Kind.COUNT)
                .hasSize(1);
    }

    @Test
    void whatIsLeftForAnotherReasonKeepsNoLostCountOpen() {
        Job job = new Job(new Engines()
                        .row("a", RowKind.ROTOR, 12, Direction.CW, 2, List.of(), false, 0)
                        .view("tips", "a", 0, 2, "tip")
                        .built())
                .enter("view tips", "datum a 1 ± 0", "turn 120 ± 1", "here 3 ± 0", "round 3 ± 0");
        assertThat(job.coverage().lostCount()).isTrue();
        assertThat(new OpenSeeing(job.fold(), Gaps.of(job.coverage())).items())
                .extracting(OpenItem::kind)
                .containsOnly(Kind.GAP);
    }

    @Test
    void furtherPicturesStandBehindThoseThatAreThere() {
        Taken.Named first = new Taken.Named(1, Optional.empty());
        Taken.Named second = new Taken.Named(2, Optional.empty());
        assertThat(Beside.NOTHING
                        .pictured(List.of(first))
                        .pictured(List.of(second))
                        .pictures())
                .containsExactly(first, second);
    }
}
