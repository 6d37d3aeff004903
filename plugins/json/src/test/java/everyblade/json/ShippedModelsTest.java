package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.spi.ChordBand;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
    void state_windows_no_wider_than_a_pitch() {
        assertThat(shelf.models())
                .allSatisfy(model -> assertThat(model.views()).allSatisfy(view -> {
                    double pitch = 360.0 / model.row(view.row()).orElseThrow().count();
                    assertThat(2 * view.window().orElseThrow().halfWidth()).isBetween(0.3 * pitch, pitch);
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
    void show_something_of_every_row_and_leave_some_zones_that_no_view_shows() {
        assertThat(shelf.models()).allSatisfy(model -> {
            assertThat(model.rows())
                    .allSatisfy(row -> assertThat(zones(model, row, true)).isNotEmpty());
            assertThat(model.rows())
                    .anySatisfy(row -> assertThat(zones(model, row, false)).isEmpty());
            assertThat(model.rows())
                    .anySatisfy(row -> assertThat(zones(model, row, false)).isNotEmpty());
        });
    }

    /** Zones of a row, each as its words, that some view shows, or that none does. */
    private static List<Set<String>> zones(EngineModel model, Row row, boolean shown) {
        List<List<String>> kinds = List.of(
                row.kind() == RowKind.LINER ? List.of("outer", "inner") : List.of("root", "tip"),
                row.sides() ? List.of("pressure", "suction") : List.of(""),
                row.chordBands().stream().map(ChordBand::word).toList());
        List<Set<String>> zones = new ArrayList<>();
        for (String span : kinds.get(0)) {
            for (String side : kinds.get(1)) {
                for (String chord : kinds.get(2)) {
                    zones.add(Set.of(span, side, chord));
                }
            }
        }
        zones.removeIf(zone -> shown
                != model.views().stream()
                        .filter(view -> view.row().equals(row.id()))
                        .map(view -> view.window().orElseThrow().shows())
                        .anyMatch(shows -> kinds.stream()
                                .allMatch(kind -> shows.stream().noneMatch(kind::contains)
                                        || shows.stream()
                                                .anyMatch(word -> kind.contains(word) && zone.contains(word)))));
        return zones;
    }

    private static Port port(EngineModel model, View view) {
        return model.port(view.port().orElseThrow()).orElseThrow();
    }
}
