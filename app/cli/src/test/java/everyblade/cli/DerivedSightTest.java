package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was computed is kept where nobody else can put anything, and believed only where this user's program put it. */
class DerivedSightTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aComputedJob() {
        console = Console.in(folder)
                .with("EVERYBLADE_CACHE", folder.resolve("cache").toString());
        start("narrow", "job");
    }

    /** A job on one row, seen through a scope tip of this field. */
    private void start(String model, String job) {
        console.write(
                model + "/engine.json",
                SightCommandTest.BLADE.replace("\"cone\": 90", "\"cone\": " + (model.equals("narrow") ? 30 : 120)));
        assertThat(console.run("start", job, "--model", model, "--serial", "7", "--task", "look", "--by", "Ann")
                        .status())
                .isZero();
        assertThat(console.run("log", job, "view v", "datum c1 1", "round 1").status())
                .isZero();
    }

    private String coverage(String job) {
        Console.Ran ran = console.run("coverage", job, "--json");
        assertThat(ran.status()).isZero();
        return ran.out();
    }

    private List<Path> kept() throws IOException {
        return kept("sight");
    }

    private List<Path> kept(String kind) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
            return files.filter(file -> file.getFileName().toString().startsWith(kind + "-"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void readingAJobWritesNothingIntoIt() throws IOException {
        Map<String, String> before = console.everything();
        for (String command : List.of("coverage", "gaps", "next", "verify", "findings", "close")) {
            console.run(command, "job");
        }
        assertThat(console.everything()).allSatisfy((name, bytes) -> {
            if (!name.startsWith("cache")) {
                assertThat(before).containsEntry(name, bytes);
            }
        });
        assertThat(kept()).as("it is in the user's cache").isNotEmpty();
    }

    @Test
    void sightOfAnotherModelUnderTheNameOfThisOneChangesNothing() throws IOException {
        String honest = coverage("job");
        Path mine = kept().get(0);
        start("wide", "other");
        assertThat(coverage("other")).isNotEqualTo(honest);
        Path wide =
                kept().stream().filter(file -> !file.equals(mine)).findFirst().orElseThrow();

        Files.write(mine, Files.readAllBytes(wide));

        assertThat(coverage("job")).isEqualTo(honest);
    }

    /** What a command said is forgotten, so that it has to be told again from cells. */
    private String toldAgain(String job) throws IOException {
        for (Path answer : kept("answer")) {
            Files.delete(answer);
        }
        return coverage(job);
    }

    @Test
    void cellsOfAnotherModelUnderTheNameOfThoseOfThisOneChangeNothing() throws IOException {
        String honest = coverage("job");
        Path mine = kept("cells").get(0);
        start("wide", "other");
        assertThat(coverage("other")).isNotEqualTo(honest);
        Path wide = kept("cells").stream()
                .filter(file -> !file.equals(mine))
                .findFirst()
                .orElseThrow();

        Files.write(mine, Files.readAllBytes(wide));

        assertThat(toldAgain("job")).isEqualTo(honest);
    }

    @Test
    void cellsThatAreDamagedCutOrGoneChangeNothing() throws IOException {
        String honest = coverage("job");
        Path cells = kept("cells").get(0);
        byte[] whole = Files.readAllBytes(cells);
        for (int at = 0; at < whole.length; at += 97) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(cells, changed);
            assertThat(toldAgain("job")).as("byte %d", at).isEqualTo(honest);
            Files.write(cells, Arrays.copyOf(whole, at));
            assertThat(toldAgain("job")).as("cut at %d", at).isEqualTo(honest);
        }
        Files.delete(cells);
        assertThat(toldAgain("job")).isEqualTo(honest);
    }

    @Test
    void cellsOfAJournalThatWasDamagedSinceAreNotTold() throws IOException {
        coverage("job");
        console.write("job/journal.jsonl", console.read("job/journal.jsonl").replace("round 1", "round 2"));
        Console.Ran ran = console.run("coverage", "job", "--json");
        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.err()).contains("Damaged line");
    }

    @Test
    void afterAnEntryTheJobIsToldAsWithoutAnythingKept() throws IOException {
        coverage("job");
        console.run("log", "job", "skip 20", "here 4 ± 3", "nick 2 tip 0.4");
        String told = coverage("job");
        console = console.with("EVERYBLADE_CACHE", "");
        assertThat(told).isEqualTo(coverage("job"));
    }

    @Test
    void whatOneUserKeptMeansNothingToAnother() throws IOException {
        String honest = coverage("job");
        Path theirs = folder.resolve("theirs");
        Files.createDirectories(theirs);
        for (Path file : kept()) {
            Files.write(theirs.resolve(file.getFileName()), new byte[4000]);
        }
        console = console.with("EVERYBLADE_CACHE", theirs.toString());
        assertThat(coverage("job")).isEqualTo(honest);
    }

    @Test
    void withoutAnyPlaceToKeepItEverythingIsComputedAndNothingSaid() {
        String honest = coverage("job");
        for (String nowhere :
                List.of("", folder.resolve("narrow/engine.json/cache").toString())) {
            console = console.with("EVERYBLADE_CACHE", nowhere);
            Console.Ran ran = console.run("coverage", "job", "--json");
            assertThat(ran.out()).isEqualTo(honest);
            assertThat(ran.err()).isEmpty();
        }
    }
}
