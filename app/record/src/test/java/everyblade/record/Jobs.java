package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder.Readable;
import everyblade.record.JobFolder.Writable;
import everyblade.record.JobFolder.Writing;
import everyblade.record.JournalWriter.Appended;
import everyblade.record.JournalWriter.Kept;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/** What every test of a job does, with the outcome that it takes for granted. */
final class Jobs {

    private Jobs() {}

    static JobFolder started(JobFolder folder) {
        assertThat(folder.start(Samples.BEGINNING, Samples.ENGINE)).isEmpty();
        return folder;
    }

    static JournalWriter writer(JobFolder folder) {
        Writing writing = folder.write("Ada Vane", Samples.TIME);
        assertThat(writing).isInstanceOf(Writable.class);
        return ((Writable) writing).writer();
    }

    static List<JournalLine> keep(JournalWriter writer, List<Addition> batch) {
        Appended appended = writer.append(batch);
        assertThat(appended).isInstanceOf(Kept.class);
        return ((Kept) appended).lines();
    }

    static List<JournalLine> keep(JobFolder folder, Addition... batch) {
        try (JournalWriter writer = writer(folder)) {
            return keep(writer, Arrays.asList(batch));
        }
    }

    static Job read(JobFolder folder) {
        JobFolder.Reading reading = folder.read();
        assertThat(reading).isInstanceOf(Readable.class);
        return ((Readable) reading).job();
    }

    /** What comes of reading a journal of these bytes. */
    static Journal.Reading reading(byte[] journal) {
        try {
            return Journal.read(new ByteArrayInputStream(journal));
        } catch (IOException impossible) {
            throw new AssertionError("bytes can be read", impossible);
        }
    }

    static List<Addition> entries(JobFolder folder) {
        return read(folder).journal().lines().stream().map(JournalLine::entry).toList();
    }
}
