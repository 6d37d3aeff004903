package everyblade.picture.report.page;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/** Puts blocks on pages, one under the other, and begins a new page where one is full. */
final class Flow implements AutoCloseable {

    private static final double BODY = 9.4;
    private static final double BODY_LEADING = 12.6;
    private static final double[] HEADING = {15, 11};
    private static final double INDENT = 12;
    private static final double AFTER = 5;
    private static final double INSET = 8;
    private static final double ANSWER = 17;
    /** What stands beside the answer is so high and each figure so wide. */
    private static final double ANSWER_BAND = 34;

    private static final double FIGURE = 66;
    private static final double FIGURE_SIZE = 15;
    /** A drawing is rather made this much smaller than that it leaves the rest of a page empty. */
    private static final double LEAST_SCALE = 0.7;
    /** The end of a table takes rows up to so much along, so that it does not stand alone on a page that is nearly blank. */
    private static final double LEAST_REST = 100;

    private final PDDocument document;
    private final Letters letters;
    private final Drawings drawings;
    private final PdfOutline outline;
    private final double top;
    private Pen pen;
    /** Upper edge of the next block. */
    private double y;

    private boolean fresh;

    /**
     * Nothing yet.
     *
     * @param below how much of each page's upper part is taken beside the head
     */
    Flow(PDDocument document, Letters letters, PdfOutline outline, double below) {
        this.document = document;
        this.letters = letters;
        this.drawings = new Drawings(document, letters);
        this.outline = outline;
        this.top = Margins.SHEET.getHeight() - Margins.TOP - below;
    }

    void add(Block block) throws IOException {
        if (block instanceof Block.NewPage) {
            if (!fresh) {
                // The page begins with the next block, so that there is none without any.
                close();
            }
        } else if (block instanceof Block.Heading heading) {
            heading(heading);
        } else if (block instanceof Block.Paragraph paragraph) {
            words(paragraph.words(), 0);
        } else if (block instanceof Block.Item item) {
            item(item);
        } else if (block instanceof Block.Framed framed) {
            framed(framed);
        } else if (block instanceof Block.Answer answer) {
            answer(answer);
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Drawing drawing) {
            drawing(drawing);
        }
    }

    private void newPage() throws IOException {
        close();
        PDPage page = new PDPage(Margins.SHEET);
        document.addPage(page);
        pen = new Pen(new PDPageContentStream(document, page), letters);
        y = top;
        fresh = true;
    }

    /** Room for so much, on a new page if need be. */
    private void room(double height) throws IOException {
        if (pen == null || (y - height < Margins.BOTTOM && !fresh)) {
            newPage();
        }
    }

    private void took(double height) {
        y -= height;
        fresh = false;
    }

    private void heading(Block.Heading heading) throws IOException {
        double size = HEADING[heading.level() - 1];
        List<String> lines = letters.wrapped(heading.text(), size, true, Margins.WIDTH);
        room(lines.size() * size * 1.3 + heading.with());
        if (!fresh) {
            took(size * 0.8);
        }
        outline.add(heading, document.getPage(document.getNumberOfPages() - 1), y);
        for (String line : lines) {
            pen.write(line, PageWords.Look.STRONG, size, Margins.LEFT, y - size);
            took(size * 1.3);
        }
        took(AFTER - 1);
    }

    private void words(PageWords words, double indent) throws IOException {
        for (String line : letters.wrapped(words.text(), BODY, words.look().bold(), Margins.WIDTH - indent)) {
            room(BODY_LEADING);
            pen.write(line, words.look(), BODY, Margins.LEFT + indent, y - BODY);
            took(BODY_LEADING);
        }
        took(AFTER);
    }

    private void item(Block.Item item) throws IOException {
        room(BODY_LEADING);
        pen.write("–", item.words().look(), BODY, Margins.LEFT + 1, y - BODY);
        words(item.words(), INDENT);
        y += AFTER - 2;
    }

    private void framed(Block.Framed framed) throws IOException {
        List<TableRows.Line> lines = inset(framed.lines(), BODY);
        double height = lines.size() * BODY_LEADING + 2 * INSET - 3;
        room(height);
        frame(height, Pen.SHADE, Pen.INK);
        inset(lines, y - INSET - BODY + 1, BODY, BODY_LEADING);
        took(height + AFTER + 3);
    }

    /** Lines with room for a frame round them. */
    private List<TableRows.Line> inset(List<PageWords> all, double size) {
        return all.stream()
                .flatMap(words ->
                        letters.wrapped(words.text(), size, words.look().bold(), Margins.WIDTH - 2 * INSET).stream()
                                .map(text -> new TableRows.Line(text, words.look())))
                .toList();
    }

    private void inset(List<TableRows.Line> lines, double first, double size, double leading) throws IOException {
        double line = first;
        for (TableRows.Line each : lines) {
            pen.write(each.text(), each.look(), size, Margins.LEFT + INSET, line);
            line -= leading;
        }
    }

    private void frame(double height, Color ground, Color line) throws IOException {
        pen.fill(Margins.LEFT, y - height, Margins.WIDTH, height, ground);
        pen.frame(Margins.LEFT, y - height, Margins.WIDTH, height, 0.8, line);
    }

