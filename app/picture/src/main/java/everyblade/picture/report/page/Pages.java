package everyblade.picture.report.page;

import everyblade.fact.CalendarYears;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A document about to be written; the same one always gives the same bytes.
 *
 * @param title of the document
 * @param language as RFC 5646 writes it
 * @param dated the date that the document bears
 * @param seed of the document's identifier; documents that differ should have different ones
 * @param margins of every page
 * @param blocks in the order in which they are read
 */
public record Pages(String title, String language, Instant dated, long seed, Margins margins, List<Block> blocks) {

    private static final double SMALL = 7.2;
    private static final double SMALL_LEADING = 9;
    private static final double WARNING = 13;

    public Pages {
        blocks = List.copyOf(blocks);
    }

    /** The PDF. */
    public byte[] pdf() {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            Letters letters = Letters.in(document);
            List<String> notice = notice(margins, letters);
            PdfOutline outline = new PdfOutline();
            try (Flow flow = new Flow(document, letters, outline, notice.size() * SMALL_LEADING)) {
                for (Block block : blocks) {
                    flow.add(block);
                }
            }
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                margins(document, letters, notice, page);
            }
            describe(document, outline);
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a PDF in memory could not be written", impossible);
        }
    }

    /**
     * How much room blocks leave on the first page.
     *
     * @param margins of the page
     * @return points; less than nothing if they go on on the next page
     */
    public static double room(Margins margins, List<Block> blocks) {
        try (PDDocument document = new PDDocument()) {
            Letters letters = Letters.in(document);
            List<String> notice = notice(margins, letters);
            Flow flow = new Flow(document, letters, new PdfOutline(), notice.size() * SMALL_LEADING);
            try (flow) {
                for (Block block : blocks) {
                    flow.add(block);
                }
            }
            return document.getNumberOfPages() > 1 ? -1 : flow.room();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a PDF in memory could not be written", impossible);
        }
    }

    private static List<String> notice(Margins margins, Letters letters) {
        return margins.notice().isEmpty() ? List.of() : letters.wrapped(margins.notice(), SMALL, false, Margins.WIDTH);
    }

    /** The same as one HTML file that needs nothing else. */
    public byte[] html() {
        return HtmlText.of(this).getBytes(StandardCharsets.UTF_8);
    }

    private void margins(PDDocument document, Letters letters, List<String> notice, int index) throws IOException {
        PDPage page = document.getPage(index);
        try (PDPageContentStream stream =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.APPEND, true, true)) {
            Pen pen = new Pen(stream, letters);
            double top = Margins.SHEET.getHeight() - 34;
            double right = Margins.LEFT + Margins.WIDTH;
            String warning = letters.writable(margins.warning());
            double warned = letters.length(warning, WARNING, true);
            pen.write(warning, PageWords.Look.ALERT, WARNING, right - warned, top);
            String head = letters.wrapped(margins.head(), SMALL, false, Margins.WIDTH - warned - 16)
                    .get(0);
            pen.write(head, PageWords.Look.PLAIN, SMALL, Margins.LEFT, top);
            double y = top - SMALL_LEADING - 1;
            for (String line : notice) {
                pen.write(line, PageWords.Look.FAINT, SMALL, Margins.LEFT, y);
                y -= SMALL_LEADING;
            }
            y += SMALL_LEADING - 4;
            pen.line(Margins.LEFT, y, right, y, 0.6, Pen.INK);
            String number = margins.words().say("report.page", index + 1, document.getNumberOfPages());
            double foot = Margins.BOTTOM - 18;
            pen.line(Margins.LEFT, foot + 10, right, foot + 10, 0.6, Pen.INK);
            double numbered = letters.length(number, SMALL, false);
            pen.write(number, PageWords.Look.PLAIN, SMALL, right - numbered, foot);
            pen.write(
                    letters.wrapped(margins.foot(), SMALL, false, Margins.WIDTH - numbered - 16)
                            .get(0),
                    PageWords.Look.FAINT,
                    SMALL,
                    Margins.LEFT,
                    foot);
        }
    }

    private void describe(PDDocument document, PdfOutline outline) {
        PDDocumentInformation about = new PDDocumentInformation();
        about.setTitle(title);
        about.setCreator("Everyblade");
        GregorianCalendar date =
                GregorianCalendar.from(CalendarYears.within(dated).atZone(ZoneOffset.UTC));
        about.setCreationDate(date);
        about.setModificationDate(date);
        document.setDocumentInformation(about);
        document.setDocumentId(seed);
        document.getDocumentCatalog().setLanguage(language);
        document.getDocumentCatalog().setDocumentOutline(outline.finished());
        document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }
}
