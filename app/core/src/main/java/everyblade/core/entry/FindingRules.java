package everyblade.core.entry;

import everyblade.core.entry.Entry.Airfoils;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Entry.Size;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * How entries are read that say something about certain airfoils: findings, pictures, and what stays unseen.
 *
 * <p>They mean the row in view unless another row's id stands first, before the verb or behind it. Behind it, a row is
 * told from a kind or a zone by counting the words before the number.
 */
final class FindingRules {

    private static final String AND = "and";

    private static final Map<String, Expected> DIMENSIONS =
            Map.of("length", Expected.LENGTH, "depth", Expected.DEPTH, "width", Expected.WIDTH);

    private FindingRules() {}

    /** {@code [ROW] KIND N ZONE [size]}. */
    static Entry find(Optional<Said<String>> rowBefore, Line line) throws Refusal {
        boolean rowNext = rowBefore.isEmpty() && Kind.named(line.peek(1)).isPresent();
        return finding(rowNext ? Optional.of(line.name(Expected.ROW)) : rowBefore, line);
    }

    /** {@code KIND N ZONE [size]}. */
    static Entry finding(Optional<Said<String>> row, Line line) throws Refusal {
        Kind kind = kind(line);
        Said<Integer> airfoil = line.wholeAlone(Expected.AIRFOIL);
        return new FindingEntry.Find(row, kind, airfoil, zone(line), size(line));
    }

    private static Kind kind(Line line) throws Refusal {
        String word = line.peek();
        if (word.isEmpty()) {
            throw line.expected(Expected.KIND_OF_FINDING);
        }
        Optional<Kind> kind = Kind.named(word);
        if (kind.isEmpty()) {
            throw new Refusal(
                    line.column(),
                    new SyntaxProblem.NoKind(line.found(), NearestWord.to(word, Kind.words()), Kind.words()));
        }
        line.take(word);
        return kind.get();
    }

    private static Said<String> zone(Line line) throws Refusal {
        if (line.peek().matches("[\",0-9+-].*|length|depth|width|because|photo")) {
            throw line.expected(Expected.ZONE_SUCH_AS);
        }
        return line.name(Expected.ZONE_SUCH_AS);
    }

    /** {@code [X] [length X] [depth X] [width X] [± X] [mm|in]}, the dimensions in any order. */
    private static Size size(Line line) throws Refusal {
        Map<Expected, BigDecimal> dimensions = new EnumMap<>(Expected.class);
        if (line.peek().matches("[0-9].*")) {
            dimensions.put(Expected.LENGTH, line.unsigned(Expected.FIRST_LENGTH).value());
        }
        while (DIMENSIONS.containsKey(line.peek())) {
            Expected dimension = DIMENSIONS.get(line.peek());
            if (dimensions.containsKey(dimension)) {
                throw new Refusal(line.column(), new SyntaxProblem.SaidTwice(dimension));
            }
            line.take(line.peek());
            dimensions.put(dimension, line.unsigned(dimension).value());
        }
        Optional<BigDecimal> plusMinus = line.takePlusMinus()
                ? Optional.of(line.unsigned(Expected.LENGTH_PLUS_MINUS).value())
                : Optional.empty();
        Optional<LengthUnit> unit = LengthUnit.named(line.peek());
        unit.ifPresent(said -> line.take(said.word()));
        if (DIMENSIONS.containsKey(line.peek())) {
            throw new Refusal(line.column(), SyntaxProblem.Flaw.SEVERAL_PLUS_MINUS);
        }
        return new Size(
                Optional.ofNullable(dimensions.get(Expected.LENGTH)),
                Optional.ofNullable(dimensions.get(Expected.DEPTH)),
                Optional.ofNullable(dimensions.get(Expected.WIDTH)),
                plusMinus,
                unit.orElse(LengthUnit.MM));
    }

    /** {@code [ROW] N [rest]}. */
    static Entry recheck(Optional<Said<String>> rowBefore, Line line) throws Refusal {
        boolean rowNext = rowBefore.isEmpty() && !isRun(line.peek()) && isRun(line.peek(1));
        Optional<Said<String>> row = rowNext ? Optional.of(line.name(Expected.ROW)) : rowBefore;
        return new FindingEntry.Recheck(row, line.wholeAlone(Expected.AIRFOIL), line.text());
    }

