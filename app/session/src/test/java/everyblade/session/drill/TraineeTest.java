package everyblade.session.drill;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.EntryParser;
import everyblade.core.finding.Findings;
import everyblade.core.sight.Progress;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.practice.account.Burst;
import everyblade.practice.account.Debrief;
import everyblade.practice.account.DrillReplay;
import everyblade.practice.account.Glance;
import everyblade.practice.account.Outcome;
import everyblade.practice.account.Outcome.Fate;
import everyblade.practice.account.SeenFacets;
import everyblade.practice.account.TargetSighting;
import everyblade.practice.drill.Drill;
import everyblade.practice.drill.Hands;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Hands.Moved;
import everyblade.practice.drill.Mockup;
import everyblade.practice.drill.Reachable;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.practice.drill.Truth;
import everyblade.practice.drill.Truths;
import everyblade.practice.harm.Harm;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.View;
import everyblade.words.Words;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * A trainee who keeps count without fail goes through drills of the course as they are meant: every view, every station, a whole
 * turn at each, and calls what is well in sight.
 */
class TraineeTest {

    /** Moments for each airfoil that goes by. */
    private static final int STEPS = 3;

    private static final long STEP_MILLIS = 400;

    private ViewScene scene;
    private Truth truth;
    private Hands hands;
    private Glance glance;
    private Fold fold;
    private Burst burst;
    private final List<Sample> samples = new ArrayList<>();
    private final Map<Integer, Double> seconds = new TreeMap<>();
    private final TreeSet<Integer> done = new TreeSet<>();

    /** What came of it. */
    private record Came(Course.Lesson lesson, Debrief debrief, Burst.Tally tally) {

        private long of(Fate fate) {
            return debrief.outcomes().stream()
                    .filter(outcome -> outcome.fate() == fate)
                    .count();
        }

        private String told() {
            return lesson.drill().title() + ": " + debrief.outcomes().size() + " pieces of damage, "
                    + of(Fate.CALLED) + " called, " + of(Fate.NEVER_IN_SIGHT) + " never in sight, "
                    + of(Fate.TOO_LITTLE) + " too little, " + of(Fate.NOT_CALLED) + " not called; " + tally;
        }
    }

    private Came practised(int number, int views, Predicate<Harm> notices) throws Exception {
        Course.Lesson lesson =
                Course.shipped(Words.of(Locale.ENGLISH)).lessons().get(number - 1);
        Path file = Path.of("..", "..", "engine-models", lesson.model(), EngineJsonReader.FILE);
        scene = new ViewScene(((Reading.Read) EngineJsonReader.read(file)).model(), Map.of(), Map.of());
        truth = Truths.of(
                scene, lesson.recipe(), Reachable.faces(scene, lesson.drill().views()), 20 + number);
        Mockup mockup = new Mockup(
                scene, truth.harms(), truth.standing(), truth.recipe().grime());
        hands = new Hands(scene, mockup);
        glance = new Glance(mockup, hands, truth.harms());
        burst = new Burst(truth, new TreeSet<>());
        fold = Fold.start(Engine.of(scene.model()));
        say("heat 20 C");
        for (String id : lesson.drill().views().stream().limit(views).toList()) {
            View view = scene.model().view(id).orElseThrow();
            say("view " + id);
            for (Station station : view.stations()) {
                lookRound(view, station, notices);
            }
        }
        TipTrack track = new TipTrack(samples);
        SeenFacets seen = DrillReplay.of(scene, truth, track, Progress.NONE);
        return new Came(lesson, Debrief.of(truth, seen, Findings.of(fold), track.told()), burst.tally());
    }

    private void say(String line) throws Exception {
        fold = fold.with(
                new Logged(fold.entries().size() + 1, Instant.EPOCH, "Trainee", true, line, EntryParser.parse(line)));
    }

