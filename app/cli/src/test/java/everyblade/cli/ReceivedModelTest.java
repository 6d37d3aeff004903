package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** An engine model that somebody else made, and a job that was sent: nothing in them is waited for or followed. */
@Timeout(60)
class ReceivedModelTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aModelAndAJob() {
        console = Console.in(folder);
        console.job("view p-r", "datum r 1", "look");
    }

    private void pipe(String name) throws IOException, InterruptedException {
        Files.deleteIfExists(console.file(name));
        assumeThat(new ProcessBuilder("mkfifo", console.file(name).toString())
                        .start()
                        .waitFor())
                .isZero();
    }

    private void toldInOneLine(String... arguments) {
        Ran ran = console.run(arguments);
        assertThat(ran.status()).isNotZero();
        assertThat(ran.out().lines().count() + ran.err().lines().count()).isEqualTo(1);
    }

    @Test
    void aModelThatIsAPipeIsRefused() throws Exception {
        pipe("ring/engine.json");
        toldInOneLine("check", "ring");
        toldInOneLine("start", "other", "--model", "ring", "--serial", "1", "--task", "t", "--by", "Ann");
        assertThat(console.file("other")).doesNotExist();
    }

    @Test
    void aModelThatIsALinkIsRefused() throws IOException {
        Path elsewhere = console.file("elsewhere.json");
        Files.move(console.file("ring/engine.json"), elsewhere);
        Files.createSymbolicLink(console.file("ring/engine.json"), elsewhere);
        toldInOneLine("start", "other", "--model", "ring", "--serial", "1", "--task", "t", "--by", "Ann");

        Files.delete(console.file("ring/engine.json"));
        Files.createLink(console.file("ring/engine.json"), elsewhere);
        toldInOneLine("start", "other", "--model", "ring", "--serial", "1", "--task", "t", "--by", "Ann");
        assertThat(console.file("other")).doesNotExist();
    }

    @Test
    void aMeshThatIsALinkOrAPipeIsRefused() throws Exception {
        String model = Console.RING.replace(
                "\"spanBands\": 1,",
                "\"spanBands\": 1, \"shape\": { \"type\": \"mesh\", \"file\": \"shapes/vane.ply\" },");
        console.write("ring/engine.json", model);
        console.write("ring/shapes/vane.ply", "ply");
        pipe("ring/shapes/vane.ply");
        toldInOneLine("start", "other", "--model", "ring", "--serial", "1", "--task", "t", "--by", "Ann");

        Files.delete(console.file("ring/shapes/vane.ply"));
        Files.delete(console.file("ring/shapes"));
        console.write("secrets/vane.ply", "ply");
        Files.createSymbolicLink(console.file("ring/shapes"), console.file("secrets"));
        toldInOneLine("start", "other", "--model", "ring", "--serial", "1", "--task", "t", "--by", "Ann");
        assertThat(console.file("other")).doesNotExist();
    }

    @Test
    void noCommandWaitsForAPipeInAJob() throws Exception {
        for (String name : new String[] {"job/journal.jsonl", "job/model/engine.json"}) {
            byte[] before = Files.readAllBytes(console.file(name));
            pipe(name);
            for (String command : new String[] {"verify", "coverage", "gaps", "next", "findings", "close", "photos"}) {
                toldInOneLine(command, "job");
            }
            toldInOneLine("log", "job", "look");
            Files.delete(console.file(name));
            Files.write(console.file(name), before);
        }
    }

    @Test
    void aLockThatIsALinkEmptiesNoFileOfSomebodyElse() throws IOException {
        console.write("foreign.txt", "theirs");
        Files.deleteIfExists(console.file("job/writer.lock"));
        Files.createSymbolicLink(console.file("job/writer.lock"), console.file("foreign.txt"));
        toldInOneLine("log", "job", "look");
        assertThat(console.read("foreign.txt")).isEqualTo("theirs");
    }
}
