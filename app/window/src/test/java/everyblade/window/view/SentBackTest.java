package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.core.sight.Progress;
import everyblade.record.JobFolder;
import everyblade.record.ReviewFile;
import everyblade.record.ReviewWriter;
import everyblade.session.JobState;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a reviewer sends back, as the technician's window shows it. */
class SentBackTest {

    @TempDir
    Path folder;

    private Workshop workshop;

    @BeforeEach
    void start() {
        workshop = Workshop.in(folder);
    }

    /** A reviewer asks while the technician's window is open. */
    private void ask(Session session) {
        JobState state = session.state();
        JobFolder job = new JobFolder(workshop.disk(), state.folder());
        String first = ((JobFolder.Readable) job.read()).job().journal().firstHash();
        ReviewFile.Writing writing = job.review().write("R. Viewer", Workshop.NOW, first);
        try (ReviewWriter writer = ((ReviewFile.Writable) writing).writer()) {
            assertThat(writer.append(List.of(new ReviewWriter.Said(
                            Workshop.NOW,
                            "R. Viewer",
                            state.head(),
                            state.fold().entries().size(),
                            What.QUESTION,
                            "what is the shadow",
                            Optional.of(new ReviewedPlace("r", 4, 5, "tip")),
                            OptionalInt.empty()))))
                    .isInstanceOf(ReviewWriter.Kept.class);
        }
    }

    @Test
    void aQuestionShowsInEveryListAndAtItsPlaceUntilItIsAnswered() {
        try (Session session = workshop.counting()) {
            ask(session);
            session.say("look");

            assertThat(Notes.of(session.state(), Workshop.ENGLISH)).first().satisfies(note -> {
                assertThat(note.kind()).isEqualTo(Notes.Kind.SENT_BACK);
                assertThat(note.text()).contains("what is the shadow", "r 4-5 tip", "R. Viewer");
                assertThat(note.cell()).contains(new CellAt("r", 4, 1));
                assertThat(note.closes()).isEqualTo("note review 1: ");
            });
            assertThat(OpenLine.of(session.state(), Workshop.ENGLISH))
                    .filteredOn(line -> line.what().contains("what is the shadow"))
                    .singleElement()
                    .satisfies(line -> assertThat(line.cell()).contains(new CellAt("r", 4, 1)));

            session.say("note review 1: it was oil");

            assertThat(Notes.of(session.state(), Workshop.ENGLISH)).isEmpty();
            assertThat(OpenLine.of(session.state(), Workshop.ENGLISH))
                    .noneMatch(line -> line.what().contains("shadow"));
        }
    }

    @Test
    void onceNothingIsLeftTheQuestionIsWhatToDoNext() {
        try (Session session = workshop.counting("round 1", "view p-v", "datum v 1", "draw 360")) {
            ask(session);
            session.say("look");

            NextToDo next = NextToDo.of(Panels.of(session), Workshop.ENGLISH, Progress.NONE);

            assertThat(next.words()).isEqualTo("answer what R. Viewer asks: what is the shadow");
            assertThat(next.entry()).contains("note review 1: ");
        }
    }
}
