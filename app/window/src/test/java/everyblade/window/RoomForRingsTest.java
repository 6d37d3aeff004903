package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.Facing;
import everyblade.picture.MapStyle;
import everyblade.picture.MapWords;
import everyblade.picture.ScreenKind;
import everyblade.picture.ScreenPicture;
import everyblade.picture.ScreenView;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.spi.Row;
import everyblade.window.view.Choices;
import java.awt.Dimension;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On the smallest screen that is promised, rings are deep enough to be told apart and hit. */
class RoomForRingsTest {

    /** What a bar, a frame and a title leave of 1280 by 800. */
    private static final Dimension SCREEN = new Dimension(1280, 730);

    private static final double UNITS = 96 / 25.4;

    @TempDir
    Path folder;

    private Session job(String engine) throws IOException {
        String model = Files.readString(Path.of("..", "..", "engine-models", engine, "engine.json"))
                .replace("\"id\": \"" + engine + "\"", "\"id\": \"ring\"");
        return Workshop.of(folder, model, "INVENTED-0999", "routine look", "A. Technician")
                .open();
    }

    /** The picture that the map has room for. */
    private static ScreenPicture picture(Session session, Choices choices) {
        Offscreen screen = Offscreen.of(session, DirectDoor.withoutPlans(), choices);
        Dimension room = Offscreen.on(() -> {
            Laid.out(screen.screen().component(), SCREEN);
            return Offscreen.find(screen.screen().component(), JComponent.class, "map")
                    .getSize();
        });
        return ScreenPicture.of(
                ScreenKind.RINGS,
                session.state().coverage(),
                new ScreenView(
                        new MapStyle(MapStyle.PLAIN.theme(), Facing.AFT_LOOKING_FORWARD),
                        Optional.empty(),
                        room.width / UNITS,
                        room.height / UNITS,
                        1,
                        MapWords.of(choices.language()),
                        true,
                        false));
    }

    /** Units from the inner to the outer edge of a row's cells. */
    private static double depth(ScreenPicture picture, Session session, Row row) {
        List<Patch> zones = IntStream.range(
                        0, session.state().coverage().row(row.id()).zoning().size())
                .mapToObj(zone -> picture.patch(new Cell(row.id(), 1, zone)).orElseThrow())
                .toList();
        double low = zones.stream().mapToDouble(Patch::low).min().orElseThrow();
        double high = zones.stream().mapToDouble(Patch::high).max().orElseThrow();
        return (high - low) * UNITS;
    }

    private static final List<Choices> WAYS = Stream.of(Locale.ENGLISH, Locale.GERMAN)
            .map(language -> Choices.first(language).text(100))
            .flatMap(one -> Stream.of(one, one.gloves(false)))
            .toList();

    @Test
    void fifteenRowsAreThirteenUnitsDeepEach() throws IOException {
        try (Session session = job("larkspur-4")) {
            for (Choices way : WAYS) {
                ScreenPicture picture = picture(session, way);
                assertThat(session.state().model().rows())
                        .hasSize(15)
                        .allSatisfy(row -> assertThat(depth(picture, session, row))
                                .as("%s in %s", row.id(), way)
                                .isGreaterThanOrEqualTo(13));
            }
        }
    }

    @Test
    void thirtyRowsAreTwoWheelsWithRingsThatAreDeeperThanInOne() throws IOException {
        try (Session session = job("corncrake-12")) {
            for (Choices way : WAYS) {
                ScreenPicture picture = picture(session, way);
                List<Row> rows = session.state().model().rows();
                assertThat(rows.stream().map(row -> centre(picture, row)).distinct())
                        .hasSize(2);
                assertThat(rows)
                        .hasSize(30)
                        .allSatisfy(row -> assertThat(depth(picture, session, row))
                                .as("%s in %s", row.id(), way)
                                .isGreaterThanOrEqualTo(7));
            }
        }
    }

    private static Point centre(ScreenPicture picture, Row row) {
        return ((Polar) picture.patch(new Cell(row.id(), 1, 0)).orElseThrow().frame()).centre();
    }
}
