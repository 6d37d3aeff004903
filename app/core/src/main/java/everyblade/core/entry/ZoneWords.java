package everyblade.core.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Understands the words for zones against how a row is divided; what is left out of a zone means all of it.
 *
 * <p>A zone is said by words joined with {@code /} in the order span band, side, chord band, any of which may be left
 * out: {@code tip}, {@code pressure/leading}. First letters run together serve where they are clear ({@code tpl}), but
 * numbered span bands keep their number ({@code s2pl}). {@code concave} and {@code convex} are understood for the
 * pressure and the suction side, {@code all} and {@code everything} for every zone; zones joined by {@code and} unite.
 * Upper and lower case are the same.
 */
public final class ZoneWords {

    private static final String ALL = "all";

    /** As gaps are told. */
    private static final String EVERYTHING = "everything";

    private static final String UNSHOWN = "unshown";
    private static final Pattern AND = Pattern.compile("(?i) and ");
    private static final List<Alias> ALIASES =
            List.of(new Alias("concave", "pressure"), new Alias("convex", "suction"));

    private final Zoning zoning;
    private final List<Band> bands = new ArrayList<>();

    private ZoneWords(Zoning zoning) {
        this.zoning = zoning;
        addBands(Division.SPAN, zoning.spans());
        addBands(Division.SIDE, zoning.sides());
        addBands(Division.CHORD, zoning.chords());
    }

    /** What a row may be divided by, in the order in which zones are said. */
    private enum Division {
        SPAN,
        SIDE,
        CHORD
    }

    private record Alias(String word, String means) {}

    /** One band or side, with its zones. */
    private record Band(Division division, String word, ZoneSet zones) {

        /** What stands for it among letters run together. */
        String letters() {
            return word.matches("s[0-9]+") ? word : word.substring(0, 1);
        }

        /** Whether letters run together may begin with it: s1 does not begin s10. */
        boolean begins(String run) {
            return run.startsWith(letters())
                    && !run.substring(letters().length()).matches("[0-9].*");
        }
    }

    /**
     * The zones of one word.
     *
     * @throws Refusal if the row has no such zone, or the letters may mean more than one
     */
    public static ZoneSet zone(Zoning zoning, Said<String> said) throws Refusal {
        ZoneWords words = new ZoneWords(zoning);
        ZoneSet united = ZoneSet.NONE;
        int column = said.column();
        for (String part : AND.split(said.value(), -1)) {
            united = united.union(isAll(part) ? zoning.all() : words.zones(words.path(new Said<>(part, column))));
            column += part.codePointCount(0, part.length()) + " and ".length();
        }
        return united;
    }

    /** Whether this word means those cells that no view shows, whichever zones they are. */
    public static boolean isUnshown(String word) {
        return word.toLowerCase(Locale.ROOT).equals(UNSHOWN);
    }

    /** Whether this word may stand without numbers of airfoils. */
    static boolean ofWholeAirfoils(String word) {
        return isAll(word) || isUnshown(word);
    }

    /**
     * The zones of several parts: bands and sides of one division unite, those of different divisions intersect;
     * zones such as {@code tip/pressure} unite with each other and intersect with the rest. No parts are no zone, so
     * that what says nothing shows nothing.
     *
     * @throws Refusal if a part is not understood, or nothing is left of them together
     */
    public static ZoneSet parts(Zoning zoning, List<Said<String>> parts) throws Refusal {
        if (parts.isEmpty()) {
            return ZoneSet.NONE;
        }
        ZoneWords words = new ZoneWords(zoning);
        if (parts.size() == 1 && isAll(parts.get(0).value())) {
            return zoning.all();
        }
        Map<String, ZoneSet> united = new HashMap<>();
        for (Said<String> part : parts) {
            List<Band> path = words.path(part);
            String kind = path.size() == 1 ? path.get(0).division().name() : "several";
            united.merge(kind, words.zones(path), ZoneSet::union);
        }
        ZoneSet together = united.values().stream().reduce(zoning.all(), ZoneSet::intersection);
        if (together.isEmpty()) {
            throw new Refusal(parts.get(0).column(), ZoneProblem.Flaw.NOTHING_IN_COMMON);
        }
        return together;
    }

    /**
     * The zones that a task asks for: those of these parts, or none of the row.
     *
     * @throws Refusal as of {@link #parts}
     */
    public static ZoneSet asked(Zoning zoning, List<Said<String>> parts) throws Refusal {
        return parts.size() == 1 && parts.get(0).value().equals("none") ? ZoneSet.NONE : parts(zoning, parts);
    }

