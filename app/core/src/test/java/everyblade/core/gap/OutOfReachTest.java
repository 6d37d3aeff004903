package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What no move can reach, added up by row and reason. */
class OutOfReachTest {

    private static Job job() {
        return new Job(new Engines()
                .row("c1", RowKind.ROTOR, 5, Direction.CW, 3, List.of(), false, 0)
                .row("c2", RowKind.ROTOR, 4, Direction.CW, 2, List.of(), false, 0)
                .rotor("c3", 7)
                .view("outer", "c1", 0, 2, "s3")
                .view("v", "c3", 0, 2)
                .built());
    }

    @Test
    void eachRowsCellsAreCountedOverAllItsAirfoils() {
        Job job = job();
        ZoneSet shown = shown(job);
        assertThat(OutOfReach.of(job.coverage()))
                .extracting(one -> one.row().id(), OutOfReach::why, OutOfReach::cells)
                .containsExactly(
                        tuple("c1", Why.NO_ACCESS, 5 * (zones(job, "c1") - shown.size())),
                        tuple("c2", Why.NO_ACCESS, 4 * zones(job, "c2")));
    }

    @Test
    void theirZonesAreThoseThatNoViewShows() {
        Job job = job();
        RowCoverage row = job.coverage().row("c1");
        OutOfReach beyond = OutOfReach.of(job.coverage()).get(0);
        assertThat(beyond.zones()).isEqualTo(row.zoning().all().minus(shown(job)));
        for (int n = 1; n <= 5; n++) {
            assertThat(Gaps.beyond(row, n)).isEqualTo(beyond.zones());
            assertThat(Gaps.within(row, n)).isEqualTo(shown(job));
        }
    }

    @Test
    void whatIsAcceptedOrNotAskedForIsNone() {
        Job job = job().enter("noaccess c2 unshown because blanked off", "ask c1 s3");
        assertThat(OutOfReach.of(job.coverage())).isEmpty();
        assertThat(Gaps.beyond(job.coverage().row("c2"), 1).isEmpty()).isTrue();
    }

    @Test
    void whatWasSeenIsLeftNowhere() {
        Job job = job().enter("view v", "round 1");
        RowCoverage row = job.coverage().row("c3");
        assertThat(Gaps.within(row, 3).isEmpty()).isTrue();
        assertThat(Gaps.beyond(row, 3).isEmpty()).isTrue();
    }

    private static int zones(Job job, String row) {
        return job.coverage().row(row).zoning().size();
    }

    private static ZoneSet shown(Job job) {
        int outer = job.coverage().row("c1").zoning().names().indexOf("s3");
        return new ZoneSet(1L << outer);
    }
}
