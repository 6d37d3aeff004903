package everyblade.picture.report;

import everyblade.core.entry.Zoning;
import everyblade.picture.paint.OutlinedWords;
import everyblade.picture.paint.SceneFont;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.PageWords;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** The pictures of a job, small, side by side, each with when it was taken and what it shows. */
final class ContactSheet {

    private static final int ACROSS = 3;
    private static final double WIDTH = 500;
    private static final double GAP = 10;
    private static final double CELL = (WIDTH - (ACROSS - 1) * GAP) / ACROSS;
    private static final double PICTURE = 120;
    private static final double LINE = 9;
    private static final int LINES = 6;
    private static final double BOX = 6;
    private static final double GRID = 22;
    private static final double HEIGHT = PICTURE + LINES * LINE + GRID + 6;
    private static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 7);
    /** Letters of the small font that fit into a cell's width. */
    private static final int LETTERS = 42;

    private ContactSheet() {}

    static List<Block> of(Reported job) {
        List<PlacedPhoto> photos = PlacedPhoto.of(job);
        if (photos.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        Font letters = SceneFont.font();
        blocks.add(new Block.Heading(2, job.say("sheet")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("sheet.told"))));
        for (int first = 0; first < photos.size(); first += ACROSS) {
            List<PlacedPhoto> row = photos.subList(first, Math.min(photos.size(), first + ACROSS));
            blocks.add(new Block.Drawing(WIDTH, HEIGHT, graphics -> {
                for (int i = 0; i < row.size(); i++) {
                    cell(graphics, job, row.get(i), i * (CELL + GAP), letters);
                }
            }));
        }
        return blocks;
    }

    private static void cell(Graphics2D graphics, Reported job, PlacedPhoto photo, double left, Font letters) {
        photo.shown()
                .small()
                .ifPresentOrElse(
                        image -> image(graphics, image, left), () -> missing(graphics, job.say("sheet.missing"), left));
        graphics.setFont(SMALL);
        graphics.setColor(Color.BLACK);
        double y = PICTURE + LINE;
        for (String line : lines(job, photo)) {
            write(graphics, line, left, y, letters);
            y += LINE;
        }
        photo.zone(job).ifPresent(named -> grid(graphics, named, left));
    }

    /** As words where the document's font has their letters, else as their outline. */
    private static void write(Graphics2D graphics, String line, double left, double y, Font letters) {
        if (OutlinedWords.areNeeded(line, letters)) {
            AffineTransform place = AffineTransform.getTranslateInstance(left, y);
            graphics.fill(place.createTransformedShape(OutlinedWords.of(line, letters.deriveFont(SMALL.getSize2D()))
                    .outline()));
        } else {
            graphics.drawString(line, (float) left, (float) y);
        }
    }

    private static void image(Graphics2D graphics, BufferedImage image, double left) {
        double scale = Math.min(CELL / image.getWidth(), PICTURE / image.getHeight());
        AffineTransform place = AffineTransform.getTranslateInstance(left, 0);
        place.scale(scale, scale);
        graphics.drawImage(image, place, null);
    }

    private static void missing(Graphics2D graphics, String words, double left) {
        graphics.setColor(Color.GRAY);
        graphics.setStroke(new BasicStroke(0.6f));
        graphics.draw(new Rectangle2D.Double(left, 0, CELL, PICTURE));
        graphics.setFont(SMALL);
        graphics.drawString(words, (float) left + 6, (float) PICTURE / 2);
    }

    private static List<String> lines(Reported job, PlacedPhoto photo) {
        List<String> lines = new ArrayList<>();
        lines.add(job.say("sheet.file", photo.shown().file(), photo.logged().number()));
        photo.shown().damage().ifPresent(lines::add);
        lines.add(job.say("sheet.taken", Telling.second(photo.taken()), photo.byCamera()));
        String view = photo.place()
                .view()
                .map(seen -> job.say("sheet.view", seen.id()))
                .orElse(job.say("sheet.noView"));
        lines.add(
                photo.place().shaftAngle().isEmpty()
                        ? view
                        : job.say(
                                "sheet.shaft",
                                view,
                                photo.place().shaftAngle().getAsDouble(),
                                photo.place().plusMinus(),
                                photo.place().moving()));
        lines.add(photo.airfoil(job));
        return lines.stream()
                .flatMap(line -> wrapped(line).stream())
                .limit(LINES)
                .toList();
    }

    private static List<String> wrapped(String line) {
        List<String> parts = new ArrayList<>();
        String rest = line;
        while (rest.length() > LETTERS) {
            int space = rest.lastIndexOf(' ', LETTERS);
            int cut = space > LETTERS / 2 ? space : LETTERS;
            parts.add(rest.substring(0, cut).strip());
            rest = rest.substring(cut).strip();
        }
        parts.add(rest);
        return parts;
    }

    /** The blade unrolled: pressure side from trailing to leading edge, then the suction side; the root below. */
    private static void grid(Graphics2D graphics, PlacedPhoto.Named named, double left) {
        Zoning zoning = named.zoning();
        int spans = Math.max(1, zoning.spans().size());
        int sides = Math.max(1, zoning.sides().size());
        int chords = Math.max(1, zoning.chords().size());
        double box = Math.min(BOX, GRID / spans);
        double top = PICTURE + LINES * LINE + 4;
        graphics.setStroke(new BasicStroke(0.4f));
        for (int zone = 0; zone < zoning.size(); zone++) {
            int chord = zone % chords;
            int side = zone / chords % sides;
            int span = zone / chords / sides;
            int column = sides == 1 ? chord : side == 0 ? chords - 1 - chord : chords + chord;
            Rectangle2D place = new Rectangle2D.Double(left + column * box, top + (spans - 1 - span) * box, box, box);
            graphics.setColor(named.zones().contains(zone) ? Color.BLACK : Color.WHITE);
            graphics.fill(place);
            graphics.setColor(Color.BLACK);
            graphics.draw(place);
        }
    }
}
