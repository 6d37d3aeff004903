package everyblade.words;

import everyblade.fact.CalendarYears;
import everyblade.fact.Fact;
import everyblade.fact.Keyed;
import everyblade.fact.Percent;
import everyblade.spi.Row;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;

/** The texts of one language, with numbers and times as people of that language write them. */
public final class Words {

    private static final String BUNDLE = "everyblade.words.words";

    private final ResourceBundle bundle;
    private final Locale locale;

    private Words(ResourceBundle bundle) {
        this.bundle = bundle;
        this.locale = bundle.getLocale().equals(Locale.ROOT) ? Locale.ENGLISH : bundle.getLocale();
    }

    /** The texts for a person who speaks this language; English if nobody wrote a file of texts in it. */
    public static Words of(Locale spoken) {
        // English has no file of its own, and every jar would be searched for it.
        boolean english = spoken.getLanguage().equals(Locale.ENGLISH.getLanguage());
        Locale language = english ? Locale.ROOT : new Locale(spoken.getLanguage());
        return new Words(ResourceBundle.getBundle(BUNDLE, language, new BundleFiles()));
    }

    /** The languages that there is a file of texts in, English first; each has all of them ({@code BundlesTest}). */
    public static List<Locale> languages() {
        return LanguageFiles.languages();
    }

    public Locale locale() {
        return locale;
    }

    /** Whether there is a text of this key. */
    public boolean has(String key) {
        return bundle.containsKey(key);
    }

    /**
     * A fact as a sentence, or as the part of one.
     *
     * @throws java.util.MissingResourceException if nobody gave it words
     */
    public String say(Fact fact) {
        return phrase(fact.key()).with(parts(fact));
    }

    /** Several facts, each said. */
    public List<String> say(List<? extends Fact> facts) {
        return facts.stream().map(this::say).toList();
    }

    /**
     * The text of a key with its places {0}, {1} … filled in.
     *
     * @throws java.util.MissingResourceException if there is no such text
     */
    public String say(String key, Object... parts) {
        return phrase(key).with(numbered(Arrays.asList(parts)));
    }

    private static Map<String, Object> numbered(List<?> parts) {
        Map<String, Object> numbered = new LinkedHashMap<>();
        for (Object part : parts) {
            numbered.put(String.valueOf(numbered.size()), part);
        }
        return numbered;
    }

    private Phrase phrase(String key) {
        return new Phrase(bundle.getString(key), locale, this::say, style -> bundle.getString("list." + style));
    }

    /** The components of a record by their names, or the parts of a keyed fact by their numbers. */
    private static Map<String, Object> parts(Fact fact) {
        if (fact instanceof Keyed keyed) {
            return numbered(keyed.parts());
        }
        Map<String, Object> parts = new LinkedHashMap<>();
        if (fact instanceof Record) {
            for (RecordComponent component : fact.getClass().getRecordComponents()) {
                try {
                    component.getAccessor().setAccessible(true);
                    parts.put(component.getName(), component.getAccessor().invoke(fact));
                } catch (IllegalAccessException | InvocationTargetException impossible) {
                    throw new AssertionError("a record gives its components", impossible);
                }
            }
        }
        return parts;
    }

    /** What one airfoil of the row is called. */
    public String airfoil(Row row) {
        return bundle.getString("map.airfoil." + row.kind().name().toLowerCase(Locale.ROOT));
    }

    /** What several are called. */
    public String airfoils(Row row) {
        return bundle.getString("map.airfoils." + row.kind().name().toLowerCase(Locale.ROOT));
    }

    /** A number with at most so many digits after the decimal mark. */
    public String number(double number, int decimals) {
        DecimalFormat format = new DecimalFormat("0" + (decimals > 0 ? "." + "#".repeat(decimals) : ""), symbols());
        return format.format(number + 0.0).replace("-0", zero(number, decimals) ? "0" : "-0");
    }

    private static boolean zero(double number, int decimals) {
        return Math.abs(number) * Math.pow(10, decimals) < 0.5;
    }

    /** A number with all the digits that it was written with, in the decimal mark of the language. */
    public String plain(BigDecimal number) {
        return number.toPlainString().replace('.', symbols().getDecimalSeparator());
    }

    /** A number with its sign always written. */
    public String signed(double number, int decimals) {
        String text = number(Math.abs(number), decimals);
        return (number < 0 ? "−" : "+") + text;
    }

    /** A share in whole per cent, never rounded up; 0 % only for nothing. */
    public String percent(double share) {
        int whole = Percent.good(share, 0).intValueExact();
        return (share > 0 ? Math.max(1, whole) : 0) + " %";
    }

    /** A share of what is bad in whole per cent, rounded up. */
    public String badPercent(double share) {
        return Percent.bad(share, 0) + " %";
    }

    /** The time of day where the person is. */
    public String time(Instant at, ZoneId zone) {
        return DateTimeFormatter.ofPattern("HH:mm", locale).withZone(zone).format(CalendarYears.within(at));
    }

    /** The time of day where the person is, to the second. */
    public String second(Instant at, ZoneId zone) {
        return DateTimeFormatter.ofPattern("HH:mm:ss", locale).withZone(zone).format(CalendarYears.within(at));
    }

    private DecimalFormatSymbols symbols() {
        return DecimalFormatSymbols.getInstance(locale);
    }
}
