package everyblade.picture.paint;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A scene as a PDF page in its true size, lines and words kept as such, its font embedded. */
public final class ScenePdf {

    private static final float POINTS_PER_MM = 72 / 25.4f;

    private ScenePdf() {}

    /** The document of one page; the same bytes for the same scene. */
    public static byte[] write(Scene scene, Theme theme) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            // Otherwise it would be made from the clock.
            document.setDocumentId(0L);
            document.getDocumentInformation().setTitle(scene.title());
            document.getDocumentInformation().setSubject(scene.summary());
            document.getDocumentCatalog().setLanguage("en");
            page(document, scene, theme);
            document.save(out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static void page(PDDocument document, Scene scene, Theme theme) throws IOException {
        float width = (float) scene.width() * POINTS_PER_MM;
        float height = (float) scene.height() * POINTS_PER_MM;
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        ScenePainter painter = ScenePainter.of(theme);
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
