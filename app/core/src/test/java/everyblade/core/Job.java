package everyblade.core;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** A job in a test: entries as lines of text, folded as they come. */
public final class Job {

    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    private Fold fold;
    private final List<String> warnings = new ArrayList<>();
    private final Map<String, BigDecimal> settings = new HashMap<>();
    private Optional<Coverage> known = Optional.empty();

    public Job(Engine engine) {
        fold = Fold.start(engine);
    }

    public Job leastView(double seconds) {
        return set("least-view", String.valueOf(seconds));
    }

    /** With another value of a setting. */
    public Job set(String name, String value) {
        settings.put(name, new BigDecimal(value));
        return this;
    }

    /** Enters lines that must be kept. */
    public Job enter(String... lines) {
        for (String line : lines) {
            try {
                tryEnter(line);
            } catch (Refusal refused) {
                throw new AssertionError(line + ": column " + refused.column() + ": " + English.say(refused));
            }
        }
        return this;
    }

    /** Enters a line that may be refused. */
    public void tryEnter(String line) throws Refusal {
        int number = fold.entries().size() + 1;
        fold = fold.with(new Logged(number, START.plusSeconds(number), "Test", false, line, EntryParser.parse(line)));
        warnings.addAll(English.say(fold.warnings()));
    }

    public Fold fold() {
        return fold;
    }

    public List<String> warnings() {
        return warnings;
    }

    /** Added up anew; what stations show is computed once. */
    public Coverage coverage() {
        Settings now = Settings.of(settings);
        known = known.filter(before -> before.settings().equals(now))
                .map(before -> Coverage.of(fold.situation(), now, before.sights()))
                .or(() -> Optional.of(Coverage.of(fold.situation(), now)));
        return known.get();
    }

    /** Another job on the same engine, nothing entered yet. */
    public Job another() {
        Job other = new Job(fold.situation().engine());
        other.settings.putAll(settings);
        other.known = known;
        return other;
    }

    /** Numbers of the airfoils of a row whose first zone is in this state. */
    public List<Integer> airfoils(String row, State state) {
        RowCoverage coverage = coverage().row(row);
        return IntStream.rangeClosed(1, coverage.row().count())
                .filter(n -> coverage.state(n, 0) == state)
                .boxed()
                .toList();
    }
}
