package everyblade.picture.report.page;

import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.picture.svg.SvgWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;

/**
 * A document as one HTML file: no script, nothing from elsewhere, and none of its words is read as anything but words. Drawings
 * are pictures in it, those that are scenes as vectors.
 */
final class HtmlText {

    private static final double FINENESS = 2;
    private static final String STYLE = """
            body{max-width:62em;margin:1em auto;padding:0 1em;font:15px/1.45 "Liberation Sans",Arial,Helvetica,sans-serif;\
            color:#111;background:#fff}
            header,footer{border-bottom:1px solid #111;padding:.4em 0;font-size:.8em;color:#444}
            footer{border:0;border-top:1px solid #111;overflow-wrap:anywhere}
            .warning{float:right;font-size:1.6em;color:#a40000;font-weight:bold}
            h1{font-size:1.5em;margin:1.6em 0 .4em}h2{font-size:1.1em;margin:1.2em 0 .3em}
            table{border-collapse:collapse;width:100%;margin:.5em 0}
            th,td{text-align:left;vertical-align:top;padding:.25em .5em;border-bottom:1px solid #ccc;overflow-wrap:anywhere}
            th{border-bottom:1px solid #111;overflow-wrap:normal}.number{text-align:right;white-space:nowrap}
            .answer{border:2px solid #a40000;background:#fbeaec;padding:.4em .8em;margin:.5em 0}.answer p{margin:.2em 0}
            .answer.fine{border-color:#1b6b3a;background:#e9f4ed}.answer .said{font-size:1.6em}
            .figure{float:right;width:7.5em}.figure b{font-size:1.5em;display:block}.good{color:#1b6b3a;font-weight:bold}
            .frame{border:2px solid #111;padding:.4em .8em;margin:.5em 0}.frame p{margin:.2em 0}
            .alert{color:#a40000;font-weight:bold}.faint{color:#555}td p{margin:0}
            img{max-width:100%;height:auto;display:block;margin:.5em 0}
            @media print{body{max-width:none;font-size:11px}h1{break-before:page}h1:first-of-type{break-before:auto}}
            """;

    private final StringBuilder body = new StringBuilder();
    private boolean inList;
    private int headings;

    private HtmlText() {}

    static String of(Pages pages) {
        HtmlText text = new HtmlText();
        pages.blocks().forEach(text::add);
        text.list(false);
        String policy = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";
        return "<!DOCTYPE html>\n<html lang=\"" + pages.language() + "\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + policy + "\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width\">\n<title>" + escaped(pages.title())
                + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n<header>"
                + (pages.margins().warning().isEmpty()
                        ? ""
                        : "<span class=\"warning\">" + escaped(pages.margins().warning()) + "</span>")
                + escaped(pages.margins().head()) + "<br>"
                + escaped(pages.margins().notice()) + "</header>\n"
                + contents(pages.blocks()) + text.body + "<footer>"
                + escaped(pages.margins().foot()) + "; "
                + pages.dated() + "</footer>\n</body>\n</html>\n";
    }

    private static String contents(List<Block> blocks) {
        StringBuilder contents = new StringBuilder("<nav><p>");
        int number = 0;
        for (Block block : blocks) {
            if (block instanceof Block.Heading heading) {
                number++;
                if (heading.level() == 1) {
                    contents.append(number == 1 ? "" : " · ")
                            .append("<a href=\"#h" + number + "\">")
                            .append(escaped(heading.text()))
                            .append("</a>");
                }
            }
        }
        return contents + "</p></nav>\n";
    }

    private void add(Block block) {
        list(block instanceof Block.Item);
        if (block instanceof Block.Heading heading) {
            headings++;
            String tag = "h" + heading.level();
            line("<" + tag + " id=\"h" + headings + "\">" + escaped(heading.text()) + "</" + tag + ">");
        } else if (block instanceof Block.Paragraph paragraph) {
            line("<p>" + words(paragraph.words()) + "</p>");
        } else if (block instanceof Block.Item item) {
            line("<li>" + words(item.words()) + "</li>");
        } else if (block instanceof Block.Framed framed) {
            line("<div class=\"frame\">" + lines(framed.lines()) + "</div>");
        } else if (block instanceof Block.Answer answer) {
            answer(answer);
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Drawing drawing) {
            line(picture(drawing));
        }
    }

