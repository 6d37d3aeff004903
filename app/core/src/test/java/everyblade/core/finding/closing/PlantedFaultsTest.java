package everyblade.core.finding.closing;

import static everyblade.core.finding.closing.PlantedFaults.DAYS;
import static everyblade.core.finding.closing.PlantedFaults.engine;
import static everyblade.core.finding.closing.PlantedFaults.onlySaid;
import static everyblade.core.finding.closing.PlantedFaults.taken;
import static everyblade.core.finding.closing.PlantedFaults.whole;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.English;
import everyblade.core.finding.closing.OpenItem.Kind;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class PlantedFaultsTest {

    private static Stream<Arguments> all() {
        return Stream.concat(taken(), onlySaid());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void areNamedInWordsThatAPersonUnderstands(String what, Kind kind, ToldRecord record, String[] words) {
        assertThat(record.closing().of(kind))
                .as("%s: %s", what, record.closing().items())
                .anySatisfy(item -> {
                    assertThat(English.say(item.line())).contains(words);
                    assertThat(item.toDo()).isPresent();
                });
    }

    @Test
    void areFortyAndMore() {
        assertThat(all()).hasSizeGreaterThanOrEqualTo(40);
    }

    @Test
    void areNotSeenInARecordThatIsWhole() {
        assertThat(whole().closing().items()).isEmpty();
        assertThat(whole().closing().told()).isEmpty();
        assertThat(whole().closing().behind().any()).isFalse();
    }

    @Test
    void stayToldWhenSomebodyHasAnsweredForThem() {
        ClosingList list = whole().enter(
                        "lost nut",
                        "void 12 because it was another nut",
                        "settle 13 because Bo counted them, all are there")
                .closing();

        assertThat(list.items()).isEmpty();
        assertThat(list.told())
                .singleElement()
                .satisfies(told -> assertThat(English.say(told.line()))
                        .contains("a thing that was lost", "answered in entry 14 by Test: Bo counted them"));
        assertThat(English.say(list.behind())).isEqualTo("1 entry of weight taken out");
    }

    @Test
    void areNoneWhereASlipOfTheTongueWasMended() {
        for (String mended : List.of(
                "nick 3 tip 1; void 12 because typo; nick 4 tip 1; settle 14 because within table 2",
                "nick 3 tip 1; void 12 because typo; dent 3 tip 1; settle 14 because within table 2",
                "tool out lap; void 12 because typo; tool out lamp; tool in lamp")) {
            assertThat(whole().enter(mended.split("; ")).closing().items())
                    .as(mended)
                    .isEmpty();
        }
    }

    @Test
    void ofTimesAreToldButNotOpenWhereTheWholeRecordWasTypedFromPaper() {
        ToldRecord paper = new ToldRecord(engine()).typed(DAYS);
        ClosingList list = paper.enter("fact hours 1", "note a").closing();

        assertThat(list.of(Kind.TIME)).isEmpty();
        assertThat(list.told())
                .singleElement()
                .satisfies(told -> assertThat(English.say(told.line()))
                        .contains("the whole record was typed long after", "2 entries", "3 days later"));
        assertThat(new ToldRecord(engine())
                        .undated("note a")
                        .undated("note b")
                        .closing()
                        .told())
                .singleElement()
                .satisfies(told -> assertThat(English.say(told.line()))
                        .contains("entries 1 and 2 keep only the time that was said"));
    }

    @Test
    void ofAcceptancesAreToldAgainstTheModelEvenWhereTheReasonCanStand() {
        ClosingList list = whole().enter("noaccess tip 3-4 because the lens was misted over")
                .closing();

        assertThat(list.items()).isEmpty();
        assertThat(list.accepted())
                .singleElement()
                .satisfies(accepted -> assertThat(English.say(accepted.line()))
                        .endsWith("entry 12 by Test; 2 cells, 2 of these can be seen through v, w, edge, 2 were seen"));
    }

    @Test
    void comeBackWhenSomethingOfTheKindIsDoneAfterTheAnswer() {
        ToldRecord record = whole().typed(DAYS)
                .enter("note a")
                .live()
                .after(DAYS)
                .enter("settle 12 because Bo dictated it from the sheet");
        assertThat(record.closing().of(Kind.TIME)).isEmpty();
        assertThat(record.typed(DAYS).enter("note b").closing().of(Kind.TIME))
                .singleElement()
                .satisfies(item -> assertThat(English.say(item.line())).contains("entry 14"));
    }

    @Test
    void ofATimeAreNotAnsweredByTheOutcomeOfAFinding() {
        ToldRecord record = whole().typed(DAYS).enter("nick 3 tip 1").live().after(DAYS);
        record.enter("settle 12 because within table 2");

        assertThat(record.closing().items()).singleElement().satisfies(item -> {
            assertThat(English.say(item.line())).contains("1 entry was typed long after", "nick 3 tip 1");
            assertThat(item.entry()).isEqualTo("void 12 because ");
        });
    }

    @Test
    void ofATimeAreAnsweredForAfterTheQuestionThatWasAsked() {
        ToldRecord record = whole().typed(DAYS).enter("recheck 3 tip").live().after(DAYS);

        assertThat(record.enter("settle 12 because looked again").closing().items())
                .extracting(OpenItem::kind)
                .containsExactly(Kind.TIME);
        assertThat(record.enter("settle 12 because it was written on the sheet")
                        .closing()
                        .items())
                .isEmpty();
    }

    @Test
    void ofOneEntryTypedLongAfterBehindOthersAreOneThing() {
        ToldRecord record =
                whole().after(DAYS).enter("note now").after(DAYS.negated()).typed(DAYS.plusDays(1));

        assertThat(record.enter("note then").closing().items())
                .singleElement()
                .satisfies(item ->
                        assertThat(English.say(item.line())).contains("time runs back", "note then", "4 days later"));
    }

    @Test
    void ofATimeAreGoneWithTheEntryThatIsVoid() {
        ToldRecord record = whole().after(Duration.ofHours(-2))
                .at("note back")
                .after(Duration.ofHours(2))
                .enter("note on");

        assertThat(record.closing().of(Kind.TIME)).hasSize(1);
        assertThat(record.enter("void 12 because the watch was wrong").closing().items())
                .isEmpty();
    }
}
