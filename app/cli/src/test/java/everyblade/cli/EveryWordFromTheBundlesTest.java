package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.core.entry.Kind;
import everyblade.core.entry.Settings;
import everyblade.session.Opening;
import everyblade.session.PseudoLanguage;
import everyblade.session.photo.CameraPicture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/**
 * Commands in a language of which every letter is marked: a plain word is one that somebody wrote outside the bundles. All
 * data of the job here are words of at most three letters, so that what is left are the words of the entry language and the
 * exceptions named below.
 */
class EveryWordFromTheBundlesTest {

    private static final String ENGINE = """
            { "schema": "everyblade/engine-model/1", "id": "ax", "name": "Ax 1", "notice": "No 1.",
              "spools": [ { "id": "gas", "name": "Gas", "normal": "cw",
                            "pads": [ { "id": "pad", "name": "Pad", "play": 1 } ] } ],
              "ports": [ { "id": "p1", "name": "P 1", "clock": 90, "x": 15, "through": [ { "what": "lid", "diameter": 6 } ] } ],
              "walls": [ { "id": "hub", "curve": [[0, 60], [80, 64]] }, { "id": "casing", "curve": [[0, 100], [80, 98]] } ],
              "rows": [ { "id": "c1", "name": "C 1", "kind": "rotor", "spool": "gas", "count": 8, "source": "invented",
                          "sides": true, "chordBands": ["leading", "middle", "trailing"],
                          "landmarks": [ { "airfoil": 1, "what": "pin" } ],
                          "shape": { "type": "axial", "sections": [
                            { "span": 0, "chord": 22, "stagger": -20, "camber": -20, "thickness": 0.08, "x": 30 },
                            { "span": 1, "chord": 22, "stagger": -50, "camber": -10, "thickness": 0.05, "x": 32 } ] } },
                        { "id": "s1", "name": "S 1", "kind": "stator", "count": 12,
                          "landmarks": [ { "airfoil": 1, "what": "pin" } ] } ],
              "scopeTips": [ { "id": "fwd", "cone": 90, "near": 2, "far": 80, "pixels": 640, "diameter": 4, "hottest": 60 } ],
              "taskCards": [ { "id": "tc", "name": "T C", "asks": [ { "row": "c1", "parts": ["all"] } ] } ],
              "views": [
                { "id": "v1", "port": "p1", "row": "c1", "scopeTip": "fwd", "reference": 90,
                  "stations": [ { "id": "mid", "x": 15, "r": 85, "clock": 90, "forward": [1, -0.3, 0], "up": [0, 0, 1],
                                  "within": { "mm": 0, "deg": 1 } } ] },
                { "id": "v2", "port": "p1", "row": "c1", "scopeTip": "fwd", "reference": 90,
                  "stations": [ { "id": "low", "x": 15, "r": 70, "clock": 90, "forward": [1, -0.3, 0], "up": [0, 0, 1],
                                  "within": { "mm": 0, "deg": 0 } } ] },
                { "id": "v3", "port": "p1", "row": "s1", "reference": 90, "travels": true,
                  "window": { "halfWidth": 5, "shows": ["all"] } } ] }
            """;

    private static final String LIMITS = """
            { "schema": "everyblade/limits/1", "name": "L 1", "notice": "No 1.", "unit": "mm",
              "rules": [ { "id": "n1", "rows": ["c1"], "kinds": ["nick"],
                           "steps": [ { "length": { "most": 1.0 }, "outcome": "ok",
                                        "again": { "in": 25, "unit": "cycles" } } ],
                           "beyond": "out" } ] }
            """;

    /** What an entry is made of is typed the same in every language, and told as it is typed. */
    private static final Set<String> ENTRIES = entries();

    /** Answers to a program that feeds entries in, the same in every language. */
    private static final Set<String> PROTOCOL = PseudoLanguage.words("kept refused column review");

    /** Names of files, of what is in models, of the models of the course, of the program itself. */
    private static final Set<String> NAMES = PseudoLanguage.words(
            "everyblade journal jsonl engine json html README casing corncrake larkspur tansy packaged" + Console.RING);

    /** The figures of a signature are told as they were signed, byte for byte; what it declares, as it is typed. */
    private static final Set<String> AS_SIGNED =
            PseudoLanguage.words("computed declared left these that surface cells lost inspected");

    /** Commands, options and what stands for their values. */
    private static final Set<String> TYPED = typed(Commands.line(
            Console.in(Path.of(System.getProperty("java.io.tmpdir"), "typed")).surroundings(), Opening.NONE));

