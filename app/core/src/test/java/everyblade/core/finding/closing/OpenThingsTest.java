package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Engine;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.View;
import everyblade.spi.Window;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is open or inside is told with its name and where to find it. */
class OpenThingsTest {

    private static Job job() {
        return new Job(Engine.of(EngineModel.of("e", "engine")
                .rows(List.of(Row.of("s", RowKind.STATOR, 12).build()))
                .ports(List.of(port("p1", OptionalDouble.of(97.6)), port("p2", OptionalDouble.empty())))
                .views(List.of(
                        View.of("v", "s").window(new Window(2, List.of("all"))).build()))
                .build()));
    }

    private static Port port(String id, OptionalDouble clock) {
        return new Port(id, "plug of " + id, Port.Kind.PLUG, clock, OptionalDouble.empty(), List.of());
    }

    private static List<OpenItem> items(String... lines) {
        return new OpenThings(job().enter(lines).fold()).items();
    }

    @Test
    void aTipAmongTheBladesIsToldAtItsViewByTheEntryThatPutItThereLast() {
        assertThat(items("view v", "in", "clear", "in", "note on"))
                .singleElement()
                .satisfies(item -> {
                    assertThat(item.kind()).isEqualTo(Kind.TIP);
                    assertThat(item.opened().orElseThrow().number()).isEqualTo(4);
                    assertThat(item.where()).contains(new Where.AtView("v"));
                });
        assertThat(items("view v", "in", "void 2 because not yet", "in"))
                .singleElement()
                .satisfies(
                        item -> assertThat(item.opened().orElseThrow().number()).isEqualTo(4));
    }

    @Test
    void anOpenPortIsToldByItsNameAndClockAngleWhereTheModelStatesThem() {
        List<OpenItem> items = items("open p1", "open p2", "open cowl");
        assertThat(items)
                .extracting(OpenItem::what)
                .containsExactly(
                        new OpeningProblem.Open(new OpeningProblem.Thing(Optional.empty(), "cowl")),
                        new OpeningProblem.Open(new OpeningProblem.Thing(Optional.of("plug of p2"), "p2")),
                        new OpeningProblem.Open(new OpeningProblem.Thing(Optional.of("plug of p1"), "p1")));
        assertThat(items)
                .extracting(OpenItem::where)
                .containsExactly(Optional.empty(), Optional.empty(), Optional.of(new Where.AtClock(98)));
    }

    @Test
    void aFactThatIsVoidOrBlankIsNotStated() {
        Job job = job().enter("fact hours 10", "fact cycles 4", "void 1 because of another engine");
        assertThat(new OpenRecord(job.fold(), List.of("hours", "cycles")).items())
                .extracting(OpenItem::what)
                .containsExactly(new RecordLack.NotStated(List.of("hours")));
    }
}
