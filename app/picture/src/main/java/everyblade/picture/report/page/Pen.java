package everyblade.picture.report.page;

import java.awt.Color;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Writes words and lines on one page; y is from the sheet's lower edge, as PDF counts. */
final class Pen {

    static final Color INK = new Color(0x17202a);
    static final Color FAINT = new Color(0x4a5560);
    static final Color ALERT = new Color(0xa0001c);
    static final Color RULE = new Color(0xb4bcc4);
    static final Color SHADE = new Color(0xeef1f4);

    static final Color GOOD = new Color(0x1b6b3a);
    static final Color ALERT_WASH = new Color(0xfbeaec);
    static final Color GOOD_WASH = new Color(0xe9f4ed);

    private static final double STRIKE_HEIGHT = 0.28;
    private static final float STRIKE_WIDTH = 0.7f;

    private final PDPageContentStream stream;
    private final Letters letters;

    Pen(PDPageContentStream stream, Letters letters) {
        this.stream = stream;
        this.letters = letters;
    }

    /** One line of writable text. */
    void write(String text, PageWords.Look look, double size, double x, double y) throws IOException {
        if (text.isEmpty()) {
            return;
        }
        Color colour = colour(look);
        stream.beginText();
        stream.setNonStrokingColor(colour);
        stream.newLineAtOffset((float) x, (float) y);
        for (Letters.Run run : letters.runs(text, look.bold())) {
            stream.setFont(run.font(), (float) size);
            stream.showText(run.text());
        }
        stream.endText();
        if (look == PageWords.Look.STRUCK) {
            double middle = y + STRIKE_HEIGHT * size;
            line(x, middle, x + letters.length(text, size, look.bold()), middle, STRIKE_WIDTH, FAINT);
        }
    }

    private static Color colour(PageWords.Look look) {
        return switch (look) {
            case ALERT -> ALERT;
            case GOOD -> GOOD;
            case FAINT, STRUCK -> FAINT;
            case PLAIN, STRONG -> INK;
        };
    }

    void line(double x1, double y1, double x2, double y2, double width, Color colour) throws IOException {
        stream.setStrokingColor(colour);
        stream.setLineWidth((float) width);
        stream.moveTo((float) x1, (float) y1);
        stream.lineTo((float) x2, (float) y2);
        stream.stroke();
    }

    /** A filled rectangle; y is its lower edge. */
    void fill(double x, double y, double width, double height, Color colour) throws IOException {
        stream.setNonStrokingColor(colour);
        stream.addRect((float) x, (float) y, (float) width, (float) height);
        stream.fill();
    }

    /** The outline of a rectangle; y is its lower edge. */
    void frame(double x, double y, double width, double height, double thickness, Color colour) throws IOException {
        stream.setStrokingColor(colour);
        stream.setLineWidth((float) thickness);
        stream.addRect((float) x, (float) y, (float) width, (float) height);
        stream.stroke();
    }

    PDPageContentStream stream() {
        return stream;
    }
}
