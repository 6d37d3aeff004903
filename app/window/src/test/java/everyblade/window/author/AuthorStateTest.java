package everyblade.window.author;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.words.Words;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuthorStateTest {

    @TempDir
    Path folder;

    private Bench bench;
    private AuthorState valid;

    @BeforeEach
    void readOnce() {
        bench = new Bench(folder.resolve("sedge-2"));
        valid = bench.after(bench.first(), Bench.MODEL, Bench.FIRST);
    }

    private static String told(AuthorState state) {
        return StatusLine.of(state, Words.of(Locale.ENGLISH), ZoneOffset.UTC).text();
    }

    @Nested
    class WhatIsDrawn {

        @Test
        void isTheModelThatWasRead() {
            assertThat(valid.sheet().orElseThrow().title()).isEqualTo("Sedge 2 (sedge-2)");
        }

        @Test
        void staysWhileTheTextIsBroken() {
            AuthorState broken = bench.after(valid, Bench.BROKEN, Bench.LATER);

            assertThat(broken.drawn()).isEqualTo(valid.drawn());
            assertThat(broken.sheet()).isEqualTo(valid.sheet());
            assertThat(broken.last().orElseThrow().errors()).isEqualTo(1);
        }

        @Test
        void isRenewedOnceItIsMended() {
            AuthorState broken = bench.after(valid, Bench.BROKEN, Bench.LATER);
            AuthorState mended = bench.after(broken, Bench.MODEL.replace("Sedge 2", "Sedge 3"), Bench.LATER);

            assertThat(mended.sheet().orElseThrow().title()).isEqualTo("Sedge 3 (sedge-2)");
        }
    }

    @Nested
    class WhatIsChosen {

        @Test
        void isAtFirstTheFirstRowWithAShapeAndTheFirstStationThatCanBeComputed() {
            assertThat(valid.row()).contains("c1");
            assertThat(valid.from()).contains(Bench.at("p1-c1", "mid"));
        }

        @Test
        void staysWhenTheFileIsSavedAgain() {
            AuthorState chosen = valid.with(
                            AuthorState.sheet(valid.drawn().orElseThrow(), Optional.of("s1"), Words.of(Locale.ENGLISH)))
                    .from(Bench.at("p1-s1", null));
            AuthorState again = bench.after(chosen, Bench.MODEL, Bench.LATER);

            assertThat(again.row()).contains("s1");
            assertThat(again.from()).contains(Bench.at("p1-s1", null));
        }

        @Test
        void goesBackToTheFirstWhenItIsNoLongerThere() {
            AuthorState renamed = bench.after(
                    valid, Bench.MODEL.replace("\"mid\"", "\"low\"").replace("\"c1\"", "\"k1\""), Bench.LATER);

            assertThat(renamed.row()).contains("k1");
            assertThat(renamed.from()).contains(Bench.at("p1-c1", "low"));
        }

        @Test
        void saysWhyNothingCanBeComputedFromThere() {
            assertThat(valid.whyNoSight()).isEmpty();
            assertThat(valid.from(Bench.at("p1-s1", null)).whyNoSight()).contains("author.sight.noStation");
        }
    }

    @Nested
    class TheStatus {

        @Test
        void saysThatNothingWasReadYet() {
            assertThat(told(bench.first())).isEqualTo("Reading the folder …");
        }

        @Test
        void saysThatTheModelIsValidAndWhenItWasRead() {
            assertThat(told(valid)).isEqualTo("Valid, read at 06:00:00");
        }

        @Test
        void countsTheErrorsAndSaysOfWhenTheDrawingsAre() {
            assertThat(told(bench.after(valid, Bench.BROKEN, Bench.LATER)))
                    .isEqualTo("1 error; the drawings are of the last valid state, read at 06:00:00");
            assertThat(told(bench.after(valid, Bench.BROKEN.replace("\"r\": 85", "\"r\": \"85\""), Bench.LATER)))
                    .startsWith("2 errors; ");
        }

        @Test
        void countsWarningsOfAValidModel() {
            assertThat(told(bench.after(valid, Bench.MODEL.replace(", \"source\": \"invented\"", ""), Bench.LATER)))
                    .isEqualTo("Valid, with 1 warning, read at 06:01:10");
        }

        @Test
        void saysThatAFlawedModelIsDrawnAsItStands() {
            String flawed = Bench.MODEL.replace("\"x\": 15, \"r\": 85", "\"x\": 15, \"r\": 130");
            AuthorState state = bench.after(valid, flawed, Bench.LATER);

            assertThat(told(state)).endsWith("the drawings show the model as it stands, read at 06:01:10");
            assertThat(told(bench.after(state, Bench.BROKEN, Bench.LATER.plusSeconds(1))))
                    .endsWith("the drawings are of the last state that could be read, at 06:01:10");
        }

        @Test
        void saysThatNothingCanBeDrawnYet() {
            assertThat(told(bench.after(bench.first(), "{", Bench.LATER)))
                    .endsWith("; nothing can be drawn yet, read at 06:01:10");
        }

        @Test
        void saysThatTheFolderIsGoneWhileItsDrawingsStay() {
            Attempt gone = new ModelFolder(folder.resolve("moved")).read(ModelFolder.files(), Bench.LATER);

            assertThat(told(valid.broken(gone)))
                    .isEqualTo(
                            "The folder is gone; it is looked for again and again; the drawings are of the last valid"
                                    + " state, read at 06:00:00");
        }
    }
}
