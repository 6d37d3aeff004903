package everyblade.desktop.words;

import everyblade.core.coverage.Percent;
import everyblade.core.turning.EntryTime;
import everyblade.picture.MapWords;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.ResourceBundle.Control;

/**
 * The texts of one language, with numbers and times as people of that language write them. Nothing of it goes into
 * files.
 */
public final class Words {

    /** The languages that are complete; the first one is spoken where none of them is understood. */
    public static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    /** What a share of hundredths may be off by in its last binary digit. */
    private static final String BUNDLE = "everyblade.desktop.words.words";

    private final ResourceBundle bundle;
    private final Locale locale;
    private final MapWords map;

    private Words(Locale locale) {
        this.locale = locale;
        this.map = MapWords.of(locale);
        this.bundle = ResourceBundle.getBundle(BUNDLE, locale, Control.getNoFallbackControl(Control.FORMAT_PROPERTIES));
    }

    /** The texts for a person who speaks this language; English if it is not among {@link #LANGUAGES}. */
    public static Words of(Locale spoken) {
        Optional<Locale> known = LANGUAGES.stream()
                .filter(one -> one.getLanguage().equals(spoken.getLanguage()))
                .findFirst();
        return new Words(known.orElse(LANGUAGES.get(0)));
    }

    public Locale locale() {
        return locale;
    }

    /** The texts of the map, which also name airfoils and zones. */
    public MapWords map() {
        return map;
    }

    /** Whether there is a text of this key. */
    public boolean has(String key) {
        return bundle.containsKey(key);
    }

    /**
     * The text of a key with its places {0}, {1} … filled in.
     *
     * @throws java.util.MissingResourceException if there is no such text
     */
    public String say(String key, Object... parts) {
        return new MessageFormat(bundle.getString(key), locale).format(texts(parts));
    }

    /** Whole numbers go in without grouping: blade 1,234 would look like two numbers. What is told hides nothing. */
    private static Object[] texts(Object[] parts) {
        Object[] texts = parts.clone();
        for (int i = 0; i < texts.length; i++) {
            texts[i] = Visible.text(String.valueOf(texts[i]));
        }
        return texts;
    }

    /** A number with at most so many digits after the decimal mark. */
    public String number(double number, int decimals) {
        DecimalFormat format = new DecimalFormat("0" + (decimals > 0 ? "." + "#".repeat(decimals) : ""), symbols());
        return format.format(number + 0.0).replace("-0", zero(number, decimals) ? "0" : "-0");
    }

    private static boolean zero(double number, int decimals) {
        return Math.abs(number) * Math.pow(10, decimals) < 0.5;
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
        return DateTimeFormatter.ofPattern("HH:mm", locale).withZone(zone).format(EntryTime.within(at));
    }

    /** The time of day where the person is, to the second. */
    public String second(Instant at, ZoneId zone) {
        return DateTimeFormatter.ofPattern("HH:mm:ss", locale).withZone(zone).format(EntryTime.within(at));
    }

    private DecimalFormatSymbols symbols() {
        return DecimalFormatSymbols.getInstance(locale);
    }
}
