package everyblade.practice.account;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.EntryParser;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.sight.Progress;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.practice.Engines;
import everyblade.practice.account.Debrief.Trials;
import everyblade.practice.account.Outcome.Fate;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.drill.Tip;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.practice.drill.Truth;
import everyblade.practice.drill.Truths;
import everyblade.practice.harm.Harm;
import everyblade.practice.harm.HarmKind;
import everyblade.practice.harm.Recipe;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DebriefTest {

    private static final ViewScene engine = Engines.scene("larkspur-4");
    private static Truth truth;
    private static SeenFacets slow;
    private static SeenFacets fast;

    @BeforeAll
    static void a_turn_taken_slowly_and_one_taken_fast() throws Exception {
        truth = Truths.of(
                engine, new Recipe(List.of("c1"), List.of(HarmKind.NICK, HarmKind.DENT), 12, 4, 2, 6, 0), Map.of(), 9);
        slow = DrillReplay.of(engine, truth, turning(360, 120), Progress.NONE);
        fast = DrillReplay.of(engine, truth, turning(360, 4), Progress.NONE);
    }

    private List<Finding> called(String... lines) throws Exception {
        Fold fold = Fold.start(Engine.of(engine.model()));
        List<String> all = new ArrayList<>(List.of("heat 20 C", "view in-c1"));
        all.addAll(Arrays.asList(lines));
        for (String line : all) {
            fold = fold.with(
                    new Logged(fold.entries().size() + 1, Instant.EPOCH, "A", true, line, EntryParser.parse(line)));
        }
        return Findings.of(fold);
    }

    /** A turn of the rotor before a tip that stands still, in so many seconds. */
    private static TipTrack turning(double degrees, double seconds) {
        List<Sample> samples = new ArrayList<>();
        int steps = (int) (degrees / 9);
        for (int i = 0; i <= steps; i++) {
            samples.add(new Sample(
                    (long) (i * 1000 * seconds / steps),
                    new Moment(Tip.at("in-c1", "low"), Map.of("gas", i * 9.0, "power", 0.0)),
                    i));
        }
        return new TipTrack(samples);
    }

    private Harm nick() {
        return truth.damage().stream()
                .filter(harm -> harm.kind() == HarmKind.NICK)
                .findFirst()
                .orElseThrow();
    }

    private Fate fate(Debrief debrief, Harm harm) {
        return debrief.outcomes().stream()
                .filter(outcome -> outcome.harm().equals(harm))
                .findFirst()
                .orElseThrow()
                .fate();
    }

    @Test
    void a_call_is_taken_for_what_it_fits_and_tells_what_was_wrong_about_it() throws Exception {
        SeenFacets nothing = DrillReplay.of(engine, truth, new TipTrack(List.of()), Progress.NONE);
        Harm nick = nick();
        String zone = nick.zones().get(0);
        String other = zone.startsWith("tip") ? zone.replace("tip/", "root/") : zone.replace("root/", "tip/");
        String far =
                other.contains("leading") ? other.replace("leading", "trailing") : other.replace("trailing", "leading");

        assertThat(fate(Debrief.of(truth, nothing, called("nick " + nick.airfoil() + " " + zone)), nick))
                .isEqualTo(Fate.CALLED);
        assertThat(fate(Debrief.of(truth, nothing, called("crack " + nick.airfoil() + " " + zone)), nick))
                .isEqualTo(Fate.OTHER_KIND);
        assertThat(fate(Debrief.of(truth, nothing, called("nick " + nick.airfoil() + " " + far)), nick))
                .isEqualTo(Fate.OTHER_ZONE);
    }

    @Test
    void a_call_on_a_neighbour_is_a_lost_count_and_one_far_off_is_false() throws Exception {
        Truth one = new Truth(1, truth.recipe(), List.of(nick()), truth.standing());
        SeenFacets nothing = DrillReplay.of(engine, one, new TipTrack(List.of()), Progress.NONE);
        String zone = nick().zones().get(0);
        int beside = nick().airfoil() % 19 + 1;
        int far = (nick().airfoil() + 8) % 19 + 1;

        Debrief off = Debrief.of(one, nothing, called("nick " + beside + " " + zone));
        Debrief wrong = Debrief.of(one, nothing, called("nick " + far + " " + zone));

        assertThat(fate(off, nick())).isEqualTo(Fate.OTHER_AIRFOIL);
        assertThat(off.falseCalls()).isEmpty();
        assertThat(fate(wrong, nick())).isEqualTo(Fate.NEVER_IN_SIGHT);
        assertThat(wrong.falseCalls()).hasSize(1);
    }

    @Test
    void misses_are_told_apart_by_whether_and_how_long_the_damage_was_in_sight() throws Exception {
        Map<Fate, Long> slowly = fates(Debrief.of(truth, slow, List.of()));
        Map<Fate, Long> quickly = fates(Debrief.of(truth, fast, List.of()));

        assertThat(slowly.get(Fate.NOT_CALLED)).isPositive();
        assertThat(quickly.get(Fate.NEVER_IN_SIGHT)).isEqualTo(slowly.get(Fate.NEVER_IN_SIGHT));
        assertThat(quickly.get(Fate.TOO_LITTLE)).isGreaterThan(slowly.getOrDefault(Fate.TOO_LITTLE, 0L));
        assertThat(slow.turning().mean()).isBetween(2.9, 3.1);
        assertThat(fast.turning().fastest()).isBetween(80.0, 100.0);
    }

    private static Map<Fate, Long> fates(Debrief debrief) {
        return debrief.outcomes().stream().collect(Collectors.groupingBy(Outcome::fate, Collectors.counting()));
    }

    @Test
    void every_airfoil_that_passed_by_had_its_time_and_is_a_trial() throws Exception {
        Debrief debrief = Debrief.of(truth, slow, called("nick " + nick().airfoil() + " tip"));

        assertThat(Arrays.stream(slow.seconds().get("c1")).min().orElseThrow()).isPositive();
        Trials trials = debrief.trials();
        assertThat(trials.hits() + trials.misses() + trials.falseAlarms() + trials.rejections())
                .isBetween(8, 19);
        assertThat(slow.facets().get("c1").get(0).cardinality()).isBetween(10, 250);
    }

    @Test
    void search_time_runs_from_when_damage_was_first_well_in_sight_to_its_call() throws Exception {
        TipTrack track = turning(360, 120); // a sample and an entry each three seconds
        Harm nick = truth.damage().stream()
                .filter(harm -> slow.harms().get(truth.harms().indexOf(harm)).firstMillis() >= 0)
                .findFirst()
                .orElseThrow();
        double first = slow.harms().get(truth.harms().indexOf(nick)).firstMillis() / 1000.0;

        List<Finding> calls = called(
                "datum c1 1",
                "note one",
                nick.kind().called().orElseThrow().word() + " " + nick.airfoil() + " "
                        + nick.zones().get(0));
        Outcome outcome = Debrief.of(truth, slow, calls).outcomes().stream()
                .filter(each -> each.harm().equals(nick))
                .findFirst()
                .orElseThrow();

        int entry = outcome.call().orElseThrow().entry();
        double at = 3.0 * entry;
        assertThat(outcome.search(track).isPresent()).isEqualTo(at >= first);
        TipTrack late = new TipTrack(track.samples().stream()
                .map(sample -> new Sample(sample.millis(), sample.moment(), sample.millis() < 117_000 ? 0 : 99))
                .toList());
        assertThat(outcome.search(late)).hasValue(117 - first);
    }

    @Test
    void a_call_of_what_the_trainee_was_told_of_is_a_miss_and_no_false_call() throws Exception {
        Harm nick = nick();
        List<Finding> calls =
                called("nick " + nick.airfoil() + " " + nick.zones().get(0));
        int index = truth.harms().indexOf(nick);
        int entry = calls.get(0).entry();

        Debrief after = Debrief.of(truth, slow, calls, Map.of(index, entry - 1));
        Debrief before = Debrief.of(truth, slow, calls, Map.of(index, entry));

        assertThat(fate(after, nick)).isEqualTo(Fate.NOT_CALLED);
        assertThat(after.falseCalls()).isEmpty();
        assertThat(after.trials().hits()).isZero();
        assertThat(fate(before, nick)).isEqualTo(Fate.CALLED);
    }

    @Test
    void a_burst_tells_once_of_what_was_well_in_sight_and_went_by_without_a_call() throws Exception {
        Burst burst = new Burst(truth, Set.of());
        int nick = truth.harms().indexOf(nick());
        Glance.Harms there = new Glance.Harms(bits(nick), bits(nick));
        Glance.Harms away = new Glance.Harms(bits(), bits());

        assertThat(burst.saw(there, 0.3)).isEmpty();
        assertThat(burst.saw(away, 5)).as("too brief to be looked at").isEmpty();
        assertThat(burst.saw(there, 0.3)).isEmpty();
        assertThat(burst.saw(away, 2)).as("it may come back").isEmpty();
        assertThat(burst.saw(away, 1)).containsExactly(nick);
        assertThat(burst.saw(away, 5)).isEmpty();
        assertThat(burst.tally()).isEqualTo(new Burst.Tally(0, 1, 0));

        Burst other = new Burst(truth, Set.of());
        other.saw(there, 1);
        other.called(called("nick " + nick().airfoil() + " " + nick().zones().get(0)));
        assertThat(other.saw(away, 5)).as("it was called").isEmpty();
        assertThat(other.tally()).isEqualTo(new Burst.Tally(1, 0, 0));
    }

    private static BitSet bits(int... set) {
        BitSet bits = new BitSet();
        Arrays.stream(set).forEach(bits::set);
        return bits;
    }
}
