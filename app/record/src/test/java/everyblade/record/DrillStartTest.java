package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillStartTest {

    private static final byte[] DRILL = "{}".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path temp;

    private JobFolder drill;

    @BeforeEach
    void aDrill() {
        drill = new JobFolder(new LocalDisk(), temp.resolve("drill"), RecordKind.DRILL);
        assertThat(drill.start(
                        Samples.BEGINNING,
                        new Frozen(
                                FrozenFile.of(Samples.ENGINE),
                                Collections.emptySortedMap(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of(FrozenFile.of(DRILL)))))
                .isEmpty();
    }

    private static String refusal(JobFolder.Reading reading) {
        assertThat(reading).isInstanceOf(JobFolder.Refused.class);
        return English.said(((JobFolder.Refused) reading).problem());
    }

    @Test
    void a_drill_keeps_the_same_entries_in_the_same_way_as_a_job() {
        try (JournalWriter writer = Jobs.writer(drill)) {
            Jobs.keep(writer, Samples.notes(1, 1));
        }

        Job read = Jobs.read(drill);
        assertThat(read.journal().lines()).hasSize(1);
        assertThat(read.drill().orElseThrow().bytes()).isEqualTo(DRILL);
    }

    @Test
    void no_job_is_made_of_a_drill_and_no_drill_of_a_job() {
        JobFolder job = Jobs.started(new JobFolder(new LocalDisk(), temp.resolve("job")));

        assertThat(refusal(new JobFolder(new LocalDisk(), drill.path()).read()))
                .startsWith("A drill, not a job: journal.jsonl line 1: it was made for practice")
                .contains("everyblade drill");
        assertThat(refusal(new JobFolder(new LocalDisk(), job.path(), RecordKind.DRILL).read()))
                .startsWith("A job, not a drill: journal.jsonl line 1:");
        assertThat(new JobFolder(new LocalDisk(), drill.path()).verify(Optional.empty()))
                .isInstanceOf(JobFolder.Broken.class);
        assertThat(new JobFolder(new LocalDisk(), drill.path()).write("Ada Vane", Samples.TIME))
                .isInstanceOf(JobFolder.Refused.class);
    }

    @Test
    void a_drill_whose_journal_was_relabelled_is_neither() throws IOException {
        Path journal = drill.path().resolve("journal.jsonl");
        Files.writeString(journal, Files.readString(journal).replace("everyblade/drill/1", "everyblade/journal/1"));

        assertThat(refusal(new JobFolder(new LocalDisk(), drill.path()).read())).startsWith("Damaged line");
    }

    @Test
    void a_drill_that_was_exchanged_is_refused() throws IOException {
        Files.writeString(drill.path().resolve("drill/drill.json"), "{ }");

        assertThat(refusal(drill.read())).startsWith("Drill changed: drill/drill.json");
    }
}
