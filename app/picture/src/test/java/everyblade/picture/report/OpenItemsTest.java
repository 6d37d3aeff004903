package everyblade.picture.report;

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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class OpenItemsTest {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    /** Twelve undivided blades and a port; invented for tests. */
    private static final String RING = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring",
              "rows": [ { "id": "r", "kind": "rotor", "count": 12, "spanBands": 1, "name": "Rotor" } ],
              "ports": [ { "id": "p1", "name": "Plug on top", "kind": "plug", "clock": 0 } ],
              "views": [ { "id": "v", "row": "r", "port": "p1", "window": { "halfWidth": 1, "shows": ["all"] } } ] }
            """;

    private static final String[] ALL_SEEN = {"view v", "datum r 1", "round 1"};

    /** What is open after all was seen and then this. */
    private static OpenItems afterAllSeen(String... lines) throws Refusal {
        Fold fold = Fold.start(Engine.of(
                ((Reading.Read) EngineJsonReader.read("ring.json", RING.getBytes(StandardCharsets.UTF_8))).model()));
        List<String> all = new ArrayList<>(List.of(ALL_SEEN));
        all.addAll(List.of(lines));
        for (String line : all) {
            int number = fold.entries().size() + 1;
            fold = fold.with(new Logged(number, START, "Tester", false, line, EntryParser.parse(line)));
        }
        ReportFacts facts =
                new ReportFacts("4711", "all", "Tester", START, new TreeMap<>(), Optional.empty(), "00", "00");
        return OpenItems.of(Reported.of(fold, Coverage.of(fold.situation(), Settings.USUAL), facts));
    }

    @Test
    void nothingIsOpenWhenAllIsSeenAndEverythingBack() throws Exception {
        assertThat(afterAllSeen("tool out lamp", "open p1", "shut p1", "tool in lamp", "note fine")
                        .any())
                .isFalse();
    }

    @Test
    void aPortIsCalledByItsName() throws Exception {
        assertThat(afterAllSeen("open p1").rest()).containsExactly("Plug on top (p1) is open since entry 4");
    }

    @Test
    void aToolThatIsOutIsNamed() throws Exception {
        assertThat(afterAllSeen("tool out lamp").rest()).containsExactly("lamp is out since entry 4");
    }

    @Test
    void rechecksQuestionsRepeatsAndLostToolsStayOpenUntilSettled() throws Exception {
        String[] four = {"recheck 3 streak", "refer is this within limits", "again in 50 hours", "lost washer"};
        assertThat(afterAllSeen(four).rest())
                .hasSize(4)
                .anyMatch(line -> line.contains("streak"))
                .anyMatch(line -> line.contains("within limits"))
                .anyMatch(line -> line.contains("50 hours"))
                .anyMatch(line -> line.contains("washer"));
        assertThat(afterAllSeen(
                                four[0],
                                four[1],
                                four[2],
                                four[3],
                                "settle 4 because wiped",
                                "settle 5 because answered",
                                "settle 6 because entered",
                                "settle 7 because found")
                        .any())
                .isFalse();
    }

    @Test
    void aHandOverIsOpenUntilSomebodyTakesOver() throws Exception {
        assertThat(afterAllSeen("handover Next").rest())
                .singleElement()
                .asString()
                .contains("Next", "entry 4");
        assertThat(afterAllSeen("handover Next", "takeover Next").any()).isFalse();
    }

    @Test
    void aScopeTipAmongTheBladesIsOpen() throws Exception {
        assertThat(afterAllSeen("in").rest()).containsExactly("the scope tip is still among the blades");
        assertThat(afterAllSeen("in", "clear").any()).isFalse();
    }

    @Test
    void whatIsVoidIsNotOpenAndWhatItHidIsAgain() throws Exception {
        assertThat(afterAllSeen("open p1", "void 4 because never opened").any()).isFalse();
        assertThat(afterAllSeen("void 3 because not watched").gaps()).isEqualTo(1);
    }
}
