package everyblade.core.finding.closing;

import everyblade.core.English;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.finding.photo.Taken;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A record whose entries are told with their two times, and what it holds beside them. */
final class ToldRecord {

    static final Instant BEGUN = Instant.parse("2026-03-01T08:00:00Z");

    private Fold fold;
    private Settings settings = Settings.of(Map.of());
    private Duration typedLater = Duration.ZERO;
    private Instant at = BEGUN;
    private boolean live = true;
    private final List<Taken.Named> pictures = new ArrayList<>();
    private Optional<Fold> last = Optional.empty();

    ToldRecord(Engine engine) {
        fold = Fold.start(engine);
    }

    /** Each blade must be in view so long. */
    ToldRecord leastView(String seconds) {
        settings = Settings.of(Map.of("least-view", new BigDecimal(seconds)));
        return this;
    }

    /** So much later than the last entry is the next one. */
    ToldRecord after(Duration later) {
        at = at.plus(later);
        return this;
    }

    /** From now on entries are typed so much later than they say, not as it happens; negative for before. */
    ToldRecord typed(Duration later) {
        live = false;
        typedLater = later;
        return this;
    }

    /** From now on entries are made as it happens. */
    ToldRecord live() {
        live = true;
        typedLater = Duration.ZERO;
        return this;
    }

    /** Entries, a minute after each other. */
    ToldRecord enter(String... lines) {
        for (String line : lines) {
            after(Duration.ofMinutes(1)).at(line);
        }
        return this;
    }

    /** An entry at the time that it is now. */
    ToldRecord at(String line) {
        return kept(line, Optional.of(at.plus(typedLater)));
    }

    /** An entry of which nobody kept when it was typed. */
    ToldRecord undated(String line) {
        live = false;
        return kept(line, Optional.empty());
    }

    private ToldRecord kept(String line, Optional<Instant> written) {
        try {
            int number = fold.entries().size() + 1;
            fold = fold.with(new Logged(number, at, "Test", live, line, EntryParser.parse(line), written));
            return this;
        } catch (Refusal refused) {
            throw new AssertionError(line + ": " + English.say(refused));
        }
    }

    /** The camera wrote this time into the picture that the last entry names. */
    ToldRecord taken(String written) {
        pictures.add(new Taken.Named(fold.entries().size(), Optional.of(written)));
        return this;
    }

    /** This is compared with an earlier record. */
    ToldRecord since(ToldRecord earlier) {
        last = Optional.of(earlier.fold);
        return this;
    }

    Fold fold() {
        return fold;
    }

    Coverage coverage() {
        return Coverage.of(fold.situation(), settings);
    }

    ClosingList closing() {
        return ClosingList.of(fold, coverage(), Optional.empty(), List.of(), new Beside(pictures, last, List.of()));
    }
}
