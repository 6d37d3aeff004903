package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import everyblade.cli.Console.Ran;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is wrong: one line says it, the exit status is 2, and nothing has changed. */
class WrongUseTest {

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void folders() {
        console = Console.in(folder);
        console.job("view p-r", "datum r 1");
        console.write("plain.txt", "nothing");
        console.write("empty/placeholder", "");
        console.write("folder.svg/placeholder", "");
        console.write("limits.json", "{ \"schema\": \"everyblade/limits/1\" }");
        console.write("other.json", "{ \"schema\": \"everyblade/other/1\" }");
        console.write("cut.json", "{ \"schema\": ");
        String journal = console.read("job/journal.jsonl");
        damaged("cut", journal.substring(0, 40));
        damaged("changed", journal.replace("datum r 1", "datum r 2"));
        damaged("future", journal.replace("everyblade/journal/1", "everyblade/journal/2"));
        damaged("noise", "\u0000\u0001{]\n");
        damaged("nothing", "");
        console.write("unmodelled/journal.jsonl", journal);
        console.write("remodelled/journal.jsonl", journal);
        console.write("remodelled/model/engine.json", Console.RING.replace("12", "13"));
    }

    private void damaged(String name, String journal) {
        console.write(name + "/journal.jsonl", journal);
        console.write(name + "/model/engine.json", Console.RING);
    }

    static Stream<Arguments> wrongUses() {
        return Stream.of(
                use("there is neither a command nor a job folder covrage", "covrage", "job"),
                use("there is no screen to open a window on"),
                use("there is no screen to open a window on", "job"),
                use("one window opens one job", "job", "job"),
                use(
                        "everyblade coverage: Missing required parameter: 'JOB'; see everyblade coverage --help",
                        "coverage"),
                use("Unknown option: '--jsn'", "coverage", "job", "--jsn"),
                use("Unmatched argument", "coverage", "job", "job"),
                use("Unknown option: '--models!'", "models", "--models!"),
                use("Missing required parameter for option '--models'", "models", "--models"),
                use("there is no such folder", "models", "--models", "nowhere"),
                use("there is no journal.jsonl in it", "coverage", "empty"),
                use("there is no journal.jsonl in it", "gaps", "nowhere"),
                use("there is no journal.jsonl in it", "verify", "plain.txt"),
                use("there is no journal.jsonl in it", "log", "plain.txt/below", "look"),
                use("journal.jsonl line 1: it has no newline", "coverage", "cut"),
                use("journal.jsonl line 1: it has no newline", "coverage", "nothing"),
                use("journal.jsonl line 3: its hash does not fit", "log", "changed", "look"),
                use("it is of version 2.0, this program reads version 1", "gaps", "future"),
                use("journal.jsonl line 1", "coverage", "noise"),
                use("model/engine.json: it is not there", "coverage", "unmodelled"),
                use("Engine model changed", "log", "remodelled", "look"),
                use("this is no hash", "verify", "job", "--head", "abc"),
                use("no entry is given", "log", "job"),
                use("two ways", "log", "job", "look", "--follow"),
                use("two ways", "log", "job", "look", "--file", "plain.txt"),
                use("leave out --at", "log", "job", "--follow", "--at", "2026-01-01T00:00:00Z"),
                use("is no time that can be told", "log", "job", "look", "--at", "yesterday"),
                use("is no time that can be told", "log", "job", "look", "--at", "2026-01-01T00:00:00"),
                use("there is nothing in it", "log", "job", "look", "--by", " "),
                use("nowhere.txt: it cannot be read", "log", "job", "--file", "nowhere.txt"),
                use("empty: it cannot be read", "log", "job", "--file", "empty"),
                use("plain.txt:1:1: refused: \"nothing\"", "log", "job", "--file", "plain.txt"),
                use(
                        "\"trun on 3\", column 1: \"trun\" is not an entry; did you mean \"turn\"?",
                        "log",
                        "job",
                        "trun on 3"),
                use("column 6: row r has blades 1 to 12, no 13", "log", "job", "here 13"),
                use("@plain.txt", "log", "job", "@plain.txt"),
                use("Unknown option: '--x'", "log", "job", "--x"),
                use("\"--x\", column 1", "log", "job", "--", "--x"),
                use("\"\", column 1", "log", "job", ""),
                use("there is no engine model of that id", start("new", "--model", "nobody")),
                use("it is refused", start("new", "--model", "cut.json")),
                use(
                        "Missing required options: '--serial=S', '--by=NAME'",
                        "start",
                        "new",
                        "--model",
                        "ring",
                        "--task",
                        "t"),
                use("something is there already", start("job", "--model", "ring")),
                use("something is there already", start("plain.txt", "--model", "ring")),
                use("Job not started", start("plain.txt/below", "--model", "ring")),
                use("there is no setting foo", start("new", "--model", "ring", "--set", "foo=1")),
                use("there is no value in it", start("new", "--model", "ring", "--set", "seen")),
                use("goes from 0.01 to 1, not 2", start("new", "--model", "ring", "--set", "seen=2")),
                use("it is given twice", start("new", "--model", "ring", "--set", "detail=1", "--detail", "2")),
                use("\"1e3\" is no number of mm", start("new", "--model", "ring", "--detail", "1e3")),
                use("write 1.250 or 1250", start("new", "--model", "ring", "--set", "detail=1,250")),
                use("\"5kg\" is no number of s", start("new", "--model", "ring", "--least-view", "5kg")),
                use("there is no journal.jsonl in it", start("new", "--model", "ring", "--previous", "empty")),
                use("limits.json:1:1: missing-key", start("new", "--model", "ring", "--limits", "limits.json")),
                use("this is no file of limits", start("new", "--model", "ring", "--limits", "other.json")),
                use("cut.json:1:13: unclosed", start("new", "--model", "ring", "--limits", "cut.json")),
                use("it cannot be read", start("new", "--model", "ring", "--limits", "nowhere.json")),
                use("nowhere is not there", "check", "nowhere"),
                use("holds no engine model", "check", "empty"),
                use("--model is for a file of limits", "check", "ring", "--model", "ring"),
                use("it is not said what kind of file", "map", "job", "--out", "map.gif"),
                use("its folder is not there", "map", "job", "--out", "nowhere/map.svg"),
                use("its folder is not there", "map", "job", "--out", "plain.txt/map.svg"),
                use("something is there that is no file", "map", "job", "--out", "folder.svg"),
                use("this engine has no such row; it has r, v", "map", "job", "--out", "map.svg", "--row", "x"),
                use("there is no journal.jsonl in it", "map", "empty", "--out", "map.svg"),
                use("there is no journal.jsonl in it", "next", "empty", "--json"),
                use("its folder is not there", "report", "job", "--out", "nowhere/r.pdf"),
                use("Missing required option: '--out=F.pdf'", "report", "job"),
                use("view p-r has no station", "sight", "ring", "--view", "p-r", "--detail", "1", "--json"),
                use("this engine has no such view; it has p-r, p-v", "sight", "ring", "--view", "x"),
                use("row r has no shape", "mesh", "ring", "--row", "r", "--out", "r.ply", "--walls"),
                use("this engine has no such row; it has r, v", "mesh", "ring", "--row", "x", "--out", "r.ply"));
    }

