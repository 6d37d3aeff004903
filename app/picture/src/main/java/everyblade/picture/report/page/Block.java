package everyblade.picture.report.page;

import everyblade.picture.scene.Scene;
import java.awt.Graphics2D;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** One thing on the pages; blocks follow each other downwards. Sizes are points, 1/72 inch. */
public sealed interface Block {

    /**
     * A heading, which also stands in the outline.
     *
     * @param level 1 for a chapter, 2 for a section of it
     * @param text what it says
     * @param with how much of what follows stands on the same page, points
     */
    record Heading(int level, String text, double with) implements Block {

        /** A heading that stands with at least this much of what follows it, points. */
        private static final double WITH = 60;

        /** One that stands with the first lines of what follows it. */
        public Heading(int level, String text) {
            this(level, text, WITH);
        }
    }

    /** A paragraph over the whole width. */
    record Paragraph(PageWords words) implements Block {}

    /** An item of a list, set in a little. */
    record Item(PageWords words) implements Block {}

    /**
     * Words in a frame, such as the answer in short.
     *
     * @param lines one under the other, each as long as it needs
     */
    record Framed(List<PageWords> lines) implements Block {

        public Framed {
            lines = List.copyOf(lines);
        }
    }

    /**
     * The answer to what a document is about: framed, large, in the colour of its look; its figures beside it.
     *
     * @param said in few words, good or what must not be overlooked
     * @param figures at most four
     * @param reasons one under the other, each as long as it needs
     */
    record Answer(PageWords said, List<Figure> figures, List<PageWords> reasons) implements Block {

        public Answer {
            figures = List.copyOf(figures);
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * A figure to be read from afar.
     *
     * @param value of it
     * @param label what it is
     */
    record Figure(String value, String label) {}

    /**
     * A table. Its head is repeated on every page that it reaches; a row that is longer than a page goes on on the next.
     *
     * @param columns at least one; without any head there is no head row
     * @param rows each with as many cells as there are columns
     */
    record Table(List<Column> columns, List<List<Cell>> rows) implements Block {

        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            for (List<Cell> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "a row of " + row.size() + " cells in a table of " + columns.size() + " columns");
                }
            }
        }
    }

    /**
     * A column of a table.
     *
     * @param head what is in it
     * @param share of the width, in proportion to the other columns
     * @param rightAligned for numbers
     */
    record Column(String head, double share, boolean rightAligned) {

        /** A column of words. */
        public static Column of(String head, double share) {
            return new Column(head, share, false);
        }

        /** A column of numbers. */
        public static Column number(String head, double share) {
            return new Column(head, share, true);
        }
    }

    /**
     * A cell of a table.
     *
     * @param lines one under the other, each as long as it needs
     */
    record Cell(List<PageWords> lines) {

        public Cell {
            lines = List.copyOf(lines);
        }

        /** A cell of these words. */
        public static Cell of(PageWords... lines) {
            return new Cell(Arrays.asList(lines));
        }

        /** A cell of plain words. */
        public static Cell of(String text) {
            return of(PageWords.of(text));
        }
    }

    /**
     * A drawing, as vectors. It is scaled down, never up, to what is left of the width, and stands on one page.
     *
     * @param width of what the painter paints
     * @param height of what the painter paints
     * @param painter paints from (0, 0) to (width, height), y downwards
     * @param scene the same as a scene, if it is one
     */
    record Drawing(double width, double height, Painter painter, Optional<Scene> scene) implements Block {

        /** One that is only painted. */
        public Drawing(double width, double height, Painter painter) {
            this(width, height, painter, Optional.empty());
        }
    }

    /** Paints something. */
    @FunctionalInterface
    interface Painter {
        void paint(Graphics2D graphics);
    }

    /** What follows begins on a new page. */
    record NewPage() implements Block {}
}