    /** {@code FILE [of N [ZONE]]}. */
    static Entry photo(Line line) throws Refusal {
        Said<String> file = line.name(Expected.PICTURE);
        if (!line.take("of")) {
            if (!line.atEnd()) {
                throw line.expected(Expected.OF_OR_END);
            }
            return new FindingEntry.Photo(file, Optional.empty(), Optional.empty());
        }
        Said<Integer> airfoil = line.wholeAlone(Expected.AIRFOIL);
        return new FindingEntry.Photo(
                file, Optional.of(airfoil), line.atEnd() ? Optional.empty() : Optional.of(zone(line)));
    }

    /** {@code [ROW] ZONE N[-M] photo FILE}. */
    static Entry saw(Optional<Said<String>> rowBefore, Line line) throws Refusal {
        Place place = place(rowBefore, line, "photo");
        if (!line.take("photo")) {
            throw line.expected(Expected.PHOTO_AND_PICTURE);
        }
        Said<String> file = line.name(Expected.PICTURE);
        line.endAfterName();
        return new FindingEntry.Saw(place.row, place.zone, place.airfoils, file);
    }

    /** {@code [ROW] ZONE N[-M] because TEXT}, with {@code all} for the numbers or for everything. */
    static Entry noAccess(Optional<Said<String>> rowBefore, Line line) throws Refusal {
        Place place = place(rowBefore, line, "because");
        return new FindingEntry.NoAccess(place.row, place.zone, place.airfoils, line.because());
    }

    private record Place(Optional<Said<String>> row, Said<String> zone, Airfoils airfoils) {}

    /**
     * {@code [ROW] ZONE [and ZONE …] N[-M]}, {@code [ROW] ZONE all}, {@code all} or {@code unshown}, up to the keyword. A
     * single word before {@code all} is a zone.
     */
    private static Place place(Optional<Said<String>> rowBefore, Line line, String keyword) throws Refusal {
        Optional<Said<String>> row = rowBefore;
        if (row.isEmpty() && ZoneWords.isUnshown(line.peek(1)) && standsAlone(line, 1, keyword)) {
            row = Optional.of(line.name(Expected.ROW));
        }
        if (standsAlone(line, 0, keyword)) {
            return new Place(row, line.name(Expected.ZONE), new Airfoils(Optional.empty(), Optional.empty()));
        }
        boolean rowNext = row.isEmpty()
                && !isRun(line.peek(1))
                && !line.peek(1).equals(keyword)
                && !line.peek(1).equals(AND)
                && (isRun(line.peek(2))
                        || line.peek(2).equals("all")
                        || line.peek(2).equals(AND));
        return new Place(rowNext ? Optional.of(line.name(Expected.ROW)) : row, zones(line), airfoils(line));
    }

    /** Whether the word after so many others says cells without airfoil numbers. */
    private static boolean standsAlone(Line line, int words, String keyword) {
        return ZoneWords.ofWholeAirfoils(line.peek(words))
                && (line.peek(words + 1).equals(keyword) || line.peek(words + 1).equals(","));
    }

    /** Zones as gaps tell them, such as {@code tip and pressure/leading}. */
    private static Said<String> zones(Line line) throws Refusal {
        Said<String> zones = zone(line);
        while (line.take(AND)) {
            zones = new Said<>(zones.value() + " " + AND + " " + zone(line).value(), zones.column());
        }
        return zones;
    }

    private static Airfoils airfoils(Line line) throws Refusal {
        if (line.take("all")) {
            return new Airfoils(Optional.empty(), Optional.empty());
        }
        Said<Integer> first = line.whole(Expected.AIRFOILS);
        Said<Integer> last = line.takeDash() ? line.whole(Expected.LAST_AIRFOIL) : first;
        return new Airfoils(Optional.of(first), Optional.of(last));
    }

    /** Whether the word begins as airfoil numbers do. */
    private static boolean isRun(String word) {
        return word.matches("[0-9]+([^0-9\\p{L}].*)?");
    }
}
