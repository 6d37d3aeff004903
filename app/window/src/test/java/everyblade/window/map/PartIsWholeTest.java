package everyblade.window.map;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.ScreenKind;
import everyblade.picture.scene.Theme;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Painting only what has changed comes out as painting everything, in every picture element. */
class PartIsWholeTest {

    private static CellPanel map(ScreenKind kind, MapStyle style, double zoom) {
        CellPanel panel = new CellPanel(kind);
        panel.setSize(640, 530);
        panel.style(style);
        panel.lookInto("r1");
        panel.show(Jobs.begun().coverage());
        panel.zoom(zoom, 420, 180);
        return panel;
    }

    private static CellPanel rings(MapStyle style) {
        return map(ScreenKind.RINGS, style, 1);
    }

    @ParameterizedTest(name = "{0} at scale {1}, zoomed {2} times")
    @CsvSource({"RINGS,1,1", "STRIPS,1.25,1", "RINGS,1.5,2.3", "WHEEL,1.75,1", "STRIPS,2,1", "RINGS,3,1.7", "WHEEL,1,1"
    })
    void entry_by_entry_the_picture_is_as_if_painted_anew(ScreenKind kind, double scale, double zoom) {
        CellPanel panel = map(kind, MapStyle.PLAIN, zoom);
        Screen screen = Screen.of(panel, scale, 3, 5);
        screen.paint(panel);
        Jobs job = Jobs.begun().enter("view v-r1");
        Random random = new Random(20);
        for (int i = 0; i < 12; i++) {
            job.enter(entry(random, i));
            Coverage now = job.coverage();
            panel.show(now);
            CellPanel anew = map(kind, MapStyle.PLAIN, zoom);
            anew.show(now);
            assertThat(Screen.differing(
                            screen.paint(panel), Screen.of(anew, scale, 3, 5).paint(anew)))
                    .as("after entry " + i)
                    .isZero();
        }
    }

    private static String entry(Random random, int i) {
        int n = 1 + random.nextInt(11);
        return switch (i % 4) {
            case 0 -> "saw root/pressure " + n + " photo a.jpg";
            case 1 -> "nick " + n + " tip/suction/middle 0.4";
            case 2 -> "recheck " + n + " root again";
            default -> "turn " + (random.nextInt(80) - 40);
        };
    }

    @Test
    void most_entries_leave_most_of_the_map_alone() {
        CellPanel panel = rings(MapStyle.PLAIN);
        Screen screen = Screen.of(panel, 1, 0, 0);
        int[] before = screen.paint(panel);
        panel.show(Jobs.begun().enter("r1 saw root/pressure 3 photo a.jpg").coverage());
        assertThat(Screen.differing(before, screen.paint(panel))).isBetween(20L, before.length / 100L);
    }

    @Test
    void a_changed_theme_leaves_nothing_of_the_old_one() {
        MapStyle dark = new MapStyle(Theme.DARK, Facing.FORWARD_LOOKING_AFT);
        CellPanel panel = rings(MapStyle.PLAIN);
        Screen screen = Screen.of(panel, 1.25, 0, 0);
        int[] light = screen.paint(panel);
        panel.style(dark);
        CellPanel anew = rings(dark);
        int[] changed = screen.paint(panel);
        assertThat(Screen.differing(changed, Screen.of(anew, 1.25, 0, 0).paint(anew)))
                .isZero();
        assertThat(Screen.differing(changed, light)).isGreaterThan(light.length / 2);
    }

    @Test
    void what_was_painted_comes_back_as_it_was() {
        CellPanel panel = rings(MapStyle.PLAIN);
        Screen screen = Screen.of(panel, 1.25, 3, 5);
        assertThat(Screen.differing(screen.paint(panel), screen.paint(panel))).isZero();
        int[] before = screen.paint(panel);
        panel.zoomIn();
        assertThat(Screen.differing(before, screen.paint(panel))).isPositive();
        panel.fit();
        assertThat(Screen.differing(before, screen.paint(panel))).isZero();
    }
}
