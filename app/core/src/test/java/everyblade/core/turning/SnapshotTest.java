package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Heading;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A fold as bytes holds all that the fold held, of every sort of thing that an entry leaves in it. */
class SnapshotTest {

    private static final Engine ENGINE = new Engines()
            .row("r", RowKind.ROTOR, 13, Direction.CCW, 2, List.of(), false, 0.5)
            .stator("s", 300)
            .port("p1")
            .view("v", "r", 33.3, 2)
            .view("t", "s", 12, 3)
            .pad("pad", new Ratio(29, 77), 0.7, 0.4, 0.2)
            .built();

    private static final String[] LINES = {
        "open p1",
        "view v",
        "datum r 1 at -77.7",
        "turn on 100.00001 in 9s",
        "turn back 3 blades",
        "here 2 +- 1",
        "skip on 12345.6",
        "slip",
        "here 9",
        "round 9",
        "find nick 3 tip 0.8 mm",
        "recheck 4 root shiny \u00fc\u4e2d",
        "saw tip 12-2 photo a.jpg",
        "noaccess unshown because there is no view",
        "ask r tip",
        "tool out lamp",
        "lost split pin",
        "heat 40 C",
        "proof 0.1 mm at 20 mm",
        "refer who knows",
        "again in 50 cycles",
        "view t",
        "datum s 299",
        "draw on 80",
        "feed back 20",
        "void 6 because it was another",
        "pause held",
        "takeover B. Author"
    };

    private static Fold resumed(Fold fold) {
        return FoldSnapshot.read(FoldSnapshot.write(fold), fold.situation().engine(), List.copyOf(fold.entries()));
    }

    @Test
    void isReadBackAfterEveryEntry() {
        Job job = new Job(ENGINE);
        for (String line : LINES) {
            job.enter(line);
            Fold again = resumed(job.fold());
            Situation was = job.fold().situation();
            Situation is = again.situation();

            assertThat(FoldSnapshot.write(again)).isEqualTo(FoldSnapshot.write(job.fold()));
            assertThat(is.ledger()).usingRecursiveComparison().isEqualTo(was.ledger());
            assertThat(is.seat()).usingRecursiveComparison().isEqualTo(was.seat());
            assertThat(is.among()).isEqualTo(was.among());
            assertThat(is.celsius()).isEqualTo(was.celsius());
            assertThat(is.placements()).isEqualTo(was.placements());
            assertThat(is.runs()).isEqualTo(was.runs());
            assertThat(is.countErrors()).isEqualTo(was.countErrors());
            assertThat(is.tracks().keySet()).isEqualTo(was.tracks().keySet());
            ENGINE.rows().values().forEach(row -> {
                assertThat(is.reading(row)).isEqualTo(was.reading(row));
                assertThat(is.legsOf(row)).usingRecursiveComparison().isEqualTo(was.legsOf(row));
                assertThat(is.placing(row).at(row.id(), row.rock(), is.stop(row)))
                        .usingRecursiveComparison()
                        .isEqualTo(was.placing(row).at(row.id(), row.rock(), was.stop(row)));
            });
            assertThat(again.voided()).isEqualTo(job.fold().voided());
            assertThat(again.entries()).isEqualTo(job.fold().entries());
        }
    }

    @Test
    void goesOnFromAnyEntryAsIfItHadNeverStopped() throws Exception {
        Job whole = new Job(ENGINE).enter(LINES);
        byte[] end = FoldSnapshot.write(whole.fold());
        for (int cut = 0; cut <= LINES.length; cut++) {
            Job begun = new Job(ENGINE);
            for (int i = 0; i < cut; i++) {
                begun.enter(LINES[i]);
            }
            Fold fold = resumed(begun.fold());
            Fold never = begun.fold();
            for (Logged logged : whole.fold().entries().subList(cut, LINES.length)) {
                fold = fold.with(logged);
                never = never.with(logged);
                assertThat(English.say(fold.warnings())).isEqualTo(English.say(never.warnings()));
            }
            assertThat(fold.situation().ledger())
                    .usingRecursiveComparison()
                    .isEqualTo(whole.fold().situation().ledger());
            assertThat(FoldSnapshot.write(fold)).as("cut at %d", cut).hasSize(end.length);
        }
    }

    @Test
    void ofAnEngineWithStationsToo() {
        Engine shaped = new ShapedEngine()
                .row("r", RowKind.ROTOR, 20, 35, 0)
                .view("front", "r", ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 1, 3))
                .built();
        Job job = new Job(shaped).enter("view front", "datum r 1", "turn on 40", "look", "out");
        assertThat(FoldSnapshot.write(resumed(job.fold()))).isEqualTo(FoldSnapshot.write(job.fold()));
    }
}
