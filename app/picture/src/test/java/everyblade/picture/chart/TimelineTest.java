package everyblade.picture.chart;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class TimelineTest {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    /** Twelve undivided blades, one in sight at a time; invented for tests. */
    private static final String RING = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring",
              "rows": [ { "id": "r", "kind": "rotor", "count": 12, "spanBands": 1, "name": "Rotor" } ],
              "views": [ { "id": "v", "row": "r", "window": { "halfWidth": 1, "shows": ["all"] } } ] }
            """;

    private static Fold start() {
        return Fold.start(Engine.of(
                ((Reading.Read) EngineJsonReader.read("ring.json", RING.getBytes(StandardCharsets.UTF_8))).model()));
    }

    private static Fold with(Fold fold, String line, long second) throws Refusal {
        int number = fold.entries().size() + 1;
        return fold.with(new Logged(number, START.plusSeconds(second), "Tester", false, line, EntryParser.parse(line)));
    }

    private static Fold entered(String... lines) throws Refusal {
        Fold fold = start();
        for (String line : lines) {
            fold = with(fold, line, 10L * fold.entries().size());
        }
        return fold;
    }

    private static Timeline timeline(Fold fold) {
        return Timeline.of(fold, Coverage.of(fold.situation(), Settings.USUAL));
    }

    private static List<Integer> seen(Fold fold) {
        return timeline(fold).points().stream().map(Timeline.Point::seen).toList();
    }

    @Test
    void itGrowsByWhatEachEntryShows() throws Exception {
        assertThat(seen(entered("view v", "datum r 1", "look", "turn on 90", "skip on 90", "look")))
                .containsExactly(0, 0, 1, 4, 4, 5);
    }

    @Test
    void aVoidEntryIsLeftOutFromWhereItStood() throws Exception {
        assertThat(seen(entered("view v", "datum r 1", "turn on 90", "turn on 90", "void 4 because typed twice")))
                .containsExactly(0, 0, 4, 4, 4);
    }

    @Test
    void itEndsWithTheCoverageOfTheWholeJournal() throws Exception {
        Fold fold = start();
        fold = with(with(fold, "view v", 0), "datum r 1", 1);
        for (int i = 0; i < 500; i++) {
            fold = with(fold, "turn on 0.5", 2 + i);
        }
        List<Timeline.Point> points = timeline(fold).points();
        assertThat(points).hasSizeBetween(Timeline.MOST / 2, Timeline.MOST + 2);
        assertThat(points.get(points.size() - 1).seen()).isEqualTo(9);
    }

    @Test
    void whatALostCountTakesBackStaysAtLeastMaybe() throws Exception {
        Timeline timeline = timeline(entered("view v", "datum r 1", "turn on 120 ± 1", "here 3 ± 0.5"));
        Timeline.Point before = timeline.points().get(2);
        Timeline.Point after = timeline.points().get(3);
        assertThat(after.seen()).isLessThan(before.seen());
        assertThat(after.atLeastMaybe()).isGreaterThanOrEqualTo(before.seen());
    }

    @Test
    void timesNeverRunBack() throws Exception {
        Fold fold = with(with(with(start(), "view v", 50), "datum r 1", 20), "look", 70);
        List<Instant> times =
                timeline(fold).points().stream().map(Timeline.Point::at).toList();
        assertThat(times).containsExactly(START.plusSeconds(50), START.plusSeconds(50), START.plusSeconds(70));
    }

    @Test
    void entriesOfOneTimeTakeNone() throws Exception {
        Fold fold = with(with(start(), "view v", 5), "datum r 1", 5);
        assertThat(timeline(fold).takesTime()).isFalse();
        assertThat(new Timeline(Collections.emptyList()).takesTime()).isFalse();
    }
}
