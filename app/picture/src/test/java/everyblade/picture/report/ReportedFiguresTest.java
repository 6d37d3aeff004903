package everyblade.picture.report;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Tally;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Settings;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.fact.Percent;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.picture.TwoRows;
import everyblade.words.Words;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The numbers of one record are the same on all pages that tell them, never only the flattering one. */
class ReportedFiguresTest {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    private static final String HEAD = "9f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e455";

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);

    private static Coverage coverage;
    private static List<String> pages;
    private static String handover;

    @BeforeAll
    static void writeBoth() throws Exception {
        Fold fold = Fold.start(Engine.of(TwoRows.model()));
        for (String line :
                List.of("view p-r", "datum r 1", "turn 200 ± 2", "view p-q", "datum q 1", "turn 90", "slip", "look")) {
            int number = fold.entries().size() + 1;
            fold = fold.with(new Logged(
                    number, START.plusSeconds(60L * number), "Tester", false, line, EntryParser.parse(line)));
        }
        Settings settings = Settings.of(Map.of("detail", new BigDecimal("0.5")));
        coverage = Coverage.of(fold.situation(), settings);
        ReportFacts facts = new ReportFacts(
                "4711", "look at all", "Tester", START, settings.values(), Optional.empty(), HEAD, HEAD);
        pages = pages(ReportPdf.write(fold, coverage, facts, Exhibits.NONE, ENGLISH));
        handover = String.join(" ", pages(HandoverPdf.write(fold, coverage, facts, Exhibits.NONE, ENGLISH)));
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            java.util.ArrayList<String> pages = new java.util.ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setSortByPosition(true);
                text.setStartPage(page);
                text.setEndPage(page);
                pages.add(text.getText(document).replaceAll("\\s+", " "));
            }
            return pages;
        }
    }

    @Test
    void sharesOfWhatWasNotSeenAreRoundedUpOnPageOne() {
        Tally all = coverage.tally(coverage.leading());
        String shares = Stream.of(
                        Percent.good(all.seenShare(), 1),
                        Percent.good(all.share(all.part()), 1),
                        Percent.bad(all.share(all.maybe()), 1),
                        Percent.bad(all.share(all.unseen()), 1))
                .map(share -> share + " %")
                .collect(Collectors.joining(" "));

        assertThat(shares).isEqualTo("9.0 % 17.3 % 2.1 % 71.6 %");
        assertThat(pages.get(0)).contains(shares + " seen as far as can be maybe not seen");
    }

    private String all() {
        return String.join(" ", pages);
    }

    private ShareFigures figures(Basis basis) {
        return new ShareFigures(coverage.headline(basis), MapWords.of(ENGLISH));
    }

    @Test
    void theJobHasSomethingOfEverything() {
        Tally computed = coverage.tally(Basis.COMPUTED);
        assertThat(computed.part()).isPositive();
        assertThat(computed.glimpsed()).isPositive();
        assertThat(computed.coarse()).isPositive();
        assertThat(computed.noAccess()).isPositive();
        assertThat(coverage.tally(Basis.DECLARED).noAccess()).isEqualTo(18);
    }

    @Test
    void theFirstPageLeadsWithTheThreeFiguresInTheirOrder() {
        for (Basis basis : Basis.values()) {
            ShareFigures figures = figures(basis);
            assertThat(pages.get(0))
                    .containsPattern(Pattern.quote(basis.word()) + ".*?" + Pattern.quote(figures.left()) + ".*?"
                            + Pattern.quote(figures.seen()) + ".*?" + Pattern.quote(figures.beyond()));
            assertThat(pages.get(0))
                    .contains(coverage.headline(basis).left() + " of "
                            + coverage.headline(basis).within() + " cells");
        }
    }

    @Test
    void theFirstPageSaysByWhatItIsJudgedAndWhatIsNot() {
        assertThat(pages.get(0))
                .contains(
                        "line of sight at least 30° to the surface",
                        "a detail of 0.5 mm",
                        "light, depth of field and time in view are not judged");
        assertThat(handover).contains("line of sight at least 30° to the surface");
    }

    @Test
    void theTablesGiveTheSame() {
        for (Basis basis : Basis.values()) {
            ShareFigures figures = figures(basis);
            Tally tally = coverage.tally(basis);
            assertThat(all())
                    .contains("all rows, " + basis.word() + " " + figures.left() + " " + figures.seen() + " "
                            + figures.beyond() + " " + tally.cells() + " " + tally.seen() + " " + tally.part() + " "
                            + tally.glimpsed() + " " + tally.maybe() + " " + tally.unseen())
                    .contains("all rows, " + basis.word() + " " + tally.unseen() + " " + tally.noAccess() + " "
                            + tally.coarse());
        }
    }

    @Test
    void thePageOfARowAndTheHandOverGiveTheSame() {
        // There is one row of each basis, so its figures are those of all.
        for (Basis basis : Basis.values()) {
            assertThat(all()).contains(figures(basis).line());
            assertThat(handover).contains(basis.word() + ": " + figures(basis).line());
        }
    }

    @Test
    void aReasonIsCountedOnceAndTooCoarseIsNeverNoAccess() {
        Tally both = coverage.tally();
        assertThat(all())
                .contains(MapWords.of(Locale.ENGLISH).why(Why.NO_ACCESS) + " " + both.noAccess() + " 0 0")
                .contains(MapWords.of(Locale.ENGLISH).why(Why.COARSE) + " " + both.coarse() + " 0 0")
                .contains("of these " + coverage.tally(Basis.COMPUTED).noAccess() + " shown by no view and "
                        + coverage.tally(Basis.COMPUTED).coarse() + " only too coarsely");
    }
}
