package everyblade.picture.report;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.Entry;
import everyblade.core.gap.GapText;
import everyblade.core.turning.AirfoilNames;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Remark;
import everyblade.spi.Row;
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

    /** A count error that would read as 0.0° is told as none; degrees. */
    private static final double LEAST_TOLD = 0.05;

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

    /** Such as {@code 3 gaps}. */
    static String count(int number, String one) {
        String many = one.endsWith("ry") ? one.substring(0, one.length() - 1) + "ies" : one + "s";
        return number + " " + (number == 1 ? one : many);
    }

    /** Such as {@code Compressor rotor 1 (c1)}. */
    static String row(Row row) {
        return row.name() + " (" + row.id() + ")";
    }

    /** The airfoils of a remark, such as {@code blades 2–4 and 7}. */
    static String airfoils(Row row, Remark remark) {
        return AirfoilNames.of(row, remark.airfoils());
    }

    /** The zones of a remark. */
    static String zones(RowCoverage row, Remark remark) {
        return remark.what() == Remark.What.ACCEPTED_UNSHOWN
                ? "all that no view shows"
                : GapText.zones(row.zoning(), remark.zones());
    }

    /** A size as it was stated, such as {@code length 2.4, depth 0.6, ± 0.2 mm}. */
    static String size(Entry.Size size) {
        List<String> parts = new ArrayList<>();
        add(parts, "length ", size.length());
        add(parts, "depth ", size.depth());
        add(parts, "width ", size.width());
        add(parts, "± ", size.plusMinus());
        return parts.isEmpty()
                ? "size not stated"
                : String.join(", ", parts) + " " + size.unit().name().toLowerCase(Locale.ROOT);
    }

    private static void add(List<String> parts, String name, Optional<BigDecimal> value) {
        value.ifPresent(number -> parts.add(name + number.toPlainString()));
    }

    /** A count error, and what follows from it. */
    static String countError(CountError error, Row row) {
        if (!error.outside() && Math.abs(error.degrees()) < LEAST_TOLD) {
            return "agrees";
        }
        String airfoil = row.kind().airfoil();
        String off = String.format(
                Locale.ROOT,
                "%.1f° %s counted than seen since entry %d",
                Math.abs(error.degrees()),
                error.degrees() < 0 ? "less" : "more",
                error.since());
        if (error.unlogged()) {
            return off + ", with no turning entered: turned unlogged? What was seen before stays as it is";
        }
        if (error.lost()) {
            return "COUNT LOST: " + off + ", about " + count((int) error.airfoils(), airfoil)
                    + "; what was watched between is only maybe seen";
        }
        return off
                + (error.outside()
                        ? ": more than the stated errors allow for; shared out, but they are stated too small"
                        : ": within the stated errors; shared out");
    }
}
