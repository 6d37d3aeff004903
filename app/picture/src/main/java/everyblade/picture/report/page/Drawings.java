package everyblade.picture.report.page;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** Turns what a painter paints into vectors and words of the document. */
final class Drawings {

    private final PDDocument document;
    private final Letters letters;

    Drawings(PDDocument document, Letters letters) {
        this.document = document;
        this.letters = letters;
    }

    PDFormXObject painted(Block.Drawing drawing) throws IOException {
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, (float) drawing.width(), (float) drawing.height());
        graphics.setFontTextDrawer(new InOurFont());
        // Without a colour of its own it would paint nothing.
        graphics.setColor(Pen.INK);
        try {
            drawing.painter().paint(graphics);
        } finally {
            graphics.dispose();
        }
        return graphics.getXFormObject();
    }

    /** Whatever font a painter asks for, its words stay words, in the document's font. */
    private final class InOurFont extends PdfBoxGraphics2DFontTextDrawer {

        @Override
        protected PDFont mapFont(Font font, IFontTextDrawerEnv environment) {
            return letters.font();
        }

        @Override
        protected boolean hasDynamicFontMapping() {
            return true;
        }
    }
}
