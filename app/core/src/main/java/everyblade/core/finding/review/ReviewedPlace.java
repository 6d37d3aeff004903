package everyblade.core.finding.review;

import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Engine;
import everyblade.spi.Row;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where on an engine something is.
 *
 * @param row id of the row
 * @param first number of the first airfoil, from 1
 * @param last number of the last one; less than the first where the run goes over the seam
 * @param zone in the words of an entry, such as {@code tip/pressure}; empty for the whole airfoil
 */
public record ReviewedPlace(String row, int first, int last, String zone) {

    private static final Pattern WORDS =
            Pattern.compile("(\\S+)\\s+([0-9]{1,4})(?:\\s*[-–]\\s*([0-9]{1,4}))?(?:\\s+(\\S+))?");

    /**
     * The place that words such as {@code c1 14-16 tip} say.
     *
     * @throws Refusal if this engine has no such place
     */
    public static ReviewedPlace of(String words, Engine engine) throws Refusal {
        Matcher matcher = WORDS.matcher(words.strip());
        if (!matcher.matches()) {
            throw new Refusal(1, PlaceProblem.Flaw.NO_PLACE);
        }
        int first = Integer.parseInt(matcher.group(2));
        ReviewedPlace place = new ReviewedPlace(
                matcher.group(1),
                first,
                matcher.group(3) == null ? first : Integer.parseInt(matcher.group(3)),
                matcher.group(4) == null ? "" : matcher.group(4));
        place.zones(engine);
        return place;
    }

    /**
     * The zones that are meant.
     *
     * @throws Refusal if this engine has no such place
     */
    public ZoneSet zones(Engine engine) throws Refusal {
        Row known = engine.rows().get(row);
        if (known == null) {
            throw new Refusal(
                    1, new PlaceProblem.NoRow(row, List.copyOf(engine.rows().keySet())));
        }
        if (Math.min(first, last) < 1 || Math.max(first, last) > known.count()) {
            throw new Refusal(1, new PlaceProblem.NoAirfoil(row, known.kind(), known.count()));
        }
        Zoning zoning = engine.zonings().get(row);
        return zone.isEmpty() ? zoning.all() : ZoneWords.zone(zoning, new Said<>(zone, 1));
    }

    /** In the words that {@link #of} takes. */
    public String words() {
        return row + " " + first + (last == first ? "" : "-" + last) + (zone.isEmpty() ? "" : " " + zone);
    }
}
