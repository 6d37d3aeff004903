package everyblade.picture.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.words.Words;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PagesTest {

    private static final Margins MARGINS = new Margins("head", "WARNING", "notice", "foot", Words.of(Locale.ENGLISH));

    private static byte[] pdf(Block... blocks) {
        return new Pages("Title", "en-GB", Instant.parse("2026-03-01T08:00:00Z"), 1, MARGINS, List.of(blocks)).pdf();
    }

    /** Every letter of a document with its page and the place where it stands. */
    private static List<TextPosition> letters(byte[] pdf) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    letters.add(letter);
                }
            };
            stripper.getText(document);
        }
        return letters;
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }

    private static String words(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(n -> "word" + n).collect(Collectors.joining(" "));
    }

    private static Block.Table table(String text) {
        return new Block.Table(
                List.of(Column.of("left", 1), Column.number("right", 1)),
                List.of(List.of(Cell.of(text), Cell.of("1234567"))));
    }

    private static void assertNothingOutside(byte[] pdf) throws IOException {
        assertThat(letters(pdf)).isNotEmpty().allSatisfy(letter -> {
            double right = letter.getXDirAdj() + letter.getWidthDirAdj();
            assertThat((double) letter.getXDirAdj()).isGreaterThanOrEqualTo(Margins.LEFT - 0.1);
            assertThat(right).isLessThanOrEqualTo(Margins.LEFT + Margins.WIDTH + 0.1);
            assertThat((double) letter.getYDirAdj()).isBetween(20.0, Margins.SHEET.getHeight() - 20.0);
        });
    }

    @Nested
    class WordsOfAnyLength {

        @Test
        void goOnOverPagesWithoutLosingAny() throws Exception {
            byte[] pdf = pdf(new Block.Paragraph(PageWords.of(words(3000))));
            assertThat(pages(pdf)).isGreaterThan(2);
            assertThat(text(pdf).split("\\s+")).contains("word1", "word1500", "word3000");
            assertNothingOutside(pdf);
        }

        @Test
        void inACellGoOnOverPagesWithoutLosingAny() throws Exception {
            byte[] pdf = pdf(table(words(3000)));
            String text = text(pdf);
            assertThat(pages(pdf)).isGreaterThan(4);
            IntStream.rangeClosed(1, 3000)
                    .filter(n -> n % 100 == 0)
                    .forEach(n -> assertThat(text).containsPattern("\\bword" + n + "\\b"));
            assertThat(text.split("left"))
                    .as("the head is repeated on every page")
                    .hasSize(pages(pdf) + 1);
            assertNothingOutside(pdf);
        }

        @Test
        void areBrokenWhereThereIsNoSpace() throws Exception {
            byte[] pdf = pdf(table("x".repeat(400)), new Block.Framed(List.of(PageWords.strong("y".repeat(400)))));
            assertNothingOutside(pdf);
            assertThat(letters(pdf).stream()
                            .filter(letter -> letter.getUnicode().equals("x")))
                    .hasSize(400);
        }
    }

    @Nested
    class Letters {

        @Test
        void thatTheFontHasCanBeRead() throws Exception {
            assertThat(text(pdf(new Block.Paragraph(PageWords.of("fi fl ± ° – ≥ ½ µ Ünï Привет Ω")))))
                    .contains("fi fl ± ° – ≥ ½ µ Ünï Привет Ω");
        }

        @Test
        void thatNoFontHasAreWrittenAsTheirCodes() throws Exception {
            assertThat(text(pdf(new Block.Paragraph(PageWords.of("a\ue000b \udbff\udffd")))))
                    .contains("a[U+E000]b [U+10FFFD]");
        }

        @Test
        void thatControlAnythingDoNothing() throws Exception {
            assertThat(text(pdf(new Block.Paragraph(PageWords.of("a\tb\nc\u0007d\u202ee")))))
                    .contains("a b c[U+0007]d[U+202E]e");
        }
    }

    @Test
    void headAndFootStandOnEveryPage() throws Exception {
        byte[] pdf =
                pdf(new Block.Heading(1, "one"), new Block.NewPage(), new Block.Heading(1, "two"), new Block.NewPage());
        assertThat(text(pdf)).contains("page 1 of 2", "page 2 of 2");
        assertThat(text(pdf).split("WARNING")).hasSize(3);
    }

    @Test
    void aDrawingThatIsTooLargeIsMadeSmallerAndStaysOnOnePage() throws Exception {
        Block.Painter painter = graphics -> {
            graphics.draw(new Rectangle2D.Double(1, 1, 1998, 2998));
            graphics.setFont(everyblade.picture.paint.SceneFont.font().deriveFont(40f));
            graphics.drawString("corner", 1800, 2980);
        };
        byte[] pdf = pdf(new Block.Paragraph(PageWords.of("before")), new Block.Drawing(2000, 3000, painter));
        assertThat(pages(pdf)).isEqualTo(1);
        assertThat(text(pdf)).contains("corner");
        assertNothingOutside(pdf);
    }

    @Test
    void aRowWithAnotherNumberOfCellsThanColumnsIsRefused() {
        assertThatThrownBy(() -> new Block.Table(List.of(Column.of("a", 1)), List.of(List.of())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 cells");
    }
}
