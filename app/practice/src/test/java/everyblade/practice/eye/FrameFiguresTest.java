package everyblade.practice.eye;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Pose;
import everyblade.core.sight.ViewScene;
import everyblade.practice.Engines;
import everyblade.practice.drill.Hands;
import everyblade.practice.drill.Mockup;
import everyblade.practice.drill.Tip;
import everyblade.practice.harm.HarmKind;
import everyblade.practice.harm.Invention;
import everyblade.practice.harm.Recipe;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long a picture takes; nothing to be asserted on a machine that does other things too. */
class FrameFiguresTest {

    private static final int FRAMES = 400;
    private static final int WARM = 150;

    @ParameterizedTest
    @CsvSource({"p12-c12, 480", "p11-c11, 480", "in-c1, 480", "p12-c12, 640", "p11-c11, 640"})
    @EnabledIfSystemProperty(named = "everyblade.figures", matches = "true")
    void a_picture_of_the_largest_engine_with_neighbours_and_walls(String viewId, int size) throws Exception {
        ViewScene engine = Engines.scene("corncrake-12");
        View view = engine.model().view(viewId).orElseThrow();
        Row row = engine.model().row(view.row()).orElseThrow();
        Recipe recipe = new Recipe(List.of(row.id()), List.of(HarmKind.NICK, HarmKind.DENT), 20, 20, 1, 4, 0.5);
        Mockup mockup = new Mockup(
                engine,
                Invention.of(
                        recipe,
                        List.of(new Invention.Offered(row, engine.airfoil(row).orElseThrow(), Optional.empty())),
                        7),
                Map.of(),
                0.5);
        Hands hands = new Hands(engine, mockup);
        Tip tip = Tip.at(viewId, view.stations().get(0).id());
        Pose pose = hands.pose(tip);
        Optics optics = hands.optics(tip);
        Raster raster = new Raster(size);
        double[] millis = new double[FRAMES];
        long cpu = 0;
        for (int i = 0; i < WARM + FRAMES; i++) {
            cpu = i == WARM ? cpu() : cpu;
            long from = System.nanoTime();
            EyeFrame frame = raster.draw(mockup.at(Map.of("shaft", 0.1 * i)), pose, optics.dark());
            int[] picture = Picture.of(frame, optics, i);
            millis[Math.max(0, i - WARM)] = (System.nanoTime() - from) / 1e6;
            assertThat(picture).hasSize(size * size);
        }
        double spent = (cpu() - cpu) / 1e6 / FRAMES;
        Arrays.sort(millis);
        System.getLogger("figures")
                .log(
                        System.Logger.Level.INFO,
                        String.format(
                                "%s %d: median %.1f ms, 99th percentile %.1f ms; %.1f ms of processor time",
                                viewId, size, millis[FRAMES / 2], millis[FRAMES * 99 / 100], spent));
    }

    private static long cpu() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toNanos();
    }
}
