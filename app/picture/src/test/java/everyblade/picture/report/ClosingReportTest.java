package everyblade.picture.report;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Kind;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.finding.Bounds;
import everyblade.core.finding.Dimension;
import everyblade.core.finding.Guard;
import everyblade.core.finding.Length;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Rule;
import everyblade.core.finding.Step;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.words.Words;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** What is open, and what the limits say, as the report tells it. */
class ClosingReportTest {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    /** Twelve undivided blades and a port; invented for tests. */
    private static final String RING = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring",
              "rows": [ { "id": "r", "kind": "rotor", "count": 12, "spanBands": 1, "name": "Rotor" } ],
              "ports": [ { "id": "p1", "name": "Plug on top", "kind": "plug", "clock": 0 } ],
              "views": [ { "id": "v", "row": "r", "port": "p1", "window": { "halfWidth": 1, "shows": ["all"] } } ] }
            """;

    private static final String[] COMPLETE = {
        "fact hours 1",
        "fact cycles 1",
        "fact position left",
        "fact manual Invented",
        "fact revision 1",
        "open p1",
        "view v",
        "round 1",
        "shut p1 torqued"
    };

    private static final Limits LIMITS = new Limits(
            "Ring limits",
            Optional.of("Invented limits, for tests."),
            Optional.of("Ring manual"),
            Optional.of("3"),
            Optional.empty(),
            LengthUnit.MM,
            Guard.CONFORMANCE,
            Optional.empty(),
            List.of("scope serial"),
            List.of(new Rule(
                    "nicks",
                    List.of(),
                    Set.of(Kind.NICK),
                    List.of(),
                    true,
                    List.of(),
                    List.of(new Step(
                            Map.of(Dimension.LENGTH, Bounds.upTo(new Length(BigDecimal.ONE))),
                            Step.Counts.ANY,
                            Optional.empty(),
                            "may stay",
                            Optional.empty())),
                    "replace the blade")));

    private static String report(Exhibits exhibits, String... more) throws Refusal, IOException {
        return report(exhibits, Integer.MAX_VALUE, more);
    }

    private static String pageOne(String... more) throws Refusal, IOException {
        return report(Exhibits.NONE, 1, more);
    }

    private static String report(Exhibits exhibits, int pages, String... more) throws Refusal, IOException {
        Fold fold = Fold.start(Engine.of(
                ((Reading.Read) EngineJsonReader.read("ring.json", RING.getBytes(StandardCharsets.UTF_8))).model()));
        List<String> lines = new ArrayList<>(List.of(COMPLETE));
        lines.addAll(List.of(more));
        for (String line : lines) {
            int number = fold.entries().size() + 1;
            fold = fold.with(new Logged(number, START, "Tester", false, line, EntryParser.parse(line)));
        }
        ReportFacts facts =
                new ReportFacts("4711", "all", "Tester", START, new TreeMap<>(), Optional.empty(), "00", "00");
        byte[] pdf = ReportPdf.write(
                fold, Coverage.of(fold.situation(), Settings.USUAL), facts, exhibits, Words.of(Locale.ENGLISH));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper text = new PDFTextStripper();
            text.setEndPage(pages);
            return text.getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void nothingOpenIsSaidInAChapterOfItsOwn() throws Exception {
        assertThat(report(Exhibits.NONE))
                .contains("Closing list Nothing is open.")
                .doesNotContain("INCOMPLETE");
    }

    @Test
    void pageOneNamesWhatWasTakenAwayAcceptedOrOnlySaid() throws Exception {
        assertThat(pageOne(
                        "crack 3 all 2",
                        "void 10 because mistaken",
                        "noaccess all 2-4 because ok",
                        "refer is it in",
                        "settle 13 because ok"))
                .contains("INCOMPLETE: 1 question; 1 entry taken out; 1 acceptance whose reason does not hold.")
                .contains("Nothing that counts was entered as found; 1 finding was taken out.")
                .contains("What was taken away, accepted or only said")
                .contains("a finding, entry 10, crack 3 all 2, was taken out, because mistaken, entry 11 by Tester")
                .contains("accepted as not seen with no reason in words: ok (3 cells, 3 of these can be seen through")
                .contains("entry 13, refer is it in, was settled without a word of who decided what: because ok");
    }

    @Test
    void pageOneNeverSaysThatNothingIsLeftWithoutWhatStandsBehindIt() throws Exception {
        assertThat(pageOne("lost nut", "void 10 because mistaken", "settle 11 because Bo counted them, all are there"))
                .contains("Nothing is open. Behind that stand: 1 entry of weight taken out.")
                .contains("answered in entry 12 by Tester: Bo counted them, all are there")
                .doesNotContain("INCOMPLETE", "Nothing that the task asks for");
        assertThat(pageOne()).contains("Nothing that the task asks for is left open in this record.");
    }

    @Test
    void aPortThatIsOpenIsNamedWithItsEntryAndHowToCloseIt() throws Exception {
        assertThat(report(Exhibits.NONE, "open p1"))
                .contains("INCOMPLETE: 1 opening.", "Plug on top (p1) is open", "entry 10, Tester", "say: shut p1");
    }

    @Test
    void aFindingWithoutLimitsIsOpenUntilSettled() throws Exception {
        assertThat(report(Exhibits.NONE, "nick 3 all 0.5")).contains("INCOMPLETE", "1 finding without an outcome");
        assertThat(report(Exhibits.NONE, "nick 3 all 0.5", "settle 10 because within table 7"))
                .contains("entry 11, Tester:")
                .doesNotContain("INCOMPLETE");
    }

    @Test
    void limitsAreShownWithTheirNoticeTheRuleTheFigureAndTheMargin() throws Exception {
        String report = report(
                new Exhibits(Optional.of(LIMITS), List.of(), Optional.empty()),
                "fact \"scope serial\" 7",
                "nick 3 all 0.5 ± 0.1",
                "nick 4 all 2 ± 0.1",
                "settle 12 because the blade is replaced");

        assertThat(report)
                .doesNotContain("INCOMPLETE")
                .contains("1 finding beyond the entered limits")
                .contains("Ring limits, from Ring manual, revision 3")
                .contains("Limits: Invented limits, for tests.")
                .contains("may stay", "replace the blade")
                .contains("0.5 ± 0.1 mm", "at most 1 mm", "0.5 mm inside, guard", "within the limits");
    }

    @Test
    void aFindingBeyondTheLimitsIsOpenUntilSettled() throws Exception {
        assertThat(report(
                        new Exhibits(Optional.of(LIMITS), List.of(), Optional.empty()),
                        "fact scope serial 7",
                        "nick 4 all 2 ± 0.1"))
                .contains(
                        "INCOMPLETE: 1 finding without an outcome.",
                        "beyond the limits, and nobody said what comes of it");
    }

    @Test
    void aFactThatTheLimitsAskForIsMissed() throws Exception {
        assertThat(report(new Exhibits(Optional.of(LIMITS), List.of(), Optional.empty())))
                .contains("INCOMPLETE: 1 fact missing.", "the record does not state: scope serial");
    }
}
