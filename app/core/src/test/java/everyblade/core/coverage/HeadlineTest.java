package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.surface.Facets;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The three figures, and the cells of which there is but a glimpse. */
class HeadlineTest {

    /** Exactly ahead of the row, so that all it reaches is seen. */
    private static final Station AHEAD = ShapedEngine.station("ahead", -15, 135, new Heading(1, 0.3, -0.3), 0, 0);

    private static final Station BEHIND = ShapedEngine.station("behind", 95, 125, new Heading(-1, 0.3, -0.1), 0, 0);

    private static Job twoRows(String... lines) {
        return new Job(new ShapedEngine()
                        .row("r", RowKind.ROTOR, 20, 35, 0)
                        .row("q", RowKind.ROTOR, 31, 20, 60)
                        .view("v", "r", AHEAD)
                        .view("u", "q", BEHIND)
                        .built())
                .enter(lines);
    }

    @Test
    void aCellDoneOfWhichViewsShowLessThanHalfIsCountedApart() {
        RowCoverage row = twoRows("view v", "datum r 1", "turn 360").coverage().row("r");
        Tally all = row.tally(row.zoning().all());
        int glimpsed = 0;
        for (int n = 1; n <= 20; n++) {
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                boolean isHalf = row.areas(n, zone).reach() >= 0.5;
                assertThat(row.glimpsed(n, zone)).isEqualTo(row.state(n, zone) == State.PART && !isHalf);
                glimpsed += row.glimpsed(n, zone) ? 1 : 0;
            }
        }
        assertThat(all.glimpsed()).isEqualTo(glimpsed).isPositive().isLessThanOrEqualTo(all.part());
    }

    @Test
    void nothingIsLeftOfWhatIsSeenAsFarAsItCanBeAndStillMostOfTheSurfaceIsNotSeen() {
        RowCoverage row = twoRows("view v", "datum r 1", "turn 360").coverage().row("r");
        Headline headline = row.headline();
        assertThat(headline.left()).isZero();
        assertThat(headline.leftShare()).isZero();
        assertThat(headline.seen()).isBetween(0.1, 0.6);
        assertThat(headline.seen() + headline.beyond()).isCloseTo(1, within(1e-9));
    }

    /** A row with more surface weighs more. */
    @Test
    void surfacesOfRowsAreAddedUpAndNotTheirShares() {
        Coverage coverage = twoRows("view v", "datum r 1", "turn 200", "view u", "datum q 1", "turn 100")
                .coverage();
        double all = 0;
        double seen = 0;
        for (RowCoverage row : coverage.rows()) {
            Facets facets = coverage.sights().scene(row.row()).facets();
            double airfoil = 0;
            for (int facet = 0; facet < facets.count(); facet++) {
                airfoil += facets.area(facet);
            }
            all += airfoil * row.row().count();
            seen += airfoil * row.row().count() * row.areas(row.zoning().all()).seen();
        }
        Headline headline = coverage.headline(Basis.COMPUTED);
        assertThat(headline.seen()).isCloseTo(seen / all, within(1e-6)).isPositive();
        Tally cells = coverage.tally(Basis.COMPUTED);
        assertThat(headline.left()).isEqualTo(cells.maybe() + cells.unseen() - cells.noAccess() - cells.coarse());
        assertThat(headline.within()).isEqualTo(cells.cells() - cells.noAccess() - cells.coarse());
        assertThat(coverage.headline(Basis.DECLARED)).isEqualTo(new Headline(0, 0, 0, 0));
    }

    /** Twelve blades, halves seen only at the root: 12 of 24 cells can be seen, 4 of them are. */
    @Test
    void whereNoSurfaceIsKnownEveryCellWeighsTheSame() {
        Job job = new Job(new Engines()
                        .row("c1", RowKind.ROTOR, 12, everyblade.spi.Direction.CW, 2, List.of(), false, 0)
                        .view("v", "c1", 0, 2, "root")
                        .built())
                .enter("view v", "datum c1 1", "turn 90");
        Headline headline = job.coverage().headline(Basis.DECLARED);
        assertThat(headline).isEqualTo(new Headline(8, 12, 4 / 24.0, 0.5));
    }

    @Test
    void whatWasAcceptedAsNotSeenIsStillLeft() {
        Job job = new Job(Engines.of(12, 2)).enter("view v", "datum c1 1", "turn 90");
        Headline before = job.coverage().headline(Basis.DECLARED);
        job.enter("noaccess all all because there is no time");
        assertThat(job.coverage().headline(Basis.DECLARED)).isEqualTo(before);
        assertThat(before.left()).isEqualTo(8);
    }
}