    /**
     * The zones that a free text begins with, if its first word is clearly a zone.
     *
     * <p>A text such as "a dent" must not be taken for a zone, so only full words, or two and more letters run
     * together, count; a comma, colon, semicolon or full stop may follow. A word that is both English and letters of
     * this row ("of" on a liner) is read as a zone.
     */
    public static Optional<ZoneSet> opening(Zoning zoning, String text) {
        String word = text.strip().split("\\s", 2)[0].replaceFirst("[,:;.]$", "");
        for (String step : word.split("/", -1)) {
            if (step.codePointCount(0, step.length()) < 2) {
                return Optional.empty();
            }
        }
        try {
            return Optional.of(zone(zoning, new Said<>(word, 1)));
        } catch (Refusal notAZone) {
            return Optional.empty();
        }
    }

    private void addBands(Division division, List<String> words) {
        for (int index = 0; index < words.size(); index++) {
            ZoneSet zones = switch (division) {
                case SPAN -> zoning.span(index);
                case SIDE -> zoning.side(index);
                case CHORD -> zoning.chord(index);
            };
            bands.add(new Band(division, words.get(index), zones));
        }
    }

    private static boolean isAll(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return lower.equals(ALL) || lower.equals(EVERYTHING);
    }

    private ZoneSet zones(List<Band> path) {
        return path.stream().map(Band::zones).reduce(zoning.all(), ZoneSet::intersection);
    }

    /** The bands and sides that a word says, one to three of them. */
    private List<Band> path(Said<String> said) throws Refusal {
        List<List<Band>> readings = List.of(List.of());
        int column = said.column();
        for (String typed : said.value().split("/", -1)) {
            String step = typed.toLowerCase(Locale.ROOT);
            List<List<Band>> further =
                    readings.stream().flatMap(path -> continued(path, step)).toList();
            if (further.isEmpty()) {
                throw new Refusal(column, whyNot(typed, step));
            }
            readings = further;
            column += typed.codePointCount(0, typed.length()) + 1;
        }
        if (readings.size() > 1) {
            throw new Refusal(
                    said.column(),
                    new ZoneProblem.Ambiguous(
                            cut(said.value()),
                            readings.stream().map(ZoneWords::name).toList()));
        }
        return readings.get(0);
    }

    /** Every way to go on from a path by a full word, or else by one or more letters. */
    private Stream<List<Band>> continued(List<Band> path, String step) {
        Optional<Band> full = full(step);
        if (full.isPresent()) {
            return full.filter(band -> mayFollow(path, band)).map(band -> joined(path, band)).stream();
        }
        return step.isEmpty() ? Stream.empty() : spelled(path, step);
    }

    /** Every way to go on from a path by these letters; the path itself if none are left. */
    private Stream<List<Band>> spelled(List<Band> path, String letters) {
        if (letters.isEmpty()) {
            return Stream.of(path);
        }
        return bands.stream()
                .filter(band -> mayFollow(path, band) && band.begins(letters))
                .flatMap(band -> spelled(
                        joined(path, band), letters.substring(band.letters().length())));
    }

    private Optional<Band> full(String word) {
        String means = ALIASES.stream()
                .filter(alias -> alias.word().equals(word))
                .map(Alias::means)
                .findFirst()
                .orElse(word);
        return bands.stream().filter(band -> band.word().equals(means)).findFirst();
    }

    private static boolean mayFollow(List<Band> path, Band band) {
        return path.isEmpty() || path.get(path.size() - 1).division().compareTo(band.division()) < 0;
    }

    private static List<Band> joined(List<Band> path, Band band) {
        return Stream.concat(path.stream(), Stream.of(band)).toList();
    }

    private ZoneProblem whyNot(String typed, String step) {
        if (step.equals(ALL) && !bands.isEmpty()) {
            return ZoneProblem.Flaw.ALL_STANDS_ALONE;
        }
        if (step.equals("c") && !zoning.sides().isEmpty()) {
            return ZoneProblem.Flaw.CONCAVE_OR_CONVEX;
        }
        if (full(step).isPresent()) {
            return new ZoneProblem.Misplaced(cut(typed));
        }
        // How zones are said together and in letters, if this row has several kinds of bands.
        List<String> first = new ArrayList<>();
        for (List<String> of : List.of(zoning.spans(), zoning.sides(), zoning.chords())) {
            of.stream().findFirst().ifPresent(first::add);
        }
        boolean several = first.size() > 1;
        return new ZoneProblem.NoZone(
                step.isEmpty() ? Optional.empty() : Optional.of(cut(typed)),
                Stream.concat(bands.stream().map(Band::word), Stream.of(ALL)).toList(),
                several ? Optional.of(String.join("/", first)) : Optional.empty(),
                several
                        ? Optional.of(
                                first.stream().map(word -> word.substring(0, 1)).collect(Collectors.joining()))
                        : Optional.empty());
    }

    private static String name(List<Band> path) {
        return String.join("/", path.stream().map(Band::word).toList());
    }

    private static String cut(String text) {
        int most = text.offsetByCodePoints(0, Math.min(24, text.codePointCount(0, text.length())));
        return text.substring(0, most) + (most < text.length() ? "\u2026" : "");
    }
}
