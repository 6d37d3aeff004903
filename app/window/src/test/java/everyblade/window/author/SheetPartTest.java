package everyblade.window.author;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.paint.ReadyScene;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.words.Words;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether the parts lie where the sheet has them. */
class SheetPartTest {

    @TempDir
    Path folder;

    private Scene sheet() {
        Attempt attempt = new Bench(folder).read(Bench.MODEL, Bench.FIRST);
        return AuthorState.sheet(attempt.model().orElseThrow(), java.util.Optional.empty(), Words.of(Locale.ENGLISH))
                .scene();
    }

    @ParameterizedTest
    @CsvSource({
        "SIDE, wall hub",
        "SIDE, wall casing",
        "ROW, blade 7",
        "ROW, 'clock angles, seen from aft looking forward'"
    })
    void whatBelongsToAPartIsDrawnInItAlone(SheetPart part, String name) {
        Group group = sheet().groups().stream()
                .filter(one -> one.title().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("the sheet has no " + name));

        assertThat(part.place().contains(drawn(List.of(group)))).isTrue();
    }

    @Test
    void thePartsDoNotMeetAndOnlyTitleAndLegendAreOutsideThem() {
        for (SheetPart one : SheetPart.values()) {
            for (SheetPart other : SheetPart.values()) {
                assertThat(one != other && one.place().intersects(other.place()))
                        .isFalse();
            }
        }
        List<Group> outside = sheet().groups().stream()
                .filter(group -> {
                    Rectangle2D drawn = drawn(List.of(group));
                    return java.util.Arrays.stream(SheetPart.values())
                            .noneMatch(part -> part.place().contains(drawn));
                })
                .toList();
        assertThat(outside).hasSize(2).last().extracting(Group::title).isEqualTo("Legend");
    }

    /** Where these leave a trace, mm. */
    private static Rectangle2D drawn(List<Group> groups) {
        int scale = 4;
        BufferedImage image = new BufferedImage(297 * scale, 210 * scale, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.scale(scale, scale);
        ReadyScene.of(new Scene(297, 210, "", "", groups), ScenePainter.of(Theme.LIGHT))
                .paint(g, new Rectangle2D.Double(0, 0, 297, 210));
        g.dispose();
        Rectangle2D all = null;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (image.getRGB(x, y) >>> 24 > 40) {
                    Rectangle2D dot =
                            new Rectangle2D.Double((double) x / scale, (double) y / scale, 1.0 / scale, 1.0 / scale);
                    all = all == null ? dot : all.createUnion(dot);
                }
            }
        }
        return all;
    }
}
