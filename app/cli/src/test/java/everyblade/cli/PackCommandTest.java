package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackCommandTest {

    @TempDir
    Path folder;

    @TempDir
    Path temporary;

    Console console;

    @BeforeEach
    void aPackedJob() {
        console = Console.in(folder).with("TMPDIR", temporary.toString());
        console.job("view p-r", "datum r 1", "turn 100", "nick 3 tip 0.8", "note ok");
        assertThat(console.run("pack", "job", "--out", "job.zip").status()).isZero();
    }

    private byte[] zip() throws IOException {
        return Files.readAllBytes(console.file("job.zip"));
    }

    @Test
    void theZipSaysToEveryCommandWhatTheFolderSays() throws IOException {
        for (String command : List.of(
                "coverage --json",
                "review --json",
                "gaps",
                "findings",
                "close",
                "next",
                "photos",
                "verify",
                "map --out m.svg")) {
            List<String> words = List.of(command.split(" "));
            Ran ofFolder = run(words, "job");
            byte[] writtenOfFolder = written(words);
            Ran ofZip = run(words, "job.zip");

            assertThat(ofZip).as(command).isEqualTo(ofFolder);
            assertThat(ofZip.status()).isLessThan(2);
            assertThat(written(words)).isEqualTo(writtenOfFolder);
            assertThat(temporary).as("what is left of it").isEmptyDirectory();
        }
    }

    /** The ending by which a machine with the program installed opens it. */
    @Test
    void theEndingOfOurOwnIsThatOfThePackageAndGivesTheSameBytes() throws IOException {
        assertThat(Files.readString(Path.of("..", "installers", "src", "packed-job.properties")))
                .contains("extension=everyblade\n");

        assertThat(console.run("pack", "job", "--out", "job.everyblade").status())
                .isZero();

        assertThat(console.file("job.everyblade")).hasBinaryContent(zip());
        assertThat(console.run("coverage", "job.everyblade", "--json"))
                .isEqualTo(console.run("coverage", "job", "--json"));
    }

    private Ran run(List<String> words, String job) {
        return console.run(
                Stream.concat(Stream.of(words.get(0), job), words.stream().skip(1))
                        .toArray(String[]::new));
    }

    private byte[] written(List<String> words) throws IOException {
        return words.size() < 3 ? new byte[0] : Files.readAllBytes(console.file(words.get(2)));
    }

    @Test
    void theSameJobGivesTheSameBytesElsewhereAndLater() throws IOException {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            Path elsewhere = folder.resolve("ein Ordner/für später");
            Files.createDirectories(elsewhere);
            Files.move(console.file("job"), elsewhere.resolve("job"));
            assertThat(console.run("pack", elsewhere.resolve("job").toString(), "--out", "again.zip")
                            .status())
                    .isZero();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertThat(console.file("again.zip")).hasSameBinaryContentAs(console.file("job.zip"));
    }

    @Test
    void takesNothingThatBelongsToNoJobAndSaysSo() throws IOException {
        byte[] before = zip();
        console.write("job/wages.txt", "private");
        console.write("job/photos/.hidden", "private");

        Ran packed = console.run("pack", "job", "--out", "job.zip");

        assertThat(packed.errLines())
                .anySatisfy(line -> assertThat(line).startsWith("left out: wages.txt: "))
                .anySatisfy(line -> assertThat(line).startsWith("left out: photos/.hidden: "));
        assertThat(zip()).isEqualTo(before);
    }

    @Test
    void nothingIsAddedToAZip() throws IOException {
        byte[] before = zip();

        Ran logged = console.run("log", "job.zip", "look");

        assertThat(logged.status()).isEqualTo(2);
        assertThat(logged.errLines())
                .singleElement()
                .asString()
                .startsWith("job.zip: it is one file, not a job's folder");
        Ran reviewed = console.run("review", "job.zip", "--by", "Bo", "--question", "why?");
        assertThat(reviewed.status()).isEqualTo(2);
        assertThat(reviewed.errLines()).singleElement().asString().startsWith("review: the job is one file");
        assertThat(zip()).isEqualTo(before);
    }

    @Test
    void aPackedJobCanBeTheOneThatALaterJobIsComparedWith() {
        Ran started = console.startNext("later", "job.zip");

        assertThat(started.err()).isEmpty();
        assertThat(console.run("coverage", "later").status()).isZero();
    }

    @Test
    void aZipWithANameThatLeadsOutIsRefusedInALineAndNothingIsLeft() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("../outside"));
            zip.closeEntry();
        }
        console.write("job.zip", bytes.toByteArray());
        Map<String, String> before = console.everything();

        for (String command : List.of("coverage", "verify")) {
            Ran ran = console.run(command, "job.zip");
            assertThat(ran.status()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.errLines())
                    .singleElement()
                    .asString()
                    .startsWith("job.zip: \"../outside\" in it is no file of a job; name");
        }
        assertThat(console.everything()).isEqualTo(before);
        assertThat(temporary).isEmptyDirectory();
    }

    @Test
    void aFileThatIsNoZipIsRefusedInALine() {
        console.write("notes.txt", "nothing");
        Ran ran = console.run("gaps", "notes.txt");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.errLines()).singleElement().asString().contains("notes.txt: ", "it is no zip");
    }
}
