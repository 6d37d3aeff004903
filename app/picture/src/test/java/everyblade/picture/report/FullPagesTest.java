package everyblade.picture.report;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.Reports;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reports of whole jobs on the engines that come with the program, page by page as they are printed. */
class FullPagesTest {

    private static final float DOTS = 24;
    /** Heads and feet of pages, shares of a page. */
    private static final double HEAD = 0.08;

    private static final double FOOT = 0.93;
    /** A page that ends higher is nearly blank. */
    private static final double LEAST = 0.12;

    /** How far down each page something stands, shares of what lies between head and foot. */
    private static List<Double> filled(byte[] pdf) throws Exception {
        List<Double> filled = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                filled.add(lowest(renderer.renderImageWithDPI(page, DOTS, ImageType.GRAY)));
            }
        }
        return filled;
    }

    private static double lowest(BufferedImage page) {
        int top = (int) (HEAD * page.getHeight());
        int bottom = (int) (FOOT * page.getHeight());
        int lowest = top;
        for (int y = top; y < bottom; y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                if ((page.getRGB(x, y) & 0xff) < 200) {
                    lowest = y;
                }
            }
        }
        return (double) (lowest - top) / (bottom - top);
    }

    @ParameterizedTest
    @CsvSource({"corncrake-12,0", "tansy-a1,0", "tansy-a1,9"})
    void noneIsNearlyBlank(String engine, int more) throws Exception {
        List<Double> pages = filled(Reports.of(engine, more));

        assertThat(pages)
                .hasSizeGreaterThan(5)
                .allSatisfy(page -> assertThat(page).as("%s", pages).isGreaterThan(LEAST));
    }
}
