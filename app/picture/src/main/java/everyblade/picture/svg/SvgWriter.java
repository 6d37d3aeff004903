package everyblade.picture.svg;

import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Style;
import everyblade.picture.scene.Theme;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A scene as a stand-alone SVG document: no script, no picture or font from elsewhere, one unit a millimetre.
 *
 * <p>Groups carry their title. Texts state their length, so that another font cannot make them run into each other.
 */
public final class SvgWriter {

    private final Scene scene;
    private final Theme theme;
    private final Map<Style, String> classes = new LinkedHashMap<>();
    private final StringBuilder body = new StringBuilder();

    private SvgWriter(Scene scene, Theme theme) {
        this.scene = scene;
        this.theme = theme;
    }

    /** The document as text, lines ended by a line feed. */
    public static String write(Scene scene, Theme theme) {
        SvgWriter writer = new SvgWriter(scene, theme);
        scene.groups().forEach(writer::group);
        return writer.head() + writer.body + "</svg>\n";
    }

    private String head() {
        String width = Numbers.of(scene.width());
        String height = Numbers.of(scene.height());
        StringBuilder head = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        head.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(width)
                .append("mm\" height=\"");
        head.append(height)
                .append("mm\" viewBox=\"0 0 ")
                .append(width)
                .append(' ')
                .append(height);
        head.append("\" role=\"img\" aria-labelledby=\"title summary\">\n");
        head.append("<title id=\"title\">").append(escaped(scene.title())).append("</title>\n");
        head.append("<desc id=\"summary\">").append(escaped(scene.summary())).append("</desc>\n<style>\n");
        head.append("text{font-family:\"Liberation Sans\",Arial,Helvetica,sans-serif}\n");
        classes.forEach((style, name) -> head.append('.')
                .append(name)
                .append('{')
                .append(declared(style))
                .append("}\n"));
        head.append("</style>\n<path fill=\"")
                .append(theme.colour(Ink.PAPER).hex())
                .append("\" d=\"M0 0H");
        return head.append(width).append('V').append(height).append("H0Z\"/>\n").toString();
    }

    private String declared(Style style) {
        String fill = "fill:" + colour(style.fill());
        return style.line().isEmpty()
                ? fill
                : fill + ";stroke:" + colour(style.line()) + ";stroke-width:" + Numbers.of(style.width());
    }

    private String colour(Optional<Ink> ink) {
        return ink.map(theme::colour).map(colour -> colour.hex()).orElse("none");
    }

    private void group(Group group) {
        if (group.items().isEmpty()) {
            return;
        }
        body.append("<g>");
        if (!group.title().isEmpty()) {
            body.append("<title>").append(escaped(group.title())).append("</title>");
        }
        body.append('\n');
        group.items().forEach(this::item);
        body.append("</g>\n");
    }

    private void item(Item item) {
        String name = classes.computeIfAbsent(item.style(), style -> "s" + classes.size());
        DrawnShape shape = item.shape();
        if (shape instanceof Text text) {
            text(text, name);
        } else {
            body.append("<path class=\"")
                    .append(name)
                    .append("\" d=\"")
                    .append(path(shape))
                    .append("\"/>\n");
        }
    }

    private static String path(DrawnShape shape) {
        if (shape instanceof DrawnShape.Patch patch) {
            return PathText.of(patch);
        } else if (shape instanceof DrawnShape.Strokes strokes) {
            return PathText.of(strokes.lines(), false);
        } else if (shape instanceof DrawnShape.Polygon polygon) {
            return PathText.of(List.of(polygon.corners()), true);
        } else {
            return PathText.of((DrawnShape.Dots) shape);
        }
    }

    private void text(Text text, String name) {
        String x = Numbers.of(text.at().x());
        String y = Numbers.of(text.at().y());
        body.append("<text class=\"")
                .append(name)
                .append("\" x=\"")
                .append(x)
                .append("\" y=\"")
                .append(y);
        body.append("\" font-size=\"").append(Numbers.of(text.size())).append('"');
        switch (text.anchor()) {
            case START -> {}
            case MIDDLE -> body.append(" text-anchor=\"middle\"");
            case END -> body.append(" text-anchor=\"end\"");
        }
        if (text.angle() != 0) {
            body.append(" transform=\"rotate(").append(Numbers.of(text.angle())).append(' ');
            body.append(x).append(' ').append(y).append(")\"");
        }
        // Letters whose length is not known are left as the reader's font has them.
        if (text.words().length() > 1 && Lettering.isKnown(text.words())) {
            body.append(" textLength=\"").append(Numbers.of(text.length()));
            body.append("\" lengthAdjust=\"spacingAndGlyphs\"");
        }
        body.append('>').append(escaped(text.words())).append("</text>\n");
    }

    /** The words as XML text; a character that XML cannot hold is shown as unknown. */
    static String escaped(String words) {
        StringBuilder result = new StringBuilder();
        words.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> result.append("&amp;");
                case '<' -> result.append("&lt;");
                case '>' -> result.append("&gt;");
                default -> result.appendCodePoint(holds(letter) ? letter : 0xFFFD);
            }
        });
        return result.toString();
    }

    /** XML 1.0, production 2. */
    private static boolean holds(int letter) {
        return letter == '\t'
                || letter == '\n'
                || letter >= ' ' && letter <= 0xD7FF
                || letter >= 0xE000 && letter <= 0xFFFD
                || letter >= 0x10000;
    }
}