    private static Arguments use(String said, String... arguments) {
        return arguments(List.of(arguments), said);
    }

    private static String[] start(String job, String... more) {
        return Stream.concat(Stream.of("start", job, "--serial", "7", "--task", "t", "--by", "Ann"), Stream.of(more))
                .toArray(String[]::new);
    }

    @ParameterizedTest
    @MethodSource("wrongUses")
    void isToldInOneLineAndChangesNothing(List<String> arguments, String said) {
        var before = console.everything();

        Ran ran = console.run(arguments.toArray(String[]::new));

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.errLines()).singleElement().asString().contains(said);
        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void mayBeAnyBytesInPlaceOfAJournal() {
        console.write("job/journal.jsonl", "\uFFFF\r\u0085\n{}\n".getBytes(StandardCharsets.UTF_16));

        Ran ran = console.run("coverage", "job");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.errLines()).hasSize(1);
    }

    @Test
    void ofTheProgramItselfLeavesItsDetailsInAFileIfOneIsNamed() {
        Console faulty = console.with("EVERYBLADE_DEBUG", "details.txt").with((everyblade.record.Disk) null);

        Ran ran = faulty.run("coverage", "job");

        assertThat(ran.status()).isEqualTo(2);
        assertThat(ran.errLines())
                .singleElement()
                .asString()
                .startsWith("everyblade: stopped by a fault of the program, java.lang.NullPointerException")
                .endsWith("the details are in " + console.file("details.txt"));
        assertThat(console.read("details.txt")).contains("\tat everyblade.");
    }

    @Test
    void ofTheProgramItselfSaysHowToHaveTheDetails() {
        Ran ran = console.with((everyblade.record.Disk) null).run("coverage", "job");

        assertThat(ran.errLines()).singleElement().asString().contains("set EVERYBLADE_DEBUG to the name of a file");
    }
}
