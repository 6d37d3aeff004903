package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What was accepted as not seen, cell by cell, and through which views it could have been seen. */
class AcceptanceTest {

    private static Acceptance last(Job job) {
        var remarks = job.fold().situation().ledger().remarks();
        return Acceptance.of(job.coverage(), remarks.get(remarks.size() - 1));
    }

    @Nested
    class WhereViewsDeclareWhatTheyShow {

        private final Job job = new Job(new Engines()
                .row("r", RowKind.ROTOR, 10, Direction.CW, 3, List.of(), false, 0)
                .row("other", RowKind.STATOR, 4, Direction.CW, 2, List.of(), false, 0)
                .view("tips", "r", 0, 2, "s3")
                .view("middles", "r", 90, 2, "s2")
                .view("all of the other", "other", 0, 2)
                .built());

        @Test
        void aPartIsSeenThroughTheViewsOfItsRowThatShowIt() {
            job.enter("noaccess r s3 2-4 because no time");
            assertThat(last(job)).isEqualTo(new Acceptance(3, 0, 3, 0, List.of("tips")));
            job.enter("noaccess r all 5 because no time");
            assertThat(last(job)).isEqualTo(new Acceptance(3, 0, 2, 0, List.of("tips", "middles")));
        }

        @Test
        void whatNoViewShowsCannotBeSeenThroughAny() {
            job.enter("noaccess r s1 all because no port");
            assertThat(last(job)).isEqualTo(new Acceptance(10, 0, 0, 0, List.of()));
            assertThat(last(job).givenAway()).isZero();
        }

        @Test
        void whatWasSeenIsNotGivenAway() {
            job.enter("view tips", "datum r 1", "turn on 72", "noaccess r s3 all because no time");
            assertThat(last(job)).isEqualTo(new Acceptance(10, 3, 10, 0, List.of("tips")));
            assertThat(last(job).givenAway()).isEqualTo(7);
        }
    }

    @Test
    void ofManyViewsThreeAreNamed() {
        Engines engines = new Engines().rotor("r", 10);
        for (String view : List.of("u", "v", "w", "x", "y")) {
            engines.view(view, "r", 0, 2);
        }
        Job job = new Job(engines.built()).enter("noaccess r all 3 because no time");
        assertThat(last(job).told()).isEqualTo(new Acceptance.Told(1, 0, 1, 0, false, List.of("u", "v", "w"), 2));
    }

    /** What shows at all from ahead and from behind is another side of the blade. */
    @ParameterizedTest
    @CsvSource({"tip/suction/leading, front", "tip/pressure/middle, rear"})
    void whereStationsAreComputedItIsTheViewFromWhichThePartIsInSight(String part, String view) {
        Job job = new Job(new ShapedEngine()
                        .row("r", RowKind.ROTOR, 20, 35, 0)
                        .row("other", RowKind.STATOR, 30, 0, 80)
                        .view("front", "r", ShapedEngine.station("a", -15, 138, new Heading(1, 0.3, -0.4), 0, 0))
                        .view("rear", "r", ShapedEngine.station("b", 45, 130, new Heading(-1, -0.4, -0.1), 0, 0))
                        .view("aft", "other", ShapedEngine.station("c", 60, 130, new Heading(1, 0, 0), 0, 0))
                        .built())
                .enter("noaccess r " + part + " 3-5 because no time");
        assertThat(last(job)).isEqualTo(new Acceptance(3, 0, 3, 0, List.of(view)));
    }

    /** 40 pixels across: in sight, and too coarse for any detail. */
    @Test
    void whatIsShownTooCoarselyIsCountedApart() {
        Job job = new Job(new ShapedEngine()
                        .row("r", RowKind.ROTOR, 20, 35, 0)
                        .view(
                                "front",
                                "r",
                                "coarse60",
                                Optional.empty(),
                                ShapedEngine.station("a", -15, 138, new Heading(1, 0.3, -0.4), 0, 0))
                        .built())
                .set("detail", "0.2")
                .enter("noaccess r tip/suction/leading 3-5 because no time");
        assertThat(last(job)).isEqualTo(new Acceptance(3, 0, 0, 3, List.of()));
        assertThat(last(job).told()).isEqualTo(new Acceptance.Told(3, 0, 0, 3, true, List.of(), 0));
        job.enter("noaccess r all 3 because no time");
        assertThat(last(job).coarse()).isBetween(1, last(job).cells() - 1);
        assertThat(last(job).told())
                .isInstanceOfSatisfying(
                        Acceptance.Told.class,
                        told -> assertThat(told.allCoarse()).isFalse());
    }
}