    private void list(boolean in) {
        if (in != inList) {
            line(in ? "<ul>" : "</ul>");
            inList = in;
        }
    }

    private void line(String html) {
        body.append(html).append('\n');
    }

    private void answer(Block.Answer answer) {
        StringBuilder figures = new StringBuilder();
        for (int i = answer.figures().size() - 1; i >= 0; i--) {
            Block.Figure figure = answer.figures().get(i);
            figures.append("<span class=\"figure\"><b>")
                    .append(escaped(figure.value()))
                    .append("</b>")
                    .append(escaped(figure.label()))
                    .append("</span>");
        }
        boolean good = answer.said().look() == PageWords.Look.GOOD;
        line("<div class=\"answer" + (good ? " fine" : "") + "\">" + figures + "<p class=\"said\">"
                + words(answer.said()) + "</p>" + lines(answer.reasons()) + "</div>");
    }

    private void table(Block.Table table) {
        line("<table>");
        if (table.columns().stream().anyMatch(column -> !column.head().isEmpty())) {
            line("<thead><tr>"
                    + table.columns().stream()
                            .map(column -> cell("th", column, escaped(column.head())))
                            .collect(Collectors.joining())
                    + "</tr></thead>");
        }
        for (List<Block.Cell> row : table.rows()) {
            StringBuilder cells = new StringBuilder("<tr>");
            for (int i = 0; i < row.size(); i++) {
                cells.append(cell("td", table.columns().get(i), lines(row.get(i).lines())));
            }
            line(cells + "</tr>");
        }
        line("</table>");
    }

    private static String cell(String tag, Block.Column column, String inside) {
        return "<" + tag + (column.rightAligned() ? " class=\"number\"" : "") + ">" + inside + "</" + tag + ">";
    }

    private static String lines(List<PageWords> lines) {
        return lines.stream().map(words -> "<p>" + words(words) + "</p>").collect(Collectors.joining());
    }

    private static String words(PageWords words) {
        String text = escaped(words.text());
        return switch (words.look()) {
            case PLAIN -> text;
            case STRONG -> "<strong>" + text + "</strong>";
            case ALERT -> "<strong class=\"alert\">" + text + "</strong>";
            case GOOD -> "<strong class=\"good\">" + text + "</strong>";
            case FAINT -> "<span class=\"faint\">" + text + "</span>";
            case STRUCK -> "<s>" + text + "</s>";
        };
    }

    /** A picture in the file itself; a browser runs nothing that stands in a picture. */
    private static String picture(Block.Drawing drawing) {
        String type = drawing.scene().isPresent() ? "svg+xml" : "png";
        byte[] bytes = drawing.scene()
                .map(scene -> SvgWriter.write(scene, Theme.LIGHT).getBytes(StandardCharsets.UTF_8))
                .orElseGet(() -> png(drawing));
        String told = drawing.scene().map(Scene::summary).orElse("");
        return String.format(
                Locale.ROOT,
                "<img width=\"%.0f\" height=\"%.0f\" alt=\"%s\" src=\"data:image/%s;base64,%s\">",
                drawing.width() * 4 / 3,
                drawing.height() * 4 / 3,
                escaped(told),
                type,
                Base64.getEncoder().encodeToString(bytes));
    }

    private static byte[] png(Block.Drawing drawing) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(drawing.width() * FINENESS),
                (int) Math.ceil(drawing.height() * FINENESS),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
            graphics.setColor(Pen.INK);
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            graphics.scale(FINENESS, FINENESS);
            drawing.painter().paint(graphics);
        } finally {
            graphics.dispose();
        }
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** As words whatever they say; what cannot be seen, or turns the direction of reading, is written as its code. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> {
                    int kind = Character.getType(point);
                    boolean unseen = kind == Character.CONTROL
                            || kind == Character.FORMAT
                            || kind == Character.SURROGATE
                            || kind == Character.LINE_SEPARATOR
                            || kind == Character.PARAGRAPH_SEPARATOR;
                    if (unseen) {
                        escaped.append(String.format(Locale.ROOT, "U+%04X", point));
                    } else {
                        escaped.appendCodePoint(point);
                    }
                }
            }
        });
        return escaped.toString();
    }
}
