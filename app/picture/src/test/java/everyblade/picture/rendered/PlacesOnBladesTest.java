package everyblade.picture.rendered;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Distances.Span;
import everyblade.core.finding.Length;
import everyblade.core.finding.ZoneDistances;
import everyblade.core.finding.measure.Extent;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** How far apart zones are, and how large a blade is, on the first rotor of a shipped engine model. */
class PlacesOnBladesTest {

    private final EngineModel model = ((Reading.Read)
                    EngineJsonReader.read(Path.of("..", "..", "engine-models", "larkspur-4", EngineJsonReader.FILE)))
            .model();
    private final Row row = model.rows().get(0);

    private ZoneSet zone(String word) throws Exception {
        return ZoneWords.zone(Zoning.of(row), new Said<>(word, 1));
    }

    private Span between(String one, String other) throws Exception {
        return new ZoneDistances(model).between(row, zone(one), zone(other)).orElseThrow();
    }

    @Test
    void aZoneIsNoDistanceFromItselfAndSoAreZonesThatTouch() throws Exception {
        assertThat(between("tpl", "tpl").least()).isEqualTo(Length.ZERO);
        assertThat(between("tip/pressure/leading", "tip/pressure/middle").least())
                .isEqualTo(Length.ZERO);
    }

    @Test
    void theEdgesAreApartByLessThanTheChord() throws Exception {
        Span edges = between("tip/pressure/leading", "tip/pressure/trailing");
        double chord = ((Shape.Axial) row.shape().orElseThrow())
                .sections().stream().mapToDouble(Shape.Section::chord).max().orElseThrow();

        assertThat(edges.least().millimetres()).isBetween(0.2 * chord, 0.6 * chord);
        assertThat(edges.most().millimetres()).isGreaterThan(0.8 * chord);
        assertThat(edges).isEqualTo(between("tip/pressure/trailing", "tip/pressure/leading"));
    }

    @Test
    void theChordOfABandIsThatInItsMiddle() throws Exception {
        Shape.Axial axial = (Shape.Axial) row.shape().orElseThrow();
        double least = axial.sections().stream()
                .mapToDouble(Shape.Section::chord)
                .min()
                .orElseThrow();
        double most = axial.sections().stream()
                .mapToDouble(Shape.Section::chord)
                .max()
                .orElseThrow();
        double root = Extent.chord(row, zone("root")).orElseThrow().millimetres();
        double tip = Extent.chord(row, zone("tip")).orElseThrow().millimetres();

        assertThat(root).isBetween(least, most);
        assertThat(tip).isBetween(least, most);
        assertThat(Extent.chord(row, zone("all")).orElseThrow().millimetres())
                .isEqualTo((root + tip) / 2, within(0.05 * most));
    }

    @Test
    void theSpanIsFromTheLeastToTheGreatestRadius() {
        assertThat(Extent.span(model, row).orElseThrow().millimetres()).isBetween(5.0, 200.0);
    }
}
