package everyblade.picture;

import everyblade.core.coverage.Headline;
import everyblade.fact.Percent;
import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;

/**
 * The three figures in words. Each is rounded to a tenth of a per cent and never in our favour: 0.0 % left means nothing,
 * 100.0 % seen means all.
 *
 * @param headline the figures
 * @param words in which
 */
public record ShareFigures(Headline headline, MapWords words) {

    /** What is left of what these views can show. */
    public String left() {
        return badPercent(headline.leftShare(), words);
    }

    /** Surface seen. */
    public String seen() {
        return percent(headline.seen(), words);
    }

    /** Surface that no view shows. */
    public String beyond() {
        return badPercent(headline.beyond(), words);
    }

    /** All three in one line, with the cells that are left. */
    public String line() {
        return words.say("figures.line", left(), headline.left(), headline.within(), seen(), beyond());
    }

    /** All three as they stand in tables, such as {@code 12.5 / 31.2 / 66.0 %}. */
    public String brief() {
        return String.join(" / ", left(), seen(), beyond()).replace(" % /", " /");
    }

    /** A share of something good, from 0 to 1, to a tenth of a per cent as {@link Percent} rounds it. */
    public static String percent(double share, MapWords words) {
        return tenths(Percent.good(share, 1), words);
    }

    /** A share of something bad. */
    public static String badPercent(double share, MapWords words) {
        return tenths(Percent.bad(share, 1), words);
    }

    private static String tenths(BigDecimal percent, MapWords words) {
        return new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(words.locale())).format(percent) + " %";
    }
}
