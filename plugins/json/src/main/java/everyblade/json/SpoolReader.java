package everyblade.json;

import everyblade.spi.Direction;
import everyblade.spi.Pad;
import everyblade.spi.Ratio;
import everyblade.spi.Spool;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what turns, and where it is turned by hand. */
final class SpoolReader {

    private static final String DEFAULT_SPOOL = "shaft";
    private static final String NAME_ONE = "name at least one, or delete the key for the default";
    private static final String DEFAULT_PAD = "pad";
    private static final Pattern FRACTION = Pattern.compile("(-?[0-9]{1,19})/([0-9]{1,19})");
    private static final Pattern DECIMAL = Pattern.compile("-?[0-9]{1,19}(\\.[0-9]{1,18})?");

    private SpoolReader() {}

    /** The spools, at least one: if none is written, one that is turned directly. */
    static List<Located<Spool>> spools(Fields model) {
        if (model.present("spools").isEmpty()) {
            return List.of(new Located<>(
                    new Spool(DEFAULT_SPOOL, DEFAULT_SPOOL, Direction.CW, List.of(pad(DEFAULT_PAD))), null, true));
        }
        Ids ids = new Ids("spool", Set.of());
        List<Located<Spool>> spools = new ArrayList<>();
        for (Fields fields : model.objects("spools", "spool", "id", "name", "normal", "pads")) {
            long errors = fields.log().errorCount();
            String id = ids.orElse(fields, DEFAULT_SPOOL);
            Spool spool = new Spool(
                    id,
                    fields.text("name", id),
                    fields.word("normal", Direction.CW, Direction.values(), Direction::word),
                    pads(fields));
            spools.add(new Located<>(spool, fields.object(), fields.log().errorCount() == errors));
        }
        model.refuseEmpty("spools", "something must turn", NAME_ONE);
        return spools;
    }

    private static List<Pad> pads(Fields spool) {
        if (spool.present("pads").isEmpty()) {
            return List.of(pad(DEFAULT_PAD));
        }
        Ids ids = new Ids("pad of " + spool.subject(), Set.of());
        List<Pad> pads = new ArrayList<>();
        for (Fields fields :
                spool.objects("pads", "pad", "id", "name", "ratio", "directions", "play", "backlash", "drift")) {
            String id = ids.orElse(fields, DEFAULT_PAD);
            pads.add(new Pad(
                    id,
                    fields.text("name", id),
                    ratio(fields),
                    directions(fields),
                    fields.number("play", 0, Range.ANGLE_ERROR),
                    fields.number("backlash", 0, Range.ANGLE_ERROR),
                    fields.number("drift", 0, Range.ANGLE_ERROR)));
        }
        spool.refuseEmpty("pads", "the spool is turned somewhere", NAME_ONE);
        return pads;
    }

    private static Pad pad(String id) {
        return new Pad(id, id, Ratio.ONE, EnumSet.allOf(Direction.class), 0, 0, 0);
    }

    private static Set<Direction> directions(Fields pad) {
        List<Direction> both = List.of(Direction.values());
        pad.refuseEmpty("directions", "a pad that turns no way is of no use", NAME_ONE);
        return Set.copyOf(pad.words("directions", both, Direction::word).orElse(both));
    }

    /** Shaft turns per tool turn, exactly as written: 3, 0.5, "-3", "0.5" or "29/77". */
    private static Ratio ratio(Fields pad) {
        Json json = pad.present("ratio").orElse(null);
        if (json == null) {
            return Ratio.ONE;
        }
        if (json instanceof Json.Num number) {
            return ratio(pad, json, number.digits(), new BigDecimal(number.digits()));
        }
        if (!(json instanceof Json.Text text)) {
            pad.wrongType("ratio", json, "a number or a fraction such as \"29/77\"");
            return Ratio.ONE;
        }
        Matcher fraction = FRACTION.matcher(text.value());
        if (fraction.matches()) {
            return ratio(pad, json, text.value(), new BigInteger(fraction.group(1)), new BigInteger(fraction.group(2)));
        }
        if (DECIMAL.matcher(text.value()).matches()) {
            return ratio(pad, json, text.value(), new BigDecimal(text.value()));
        }
        return refuseRatio(
                pad, "bad-ratio", json, text.value(), "it must be a number or two whole numbers such as \"29/77\"");
    }

    private static Ratio ratio(Fields pad, Json json, String written, BigDecimal exact) {
        // Beyond this many places it cannot fit, and writing the power of ten out would take for ever.
        if (exact.signum() != 0 && Math.abs((long) exact.scale()) > 120) {
            return refuseRatio(pad, "long-ratio", json, written, "its exact fraction has too many digits");
        }
        BigDecimal plain = exact.signum() == 0 ? BigDecimal.ZERO : exact;
        BigInteger denominator = BigInteger.TEN.pow(Math.max(0, plain.scale()));
        return ratio(
                pad, json, written, plain.multiply(new BigDecimal(denominator)).toBigIntegerExact(), denominator);
    }

    private static Ratio ratio(Fields pad, Json json, String written, BigInteger numerator, BigInteger denominator) {
        if (numerator.signum() == 0 || denominator.signum() == 0) {
            return refuseRatio(pad, "zero-ratio", json, written, "neither the shaft nor the tool can stand still");
        }
        BigInteger common = numerator.gcd(denominator);
        BigInteger n = numerator.divide(common);
        BigInteger d = denominator.divide(common);
        if (n.abs().bitLength() >= Long.SIZE || d.bitLength() >= Long.SIZE) {
            return refuseRatio(pad, "long-ratio", json, written, "its exact fraction has too many digits");
        }
        return new Ratio(n.longValueExact(), d.longValueExact());
    }

    private static Ratio refuseRatio(Fields pad, String code, Json json, String written, String why) {
        pad.log()
                .error(
                        code,
                        json.place(),
                        "\"ratio\" of " + pad.subject() + " is " + Wording.plain(written),
                        why,
                        "write shaft turns per tool turn");
        return Ratio.ONE;
    }
}
