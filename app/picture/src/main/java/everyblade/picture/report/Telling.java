package everyblade.picture.report;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Entry;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.gap.Gap;
import everyblade.core.gap.ToldGap;
import everyblade.core.turning.Airfoils;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Numbers, times and things of the record as the report writes them. */
final class Telling {

    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);

    private Telling() {}

    /** To the minute, UTC. */
    static String minute(Instant at) {
        return MINUTE.format(at.atOffset(ZoneOffset.UTC));
    }

    /** To the second, UTC. */
    static String second(Instant at) {
        return SECOND.format(at.atOffset(ZoneOffset.UTC));
    }

    /** Such as {@code Compressor rotor 1 (c1)}. */
    static String row(Row row) {
        return row.name() + " (" + row.id() + ")";
    }

    /** The airfoils of a remark, such as {@code blades 2–4 and 7}. */
    static String airfoils(Reported job, Row row, Remark remark) {
        return job.words().say(Airfoils.of(row, remark.airfoils()));
    }

    /** The zones of a remark. */
    static String zones(Reported job, RowCoverage row, Remark remark) {
        return remark.what() == Remark.What.ACCEPTED_UNSHOWN
                ? job.say("zones.unshown")
                : job.words().say(ZonePhrase.of(row.zoning(), remark.zones()));
    }

    /** A size as it was stated, such as {@code length 2.4, depth 0.6, ± 0.2 mm}. */
    static String size(Entry.Size size, Words words) {
        List<String> parts = new ArrayList<>();
        add(parts, words, "length", size.length());
        add(parts, words, "depth", size.depth());
        add(parts, words, "width", size.width());
        add(parts, words, "plusMinus", size.plusMinus());
        return parts.isEmpty()
                ? words.say("report.size.none")
                : String.join(", ", parts) + " " + size.unit().name().toLowerCase(Locale.ROOT);
    }

    private static void add(List<String> parts, Words words, String key, Optional<BigDecimal> value) {
        value.ifPresent(number -> parts.add(words.say("report.size." + key, words.plain(number))));
    }

    /** A gap in a sentence. */
    static String gap(Reported job, Gap gap) {
        return job.words().say(new ToldGap.Sentence(ToldGap.of(gap), false));
    }

    /** Who entered something and when, such as {@code 2026-03-02 14:05, entry 12, A. Technician}. */
    static String when(Reported job, Logged logged) {
        return job.say("when", minute(logged.at()), logged.number(), logged.by());
    }

    /** What an entry says of another, such as {@code entry 12, A. Technician: replaced}. */
    static String answered(Reported job, int entry, String by, String text) {
        return job.say("answered", entry, by, text);
    }
}