    private void lookRound(View view, Station station, Predicate<Harm> notices) throws Exception {
        Row row = scene.model().row(view.row()).orElseThrow();
        Map<String, Double> shafts = samples.isEmpty()
                ? Map.of()
                : samples.get(samples.size() - 1).moment().shafts();
        Moment moment = hands.seated(view.id(), station.id(), shafts);
        double step = 360.0 / row.count() / STEPS;
        for (int i = 0; i < row.count() * STEPS; i++) {
            look(moment, harm -> harm.row().equals(row.id()) && notices.test(harm));
            Hands.Outcome outcome = row.kind() == RowKind.ROTOR
                    ? hands.turn(moment, row.spool().orElseThrow(), step)
                    : hands.move(moment, moment.tip().fed(step));
            assertThat(outcome).as("%s %s", view.id(), station.id()).isInstanceOf(Moved.class);
            moment = ((Moved) outcome).moment();
        }
    }

    private void look(Moment moment, Predicate<Harm> notices) throws Exception {
        long millis = samples.size() * STEP_MILLIS;
        samples.add(new Sample(millis, moment, fold.entries().size()));
        Glance.Harms seen = glance.at(moment);
        for (int harm = 0; harm < truth.harms().size(); harm++) {
            if (seen.properly().get(harm)) {
                seconds.merge(harm, STEP_MILLIS / 1000.0, Double::sum);
            }
            Harm one = truth.harms().get(harm);
            if (one.kind().isDamage()
                    && seconds.getOrDefault(harm, 0.0) >= TargetSighting.LEAST
                    && notices.test(one)
                    && done.add(harm)) {
                say(one.kind().called().orElseThrow().word() + " " + one.airfoil() + " "
                        + one.zones().get(0));
                burst.called(Findings.of(fold));
            }
        }
        for (int passed : burst.saw(seen, STEP_MILLIS / 1000.0)) {
            samples.add(new Sample(millis, moment, fold.entries().size(), Optional.of(new TipTrack.ToldOf(passed))));
        }
    }

    @Test
    void a_burst_is_gone_through_to_its_forty_answers_and_what_was_not_noticed_is_told() throws Exception {
        Came came = practised(2, 1, harm -> harm.airfoil() % 4 != 0);

        assertThat(came.tally().answers()).as(came.told()).isGreaterThanOrEqualTo(Burst.SIZE);
        assertThat(came.tally().falseCalls()).as(came.told()).isZero();
        assertThat(came.debrief().outcomes())
                .allSatisfy(outcome -> assertThat(outcome.fate())
                        .as("%s", outcome)
                        .isIn(
                                outcome.harm().airfoil() % 4 == 0
                                        ? List.of(Fate.NOT_CALLED, Fate.TOO_LITTLE, Fate.NEVER_IN_SIGHT)
                                        : List.of(Fate.CALLED, Fate.TOO_LITTLE, Fate.NEVER_IN_SIGHT)));
        assertThat(came.of(Fate.NOT_CALLED))
                .as(came.told())
                .isEqualTo(came.tally().passed());
    }

    @Test
    @EnabledIfSystemProperty(named = "everyblade.campaign", matches = "true")
    void whoever_goes_through_the_whole_course_as_it_is_meant_finds_nearly_all_of_it() throws Exception {
        for (int number = 1; number <= 12; number++) {
            TraineeTest trainee = new TraineeTest();
            Came came = trainee.practised(number, Integer.MAX_VALUE, harm -> true);

            System.out.println(came.told());
            int damage = came.debrief().outcomes().size();
            assertThat(came.of(Fate.CALLED)).as(came.told()).isGreaterThanOrEqualTo(damage * 9 / 10);
            assertThat(came.debrief().falseCalls()).as(came.told()).isEmpty();
            assertThat(came.debrief().outcomes()).extracting(Outcome::fate).doesNotContain(Fate.NOT_CALLED);
            if (came.lesson().drill().mode() == Drill.Mode.BURST) {
                assertThat(came.tally().answers()).as(came.told()).isGreaterThanOrEqualTo(Burst.SIZE);
            }
        }
    }
}
