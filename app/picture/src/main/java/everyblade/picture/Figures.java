package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Headline;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;

/**
 * The three figures in words. Each is rounded to a tenth of a per cent and never in our favour: 0.0 % left means nothing,
 * 100.0 % seen means all.
 *
 * @param headline the figures
 * @param words in which
 */
public record Figures(Headline headline, MapWords words) {

    /** What a sum of surfaces may be off by, share of the whole. */
    private static final double ROUNDING = 1e-9;

    /** What is left of what these views can show. */
    public String left() {
        return tenths(headline.leftShare() - ROUNDING, RoundingMode.CEILING, words) + " %";
    }

    /** Surface seen. */
    public String seen() {
        return percent(headline.seen(), words);
    }

    /** Surface that no view shows. */
    public String beyond() {
        return tenths(headline.beyond() - ROUNDING, RoundingMode.CEILING, words) + " %";
    }

    /** All three in one line, with the cells that are left. */
    public String line() {
        return words.say("figures.line", left(), headline.left(), headline.within(), seen(), beyond());
    }

    /** All three in few words, with what they rest on. */
    String brief(Basis basis) {
        return words.say("figures.brief", left(), seen(), beyond(), words.basis(basis));
    }

    /** All three as they stand in tables, such as {@code 12.5 / 31.2 / 66.0 %}. */
    public String brief() {
        return String.join(" / ", left(), seen(), beyond()).replace(" % /", " /");
    }

    /** A share from 0 to 1 to a tenth of a per cent, never rounded up but for rounding errors. */
    public static String percent(double share, MapWords words) {
        return tenths(share + ROUNDING, RoundingMode.FLOOR, words) + " %";
    }

    private static String tenths(double share, RoundingMode towards, MapWords words) {
        DecimalFormat format = new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(words.locale()));
        return format.format(BigDecimal.valueOf(Math.max(0, Math.min(1, share)))
                .movePointRight(2)
                .setScale(1, towards));
    }
}
