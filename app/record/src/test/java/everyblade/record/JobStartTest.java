package everyblade.record;

import static everyblade.record.Jobs.entries;
import static everyblade.record.Jobs.read;
import static everyblade.record.Jobs.started;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
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

        Optional<Problem> problem = folder.start(Samples.BEGINNING, Samples.ENGINE);

        assertThat(problem.orElseThrow().message())
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
}