    private void answer(Block.Answer answer) throws IOException {
        List<TableRows.Line> lines = inset(answer.reasons(), TableRows.SIZE);
        double height = ANSWER_BAND + lines.size() * TableRows.LEADING + 2 * INSET - 3;
        room(height);
        boolean good = answer.said().look() == PageWords.Look.GOOD;
        frame(height, good ? Pen.GOOD_WASH : Pen.ALERT_WASH, good ? Pen.GOOD : Pen.ALERT);
        double base = y - INSET - ANSWER;
        pen.write(letters.writable(answer.said().text()), answer.said().look(), ANSWER, Margins.LEFT + INSET, base);
        double x = Margins.LEFT + Margins.WIDTH - answer.figures().size() * FIGURE;
        for (Block.Figure figure : answer.figures()) {
            pen.write(letters.writable(figure.value()), PageWords.Look.STRONG, FIGURE_SIZE, x, base);
            double line = base;
            for (String label : letters.wrapped(figure.label(), TableRows.SIZE, false, FIGURE - 6)) {
                line -= TableRows.LEADING;
                pen.write(label, PageWords.Look.FAINT, TableRows.SIZE, x, line);
            }
            x += FIGURE;
        }
        inset(lines, y - ANSWER_BAND - INSET - TableRows.SIZE + 1, TableRows.SIZE, TableRows.LEADING);
        took(height + AFTER + 3);
    }

    private void table(Block.Table table) throws IOException {
        TableRows broken = TableRows.of(table, letters, Margins.WIDTH);
        double head =
                broken.head().isEmpty() ? 0 : TableRows.height(broken.head().size());
        room(head + TableRows.height(1));
        tableHead(table, broken);
        double rest = broken.rows().stream()
                .mapToDouble(row -> TableRows.height(row.size()))
                .sum();
        for (List<TableRows.Line[]> row : broken.rows()) {
            if (rest > y - Margins.BOTTOM && rest <= LEAST_REST && !fresh) {
                newPage();
                tableHead(table, broken);
            }
            rest -= TableRows.height(row.size());
            int from = 0;
            while (from < row.size()) {
                int left = row.size() - from;
                double whole = TableRows.height(left);
                int fitting = (int) ((y - Margins.BOTTOM - 2 * TableRows.PADDING) / TableRows.LEADING);
                boolean couldStandWhole = whole + head <= top - Margins.BOTTOM;
                if (fitting < left && (couldStandWhole || fitting < 1) && !fresh) {
                    newPage();
                    tableHead(table, broken);
                    fitting = (int) ((y - Margins.BOTTOM - 2 * TableRows.PADDING) / TableRows.LEADING);
                }
                int to = from + Math.min(left, Math.max(1, fitting));
                tableRow(table, broken, row.subList(from, to));
                from = to;
            }
        }
        took(AFTER + 3);
    }

    private void tableHead(Block.Table table, TableRows broken) throws IOException {
        if (broken.head().isEmpty()) {
            return;
        }
        double height = TableRows.height(broken.head().size());
        pen.fill(Margins.LEFT, y - height, Margins.WIDTH, height, Pen.SHADE);
        lines(table, broken, broken.head());
        pen.line(Margins.LEFT, y, Margins.LEFT + Margins.WIDTH, y, 0.9, Pen.INK);
    }

    private void tableRow(Block.Table table, TableRows broken, List<TableRows.Line[]> lines) throws IOException {
        lines(table, broken, lines);
        pen.line(Margins.LEFT, y, Margins.LEFT + Margins.WIDTH, y, 0.4, Pen.RULE);
    }

    /** Cell after cell, so that whoever reads the document line by line hears each cell as a whole. */
    private void lines(Block.Table table, TableRows broken, List<TableRows.Line[]> lines) throws IOException {
        for (int i = 0; i < table.columns().size(); i++) {
            double line = y - TableRows.PADDING - TableRows.SIZE;
            for (TableRows.Line[] across : lines) {
                double x = Margins.LEFT + broken.lefts()[i];
                if (table.columns().get(i).rightAligned()) {
                    x += broken.rooms()[i]
                            - letters.length(
                                    across[i].text(),
                                    TableRows.SIZE,
                                    across[i].look().bold());
                }
                pen.write(across[i].text(), across[i].look(), TableRows.SIZE, x, line);
                line -= TableRows.LEADING;
            }
        }
        took(TableRows.height(lines.size()));
    }

    private void drawing(Block.Drawing drawing) throws IOException {
        double most = top - Margins.BOTTOM;
        double scale = Math.min(1, Math.min(Margins.WIDTH / drawing.width(), most / drawing.height()));
        room(drawing.height() * scale * LEAST_SCALE);
        double fits = Math.min(scale, (y - Margins.BOTTOM) / drawing.height());
        PDFormXObject form = drawings.painted(drawing);
        double left = Margins.LEFT + (Margins.WIDTH - drawing.width() * fits) / 2;
        PDPageContentStream stream = pen.stream();
        stream.saveGraphicsState();
        stream.transform(
                new Matrix((float) fits, 0, 0, (float) fits, (float) left, (float) (y - drawing.height() * fits)));
        stream.drawForm(form);
        stream.restoreGraphicsState();
        took(drawing.height() * fits + AFTER);
    }

    /** What is left of the page, points. */
    double room() {
        return y - Margins.BOTTOM;
    }

    @Override
    public void close() throws IOException {
        if (pen != null) {
            pen.stream().close();
            pen = null;
        }
    }
}
