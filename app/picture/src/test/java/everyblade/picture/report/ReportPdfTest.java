package everyblade.picture.report;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class ReportPdfTest {

    private static final String HEAD = "9f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e455";
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    /** A ring of 36 blades, root and tip, seen whole through its one view; invented for tests. */
    private static final String RING = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring", "notice": "Invented for tests.",
              "rows": [ { "id": "r", "name": "Rotor", "kind": "rotor", "count": 36 } ],
              "views": [ { "id": "v", "row": "r", "window": { "halfWidth": 4, "shows": ["root", "tip"] } } ] }
            """;

    private static byte[] report(Reading model, String... lines) throws Refusal {
        Fold fold = Fold.start(Engine.of(((Reading.Read) model).model()));
        for (String line : lines) {
            int number = fold.entries().size() + 1;
            fold = fold.with(new Logged(
                    number, START.plusSeconds(60L * number), "Tester", false, line, EntryParser.parse(line)));
        }
        Coverage coverage = Coverage.of(fold.situation(), Settings.USUAL);
        return ReportPdf.write(
                fold,
                coverage,
                new ReportFacts("4711", "look at all", "Tester", START, new TreeMap<>(), Optional.empty(), HEAD, HEAD),
                Exhibits.NONE,
                Words.of(Locale.ENGLISH));
    }

    private static byte[] ring(String... lines) throws Refusal {
        return report(EngineJsonReader.read("ring.json", RING.getBytes(StandardCharsets.UTF_8)), lines);
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                pages.add(text.getText(document));
            }
            return pages;
        }
    }

    @Test
    void aJobWithAnythingOpenIsIncompleteOnEveryPage() throws Exception {
        List<String> pages = pages(ring("view v", "datum r 1", "watch root", "turn on 200", "open cover"));
        assertThat(pages)
                .hasSizeGreaterThan(3)
                .allSatisfy(page -> assertThat(page).contains("INCOMPLETE"));
        assertThat(pages.get(0)).contains("cover").contains("4711").contains("look at all");
    }

    @Test
    void aJobWithNothingOpenIsNotCalledIncomplete() throws Exception {
        List<String> pages = pages(ring(
                "fact hours 10",
                "fact cycles 4",
                "fact position left",
                "fact manual Invented manual",
                "fact revision 1",
                "view v",
                "round 1"));
        assertThat(String.join("\n", pages)).doesNotContain("INCOMPLETE");
    }

    @Test
    void everyPageBearsTheHeadOfTheRecordAndTheNoticeOfAnInventedModel() throws Exception {
        assertThat(pages(ring("view v", "round 1")))
                .allSatisfy(page -> assertThat(page).contains(HEAD, "Invented for tests."));
    }

    @Test
    void aLostCountIsToldOnTheFirstPageAndExplained() throws Exception {
        List<String> pages = pages(ring("view v", "datum r 1", "turn on 120 ± 1", "here 5 ± 0.5"));
        assertThat(pages.get(0)).contains("The count was lost");
        assertThat(String.join("\n", pages)).contains("COUNT LOST");
        assertThat(pages(ring("view v", "datum r 1", "round 1")).get(0)).doesNotContain("count was lost");
    }

    @Test
    void voidedEntriesStayReadable() throws Exception {
        String text = String.join(
                "\n", pages(ring("view v", "datum r 1", "turn on 77", "void 3 because it was the other shaft")));
        assertThat(text).contains("turn on 77", "it was the other shaft");
    }

    @Test
    void itNeverDecidesWhetherTheEngineMayRun() throws Exception {
        String text = String.join("\n", pages(ring("view v", "round 1"))).toLowerCase(Locale.ROOT);
        assertThat(text).contains("licensed").doesNotContain("airworthy").doesNotContain("serviceable");
    }

    @Test
    void theFontsAreEmbeddedAndTheChaptersListed() throws Exception {
        try (PDDocument document = Loader.loadPDF(ring("view v", "round 1"))) {
            int fonts = 0;
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                    fonts++;
                }
            }
            assertThat(fonts).isPositive();
            List<String> chapters = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                chapters.add(item.getTitle());
            }
            assertThat(chapters).contains("Maps", "Coverage", "Gaps", "Findings", "Cautions", "The log");
            assertThat(document.getDocumentInformation().getTitle()).contains("Ring", "4711");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
        }
    }

    @Test
    void theSameRecordGivesTheSameBytesWhateverTheLocale() throws Exception {
        byte[] first = ring("view v", "datum r 1", "turn on 200");
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(ring("view v", "datum r 1", "turn on 200")).isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aLargeMachineFitsToo() throws Exception {
        Path model = Path.of("..", "..", "engine-models", "corncrake-12", EngineJsonReader.FILE);
        List<String> pages = pages(report(EngineJsonReader.read(model), "heat 20 C", "note nothing seen yet"));
        assertThat(String.join("\n", pages)).contains("c12", "s12");
    }
}
