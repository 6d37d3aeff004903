package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.ZoneSet;
import everyblade.core.surface.Patches;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Remark;
import everyblade.spi.EngineModel;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A row of which somebody else tells which facets were seen. */
class ShownFacetsTest {

    private static final int BLADES = 20;

    private final EngineModel model = new ShapedEngine()
            .twisted("r", BLADES, 0)
            .view(
                    "v",
                    "r",
                    "wide120",
                    Optional.empty(),
                    ShapedEngine.station("s", -18, 125, new Heading(1, 0.2, 0), 0, 0))
            .model();

    private final Coverage whole =
            new Job(Engine.of(model)).enter("view v", "datum r 1", "turn 360").coverage();

    /** Facets of each airfoil: all of airfoil 3, none of the others. */
    private List<BitSet> third() {
        List<BitSet> facets = new ArrayList<>();
        for (int n = 1; n <= BLADES; n++) {
            BitSet of = new BitSet();
            of.set(
                    0,
                    n == 3 ? whole.sights().scene(whole.row("r").row()).facets().count() : 0);
            facets.add(of);
        }
        return facets;
    }

    @Test
    void cellsAreJudgedByThemAndNotByEntries() {
        RowCoverage row = whole.showing(Map.of("r", third()), List.of()).row("r");

        for (int zone = 0; zone < row.zoning().size(); zone++) {
            assertThat(row.state(3, zone)).isEqualTo(State.SEEN);
            assertThat(row.state(4, zone)).isEqualTo(State.UNSEEN);
        }
        assertThat(row.areas(row.zoning().all()).seen()).isCloseTo(1.0 / BLADES, within(1e-9));
        assertThat(whole.row("r").tally(row.zoning().all()).seen()).isGreaterThan(BLADES);
    }

    /** An edge runs along facets, not somewhere through them. */
    @Test
    void facetsAreShownAsAWhole() {
        List<BitSet> half = third();
        half.get(2).clear(0, 40);
        RowCoverage row = whole.showing(Map.of("r", half), List.of()).row("r");
        Patches patches = whole.sights().grain(row.row()).patches();
        BitSet shown = new BitSet();
        shown.set(patches.first(40), patches.count());
        assertThat(row.surely(3)).isEqualTo(shown);
        assertThat(row.wholly(3)).isEqualTo(shown);
        assertThat(row.surely(4)).isEqualTo(new BitSet());
        Areas areas = row.areas(row.zoning().all());
        assertThat(areas.maybe()).isEqualTo(areas.seen()).isBetween(0.0, 1.0 / BLADES);
        assertThat(areas.reach()).isBetween(0.1, 1.0);
    }

    @Test
    void aRowOfWhichNothingIsComputedStaysAsItIs() {
        Coverage declared = new Job(Engines.of(12, 2)).coverage();
        assertThat(declared.showing(Map.of("c1", third()), List.of()).row("c1")).isSameAs(declared.row("c1"));
    }

    @Test
    void rowsOfWhichNothingIsToldStayAsTheyAre() {
        assertThat(whole.showing(Map.of(), List.of()).row("r")).isSameAs(whole.row("r"));
    }

    @Test
    void remarksTakeThePlaceOfThoseInTheRecord() {
        BitSet airfoil = new BitSet();
        airfoil.set(6);
        Coverage shown = whole.showing(
                Map.of("r", third()), List.of(new Remark(1, Remark.What.FOUND, "r", airfoil, new ZoneSet(1))));

        assertThat(shown.row("r").remarked(Remark.What.FOUND, 7, 0)).isTrue();
        assertThat(shown.situation().ledger().remarks()).hasSize(1);
        assertThat(whole.situation().ledger().remarks()).isEmpty();
    }
}
