package everyblade.window;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.util.StringTokenizer;
import javax.swing.Icon;

/**
 * The signs on buttons and pages, each drawn by one stroke of one width in a square of 16 units, so that all are of the same
 * hand and sharp at any size. A sign never stands without a name: beside it, or for those who rest a pointer on it or
 * have it read out.
 */
enum ButtonSign implements Icon {
    /** The last move once more. */
    AGAIN("a 8 8 5.2 60 290 m 12.6 2 l 12.4 5.9 l 8.6 5.2"),
    /** One airfoil on. */
    ONE_ON("m 3 3 l 3 13 m 6 8 l 13 8 m 10 5 l 13 8 l 10 11"),
    /** A full turn. */
    ROUND("a 8 8 5.5 90 -320 m 8.4 0.9 l 5.6 2.9 l 8.3 5.2 a 8 8 1 0 360"),
    /** Seen at rest. */
    LOOK("a 8 12.6 7.4 38 104 a 8 3.4 7.4 -142 104 a 8 8 1.9 0 360"),
    /** It stands here. */
    HERE("a 8 6.2 4 -40 260 m 11 8.8 l 8 14.2 l 5 8.8 a 8 6.2 1.1 0 360"),
    /** It may have moved. */
    SLIP("m 2.5 5 l 5 3 l 8 5 l 11 3 l 13.5 5 m 2.5 13 l 13.5 13 m 8 7.5 l 8 10.5"),
    /** Something was found. */
    FIND("m 8 1.8 l 14.2 8 l 8 14.2 l 1.8 8 l 8 1.8 m 8 5 l 8 8.6 m 8 10.8 l 8 11"),
    /** To come back to. */
    RECHECK("m 4 14.2 l 4 2 l 12.4 2 l 10.2 5.2 l 12.4 8.4 l 4 8.4"),
    /** A picture. */
    PHOTO(
            "m 1.8 4.6 l 14.2 4.6 l 14.2 13 l 1.8 13 l 1.8 4.6 m 5.5 4.4 l 6.6 2.6 l 9.4 2.6 l 10.5 4.4 a 8 8.8 2.4 0 360"),
    /** Does not count. */
    UNDO("m 6 2.6 l 2.8 5.8 l 6 9 m 3 5.8 l 9.4 5.8 a 9.4 9.6 3.8 90 -180 m 9.4 13.4 l 6.4 13.4"),
    /** Counts again. */
    REDO("m 10 2.6 l 13.2 5.8 l 10 9 m 13 5.8 l 6.6 5.8 a 6.6 9.6 3.8 90 180 m 6.6 13.4 l 9.6 13.4"),
    /** What is open before the job can be closed. */
    CLOSING("m 2 4 l 3.4 5.4 l 6 2.6 m 2 11 l 3.4 12.4 l 6 9.6 m 8.6 4.2 l 14 4.2 m 8.6 11.2 l 14 11.2"),
    /** The report. */
    REPORT("m 3.5 1.8 l 9.6 1.8 l 12.5 4.8 l 12.5 14.2 l 3.5 14.2 l 3.5 1.8 m 6 8 l 10 8 m 6 11 l 10 11"),
    /** All else. */
    MORE("m 2.5 4 l 13.5 4 m 2.5 8 l 13.5 8 m 2.5 12 l 13.5 12"),
    /** Rows as rings. */
    RINGS("a 8 8 6.2 0 360 a 8 8 3.9 0 360 a 8 8 1.5 0 360"),
    /** Rows unrolled. */
    STRIPS("m 2 4 l 14 4 m 2 8 l 5 8 m 9 8 l 14 8 m 2 12 l 11 12"),
    /** Something new. */
    NEW("m 8 2.5 l 8 13.5 m 2.5 8 l 13.5 8"),
    /** Shows it at work. */
    DEMO("m 4.5 2.5 l 13 8 l 4.5 13.5 l 4.5 2.5"),
    /** A folder. */
    FOLDER("m 1.8 13 l 1.8 3.4 l 6.2 3.4 l 7.8 5.4 l 14.2 5.4 l 14.2 13 l 1.8 13"),
    /** Looks closely at what others did. */
    REVIEW("a 6.8 6.8 4.6 0 360 m 10.2 10.2 l 14 14"),
    /** Aims for practice. */
    PRACTISE("a 8 8 5 0 360 m 8 1 l 8 5 m 8 11 l 8 15 m 1 8 l 5 8 m 11 8 l 15 8"),
    /** Writes. */
    WRITE("m 2.4 13.6 l 3.2 10.4 l 10.8 2.8 l 13.2 5.2 l 5.6 12.8 l 2.4 13.6 m 9 4.6 l 11.4 7"),
    /** Many engines. */
    FLEET("m 2 2 l 6.6 2 l 6.6 6.6 l 2 6.6 l 2 2 m 9.4 2 l 14 2 l 14 6.6 l 9.4 6.6 l 9.4 2 m 2 9.4 l 6.6 9.4 l 6.6 14"
            + " l 2 14 l 2 9.4 m 9.4 9.4 l 14 9.4 l 14 14 l 9.4 14 l 9.4 9.4"),
    /** Back to where one came from. */
    BACK("m 6.6 3.4 l 2.2 8 l 6.6 12.6 m 2.4 8 l 14 8"),
    /** From one shift to the next. */
    HANDOVER("m 2 5 l 13 5 m 10 2 l 13 5 l 10 8 m 14 11 l 3 11 m 6 8 l 3 11 l 6 14"),
    /** By one's own hand. */
    SIGN("m 2 14 l 14 14 m 3.6 11 l 4.4 8.4 l 10.6 2.2 l 12.4 4 l 6.2 10.2 l 3.6 11"),
    /** A known length. */
    KNOWN("m 1.8 5 l 14.2 5 l 14.2 11 l 1.8 11 l 1.8 5 m 5 5 l 5 8 m 8 5 l 8 9 m 11 5 l 11 8"),
    /** From one end to the other. */
    SIZE("m 2.2 3 l 2.2 13 m 13.8 3 l 13.8 13 m 2.6 8 l 13.4 8 m 5 5.8 l 2.8 8 l 5 10.2 m 11 5.8 l 13.2 8 l 11 10.2"),
    /** So it is. */
    CONFIRM("m 2.6 8.4 l 6.4 12.2 l 13.4 3.8"),
    /** Into the entry line. */
    INTO_LINE("m 13.6 3 l 13.6 9 l 3 9 m 6 6 l 3 9 l 6 12"),
    /** All of it. */
    WHOLE("m 2.4 6 l 2.4 2.4 l 6 2.4 m 10 2.4 l 13.6 2.4 l 13.6 6 m 13.6 10 l 13.6 13.6 l 10 13.6 m 6 13.6 l 2.4 13.6"
            + " l 2.4 10"),
    /** What is left to see. */
    LEFT("a 8 8 6.2 20 290 m 8 8 l 14.2 8 m 8 8 l 12 3.3"),
    /** Shares of a row. */
    SHARES("m 2.5 2 l 2.5 14 m 2.5 4.5 l 12 4.5 m 2.5 8 l 8 8 m 2.5 11.5 l 13.5 11.5"),
    /** The course of the job. */
    COURSE("m 2 2 l 2 14 l 14 14 m 4 11 l 7 8.6 l 9.4 9.4 l 13.6 3.4"),
    /** Entries, one after the other. */
    ENTRIES(
            "m 5.4 3.6 l 14 3.6 m 5.4 8 l 14 8 m 5.4 12.4 l 11 12.4 m 2.2 3.6 l 2.4 3.6 m 2.2 8 l 2.4 8 m 2.2 12.4 l 2.4 12.4");

