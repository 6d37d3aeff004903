package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.angle.Turn;
import everyblade.core.coverage.State;
import everyblade.core.entry.Refusal;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Lines that people type mean what these people mean. */
class LinesAsMeantTest {

    private final Job job = new Job(new Engines()
            .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
            .row("c2", RowKind.ROTOR, 20, Direction.CW, 2, List.of(), false, 0)
            .port("p1")
            .viewThrough("p1", "p1-c1", "c1")
            .viewThrough("p1", "p1-c2", "c2")
            .pad("pad", new Ratio(29, 77), 0, 0, 0)
            .built());

    private Situation now() {
        return job.fold().situation();
    }

    private Turn shaft() {
        return now().reading(now().engine().rows().get("c1"));
    }

    private void assertRefused(String line, String words) {
        assertThatThrownBy(() -> job.tryEnter(line))
                .as(line)
                .isInstanceOf(Refusal.class)
                .extracting(English::why)
                .asString()
                .contains(words);
    }

    @Nested
    class TheTurningTool {

        @Test
        void isCountedInWholeTurnsOrInDegrees() {
            job.enter("view p1-c1", "turn 2 tool");
            assertThat(shaft()).isEqualTo(Turn.ofFraction(58, 77));

            job.enter("turn back 2 tool", "turn 90 tooldeg");
            assertThat(shaft()).isEqualTo(Turn.ofFraction(29, 4 * 77));
        }
    }

    @Nested
    class ARecheck {

        @Test
        void goesToTheRowNamedBehindTheNumber() {
            job.enter("view p1-c1", "recheck 7 of c2 streak", "recheck 8 of c2", "recheck 9 Of c2, tip looks bent");

            assertThat(now().ledger().remarks()).extracting(Remark::row).containsOnly("c2");
            assertThat(now().ledger().remarks().last().zones())
                    .isEqualTo(now().engine().zonings().get("c2").span(1));
            assertThat(now().ledger().questions().values().stream().map(English::say))
                    .contains(
                            "recheck blade 7 of c2: streak",
                            "recheck blade 8 of c2",
                            "recheck blade 9 of c2: tip looks bent");
            assertRefused("recheck 30 of c2", "blades 1 to 20");
        }

        @Test
        void ofAnythingElseIsInTheRowInView() {
            job.enter("view p1-c1", "recheck 7 of course", "c1 recheck 8 of c2");

            assertThat(now().ledger().remarks()).extracting(Remark::row).containsOnly("c1");
            assertThat(now().ledger().questions().values().stream().map(English::say))
                    .contains("recheck blade 7 of c1: of course", "recheck blade 8 of c1: of c2");
        }
    }

    @Nested
    class AToolThatWasLost {

        @Test
        void isFoundAgainWhenItIsBack() {
            job.enter("tool out lamp", "lost lamp", "lost washer", "tool in lamp");

            assertThat(now().ledger().toolsOut()).isEmpty();
            assertThat(now().ledger().questions()).containsOnlyKeys(3);

            job.enter("tool in washer");
            assertThat(now().ledger().questions()).isEmpty();
            assertRefused("tool in washer", "not said to be out or lost");
        }

        @Test
        void staysLostWhenAnotherOneIsBack() {
            job.enter("tool out lamp", "lost washer", "tool in lamp");
            assertThat(now().ledger().questions()).containsOnlyKeys(2);
        }
    }

    @Nested
    class WithTheScopeOut {

        @Test
        void nothingIsWatchedOrCountedUntilItIsSeatedAgain() {
            job.enter("open p1", "view p1-c1", "datum c1 1", "turn on 30", "out");

            for (String line :
                    new String[] {"turn 10", "look", "watch tip", "here 1", "datum c1 1", "round 1", "out"}) {
                assertRefused(line, "the scope is out");
            }
            job.enter("skip on 30", "view p1-c1", "turn on 30");
            assertThat(job.airfoils("c1", State.SEEN)).contains(36).doesNotContain(32);
        }

        @Test
        void whatWasFoundIsStillWrittenUpInTheRowThatWasInView() {
            job.enter("view p1-c1", "out", "nick 7 tip 0.8", "recheck 3");
            assertThat(now().ledger().remarks()).extracting(Remark::row).containsExactly("c1", "c1");
        }

        @Test
        void itIsClearOfTheBlades() {
            job.enter("view p1-c1", "in", "out", "skip on 30");
            assertThat(now().among()).isFalse();
        }

        @Test
        void itsPortMayBeShutWithoutAWord() {
            job.enter("open p1", "view p1-c1", "out", "shut p1 torqued");
            assertThat(job.warnings()).isEmpty();
        }

        @Test
        void itWasSomewhereBefore() {
            assertRefused("out", "no view is in use yet");
        }
    }
}
