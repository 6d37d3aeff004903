package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.finding.Distances;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Judging;
import everyblade.core.finding.Limits;
import everyblade.core.finding.LimitsUnderTest;
import everyblade.core.finding.Looked;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Engine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class ClosingListTest {

    private static final String[] FACTS = {
        "fact hours 10", "fact cycles 4", "fact position left", "fact manual Invented", "fact revision 1"
    };
    private static final String[] SEEN = {"view va", "round 1", "view vb", "round 1"};

    static ClosingList list(Optional<Limits> limits, List<String> lines) {
        Job job = new Job(LimitsUnderTest.ENGINE).enter(lines.toArray(String[]::new));
        return ClosingList.of(
                job.fold(),
                job.coverage(),
                limits,
                limits.map(known -> Judging.of(
                                known,
                                LimitsUnderTest.ENGINE.zonings(),
                                Findings.of(job.fold()),
                                Looked.in(job.coverage()),
                                Distances.UNKNOWN))
                        .orElse(List.of()));
    }

    private static ClosingList after(Optional<Limits> limits, String... lines) {
        List<String> all = new ArrayList<>(List.of(FACTS));
        all.addAll(List.of(SEEN));
        all.addAll(List.of(lines));
        return list(limits, all);
    }

    private static ClosingList after(String... lines) {
        return after(Optional.empty(), lines);
    }

    private static void assertOpen(ClosingList list, Kind kind, String... words) {
        assertThat(list.items()).singleElement().satisfies(item -> {
            assertThat(item.kind()).isEqualTo(kind);
            assertThat(English.say(item.line())).contains(words);
            assertThat(item.toDo()).isPresent();
        });
    }

    @Test
    void isEmptyWhenAllIsSeenDecidedShutAndBack() {
        assertThat(after("open p1", "tool out lamp", "in", "clear", "shut p1 torqued", "tool in lamp")
                        .any())
                .isFalse();
    }

    @Test
    void namesTheEntryThatOpenedAThingAndWhoMadeIt() {
        assertOpen(after("open cover"), Kind.OPENING, "cover is open", "entry 10 by Test");
        assertOpen(after("tool out turning tool"), Kind.TOOL, "turning tool is out", "entry 10 by Test");
        assertOpen(after("in"), Kind.TIP, "among the blades", "entry 10");
        assertOpen(after("lost washer"), Kind.LOST, "washer", "entry 10");
        assertOpen(after("recheck a 3 streak"), Kind.RECHECK, "blade 3", "streak", "entry 10");
        assertOpen(after("refer is this within"), Kind.QUESTION, "is this within", "entry 10");
        assertOpen(after("again in 50 hours"), Kind.REPEAT, "50 hours", "entry 10");
        assertOpen(after("handover Next"), Kind.HANDOVER, "Next", "entry 10");
    }

    @Test
    void listsOpeningsInTheOrderInWhichTheyAreShut() {
        assertThat(after("open cover", "open plate", "open plug").items())
                .extracting(item -> English.say(item.what()))
                .containsExactly("plug is open", "plate is open", "cover is open");
    }

    @Test
    void putsFirstWhatDoesMostHarm() {
        assertThat(after("refer x", "open cover", "tool out lamp", "in").items())
                .extracting(OpenItem::kind)
                .containsExactly(Kind.TIP, Kind.TOOL, Kind.OPENING, Kind.QUESTION);
    }

    @Test
    void asksForTheFactsThatARecordMustHave() {
        assertThat(list(Optional.empty(), List.of(SEEN)).of(Kind.FACT))
                .extracting(item -> English.say(item.toDo().orElseThrow()))
                .containsExactly(
                        "say: fact hours …",
                        "say: fact cycles …",
                        "say: fact position …",
                        "say: fact manual …",
                        "say: fact revision …");
    }

    @Test
    void tellsGapsAndWhatWasAcceptedWithItsReason() {
        ClosingList list = list(
                Optional.empty(), List.of("view va", "round 1", "b noaccess root 1-12 because the port is blocked"));

        assertThat(list.of(Kind.GAP))
                .singleElement()
                .satisfies(gap -> assertThat(English.say(gap.line())).contains("row b (b)", "tip", "not seen"));
        assertThat(list.accepted())
                .extracting(accepted -> English.say(accepted.line()))
                .containsExactly(
                        "row b (b): all 12 blades, root, because the port is blocked, entry 3 by Test; 72 cells,"
                                + " 72 of these can be seen through vb");
    }

    @Test
    void keepsALostCountOpenUntilWhatItLeftInDoubtIsSeenAgain() {
        List<String> lost = new ArrayList<>(List.of(FACTS));
        lost.addAll(
                List.of("view vb", "round 1", "view va", "datum a 1", "turn 120 ± 1", "turn 60 ± 1", "here 3 ± 0.5"));
        ClosingList list = list(Optional.empty(), lost);
        assertThat(list.of(Kind.COUNT))
                .singleElement()
                .satisfies(item -> assertThat(English.say(item.line()))
                        .contains("the count was lost between entries 9 and 12", "entry 12 by Test"));

        lost.add("round 3 ± 0");
        assertThat(list(Optional.empty(), lost).any()).isFalse();
    }

    @Nested
    class APort {

        private final Engine engine = new Engines()
                .rotor("c1", 36)
                .port("p1")
                .viewThrough("p1", "v", "c1")
                .built();

        private List<OpenItem> ports(String... lines) {
            Job job = new Job(engine).enter(lines);
            return ClosingList.of(job.fold(), job.coverage(), Optional.empty(), List.of())
                    .of(Kind.PORT);
        }

        @Test
        void thatWasLookedThroughAndNeverOpenedIsNamedWithTheFirstEntry() {
            assertThat(ports("note begun", "view v", "datum c1 1", "turn on 30"))
                    .singleElement()
                    .satisfies(item -> {
                        assertThat(English.say(item.line()))
                                .isEqualTo("port p1 (p1) was looked through and never said to be open, entry 2"
                                        + " by Test");
                        assertThat(item.entry()).isEqualTo("open p1");
                    });
            assertThat(ports("open p1", "view v", "datum c1 1", "turn on 30", "shut p1"))
                    .isEmpty();
        }

        @Test
        void thatWasShutBeforeItWasLookedThroughAgainIsNamed() {
            String[] shut = {"open p1", "view v", "datum c1 1", "shut p1 torqued", "turn on 30"};
            assertThat(ports(shut))
                    .singleElement()
                    .satisfies(item -> assertThat(English.say(item.line()))
                            .contains("looked through after it was shut", "entry 5"));
            assertThat(ports("open p1", "view v", "datum c1 1", "shut p1 torqued", "skip on 30"))
                    .isEmpty();
            assertThat(ports("open p1", "view v", "out", "shut p1 torqued", "skip on 30"))
                    .isEmpty();
        }

        @Test
        void isClosedByOpeningItAndShuttingItAgain() {
            assertThat(ports("view v", "open p1", "shut p1 torqued")).isEmpty();
        }
    }

    @Nested
    class WhatWasTakenOut {

        @Test
        void isAskedForWhenItWasAFindingAnIdentificationAnOpeningOrATool() {
            Map<String, String> removed = Map.of(
                    "a nick 3 tpl 0.2", "a finding",
                    "here 1", "an identification",
                    "round 2", "what showed a lost count (by about 1 blade, between entries 9 and 10)",
                    "open cover", "something opened",
                    "tool out lamp", "a tool that was out",
                    "lost nut", "a thing that was lost",
                    "recheck a 3 streak", "a question",
                    "slip", "a slip");
            removed.forEach((line, what) -> assertThat(
                            after(line, "void 10 because mistaken").of(Kind.VOIDED))
                    .singleElement()
                    .satisfies(item -> {
                        assertThat(English.say(item.line()))
                                .isEqualTo(what + ", entry 10, " + line
                                        + ", was taken out, because mistaken, entry 11 by Test");
                        assertThat(item.entry()).isEqualTo("settle 11 because ");
                    }));
            assertThat(after("view va", "void 10 because mistaken").of(Kind.VOIDED))
                    .isEmpty();
        }

        @Test
        void isClosedByItsReasonOrBySayingItAnew() {
            assertThat(after(
                                    "open cover",
                                    "void 10 because mistaken",
                                    "settle 11 because the cover was never off, Bo looked")
                            .any())
                    .isFalse();
            assertThat(after("tool out lap", "void 10 because mistyped", "tool out lamp", "tool in lamp")
                            .any())
                    .isFalse();
            assertThat(after("open cover", "void 10 because mistaken", "void 11 because it was off", "shut cover")
                            .any())
                    .isFalse();
            assertThat(after("open cover", "void 10 because mistaken", "note on")
                            .any())
                    .isTrue();
        }

        @Test
        void isAskedForWhenTheTaskAsksForLess() {
            ClosingList less = after("ask a tip");
            assertOpen(less, Kind.NARROWED, "only for tip", "no longer for root", "entry 10");
            assertThat(after("ask a tip", "settle 10 because the order asks for tips, page 3")
                            .any())
                    .isFalse();
            assertThat(after("ask a tip", "ask a all").any()).isFalse();
        }

        @Test
        void mayNotBeAcceptedWithoutAWord() {
            assertOpen(after("a noaccess root 3 because --"), Kind.ACCEPTED, "no reason in words", "entry 10");
            assertThat(after("a noaccess root 3 because the port is blocked").any())
                    .isFalse();
        }
    }

    @Nested
    class AFinding {

        private final Optional<Limits> limits = Optional.of(limits());

        private static Limits limits() {
            LimitsUnderTest limits = new LimitsUnderTest();
            return limits.rule(
                            "nicks",
                            "a",
                            "nick",
                            "",
                            limits.step("length 0.5"),
                            LimitsUnderTest.again(limits.step("length 1"), 25))
                    .built();
        }

        @Test
        void isOpenWithoutLimitsUntilSomeoneSaysWhatComesOfIt() {
            assertOpen(after("a nick 3 tpl 0.2"), Kind.FINDING, "nick", "no limits", "blade 3", "entry 10");
            assertThat(after("a nick 3 tpl 0.2", "settle 10 because within the manual's limits, 72-30 table 2")
                            .any())
                    .isFalse();
        }

        @Test
        void isClosedByLimitsThatItIsWithin() {
            assertThat(after(limits, "a nick 3 tpl 0.2 ± 0.1").any()).isFalse();
        }

        @Test
        void isOpenBeyondTheLimitsUntilSomeoneSaysWhatComesOfIt() {
            assertOpen(
                    after(limits, "a nick 4 tpl 3 ± 0.1"),
                    Kind.FINDING,
                    "beyond the limits, and nobody said what comes of it",
                    "blade 4",
                    "entry 10");
            assertThat(English.say(after(limits, "a nick 4 tpl 3 ± 0.1")
                            .items()
                            .get(0)
                            .toDo()
                            .orElseThrow()))
                    .contains("refer …", "settle 10 because …");
            assertThat(after(
                                    limits,
                                    "a nick 4 tpl 3 ± 0.1",
                                    "refer may blade 4 stay until the shop visit",
                                    "settle 11 because answered",
                                    "settle 10 because blade 4 is replaced, the engineer decided")
                            .any())
                    .isFalse();
        }

        @Test
        void isOpenWhereTheLimitsDoNotDecide() {
            assertOpen(
                    after(limits, "a nick 3 tpl 1 ± 0.1", "again in 25 cycles", "settle 11 because entered"),
                    Kind.FINDING,
                    "too close to call",
                    "entry 10");
            assertOpen(after(limits, "a crack 3 tpl 1 ± 0.1"), Kind.FINDING, "no limit entered", "entry 10");
            assertOpen(after(limits, "a nick 3 tpl 0.2"), Kind.FINDING, "not measured", "entry 10");
        }

        @Test
        void asksForTheRepeatThatGoesWithItsOutcome() {
            assertOpen(after(limits, "a nick 3 tpl 0.8 ± 0.1"), Kind.INTERVAL, "25 cycles", "entry 10");
            assertOpen(
                    after(limits, "a nick 3 tpl 0.8 ± 0.1", "again in 30 cycles", "settle 11 because entered"),
                    Kind.INTERVAL,
                    "25 cycles");
            assertThat(after(limits, "a nick 3 tpl 0.8 ± 0.1", "again in 20 cycles", "settle 11 because entered")
                            .any())
                    .isFalse();
        }

        /** What was entered and settled before a finding was there was about something else. */
        @Test
        void isNotMetByAnOlderRepeatThatIsSettled() {
            assertOpen(
                    after(limits, "again in 20 cycles", "settle 10 because entered", "a nick 3 tpl 0.8 ± 0.1"),
                    Kind.INTERVAL,
                    "25 cycles",
                    "entry 12");
            assertThat(after(limits, "again in 20 cycles", "a nick 3 tpl 0.8 ± 0.1")
                            .items())
                    .extracting(OpenItem::kind)
                    .containsExactly(Kind.REPEAT);
        }

        @Test
        void mayBeOnAnotherBladeIfTheCountWasLostMeanwhile() {
            List<String> lines = new ArrayList<>(List.of(FACTS));
            lines.addAll(List.of(
                    "view vb",
                    "round 1",
                    "view va",
                    "datum a 1",
                    "turn 120 ± 1",
                    "nick 5 tpl 0.2 ± 0.1",
                    "turn 60 ± 1",
                    "here 3 ± 0.5",
                    "round 3 ± 0"));

            assertOpen(list(limits, lines), Kind.FINDING, "may be on another blade", "entry 11");
            lines.add("settle 11 because seen again on blade 5");
            assertThat(list(limits, lines).any()).isFalse();
        }

        @Test
        void isOpenAgainIfItsSettlingIsVoid() {
            assertOpen(
                    after("a nick 3 tpl 0.2", "settle 10 because fine", "void 11 because by mistake"),
                    Kind.FINDING,
                    "entry 10");
        }
    }
}
