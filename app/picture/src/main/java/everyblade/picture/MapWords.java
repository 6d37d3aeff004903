package everyblade.picture;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.fact.Fact;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;

/** What the map says, in one language. */
public final class MapWords {

    private final Words words;

    private MapWords(Words words) {
        this.words = words;
    }

    /** What the map says in this language; in English if it does not speak it. */
    public static MapWords of(Locale language) {
        return of(Words.of(language));
    }

    /** What the map says in the language of these words. */
    public static MapWords of(Words words) {
        return new MapWords(words);
    }

    Locale locale() {
        return words.locale();
    }

    /** A zone or a band, as files name it, in this language. */
    public String zone(String named) {
        return words.say(ZonePhrase.named(named));
    }

    /** What a fact says in this language. */
    public String say(Fact fact) {
        return words.say(fact);
    }

    /** What facts say, each in this language. */
    List<String> say(List<? extends Fact> facts) {
        return words.say(facts);
    }

    /** Zones of a row in one phrase. */
    String zones(Zoning zoning, ZoneSet zones) {
        return words.say(ZonePhrase.of(zoning, zones));
    }

    /** A number with at most so many digits after the decimal mark. */
    String number(double number, int decimals) {
        return words.number(number, decimals);
    }

    /** Why a cell is not seen. */
    public String why(Why why) {
        return words.say(why);
    }

    /** What states rest on. */
    public String basis(Basis basis) {
        return words.say(basis);
    }

    /** What the three figures are, in the order in which they stand side by side. */
    public String figures() {
        return say("figures.head");
    }

    /** From where the engine is looked at, such as {@code seen from aft}. */
    String from(Facing facing) {
        return say(facing.mirrors() ? "facing.from.ahead" : "facing.from.aft");
    }

    /** Which way one looks then, such as {@code looking forward}. */
    String towards(Facing facing) {
        return say(facing.mirrors() ? "facing.to.aft" : "facing.to.ahead");
    }

    /** Both of it. */
    String facing(Facing facing) {
        return from(facing) + " " + towards(facing);
    }

    /** What one airfoil of the row is called. */
    public String airfoil(Row row) {
        return words.airfoil(row);
    }

    /** What several are called. */
    public String airfoils(Row row) {
        return words.airfoils(row);
    }

    /** What so many of them are called. */
    public String some(Row row, long count) {
        return count == 1 ? airfoil(row) : airfoils(row);
    }

    /** The text of a key with its places {0}, {1} … filled in. */
    public String say(String key, Object... parts) {
        return words.say("map." + key, parts);
    }

    /** The text of a value of which the bundle says what it is called. */
    String say(String prefix, Enum<?> value) {
        return say(prefix + key(value));
    }

    private static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
