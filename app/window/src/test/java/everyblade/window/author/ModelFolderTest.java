package everyblade.window.author;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Progress;
import everyblade.json.Problem;
import everyblade.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ModelFolderTest {

    @TempDir
    Path folder;

    private Bench bench() {
        return new Bench(folder.resolve("sedge-2"));
    }

    @Nested
    class WhatIsOne {

        @Test
        void aFolderWithAModel() {
            bench().save(Bench.MODEL);

            assertThat(ModelFolder.isOne(bench().folder())).isTrue();
            assertThat(ModelFolder.isOne(folder)).isFalse();
        }

        @Test
        void notAJobWhichHasAJournal() throws IOException {
            bench().save(Bench.MODEL);
            Files.writeString(bench().folder().resolve("journal.jsonl"), "");

            assertThat(ModelFolder.isOne(bench().folder())).isFalse();
        }
    }

    @Nested
    class Read {

        @Test
        void givesTheModelAndNothingToMend() {
            Attempt attempt = bench().read(Bench.MODEL, Bench.FIRST);

            assertThat(attempt.problems()).isEmpty();
            assertThat(attempt.model()).hasValueSatisfying(read -> {
                assertThat(read.model().id()).isEqualTo("sedge-2");
                assertThat(read.at()).isEqualTo(Bench.FIRST);
                assertThat(read.sound()).isTrue();
            });
        }

        @Test
        void saysWhereAMistakeStands() {
            Attempt attempt = bench().read(Bench.BROKEN, Bench.FIRST);

            assertThat(attempt.model()).isEmpty();
            assertThat(attempt.errors()).isEqualTo(1);
            Problem problem = attempt.problems().get(0);
            assertThat(problem.code()).isEqualTo("quoted-number");
            TextMark mark = TextMark.of(attempt.text(), problem);
            assertThat(attempt.text().substring(mark.start(), mark.end())).isEqualTo("\"24\"");
        }

        @Test
        void givesTheModelToBeDrawnThoughItsSurfacesAreWrong() {
            Attempt attempt = bench().read(
                            Bench.MODEL
                                    .replace("\"shape\": { \"type\": \"axial\"", "\"shape\": { \"type\": \"mesh\"")
                                    .replaceAll("(?s)\"sections\": \\[.*?\\] \\} \\},", "\"file\": \"c1.ply\" } },"),
                            Bench.FIRST);

            assertThat(attempt.problems()).extracting(Problem::code).containsExactly("missing-mesh");
            assertThat(attempt.model())
                    .hasValueSatisfying(read -> assertThat(read.sound()).isFalse());
        }

        @Test
        void tellsViewsThatSeeNothingOnceThatIsAskedFor() {
            Attempt attempt = bench().read(
                            Bench.MODEL.replace("\"forward\": [1, -0.3, 0]", "\"forward\": [-1, -0.3, 0]"),
                            Bench.FIRST);

            assertThat(attempt.problems()).isEmpty();
            assertThat(attempt.checkedViews(Progress.NONE, Words.of(Locale.ENGLISH))
                            .problems())
                    .extracting(Problem::code)
                    .containsExactly("sees-nothing");
            assertThat(attempt.checkedViews(Progress.NONE, Words.of(Locale.ENGLISH))
                            .model()
                            .orElseThrow()
                            .sound())
                    .isTrue();
        }

        @Test
        void canBeStoppedWhileViewsAreChecked() {
            Attempt attempt = bench().read(Bench.MODEL, Bench.FIRST);
            Progress stopped = new Progress() {
                @Override
                public boolean cancelled() {
                    return true;
                }
            };

            Assertions.assertThatThrownBy(() -> attempt.checkedViews(stopped, Words.of(Locale.ENGLISH)))
                    .isInstanceOf(CancellationException.class);
        }

        @Test
        void ofAnEmptyFileSaysSo() {
            Attempt attempt = bench().read("", Bench.FIRST);

            assertThat(attempt.there()).isTrue();
            assertThat(attempt.problems()).extracting(Problem::code).containsExactly("empty-file");
        }

        @Test
        void ofAFolderThatIsGoneSaysSo() {
            Attempt attempt = bench().model().read(ModelFolder.files(), Bench.FIRST);

            assertThat(attempt.there()).isFalse();
            assertThat(attempt.text()).isEmpty();
            assertThat(attempt.problems()).extracting(Problem::code).containsExactly("no-such-file");
        }
    }
}
