package everyblade.record.limits;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.finding.Distances;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Judging;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Looked;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.json.EngineJsonReader;
import everyblade.json.Problem;
import everyblade.json.Reading;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Files of limits in tests, and an engine to use them on; all invented. */
final class LimitsFiles {

    /** Three rotors of 12 blades, all of whose zones one view each shows. */
    static final Engine ENGINE = engine("""
            { "schema": "everyblade/engine-model/1", "id": "three", "name": "Three rotors",
              "rows": [ { "id": "a", "kind": "rotor", "count": 12, "sides": true, "chordBands": ["leading","middle","trailing"] },
                        { "id": "b", "kind": "rotor", "count": 12, "sides": true, "chordBands": ["leading","middle","trailing"] },
                        { "id": "c", "kind": "rotor", "count": 12, "sides": true, "chordBands": ["leading","middle","trailing"] } ],
              "views": [ { "id": "va", "row": "a", "window": { "halfWidth": 5, "shows": ["root", "tip"] } },
                         { "id": "vb", "row": "b", "window": { "halfWidth": 5, "shows": ["root", "tip"] } },
                         { "id": "vc", "row": "c", "window": { "halfWidth": 5, "shows": ["root", "tip"] } } ] }
            """);

    /** Everything that a file may say. */
    static final String FULL = """
            { "schema": "everyblade/limits/1", "name": "Limits for tests", "notice": "Invented.",
              "manual": "Invented manual", "revision": "3", "model": "three", "unit": "in", "guard": "expanded",
              "plusMinus": 0.004, "facts": ["scope serial"],
              "rules": [
                { "id": "edges", "rows": ["a", "b"], "kinds": ["nick", "dent"], "zones": ["leading", "tip/pressure"],
                  "bothFaces": false,
                  "steps": [
                    { "length": { "most": 0.010 }, "outcome": "may stay" },
                    { "length": { "least": 0.001, "most": 0.050 }, "depth": { "most": 0.01 }, "width": { "least": 0.002 },
                      "perAirfoil": 3, "perRow": 9, "airfoils": 5, "neighbours": 2, "apart": 0.5,
                      "outcome": "may stay for 25 cycles", "again": { "in": 25, "unit": "cycles" } } ],
                  "beyond": "reject" },
                { "id": "cracks", "kinds": ["crack"], "steps": [], "beyond": "reject" },
                { "id": "deposits", "rows": ["c"], "kinds": ["deposit"], "onlyWhile": ["a"],
                  "steps": [ { "noLimit": true, "outcome": "may stay" } ], "beyond": "wash" } ] }
            """;

    private LimitsFiles() {}

    private static Engine engine(String json) {
        Reading reading = EngineJsonReader.read("engine.json", json.getBytes(StandardCharsets.UTF_8));
        return Engine.of(((Reading.Read) reading).model());
    }

    static LimitsReading read(String json) {
        return LimitsReader.read("limits.json", json.getBytes(StandardCharsets.UTF_8), Optional.of(ENGINE));
    }

    static Limits limits(String json) {
        LimitsReading reading = read(json);
        assertThat(reading).isInstanceOf(LimitsReading.Read.class);
        return ((LimitsReading.Read) reading).limits();
    }

    static List<Problem> problems(String json) {
        return read(json) instanceof LimitsReading.Unreadable no ? no.problems() : List.of();
    }

    static List<Judgement> judge(Limits limits, List<String> lines) throws Refusal {
        Fold fold = Fold.start(ENGINE);
        for (String line : lines) {
            int number = fold.entries().size() + 1;
            fold = fold.with(new Logged(number, Instant.EPOCH, "Test", false, line, EntryParser.parse(line)));
        }
        Coverage coverage = Coverage.of(fold.situation(), Settings.USUAL);
        return Judging.of(limits, ENGINE.zonings(), Findings.of(fold), Looked.in(coverage), Distances.UNKNOWN);
    }
}