    private static Set<String> entries() {
        Set<String> words = new TreeSet<>(PseudoLanguage.words(
                Stream.of(EntrySheet.lines(PseudoLanguage.addedFor(EveryWordFromTheBundlesTest.class)))
                        .collect(Collectors.joining("\n"))));
        words.addAll(
                PseudoLanguage.words(
                        "root pressure suction leading middle trailing both blades vanes back cycles hours manual position revision"));
        Arrays.stream(Kind.values()).forEach(kind -> words.add(kind.word()));
        Settings.ALL.forEach(setting -> words.addAll(PseudoLanguage.words(setting.name())));
        return words;
    }

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void job() {
        console = Console.in(folder)
                .with("EVERYBLADE_LANG", PseudoLanguage.LOCALE.getLanguage())
                .with("EVERYBLADE_CACHE", folder.resolve("kept").toString());
        console.write("ax/engine.json", ENGINE);
        console.write("lim.json", LIMITS);
        console.write("a.jpg", CameraPicture.jpeg(6, ""));
    }

    private void start(String name, String... more) {
        run(Stream.concat(
                Stream.of("start", name, "--model", "ax", "--serial", "7", "--task", "do", "--by", "Ann"),
                Stream.of(more)));
    }

    private Ran run(Stream<String> arguments) {
        return console.run(arguments.toArray(String[]::new));
    }

    /** Plain words by what was said to the program. */
    private final Map<String, Set<String>> plain = new TreeMap<>();

    private void ask(String... arguments) {
        Ran ran = console.run(arguments);
        look(String.join(" ", arguments), ran.out() + "\n" + ran.err());
    }

    /** What people read of a file that was written. */
    private void lookInto(String file) {
        String text = console.read(file).replaceAll("(?s)<style.*?</style>|&[a-z]+;", " ");
        look(
                file,
                (file.endsWith("html") ? text.replaceAll("(?s)<svg.*?</svg>", " ") : text).replaceAll("<[^>]*>", " "));
    }

    /** What people read on pages that were written. */
    private void lookIntoPages(String file) throws IOException {
        try (PDDocument pages = Loader.loadPDF(Files.readAllBytes(folder.resolve(file)))) {
            String text = new PDFTextStripper().getText(pages);
            assertThat(text)
                    .as("%s speaks the language of marked letters", file)
                    .containsPattern("[áéíóú]{2}|ťĥé");
            look(file, text);
        }
    }

    private void look(String said, String text) {
        Set<String> known = new TreeSet<>(PseudoLanguage.words(said));
        Stream.of(ENTRIES, PROTOCOL, NAMES, TYPED, AS_SIGNED).forEach(known::addAll);
        Set<String> found = PseudoLanguage.plainWords(text.replace(folder.toString(), ""), known);
        if (!found.isEmpty()) {
            plain.put(said, found);
        }
    }

    @AfterEach
    void noWordWasWrittenOutsideTheBundles() {
        assertThat(plain).isEmpty();
    }

    /** Commands, options, and what stands for their values. */
    private static Set<String> typed(CommandLine line) {
        Set<String> words = new TreeSet<>(PseudoLanguage.words(line.getCommandName(), "COMMAND"));
        line.getCommandSpec()
                .options()
                .forEach(option -> words.addAll(PseudoLanguage.words(option.longestName(), option.paramLabel())));
        line.getCommandSpec()
                .positionalParameters()
                .forEach(one -> words.addAll(PseudoLanguage.words(one.paramLabel())));
        line.getSubcommands().values().forEach(below -> words.addAll(typed(below)));
        return words;
    }

