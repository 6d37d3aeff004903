package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.DrawnShape.Anchor;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Style;
import java.util.ArrayList;
import java.util.List;

/** Whose map it is, what it rests on and what it says in one line; a frame with one field under the other. */
final class TitleBlock {

    private static final double SIZE = 2.3;
    private static final double LABEL = 17;
    private static final double STEP = 3;
    private static final int HEAD_LETTERS = 16;

    private final Point corner;
    private final double width;
    private final List<Item> items = new ArrayList<>();
    private double down;

    private TitleBlock(Point corner, double width) {
        this.corner = corner;
        this.width = width;
    }

    /**
     * The block, its upper left corner at a place; as high as its fields need, which is at most 67 mm.
     *
     * @param rows those that the sheet shows
     */
    static Group at(
            Point corner, double width, Coverage coverage, List<RowCoverage> rows, MapFacts facts, MapStyle style) {
        TitleBlock block = new TitleBlock(corner, width);
        block.field(facts.words().say("title.engine"), facts.model(), 1, Ink.LINE);
        block.field(facts.words().say("title.serial"), facts.serial(), 1, Ink.LINE);
        block.field(facts.words().say("title.task"), facts.task(), 2, Ink.LINE);
        block.field(facts.words().say("title.view"), facts.words().facing(style.facing()), 1, Ink.LINE);
        for (Basis basis : Basis.values()) {
            Shares.figures(rows, basis, facts.words())
                    .ifPresent(figures -> block.field(
                            facts.words().basis(basis),
                            facts.words().say("title.figures", figures.line(), basis),
                            4,
                            Ink.LINE));
        }
        if (rows.stream().anyMatch(row -> row.basis() == Basis.COMPUTED)) {
            block.field(
                    facts.words().say("title.criteria"),
                    Terms.of(coverage, facts.words()).told(),
                    3,
                    Ink.LINE);
        }
        List<String> lost = Shares.lost(coverage, facts.words());
        if (!lost.isEmpty()) {
            String told =
                    lost.size() > 1 ? facts.words().say("title.lostMore", lost.get(0), lost.size() - 1) : lost.get(0);
            block.field(facts.words().say("title.count"), told, 3, Ink.ALERT);
        }
        block.field(facts.words().say("title.record"), shortened(facts.head()), 1, Ink.LINE);
        facts.notice().ifPresent(notice -> block.field(facts.words().say("title.notice"), notice, 4, Ink.ALERT));
        block.items.add(Item.of(Polygon.box(corner.x(), corner.y(), width, block.down), Style.lined(Ink.LINE, 0.35)));
        return new Group(facts.words().say("group.title"), block.items);
    }

    private static String shortened(String head) {
        return head.length() <= HEAD_LETTERS ? head : head.substring(0, HEAD_LETTERS) + "…";
    }

    private void field(String label, String value, int most, Ink ink) {
        if (down > 0) {
            items.add(Item.of(
                    Strokes.line(corner.plus(0, down), corner.plus(width, down)), Style.lined(Ink.FAINT, 0.12)));
        }
        items.add(Item.of(Text.upright(corner.plus(1.6, down + STEP), label, 0.84 * SIZE, Anchor.START), Ink.FAINT));
        for (String line : Lettering.wrapped(value, SIZE, width - LABEL - 1.6, most)) {
            down += STEP;
            items.add(Item.of(Text.upright(corner.plus(LABEL, down), line, SIZE, Anchor.START), ink));
        }
        down += 1.2;
    }
}