    private static final int SQUARE = 16;
    private static final float STROKE = 1.4f;

    private final Path2D path;

    /** @param drawn moves {@code m x y}, lines {@code l x y} and arcs {@code a x y radius start extent}, degrees */
    ButtonSign(String drawn) {
        path = path(drawn);
    }

    private static Path2D path(String drawn) {
        Path2D path = new Path2D.Double();
        StringTokenizer next = new StringTokenizer(drawn);
        while (next.hasMoreTokens()) {
            switch (next.nextToken()) {
                case "m" -> path.moveTo(number(next), number(next));
                case "l" -> path.lineTo(number(next), number(next));
                case "a" -> path.append(arc(next), false);
                default -> throw new IllegalArgumentException(drawn);
            }
        }
        return path;
    }

    private static Arc2D arc(StringTokenizer next) {
        Arc2D arc = new Arc2D.Double();
        arc.setArcByCenter(number(next), number(next), number(next), number(next), number(next), Arc2D.OPEN);
        return arc;
    }

    private static double number(StringTokenizer next) {
        return Double.parseDouble(next.nextToken());
    }

    @Override
    public int getIconWidth() {
        return Looks.scaled(SQUARE);
    }

    @Override
    public int getIconHeight() {
        return Looks.scaled(SQUARE);
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int left, int top) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(left, top);
        g.scale(getIconWidth() / (double) SQUARE, getIconHeight() / (double) SQUARE);
        g.setColor(on.isEnabled() ? on.getForeground() : javax.swing.UIManager.getColor("Button.disabledText"));
        g.setStroke(new BasicStroke(STROKE, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
        g.dispose();
    }
}
