package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which voids are told, and of several lost counts which one a void took out. */
class TakenOutTest {

    private static Job job() {
        return new Job(new Engines().rotor("r", 36).view("v", "r", 0, 2).built());
    }

    private static List<OpenItem> items(Job job) {
        return new TakenOut(job.fold()).items();
    }

    @Test
    void whatWasSaidAnewAndStruckAgainWasNotMended() {
        Job job = job().enter(
                        "open cover",
                        "void 1 because mistaken",
                        "open plate",
                        "void 3 because mistaken too",
                        "note nothing was opened");
        assertThat(items(job))
                .extracting(item -> item.opened().orElseThrow().number())
                .containsExactly(2, 4);
    }

    @Test
    void aVoidTakesOutTheLostCountThatItsEntryShowedAndNoOther() {
        Job job =
                job().enter("view v", "datum r 1 ± 0", "turn on 60 ± 1", "here 5 ± 0", "turn on 60 ± 1", "here 3 ± 0");
        assertThat(job.fold().situation().countErrors()).hasSize(2);
        for (int entry : List.of(4, 6)) {
            Job struck = job.another();
            job.fold().entries().forEach(logged -> struck.enter(logged.text()));
            struck.enter("void " + entry + " because misread");
            assertThat(items(struck)).singleElement().satisfies(item -> {
                assertThat(item.kind()).isEqualTo(Kind.VOIDED);
                assertThat(item.what())
                        .isInstanceOfSatisfying(
                                Removal.LostCount.class,
                                lost -> assertThat(lost.entry()).isEqualTo(entry));
            });
        }
    }

    /** A row that is no longer asked for at all is told without parts that still are. */
    @Test
    void aRowOfWhichNothingIsAskedForAnyMoreIsToldAsThat() {
        Job halves = new Job(new Engines()
                        .row("r", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                        .view("v", "r", 0, 2)
                        .built())
                .enter("ask r none");
        assertThat(items(halves)).singleElement().satisfies(item -> {
            assertThat(item.kind()).isEqualTo(Kind.NARROWED);
            assertThat(item.what())
                    .isInstanceOfSatisfying(
                            Removal.Narrowed.class,
                            narrowed -> assertThat(narrowed.asked()).isEmpty());
        });
        assertThat(items(halves.enter("ask r tip")))
                .singleElement()
                .satisfies(item -> assertThat(item.what())
                        .isInstanceOfSatisfying(
                                Removal.Narrowed.class,
                                narrowed -> assertThat(narrowed.asked()).isPresent()));
        assertThat(items(halves.enter("ask r all"))).isEmpty();
    }
}
