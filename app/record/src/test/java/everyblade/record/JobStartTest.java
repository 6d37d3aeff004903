package everyblade.record;

import static everyblade.record.Jobs.entries;
import static everyblade.record.Jobs.read;
import static everyblade.record.Jobs.started;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobStartTest {

    @TempDir
    Path temp;

    private JobFolder folder;

    @BeforeEach
    void aPlaceForAJob() {
        folder = new JobFolder(new LocalDisk(), temp.resolve("job"));
    }

    private Path file(String name) {
        return folder.path().resolve(name);
    }

    private List<String> around() throws IOException {
        try (Stream<Path> paths = Files.walk(temp)) {
            return paths.filter(path -> !path.equals(temp))
                    .map(path -> temp.relativize(path).toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void makesAFolderWithJournalModelAndPhotosAndNothingBesideIt() throws IOException {
        started(folder);

        assertThat(around())
                .containsExactly("job", "job/journal.jsonl", "job/model", "job/model/engine.json", "job/photos");
        assertThat(read(folder).journal().beginning()).isEqualTo(Samples.BEGINNING);
        assertThat(read(folder).model().bytes()).isEqualTo(Samples.ENGINE);
    }

    @Test
    void makesMissingParents() {
        started(new JobFolder(new LocalDisk(), temp.resolve("2026/march/job")));

        assertThat(temp.resolve("2026/march/job/journal.jsonl")).exists();
    }

    @Test
    void takesAnEmptyFolder() throws IOException {
        Files.createDirectory(folder.path());

        started(folder);

        assertThat(entries(folder)).isEmpty();
    }

    @Test
    void refusesAFolderWithAnythingInItAndLeavesItAlone() throws IOException {
        Files.createDirectory(folder.path());
        Files.writeString(file("mine.txt"), "mine");

        Optional<RecordProblem> problem = folder.start(Samples.BEGINNING, Samples.ENGINE);

        assertThat(English.said(problem.orElseThrow()))
                .isEqualTo("Job not started: " + folder.path()
                        + ": something is there already; name a folder that is not there yet");
        assertThat(around()).containsExactly("job", "job/mine.txt");
    }

    @Test
    void refusesAPlaceTakenByAFile() throws IOException {
        Files.writeString(folder.path(), "mine");

        assertThat(folder.start(Samples.BEGINNING, Samples.ENGINE)).isPresent();
        assertThat(around()).containsExactly("job");
    }

    @Nested
    class WhatIsFrozenBesideTheModel {

        private static final byte[] LIMITS = "{\"schema\":\"everyblade/limits/1\"}".getBytes(StandardCharsets.UTF_8);

        private static final byte[] MESH = "ply".getBytes(StandardCharsets.UTF_8);

        private PreviousRecord earlier;

        @BeforeEach
        void anEarlierRecord() {
            JobFolder last = started(new JobFolder(new LocalDisk(), temp.resolve("last")));
            Jobs.keep(last, Samples.note(1));
            earlier = ((JobFolder.Copied) last.copy()).record();
            Frozen frozen = new Frozen(
                    FrozenFile.of(Samples.ENGINE),
                    new TreeMap<>(Map.of("shapes/blade.ply", FrozenFile.of(MESH))),
                    Optional.of(FrozenFile.of(LIMITS)),
                    Optional.of(earlier));
            assertThat(folder.start(Samples.BEGINNING, frozen)).isEmpty();
        }

        @Test
        void isNamedByItsHashInTheFirstLine() {
            Journal journal = read(folder).journal();

            assertThat(journal.limitsHash()).contains(Chain.sha256(LIMITS));
            assertThat(journal.meshHashes()).containsExactly(Map.entry("shapes/blade.ply", Chain.sha256(MESH)));
            assertThat(journal.previousHead()).contains(earlier.head());
        }

        @Test
        void isReadWithTheJob() {
            assertThat(read(folder).limits().orElseThrow().bytes()).isEqualTo(LIMITS);
            assertThat(read(folder).meshes().get("shapes/blade.ply").bytes()).isEqualTo(MESH);
            assertThat(read(folder).previous().orElseThrow().journal().lines())
                    .extracting(JournalLine::text)
                    .containsExactly("note number 1");
        }

        @Test
        void staysThereWhenTheEarlierJobIsGone() throws IOException {
            Files.delete(temp.resolve("last/journal.jsonl"));

            assertThat(read(folder).previous()).isPresent();
        }

        @Test
        void isMissedWhenItWasChangedOrIsGone() throws IOException {
            Path mesh = file("model/" + Chain.sha256(MESH));
            Files.writeString(mesh, "another");
            assertThat(problem()).startsWith("Shape changed: model/");
            Files.write(mesh, MESH);
            Files.writeString(file("limits/limits.json"), "{}");
            assertThat(problem()).startsWith("Limits changed: limits/limits.json");
            Files.delete(file("limits/limits.json"));
            assertThat(problem()).startsWith("File not read: limits/limits.json");
            Files.write(file("limits/limits.json"), LIMITS);
            Files.writeString(file("previous/journal.jsonl"), "", StandardOpenOption.TRUNCATE_EXISTING);
            assertThat(problem()).startsWith("Damaged line: previous/journal.jsonl");
        }

        @Test
        void isMissedWhenTheEarlierRecordWasCutShort() throws IOException {
            String first = Files.readAllLines(file("previous/journal.jsonl")).get(0) + "\n";
            Files.writeString(file("previous/journal.jsonl"), first);

            assertThat(problem()).startsWith("Previous record changed: previous/journal.jsonl");
        }

        private String problem() {
            return English.said(((JobFolder.Refused) folder.read()).problem());
        }
    }
}
