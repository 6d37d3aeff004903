package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A person who leaves a port, a cover or a tool out of the account is told when it happens, and never refused. */
class ClosingAdviceTest {

    private final Job job = new Job(new Engines()
            .rotor("c1", 36)
            .rotor("c2", 20)
            .port("p1")
            .port("p2")
            .viewThrough("p1", "p1-c1", "c1")
            .viewThrough("p1", "p1-c2", "c2")
            .viewThrough("p2", "p2-c2", "c2")
            .view("anywhere", "c1", 0, 2)
            .built());

    /** What the last of these entries gives rise to say. */
    private List<String> said(String... lines) {
        return English.say(job.enter(lines).fold().warnings());
    }

    @Nested
    class AViewThroughAPort {

        @Test
        void thatWasNotSaidToBeOpenIsCalledOut() {
            assertThat(said("view p1-c1"))
                    .containsExactly("port p1 was not said to be open; say open p1 when it was opened, so that it is"
                            + " asked for when closing up");
        }

        @Test
        void isKeptAllTheSame() {
            said("view p1-c1");
            assertThat(job.fold().situation().seat())
                    .get()
                    .extracting(seat -> seat.view().id())
                    .isEqualTo("p1-c1");
        }

        @Test
        void thatIsOpenGoesWithoutAWord() {
            job.enter("open p1", "view p1-c1", "view p1-c2");
            assertThat(job.warnings()).isEmpty();
        }

        @Test
        void countsAsShutAgainOnceThatWasSaid() {
            assertThat(said("open p1", "shut p1 torqued", "view p1-c1"))
                    .singleElement()
                    .asString()
                    .contains("port p1");
        }

        @Test
        void needsItsOwnPortOpenAndNoOther() {
            assertThat(said("open p1", "view p2-c2")).singleElement().asString().contains("port p2", "say open p2");
        }

        @Test
        void isCalledOutOnlyWhenItBegins() {
            job.enter("view p1-c1", "datum c1 1", "turn on 360", "watch all", "look", "round 1", "skip 10");
            assertThat(job.warnings()).hasSize(1);
        }

        @Test
        void isNotCalledOutWhereTheModelNamesNoPort() {
            assertThat(said("view anywhere")).isEmpty();
        }
    }

    @Nested
    class SayingWhatIsOpen {

        @Test
        void underANameNearToAnIdAsksWhetherThatWasMeant() {
            assertThat(said("open p9"))
                    .containsExactly("p9 is no port or cover of this engine model; it is kept under this name: if p1"
                            + " was meant, void this and say open p1");
            assertThat(said("open P2")).singleElement().asString().contains("if p2 was meant");
            assertThat(said("open padd")).singleElement().asString().contains("if pad was meant");
            assertThat(job.fold().situation().ledger().openings()).containsOnlyKeys("p9", "P2", "padd");
        }

        @Test
        void underANameThatLooksLikeAnIdButIsNearToNoneSaysSo() {
            assertThat(said("open door-17"))
                    .containsExactly("door-17 is no port or cover of this engine model; it is kept under this name:"
                            + " void this if it was mistyped");
        }

        @Test
        void underAnIdOfTheModelGoesWithoutAWord() {
            assertThat(said("open p1")).isEmpty();
            assertThat(said("open pad")).isEmpty();
        }

        @Test
        void underAnOrdinaryNameGoesWithoutAWord() {
            assertThat(said("open cowl")).isEmpty();
            assertThat(said("open \"left door 2\"")).isEmpty();
        }

        @Test
        void twiceNamesTheEntryThatSaidItFirst() {
            job.enter("open p2", "open p1", "note still at it");
            assertThat(said("open p1"))
                    .containsExactly(
                            "p1 was opened already by entry 2: void this, or give a second one a name of its own");
            assertThat(said("open cowl", "open cowl"))
                    .singleElement()
                    .asString()
                    .startsWith("cowl was opened already by entry 5");
        }

        @Test
        void againAfterItWasShutGoesWithoutAWord() {
            assertThat(said("open p1", "shut p1", "open p1")).isEmpty();
        }
    }

    @Nested
    class TakingATool {

        @Test
        void thatIsOutAlreadyNamesTheEntryThatTookIt() {
            assertThat(said("note begun", "tool out turning tool", "tool out turning tool"))
                    .containsExactly("turning tool is out already, since entry 2: void this, or give a second one a"
                            + " name of its own");
        }

        @Test
        void thatIsBackOrThatIsAnotherOneGoesWithoutAWord() {
            job.enter("tool out lamp", "tool out mirror", "tool in lamp", "tool out lamp");
            assertThat(job.warnings()).isEmpty();
        }
    }
}
