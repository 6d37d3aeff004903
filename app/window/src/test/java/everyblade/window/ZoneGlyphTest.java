package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;

class ZoneGlyphTest {

    private static final Zoning ZONING =
            new Zoning(List.of("root", "tip"), List.of("pressure", "suction"), List.of("leading", "trailing"));

    /** The squares that are full, as {@code row,column} from above and left. */
    private static List<String> full(ZoneGlyph glyph) {
        BufferedImage image =
                new BufferedImage(glyph.getIconWidth(), glyph.getIconHeight(), BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        JLabel on = new JLabel();
        on.setForeground(Color.BLACK);
        glyph.paintIcon(on, g, 0, 0);
        g.dispose();
        List<String> full = new ArrayList<>();
        int square = (glyph.getIconHeight() - 1) / 2;
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 4; column++) {
                int x = column * square + (column > 1 ? glyph.getIconWidth() - 1 - 4 * square : 0) + square - 2;
                if (image.getRGB(x, row * square + 2) == Color.BLACK.getRGB()) {
                    full.add(row + "," + column);
                }
            }
        }
        return full;
    }

    @Test
    void fillsWhatIsLeftWithTheTipAboveAndTheSidesBesideEachOther() {
        int tipSuctionLeading = ZONING.names().indexOf("tip/suction/leading");
        int rootPressureTrailing = ZONING.names().indexOf("root/pressure/trailing");
        ZoneSet zones = new ZoneSet(1L << tipSuctionLeading | 1L << rootPressureTrailing);

        assertThat(full(new ZoneGlyph(ZONING, zones, false, false))).containsExactly("0,2", "1,1");
        assertThat(full(new ZoneGlyph(ZONING, zones, false, true))).containsExactly("0,1", "1,2");
    }

    @Test
    void fillsHalfOfASquareOfWhatIsOnlyDoubtful() {
        assertThat(full(new ZoneGlyph(ZONING, ZONING.all(), true, false))).isEmpty();
        assertThat(full(new ZoneGlyph(ZONING, ZONING.all(), false, false))).hasSize(8);
    }
}
