package everyblade.picture.report.page;

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
    /** A heading stands with at least this much of what follows it. */
    private static final double WITH_HEADING = 60;

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
        List<String> lines = letters.wrapped(heading.text(), size, Margins.WIDTH);
        room(lines.size() * size * 1.3 + WITH_HEADING);
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
        for (String line : letters.wrapped(words.text(), BODY, Margins.WIDTH - indent)) {
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
        double inset = 8;
        List<TableRows.Line> lines = framed.lines().stream()
                .flatMap(words -> letters.wrapped(words.text(), BODY, Margins.WIDTH - 2 * inset).stream()
                        .map(text -> new TableRows.Line(text, words.look())))
                .toList();
        double height = lines.size() * BODY_LEADING + 2 * inset - 3;
        room(height);
        pen.fill(Margins.LEFT, y - height, Margins.WIDTH, height, Pen.SHADE);
        pen.frame(Margins.LEFT, y - height, Margins.WIDTH, height, 0.8, Pen.INK);
        double line = y - inset - BODY + 1;
        for (TableRows.Line each : lines) {
            pen.write(each.text(), each.look(), BODY, Margins.LEFT + inset, line);
            line -= BODY_LEADING;
        }
        took(height + AFTER + 3);
    }

    private void table(Block.Table table) throws IOException {
        TableRows broken = TableRows.of(table, letters, Margins.WIDTH);
        double head =
                broken.head().isEmpty() ? 0 : TableRows.height(broken.head().size());
        room(head + TableRows.height(1));
        tableHead(table, broken);
        for (List<TableRows.Line[]> row : broken.rows()) {
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

    private void lines(Block.Table table, TableRows broken, List<TableRows.Line[]> lines) throws IOException {
        took(TableRows.PADDING);
        for (TableRows.Line[] across : lines) {
            for (int i = 0; i < across.length; i++) {
                double x = Margins.LEFT + broken.lefts()[i];
                if (table.columns().get(i).rightAligned()) {
                    x += broken.rooms()[i] - letters.length(across[i].text(), TableRows.SIZE);
                }
                pen.write(across[i].text(), across[i].look(), TableRows.SIZE, x, y - TableRows.SIZE);
            }
            took(TableRows.LEADING);
        }
        took(TableRows.PADDING);
    }

    private void drawing(Block.Drawing drawing) throws IOException {
        double most = top - Margins.BOTTOM;
        double scale = Math.min(1, Math.min(Margins.WIDTH / drawing.width(), most / drawing.height()));
        room(drawing.height() * scale);
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

    @Override
    public void close() throws IOException {
        if (pen != null) {
            pen.stream().close();
            pen = null;
        }
    }
}
