package everyblade.picture;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import everyblade.core.coverage.Coverage;
import everyblade.picture.paint.SceneFont;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Scene;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The map as a PDF page in its true size, lines and words kept as such, its font embedded. */
public final class MapPdf {

    private static final float POINTS_PER_MM = 72 / 25.4f;

    private MapPdf() {}

    /** Of all rows, or of one, in the plain style. */
    public static byte[] write(Coverage coverage, MapFacts facts, Optional<String> row) {
        return write(coverage, facts, row, MapStyle.PLAIN);
    }

    /**
     * Of all rows, or of one.
     *
     * @throws IllegalArgumentException if the engine has no row of that id
     */
    public static byte[] write(Coverage coverage, MapFacts facts, Optional<String> row, MapStyle style) {
        Scene scene = MapScene.of(coverage, facts, row, style);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            // Otherwise it would be made from the clock.
            document.setDocumentId(0L);
            document.getDocumentInformation().setTitle(scene.title());
            document.getDocumentInformation().setSubject(scene.summary());
            document.getDocumentCatalog().setLanguage("en");
            page(document, scene, style);
            document.save(out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static void page(PDDocument document, Scene scene, MapStyle style) throws IOException {
        float width = (float) scene.width() * POINTS_PER_MM;
        float height = (float) scene.height() * POINTS_PER_MM;
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        ScenePainter painter = ScenePainter.of(style.theme());
        PdfBoxGraphics2DFontTextDrawer fonts = new PdfBoxGraphics2DFontTextDrawer();
        try (InputStream file = SceneFont.file()) {
            fonts.registerFont(painter.font().getFontName(), PDType0Font.load(document, file));
        }
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, width, height);
        try {
            g.setFontTextDrawer(fonts);
            g.scale(POINTS_PER_MM, POINTS_PER_MM);
            painter.paint(scene, g);
        } finally {
            g.dispose();
            fonts.close();
        }
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(g.getXFormObject());
        }
    }
}
