package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Why;
import everyblade.core.entry.Settings;
import everyblade.core.move.Outline.Stop;
import everyblade.core.move.Outline.Visit;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Ratio;
import everyblade.spi.View;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A rotor and a row that stands still, each through a port of its own, and what a plan of both comes to. */
class OutlineTest {

    private final Job job = new Job(new Engines()
            .pad("pad", Ratio.ONE, 1, 0, 0)
            .rotor("c1", 12)
            .stator("s1", 12)
            .port("a")
            .port("b")
            .viewThrough("a", "va", "c1")
            .viewThrough("b", "vb", "s1")
            .built());

    private final Plan plan = PlanBuilder.of(job.fold(), job.coverage(), Prices.of(Settings.USUAL));

    /** A port, a view, a search, an identification and the watching: a whole turn, and eleven vanes less what is in sight anyway. */
    @Test
    void aPlanComesToItsTurnsPortsAndViews() {
        assertThat(plan.turning()).isEqualByComparingTo("360");
        assertThat(plan.drawing()).isEqualByComparingTo("328");
        assertThat(plan.openings()).isEqualTo(2);
        assertThat(plan.views()).isEqualTo(2);
        assertThat(plan.minutes()).isCloseTo(2 * (8 + 2 + 0.25 + 0.5 + 0.5 + 0.25) + 4 + 4 * 328 / 360.0, within(1e-9));
        assertThat(plan.left()).isZero();
        assertThat(plan.unsure()).isZero();
    }

    @Test
    void stationsOfAViewAreNamedInTheirOrderOnceEach() {
        Job computed = AnyJob.computed(1);
        Plan before = PlanBuilder.of(computed.fold(), computed.coverage(), Prices.of(Settings.USUAL));
        assertThat(Outline.of(before).visits())
                .flatExtracting(Visit::stops)
                .isNotEmpty()
                .allSatisfy(stop -> assertThat(stop.stations())
                        .isNotEmpty()
                        .isEqualTo(before.moves().stream()
                                .filter(move -> move.view().equals(stop.view()))
                                .map(move -> move.station().orElseThrow())
                                .distinct()
                                .toList()));
    }

    @Test
    void itIsProvedWhereItTakesNoMoreThanItsBoundAndClosesAll() {
        assertThat(plan(plan.minutes(), 0).proved()).isTrue();
        assertThat(plan(plan.minutes() - 1e-7, 0).proved()).isTrue();
        assertThat(plan(plan.minutes() - 1e-3, 0).proved()).isFalse();
        assertThat(plan(plan.minutes(), 2).proved()).isFalse();
        assertThat(plan(plan.minutes(), 2).unsure()).isEqualTo(2 + 1);
        assertThat(plan(plan.minutes(), 2).left()).isEqualTo(5);
        assertThat(plan.turning().toString()).isEqualTo("360");
    }

    private Plan plan(double bound, int unsure) {
        SortedMap<Why, Integer> open = new TreeMap<>();
        if (unsure > 0) {
            open.put(Why.PLACEMENT, unsure);
            open.put(Why.NOT_WATCHED, 1);
        }
        return new Plan(plan.moves(), bound, new TreeMap<>(Map.of(Why.NO_ACCESS, 5)), open, LeastTurns.NONE);
    }

    @Test
    void itIsToldPortByPortAndViewByView() {
        List<Visit> visits = Outline.of(plan).visits();
        assertThat(visits).extracting(Visit::port).containsExactly(Optional.of("a"), Optional.of("b"));
        assertThat(visits.get(0).minutes()).isCloseTo(15.5, within(1e-9));
        assertThat(visits.get(0).minutes() + visits.get(1).minutes()).isCloseTo(plan.minutes(), within(1e-9));
        Stop rotor = visits.get(0).stops().get(0);
        assertThat(rotor.view().id()).isEqualTo("va");
        assertThat(rotor.row().id()).isEqualTo("c1");
        assertThat(rotor.stations()).isEmpty();
        assertThat(rotor.turning()).isEqualByComparingTo("360");
        assertThat(rotor.drawing()).isZero();
        assertThat(rotor.identified()).containsExactly(1);
        Stop vanes = visits.get(1).stops().get(0);
        assertThat(vanes.turning()).isZero();
        assertThat(vanes.drawing()).isEqualByComparingTo("328");
    }

    @Test
    void aPortThatIsEnteredAgainIsThereAgain() {
        Move through = plan.moves().get(0);
        Move other = plan.moves().get(1);
        Plan back = Plan.of(List.of(through, through, other, through));
        assertThat(Outline.of(back).visits())
                .extracting(Visit::port)
                .containsExactly(Optional.of("a"), Optional.of("b"), Optional.of("a"));
        assertThat(Outline.of(back).visits().get(0).stops()).hasSize(1);
        assertThat(back.openings()).isEqualTo(3);
        assertThat(back.views()).isEqualTo(3);
        assertThat(back.turning()).isEqualByComparingTo("1080");
    }

    @Test
    void aTaskNarrowsAnEngineToItsPortsInItsOrder() {
        EngineModel model = job.fold().situation().engine().model();
        Task task = new Task(Map.of("c1", List.of("tip"), "s1", List.of("all")), List.of());
        assertThat(task.entries(model)).containsExactly("ask c1 tip");
        assertThat(task.narrowed(model)).isSameAs(model);
        assertThat(new Task(Map.of("s1", List.of("root", "leading")), List.of()).entries(model))
                .containsExactly("ask c1 none", "ask s1 root leading");

        EngineModel narrowed = task.through(List.of("b")).narrowed(model);
        assertThat(narrowed.ports()).extracting(Port::id).containsExactly("b");
        assertThat(narrowed.views()).extracting(View::id).containsExactly("vb");
        assertThat(narrowed.rows()).isEqualTo(model.rows());
        assertThat(task.through(List.of("b", "a")).narrowed(model).ports())
                .extracting(Port::id)
                .containsExactly("b", "a");
    }
}