    @Test
    void onAJob() throws IOException {
        start("job", "--limits", "lim.json");
        String[] said = {
            "heat 24 C",
            "tool out rag",
            "open p1",
            "view v1",
            "datum c1 1",
            "turn on 40",
            "round 1 in 180s",
            "nick 3 tip 0.8",
            "nick 4 tip 1.4",
            "nick 5 tip 1.0 ± 0.3",
            "dent 6 root",
            "photo a.jpg of 3 tip",
            "recheck 7 tip dim",
            "slip",
            "here 4",
            "view v3",
            "datum s1 1",
            "draw 100",
            "s1 noaccess all 9 because far",
            "refer q",
            "again in 9 cycles",
            "note ok",
            "void 21 because bad",
            "handover Bob",
            "takeover Bob"
        };
        ask(Stream.concat(Stream.of("log", "job"), Stream.of(said)).toArray(String[]::new));
        ask("coverage", "job");
        ask("coverage", "job", "--row", "c1", "--explain", "3", "tip");
        ask("gaps", "job", "--all");
        ask("findings", "job");
        ask("close", "job");
        ask("next", "job");
        ask("next", "job", "--finding", "10");
        ask("plan", "job");
        ask("plan", "job", "--out", "l.pdf");
        lookIntoPages("l.pdf");
        ask("photos", "job");
        ask("measure", "job", "a.jpg", "--known", "4,10,44,10=20mm", "--size", "10,20,20,20");
        ask("map", "job", "--out", "m.svg");
        ask("report", "job", "--out", "r.html");
        lookInto("r.html");
        ask("report", "job", "--out", "r.pdf");
        lookIntoPages("r.pdf");
        ask("handover", "job", "--out", "h.pdf");
        lookIntoPages("h.pdf");
        lookInto("m.svg");
        ask("review", "job", "--by", "Cy", "--blind");
        ask("review", "job", "--by", "Cy", "--want", "see c1", "--where", "c1 3 tip");
        ask("review", "job", "--by", "Cy", "--question", "why", "--compare");
        ask("review", "job", "--by", "Ann", "--remark", "so");
        ask("review", "job");
        ask("verify", "job");
        ask("pack", "job", "--out", "j.zip");
        start("two", "--previous", "job");
        ask("log", "two", "view v1", "datum c1 1", "round 1 in 180s", "nick 3 tip 0.9");
        ask("compare", "job", "two");
        ask("findings", "two");
        Console with = console;
        console = console.with("EVERYBLADE_PASSPHRASE", "123456789").with("EVERYBLADE_TRUSTED_KEYS", "t.txt");
        ask("key", "new", "k.p12", "--name", "Ann");
        ask("sign", "job", "--as", "inspected", "--key", "k.p12");
        ask("sign", "job", "--as", "reviewed", "--key", "k.p12");
        ask("verify", "job");
        ask("key", "trust", "0".repeat(64), "--name", "Bob");
        ask("key", "show", "k.p12");
        ask("key", "list");
        ask("key", "distrust", "0".repeat(64));
        ask("verify", "job");
        console = with;
        console.write("job/journal.jsonl", console.read("job/journal.jsonl").replace("heat 24", "heat 25"));
        ask("verify", "job");
    }

    @Test
    void onModelsAndDrills() throws IOException {
        ask("models", "--models", ".");
        ask("start", "new", "--model", "ax", "--serial", "7", "--task", "do", "--by", "Ann", "--plan");
        ask("check", "ax");
        ask("check", "lim.json");
        ask("sight", "ax");
        ask("sight", "ax", "--view", "v1");
        ask("sight", "ax", "--compare", "v1", "v2");
        ask("mesh", "ax", "--row", "c1", "--out", "c.ply");
        ask("show", "ax", "--out", "s.svg");
        lookInto("s.svg");
        ask("picture", "ax", "--view", "v1", "--out", "u.svg");
        lookInto("u.svg");
        ask("plan", "ax");
        ask("plan", "ax", "--out", "p.pdf");
        lookIntoPages("p.pdf");
        ask("new-model", "nm");
        ask("drill", "course");
        ask(
                "drill",
                "new",
                "d",
                "--by",
                "Ann",
                "--model",
                "ax",
                "--row",
                "c1",
                "--damage",
                "2",
                "--harmless",
                "1",
                "--seed",
                "7",
                "--task",
                "do");
        ask("drill", "log", "d", "view v1", "datum c1 1");
        ask("drill", "end", "d");
        ask("drill", "result", "d");
        ask("drill", "progress", "d");
        ask("fleet", "list");
        ask("fleet", "ask", "due", "--store", "postgresql://a@localhost:1/b");
        ask("--version");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "start", "log", "plan", "fleet ask"})
    void inHelp(String command) {
        ask(Stream.concat(Arrays.stream(command.split(" ")).filter(word -> !word.isEmpty()), Stream.of("--help"))
                .toArray(String[]::new));
    }

    @Test
    void ifUsedWrongly() {
        start("job");
        ask("job", "job");
        ask("gaps");
        ask("gaps", "job", "--jsn");
        ask("gaps", "job", "job");
        ask("gaps", "no");
        ask("map", "job");
        ask("map", "job", "--out", "m.svg", "--row", "x");
        ask("measure", "job", "a.jpg", "--known", "1,1,2,2=3mm", "--size", "1,1,2,2");
        ask("start", "two", "--model", "no");
        ask("start", "two", "--model", "ax", "--serial", "7", "--task", "do", "--by", "Ann", "--set", "foo=1");
        ask("start", "two", "--model", "ax", "--serial", "7", "--task", "do", "--by", "Ann", "--rows", "x9");
        ask("start", "two", "--model", "ax", "--serial", "7", "--task", "do", "--by", "Ann", "--detail", "5kg");
        ask("plan", "ax", "--from", "p9");
        ask("plan", "ax", "--card", "c9");
        ask("plan", "job", "--rows", "c1", "--detail", "1");
        ask("log", "job");
        ask("log", "job", "trun on 3");
        ask("log", "job", "--at", "now", "look");
        ask("verify", "job", "--head", "abc");
        ask("review", "job", "--remark", "so");
        ask("drill", "new", "d", "--by", "Ann", "--damage", "x");
        ask("drill");
        ask("key");
        console.say("trun 3\nview v1\n", "log", "job", "--follow");
    }
}
