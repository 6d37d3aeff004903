package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Kind;
import everyblade.session.Answer;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SmallThingsTest {

    @TempDir
    Path folder;

    @Nested
    class ANewJob {

        private final NewJob job = new NewJob(
                "/jobs/one",
                "ring",
                "7",
                "routine",
                "",
                "Ann",
                "fwd",
                List.of(Map.entry("manual", "Chapter 72"), Map.entry("revision", " "), Map.entry("hours", "8412,6")));

        @Test
        void isStartedByTheCommandThatStartsJobs() {
            assertThat(job.command())
                    .containsExactly(
                            "start",
                            "/jobs/one",
                            "--model",
                            "ring",
                            "--serial",
                            "7",
                            "--task",
                            "routine",
                            "--by",
                            "Ann");
        }

        @Test
        void asksForWhatItsTaskCardSays() {
            assertThat(new NewJob("f", "ring", "7", "t", "front", "Ann", "", List.of()).command())
                    .endsWith("--card", "front");
        }

        @Test
        void keepsManualHoursAndScopeTipAsFacts() {
            assertThat(job.entries())
                    .containsExactly("fact manual Chapter 72", "fact hours 8412,6", "fact \"scope tip\" fwd");
        }

        @Test
        void namesTheFirstThingThatIsMissing() {
            assertThat(job.missing(Workshop.ENGLISH)).isEmpty();
            assertThat(new NewJob("f", "ring", " ", "t", "", "", "", List.of()).missing(Workshop.ENGLISH))
                    .hasValue("Serial number is missing; fill it in.");
        }
    }

    @Nested
    class AFinding {

        @Test
        void isAnEntryAtTheSelectedCellAndOneForItsPicture() {
            Workshop workshop = Workshop.in(folder);
            workshop.picture("my scope.jpg");
            try (Session session = workshop.counting()) {
                FindingForm form = new FindingForm(
                        session.state(),
                        new CellAt("r", 5, 1),
                        Kind.DENT,
                        new FindingForm.Sizes("1,2", "", "", "0.1", LengthUnit.MM),
                        "my scope.jpg");

                assertThat(form.entries())
                        .containsExactly("dent 5 tip length 1,2 ± 0.1", "photo \"my scope.jpg\" of 5 tip");
                form.entries().forEach(entry -> assertThat(session.say(entry)).isInstanceOf(Answer.Kept.class));
                assertThat(Notes.of(session.state(), Workshop.ENGLISH))
                        .singleElement()
                        .matches(note -> note.kind() == Notes.Kind.FINDING
                                && note.cell().orElseThrow().equals(new CellAt("r", 5, 1)));
            }
        }

        @Test
        void saysItsSizesInTheUnitInWhichTheyAreTyped() {
            try (Session session = Workshop.in(folder).counting()) {
                FindingForm form = new FindingForm(
                        session.state(),
                        new CellAt("r", 5, 1),
                        Kind.NICK,
                        new FindingForm.Sizes("0.05", "", "0.02", "0.004", LengthUnit.IN),
                        "");

                assertThat(form.entries()).containsExactly("nick 5 tip length 0.05 width 0.02 ± 0.004 in");
                assertThat(session.say(form.finding())).isInstanceOf(Answer.Kept.class);
            }
        }

        @Test
        void namesItsRowWhereAnotherIsInView() {
            try (Session session = Workshop.in(folder).counting()) {
                FindingForm form =
                        new FindingForm(session.state(), new CellAt("v", 3, 0), Kind.CRACK, FindingForm.Sizes.NONE, "");

                assertThat(form.entries()).containsExactly("v crack 3 all");
                assertThat(session.say("v crack 3 all")).isInstanceOf(Answer.Kept.class);
            }
        }
    }

    @Test
    void whatIsOpenIsListedUntilItIsSettledOrVoid() {
        try (Session session = Workshop.in(folder)
                .counting("recheck 3 tip streak", "refer is it within limits", "dent 2 tip 1", "dent 4 tip 1")) {
            session.say("settle 5 because answered");
            session.say("void 7 because wrong blade");

            assertThat(Notes.of(session.state(), Workshop.ENGLISH))
                    .extracting(Notes::entry, Notes::kind)
                    .containsExactly(
                            org.assertj.core.groups.Tuple.tuple(4, Notes.Kind.RECHECK),
                            org.assertj.core.groups.Tuple.tuple(6, Notes.Kind.FINDING));
        }
    }

    @Test
    void theNewestPictureOfAFolderIsFoundWhateverElseIsThere() throws IOException {
        picture("old.JPG", 10);
        picture("new.png", 20);
        picture("newer.txt", 30);
        Files.createDirectory(folder.resolve("newest.jpg"));

        assertThat(NewestPicture.in(folder)).hasValue("new.png");
        assertThat(NewestPicture.in(folder.resolve("nowhere"))).isEmpty();
    }

    private void picture(String name, long seconds) throws IOException {
        Files.setLastModifiedTime(
                Files.writeString(folder.resolve(name), "x"), FileTime.from(Instant.ofEpochSecond(seconds)));
    }

    @Test
    void onlyMoreThanTwoSecondsAwayAreAnInterruption() {
        Interruption interruption = new Interruption();

        assertThat(interruption.back(Workshop.NOW)).isFalse();
        interruption.left(Workshop.NOW);
        assertThat(interruption.back(Workshop.NOW.plusSeconds(2))).isFalse();
        interruption.left(Workshop.NOW);
        assertThat(interruption.back(Workshop.NOW.plusMillis(2001))).isTrue();
        assertThat(interruption.back(Workshop.NOW.plusSeconds(60))).isFalse();
    }

    @Nested
    class WhatWasChosen {

        @Test
        void isFoundAgain() {
            Choices choices = Choices.first(Locale.GERMAN)
                    .dark(true)
                    .gloves(false)
                    .strips(true)
                    .fromAhead(true)
                    .pictures(folder)
                    .by("Ann")
                    .place(List.of(-4, 20, 1280, 800))
                    .text(150)
                    .side(412)
                    .opened(folder.resolve("a"))
                    .opened(folder.resolve("b"))
                    .opened(folder.resolve("a"));
            choices = choices.left(new RecentJob(
                    folder.resolve("b"),
                    Optional.of(new RecentJob.Glance("Larkspur", "7", "a = look", "<1 %", 12, "2026-05-14"))));
            choices.write(folder.resolve("far/away.properties"));

            assertThat(Choices.read(folder.resolve("far/away.properties"), Locale.ENGLISH))
                    .isEqualTo(choices);
            assertThat(choices.recent())
                    .extracting(RecentJob::folder)
                    .containsExactly(folder.resolve("b"), folder.resolve("a"));
            assertThat(choices.opened(folder.resolve("a")).recent().get(1).told(Words.of(Locale.ENGLISH)))
                    .contains(
                            "Larkspur",
                            "7",
                            "a = look",
                            "<1 %",
                            "12",
                            "2026-05-14",
                            folder.resolve("b").toString());
        }

        @Test
        void ofAJobThatWasNotOpenedHereIsNotKept() {
            RecentJob sent = new RecentJob(folder.resolve("packed"), Optional.empty());

            assertThat(Choices.first(Locale.ENGLISH).left(sent).recent()).isEmpty();
        }

        @Test
        void startsAnewFromAFileThatCannotBeRead() throws IOException {
            Files.writeString(folder.resolve("bad"), "language=\\u00zz");

            assertThat(Choices.read(folder.resolve("bad"), Locale.ENGLISH)).isEqualTo(Choices.first(Locale.ENGLISH));
            assertThat(Choices.read(folder.resolve("missing"), Locale.ENGLISH))
                    .isEqualTo(Choices.first(Locale.ENGLISH));
        }
    }
}
