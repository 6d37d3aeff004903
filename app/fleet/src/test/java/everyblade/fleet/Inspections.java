package everyblade.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.record.Addition;
import everyblade.record.Beginning;
import everyblade.record.JobFolder;
import everyblade.record.Journal;
import everyblade.record.JournalLine;
import everyblade.record.JournalWriter;
import everyblade.record.LocalDisk;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** Job folders to try the store with; engine, serial and people are invented. */
final class Inspections {

    static final Instant TIME = Instant.parse("2026-03-01T08:00:00Z");

    /** Of an engine with one row of 24 blades, of which one view shows the tips alone. */
    static final byte[] ENGINE = """
            { "schema": "everyblade/engine-model/1", "id": "sedge-2", "name": "Sedge 2", "notice": "Invented.",
              "rows": [ { "id": "c1", "kind": "rotor", "count": 24 } ],
              "views": [ { "id": "p1-c1", "row": "c1", "reference": 90,
                           "window": { "halfWidth": 8, "shows": ["root", "tip"] } } ] }
            """.getBytes(StandardCharsets.UTF_8);

    private Inspections() {}

    /** A job that nobody else has. */
    static JobFolder started(Path place, String serial, Instant at) {
        JobFolder folder = new JobFolder(new LocalDisk(), place);
        Beginning beginning = new Beginning(
                at, "Ada Vane", "sedge-2", serial, "routine, Überholung", Settings.USUAL.values(), Optional.empty());
        assertThat(folder.start(beginning, ENGINE)).isEmpty();
        return folder;
    }

    static JobFolder started(Path place, String serial) {
        return started(place, serial, TIME);
    }

    /** Adds entries, each a minute after the one before. */
    static void log(JobFolder folder, String by, String... entries) {
        try (JournalWriter writer = writer(folder, by)) {
            int first = writer.opened().journal().lines().size();
            Instant begun = writer.opened().journal().beginning().at();
            List<Addition> batch = IntStream.range(0, entries.length)
                    .mapToObj(i -> said(entries[i], by, begun.plusSeconds(60L * (first + i + 1))))
                    .toList();
            assertThat(writer.append(batch)).isInstanceOf(JournalWriter.Kept.class);
        }
    }

    static JournalWriter writer(JobFolder folder, String by) {
        return ((JobFolder.Writable) folder.write(by, TIME)).writer();
    }

    private static Addition said(String text, String by, Instant at) {
        try {
            return new Addition(text, EntryParser.parse(text), at, by, false);
        } catch (Refusal refusal) {
            throw new IllegalArgumentException(text, refusal);
        }
    }

    /** So many notes. */
    static String[] notes(int first, int last) {
        return IntStream.rangeClosed(first, last)
                .mapToObj(number -> "note number " + number + ", with some words to it as people write them")
                .toArray(String[]::new);
    }

    static Journal journal(JobFolder folder) {
        return ((JobFolder.Readable) folder.read()).job().journal();
    }

    /** A picture that can be shown. */
    static byte[] picture(int colour) {
        try {
            BufferedImage image = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
            image.setRGB(3, 3, colour);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(image, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** All files of a job by their names, without what is only there while somebody writes. */
    static Map<String, String> files(JobFolder folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder.path())) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                if (!path.toString().endsWith(".lock")) {
                    files.put(
                            folder.path().relativize(path).toString(),
                            new String(Files.readAllBytes(path), StandardCharsets.ISO_8859_1));
                }
            }
        }
        return files;
    }

    /** What is computed of a job. */
    static JobFacts facts(JobFolder folder) {
        Journal journal = journal(folder);
        try {
            Fold fold = Fold.start(Engine.of(((Reading.Read) EngineJsonReader.read("engine.json", ENGINE)).model()));
            for (JournalLine line : journal.lines()) {
                Addition said = line.entry();
                fold = fold.with(new Logged(line.k(), said.at(), said.by(), said.live(), said.text(), said.means()));
            }
            Coverage coverage = Coverage.of(
                    fold.situation(), new Settings(journal.beginning().settings()));
            return JobFacts.of(
                    journal.head(),
                    fold,
                    coverage,
                    ClosingList.of(fold, coverage, Optional.empty(), List.of()),
                    Object::toString);
        } catch (Refusal refusal) {
            throw new IllegalArgumentException(refusal);
        }
    }
}
