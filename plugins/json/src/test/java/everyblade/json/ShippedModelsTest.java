package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The engine models that come with the program. */
class ShippedModelsTest {

    static final Path FOLDER = Path.of("..", "..", "engine-models");

    private final ModelShelf shelf = ModelShelf.of(List.of(FOLDER));

    @Test
    void are_exactly_these_three_and_all_load() {
        assertThat(shelf.found()).allSatisfy(found -> assertThat(found).isInstanceOf(Found.Loaded.class));
        assertThat(shelf.models())
                .extracting(EngineModel::id)
                .containsExactly("corncrake-12", "larkspur-4", "tansy-a1");
    }

    @Test
    void give_no_warnings() {
        assertThat(shelf.found())
                .flatExtracting(found -> ((Found.Loaded) found).warnings())
                .isEmpty();
    }

    @Test
    void say_that_they_are_invented() {
        assertThat(shelf.models())
                .allSatisfy(model -> assertThat(model.notice())
                        .get()
                        .asString()
                        .contains("Invented for training and for demonstration"));
    }

    @Test
    void have_scope_tips_that_pass_every_opening_on_the_way_of_their_views() {
        assertThat(shelf.models())
                .allSatisfy(model -> assertThat(model.views()).allSatisfy(view -> {
                    double diameter = model.scopeTip(view.scopeTip().orElseThrow())
                            .orElseThrow()
                            .diameter();
                    assertThat(port(model, view).through())
                            .isNotEmpty()
                            .allSatisfy(
                                    opening -> assertThat(opening.diameter()).isGreaterThan(diameter));
                }));
    }

    @Test
    void look_through_a_window_or_from_stations_but_never_both() {
        assertThat(shelf.models())
                .allSatisfy(model -> assertThat(model.views())
                        .allSatisfy(view -> assertThat(view.window().isPresent())
                                .isEqualTo(view.stations().isEmpty())));
    }

    @Test
    void state_windows_no_wider_than_a_pitch() {
        assertThat(shelf.models())
                .allSatisfy(model -> assertThat(model.views())
                        .filteredOn(view -> view.window().isPresent())
                        .allSatisfy(view -> {
                            double pitch =
                                    360.0 / model.row(view.row()).orElseThrow().count();
                            assertThat(2 * view.window().orElseThrow().halfWidth())
                                    .isBetween(0.3 * pitch, pitch);
                        }));
    }

    @Test
    void let_a_scope_travel_only_past_rows_that_stand_still() {
        assertThat(shelf.models())
                .allSatisfy(model -> assertThat(model.views())
                        .allSatisfy(view -> assertThat(view.travels())
                                .isEqualTo(model.row(view.row()).orElseThrow().kind() != RowKind.ROTOR)));
    }

    @Test
    void have_rows_that_are_seen_from_stations_and_rows_that_are_only_declared() {
        assertThat(shelf.models())
                .allSatisfy(model -> assertThat(model.rows())
                        .anyMatch(row -> row.shape().isPresent() && isSeenFromStations(model, row)));
        assertThat(shelf.models())
                .anySatisfy(model -> assertThat(model.rows())
                        .anyMatch(row -> row.shape().isEmpty() && !isSeenFromStations(model, row)));
    }

    private static boolean isSeenFromStations(EngineModel model, Row row) {
        return model.views().stream()
                .anyMatch(
                        view -> view.row().equals(row.id()) && !view.stations().isEmpty());
    }

    private static Port port(EngineModel model, View view) {
        return model.port(view.port().orElseThrow()).orElseThrow();
    }
}
