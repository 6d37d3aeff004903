package everyblade.picture.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Settings;
import everyblade.core.gap.Gaps;
import everyblade.core.gap.ToldGap;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.picture.MapWords;
import everyblade.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a PDF reader that is not ours finds in a report: poppler's tools, where they are installed. */
class ReaderTest {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final String HEAD = "9f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e455";

    @TempDir
    static Path folder;

    private static Coverage coverage;

    @BeforeAll
    static void writeTheReportOfAJobHalfDone() throws Exception {
        assumeTrue(installed("pdftotext") && installed("pdffonts") && installed("pdfinfo"), "poppler-utils is missing");
        Path model = Path.of("..", "..", "engine-models", "larkspur-4", EngineJsonReader.FILE);
        Fold fold = Fold.start(Engine.of(((Reading.Read) EngineJsonReader.read(model)).model()));
        for (String line : List.of(
                "fact hours 8412.6",
                "heat 24 C",
                "view in-c1",
                "datum c1 1 at 0",
                "round 1 in 180s",
                "dent 7 tip/suction/leading length 2.4 depth 0.6 ± 0.2 mm",
                "turn on 40",
                "void 7 because it was said twice",
                "c4 noaccess root all because the plug is seized")) {
            int number = fold.entries().size() + 1;
            fold = fold.with(new Logged(
                    number, START.plusSeconds(60L * number), "Tester", false, line, EntryParser.parse(line)));
        }
        coverage = Coverage.of(fold.situation(), Settings.USUAL);
        Files.write(
                folder.resolve("r.pdf"),
                ReportPdf.write(
                        fold,
                        coverage,
                        new ReportFacts("4711", "look", "Tester", START, new TreeMap<>(), Optional.empty(), HEAD, HEAD),
                        Exhibits.NONE,
                        Words.of(Locale.ENGLISH)));
    }

    private static boolean installed(String tool) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(tool, "-v")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor(20, TimeUnit.SECONDS);
        } catch (IOException missing) {
            return false;
        }
    }

    private String said(String... command) throws Exception {
        Path out = folder.resolve("out.txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile());
        builder.environment().put("TZ", "UTC");
        Process process = builder.start();
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isZero();
        return Files.readString(out, StandardCharsets.UTF_8);
    }

    /** The text in the order of the page, every run of white space one space. */
    private String text() throws Exception {
        said("pdftotext", "-enc", "UTF-8", "-layout", "r.pdf", "r.txt");
        return Files.readString(folder.resolve("r.txt"), StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }

    @Test
    void itFindsTheSameNumbersThatTheRecordGives() throws Exception {
        Tally all = coverage.tally();
        assertThat(text())
                .contains(all.cells() + " " + all.seen() + " " + all.part() + " " + all.glimpsed() + " " + all.maybe()
                        + " " + all.unseen())
                .contains(Gaps.of(coverage).size() + " gaps")
                .contains("hours 8412.6", "not recorded: cycles, position, manual, revision");
    }

    @Test
    void itFindsFindingsReasonsAndVoidEntries() throws Exception {
        assertThat(text())
                .contains("length 2.4, depth 0.6, ± 0.2 mm")
                .contains("the plug is seized")
                .contains("turn on 40 void by entry 8: it was said twice");
    }

    @Test
    void itFindsEveryGap() throws Exception {
        said("pdftotext", "-enc", "UTF-8", "r.pdf", "r.txt");
        String raw = Files.readString(folder.resolve("r.txt"), StandardCharsets.UTF_8)
                .replaceAll("\\s+", "");
        assertThat(Gaps.of(coverage)).isNotEmpty().allSatisfy(gap -> {
            // The sentence may be cut by the end of a page.
            String sentence = MapWords.of(Locale.ENGLISH).say(ToldGap.of(gap)).replaceAll("\\s+", "");
            assertThat(raw).contains(sentence.substring(0, Math.min(30, sentence.length())));
        });
    }

    @Test
    void itFindsOnlyEmbeddedFontsWithTheirLetters() throws Exception {
        List<String> fonts = said("pdffonts", "r.pdf").lines().skip(2).toList();
        assertThat(fonts).isNotEmpty().allMatch(line -> line.matches(".*\\byes\\s+yes\\s+yes\\b.*"));
    }

    @Test
    void itFindsA4PagesATitleAndTheDateOfTheLastEntry() throws Exception {
        String about = said("pdfinfo", "-isodates", "r.pdf");
        assertThat(about)
                .containsPattern("Title: +Borescope inspection report: .*4711")
                .contains("2026-03-01T08:09:00")
                .contains("(A4)");
    }
}
