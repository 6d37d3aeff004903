package everyblade.session;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Settings;
import everyblade.core.sight.Progress;
import everyblade.core.turning.Situation;
import everyblade.record.Beginning;
import everyblade.record.Frozen;
import everyblade.record.FrozenFile;
import everyblade.record.JobFolder;
import everyblade.record.KeepingProblem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionTest {

    @TempDir
    Path folder;

    private final FailingDisk disk = new FailingDisk();
    private Workshop workshop;

    @BeforeEach
    void start() {
        workshop = Workshop.in(folder, disk.asDisk());
    }

    @Test
    void anEntryIsOnDiskWhenItIsToldAsKept() {
        try (Session session = workshop.counting()) {
            Answer answer = session.say("turn on 30");

            assertThat(answer).isInstanceOf(Answer.Kept.class);
            assertThat(((Answer.Kept) answer).safe()).isTrue();
            assertThat(workshop.kept()).last().isEqualTo("turn on 30");
        }
    }

    @Test
    void aRefusedEntryChangesNothingAndPointsAtItsColumn() {
        try (Session session = workshop.counting()) {
            JobState before = session.state();

            Answer answer = session.say("turn on many");

            assertThat(answer).isInstanceOf(Answer.Refused.class);
            assertThat(((Answer.Refused) answer).column()).isEqualTo(9);
            assertThat(session.state()).isSameAs(before);
        }
    }

    @Test
    void aJobThatIsOpenedAgainStandsAtTheSameBlade() {
        try (Session session = workshop.counting("turn on 7 blades")) {
            assertThat(standing(session)).startsWith("blade 6 of r at the reference");
        }
        try (Session again = workshop.open()) {
            assertThat(standing(again)).startsWith("blade 6 of r at the reference");
        }
    }

    private static String standing(Session session) {
        Situation now = session.state().situation();
        return Effect.standing(Workshop.ENGLISH, now, now.seat().orElseThrow());
    }

    @Test
    void aDoubtfulEntryIsAskedAboutAndKeptOnlyIfItIsMeant() {
        try (Session session = workshop.counting()) {
            Answer asked = session.enter("skip on 90", false, Workshop.ENGLISH);

            assertThat(asked).isInstanceOf(Answer.Asked.class);
            assertThat(workshop.kept()).hasSize(3);
            assertThat(session.enter("skip on 90", true, Workshop.ENGLISH)).isInstanceOf(Answer.Kept.class);
            assertThat(workshop.kept()).last().isEqualTo("skip on 90");
        }
    }

    @Nested
    class OnADiskThatRefuses {

        private Session session;

        @BeforeEach
        void fill() {
            session = workshop.counting("turn on 30");
            disk.fill();
        }

        @Test
        void anEntryIsKeptInMemoryAndNotToldAsSafe() {
            Answer.Kept answer = (Answer.Kept) session.say("turn on 31");

            assertThat(answer.safe()).isFalse();
            assertThat(session.state().keeping()).isInstanceOf(Keeping.InMemory.class);
            assertThat(workshop.kept()).last().isEqualTo("turn on 30");
        }

        @Test
        void typingGoesOnInMemory() {
            session.say("turn on 31");
            session.say("turn on 32");

            assertThat(session.state().fold().entries()).hasSize(6);
            assertThat(((Keeping.InMemory) session.state().keeping()).unsaved())
                    .extracting(everyblade.record.Addition::text)
                    .containsExactly("turn on 31", "turn on 32");
        }

        @Test
        void theSameDiskTakesEverythingOnceItHasRoomAgain() {
            session.say("turn on 31");
            session.say("turn on 32");
            assertThat(session.saveAgain()).isPresent();
            disk.clear();

            assertThat(session.saveAgain()).isEmpty();

            assertThat(session.state().keeping()).isInstanceOf(Keeping.OnDisk.class);
            assertThat(workshop.kept()).endsWith("turn on 30", "turn on 31", "turn on 32");
            assertThat(((Answer.Kept) session.say("look")).safe()).isTrue();
        }

        @Test
        void everythingCanBeSavedElsewhereAndGoesOnThere() throws Exception {
            disk.clear();
            byte[] picture = workshop.picture("a.png");
            session.say("photo a.png");
            disk.fill();
            session.say("turn on 31");
            disk.clear();
            Path other = folder.resolve("elsewhere");

            assertThat(session.saveElsewhere(other)).isEmpty();

            assertThat(session.state().folder()).isEqualTo(other);
            assertThat(((Answer.Kept) session.say("look")).safe()).isTrue();
            session.close();
            try (Session there = Session.open(workshop.around(), other, java.util.List.of(), Progress.NONE)) {
                assertThat(there.state().fold().entries())
                        .extracting(everyblade.core.turning.Logged::text)
                        .endsWith("turn on 31", "look");
            }
            assertThat(Files.readAllBytes(other.resolve("photos/a.png"))).isEqualTo(picture);
        }

        @Test
        void aPlaceThatIsTakenIsRefusedAndNothingIsLost() {
            session.say("turn on 31");

            assertThat(session.saveElsewhere(workshop.job()))
                    .hasValueSatisfying(why -> assertThat(why).contains("something is there already"));
            assertThat(((Keeping.InMemory) session.state().keeping()).unsaved()).hasSize(1);
        }
    }

    @Test
    void whatIsFrozenIntoAJobGoesAlongElsewhere() throws Exception {
        workshop.counting("dent 5 tip 1").close();
        JobFolder earlier = new JobFolder(disk.asDisk(), workshop.job());
        Frozen frozen = new Frozen(
                FrozenFile.of(Workshop.RING.getBytes(StandardCharsets.UTF_8)),
                new TreeMap<>(),
                Optional.of(FrozenFile.of("limits as they were".getBytes(StandardCharsets.UTF_8))),
                Optional.of(((JobFolder.Copied) earlier.copy()).record()));
        Beginning beginning = new Beginning(
                Workshop.NOW,
                "Ann",
                "ring",
                "7",
                "again",
                Settings.of(Map.of()).values(),
                Optional.of(workshop.job().toString()));
        Path later = folder.resolve("later");
        assertThat(new JobFolder(disk.asDisk(), later).start(beginning, frozen)).isEmpty();

        try (Session session = Session.open(workshop.around(), later, List.of(), Progress.NONE)) {
            assertThat(session.notices()).singleElement().asString().contains("frozen limits cannot be read");
            assertThat(session.say("note a word")).isInstanceOf(Answer.Kept.class);
            assertThat(session.saveElsewhere(folder.resolve("copy"))).isEmpty();
        }

        JobFolder copy = new JobFolder(disk.asDisk(), folder.resolve("copy"));
        assertThat(copy.verify(Optional.empty())).isInstanceOf(JobFolder.Sound.class);
        assertThat(((JobFolder.Readable) copy.read()).job().limits()).isPresent();
        assertThat(((JobFolder.Readable) copy.read()).job().previous()).isPresent();
    }

    @Test
    void aJobThatCannotBeLockedIsReadOnlyUntilItCanBe() {
        workshop.counting("turn on 30").close();
        disk.cram();
        try (Session session = workshop.open()) {
            assertThat(session.state().keeping()).isInstanceOfSatisfying(Keeping.ReadOnly.class, readOnly -> {
                assertThat(readOnly.reason()).contains("No space left on device");
                assertThat(readOnly.mayChange()).isTrue();
            });
            disk.clear();
            session.tryWriting();
            assertThat(session.say("turn on 31")).isInstanceOf(Answer.Kept.class);
        }
    }

    @Nested
    class InASecondWindow {

        @Test
        void theJobIsReadOnlyAndSaysWhoHasIt() {
            try (Session first = workshop.counting();
                    Session second = workshop.open()) {
                assertThat(second.state().open()).isFalse();
                assertThat(second.state().keeping())
                        .isInstanceOfSatisfying(
                                Keeping.ReadOnly.class,
                                readOnly -> assertThat(readOnly.reason()).contains("Ann"));
                assertThat(second.say("look")).isInstanceOf(Answer.Refused.class);
                assertThat(first.say("look")).isInstanceOf(Answer.Kept.class);
            }
        }

        @Test
        void whatTheFirstKeepsIsSeenInTheSecond() {
            try (Session first = workshop.counting();
                    Session second = workshop.open()) {
                first.say("turn on 30");

                assertThat(second.refresh()).isTrue();
                assertThat(second.refresh()).isFalse();
                assertThat(second.state().fold().entries()).hasSize(4);
            }
        }

        @Test
        void writingCanBeTakenOverOnceTheFirstIsClosed() {
            Session first = workshop.counting();
            try (Session second = workshop.open()) {
                first.say("turn on 30");
                first.close();

                second.tryWriting();

                assertThat(((Answer.Kept) second.say("look")).number()).isEqualTo(5);
            }
        }
    }

    @Test
    void aReviewedRecordCannotBeChangedEvenByMistake() {
        workshop.counting().close();

        try (Session session = Session.review(workshop.around(), workshop.job(), "for review", Progress.NONE)) {
            assertThat(session.say("look"))
                    .isEqualTo(new Answer.Refused("look", 1, new KeepingProblem.NotWritten("for review")));
            assertThat(session.enter("skip on 90", false, Workshop.ENGLISH)).isInstanceOf(Answer.Refused.class);
        }
        assertThat(workshop.kept()).hasSize(3);
    }
}
