package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.RowCoverage;
import everyblade.session.Answer;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LeftTest {

    @TempDir
    Path folder;

    private Session session;

    @BeforeEach
    void open() {
        session = Workshop.in(folder).counting();
    }

    @AfterEach
    void close() {
        session.close();
    }

    private List<Left> left(Left.Order order) {
        return Left.of(session.state().coverage(), order, Workshop.ENGLISH);
    }

    @Test
    void whatCanBeReachedFromTheViewInUseComesFirst() {
        assertThat(left(Left.Order.AT_WORK))
                .extracting(left -> left.gap().row().id())
                .containsExactly("r", "v");
        session.say("view p-v");
        session.say("datum v 1");
        assertThat(left(Left.Order.AT_WORK))
                .extracting(left -> left.gap().row().id())
                .containsExactly("v", "r");
    }

    @Test
    void ofTwoGapsTheNearerTurnComesFirst() {
        List.of("turn on 3 blades ± 0", "skip on 2 blades", "turn on 2 blades", "skip on 1 blades")
                .forEach(session::say);

        List<Left> left = left(Left.Order.AT_WORK).stream()
                .filter(one -> one.gap().row().id().equals("r"))
                .toList();

        assertThat(left).extracting(one -> one.gap().airfoils()).hasSizeGreaterThan(1);
        assertThat(left).isSortedAccordingTo(java.util.Comparator.comparingDouble(one -> {
            double away = Math.abs(one.gap().reach().orElseThrow().from() - 240) % 360;
            return Math.min(away, 360 - away);
        }));
    }

    @Test
    void theEntriesThatItProposesCloseIt() {
        session.say("turn on 60 ± 0");
        Left first = left(Left.Order.AT_WORK).get(0);

        first.entries()
                .forEach(entry -> assertThat(session.say(entry + (entry.startsWith("turn") ? " ± 0" : "")))
                        .isInstanceOf(Answer.Kept.class));

        assertThat(left(Left.Order.AT_WORK))
                .extracting(left -> left.gap().row().id())
                .containsExactly("v");
    }

    @Test
    void forAReviewerWhatWasSkippedComesBeforeWhatIsDoubtful() {
        List.of("turn on 90 ± 0", "turn on 60 ± 8").forEach(session::say);

        List<Left> left = left(Left.Order.REVIEW);

        assertThat(left)
                .extracting(one -> one.gap().why().word())
                .startsWith("skipped")
                .endsWith("play");
    }

    @Test
    void itsFirstCellIsGivenToTheMap() {
        session.say("round 1");

        assertThat(left(Left.Order.AT_WORK).get(0).cell()).isEqualTo(new CellAt("v", 1, 0));
    }

    @Test
    void withoutACountItSaysThatOneIsNeeded() {
        session.say("slip");

        assertThat(left(Left.Order.AT_WORK).get(0).how()).contains("bring a known airfoil to the reference");
        assertThat(left(Left.Order.AT_WORK).get(0).entries()).isEmpty();
    }

    @Test
    void nothingIsLeftOnceEverythingWasSeen() {
        List.of("round 1", "view p-v", "datum v 1", "draw 360").forEach(session::say);

        assertThat(left(Left.Order.AT_WORK)).isEmpty();
    }

    @Test
    void whereSightIsComputedItSaysAtWhichStationToStandAndThatClosesSomeOfIt(@TempDir Path other) {
        try (Session shaped = Workshop.shaped(other).open("heat 20 C", "view p-r", "datum r 1")) {
            Left first = Left.of(shaped.state().coverage(), Left.Order.AT_WORK, Workshop.ENGLISH).stream()
                    .filter(left -> left.gap().reach().isPresent())
                    .findFirst()
                    .orElseThrow();

            assertThat(first.entries()).startsWith("at near");
            assertThat(first.how()).contains("p-r, station near");
            first.entries()
                    .forEach(entry -> assertThat(shaped.say(entry)).as(entry).isInstanceOf(Answer.Kept.class));
            RowCoverage row = shaped.state().coverage().row("r");
            assertThat(row.tally(row.zoning().all()).part()
                            + row.tally(row.zoning().all()).seen())
                    .isPositive();
        }
    }
}
