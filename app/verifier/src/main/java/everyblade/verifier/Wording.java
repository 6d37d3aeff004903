package everyblade.verifier;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads the text of an entry by patterns of its own and holds it against what the line says that it means. In a pattern
 * {@code #name} is a number, {@code @name} a word or a name in quotes, {@code *name} all the rest; two spaces part patterns.
 */
final class Wording {

    private static final String FIND = "(?<kind>[a-z]+) #airfoil @zone(?: (?:length )?#length)?(?: depth #depth)?"
            + "(?: width #width)?PLUSMINUS(?: ?(?<unit>mm|in))?";
    private static final String MOVE = "(?:(?<sense>on|back) )?(?:(?<move>to) #angle(?: deg| ?°)?"
            + "|#number(?: ?(?<unit>deg|°|tooldeg|tool|blades?|rev))?)PLUSMINUS";
    private static final String RUN = "(?:all|(?<first>[0-9]+)(?: ?- ?(?<last>[0-9]+))?)";
    private static final String ALL = """
            (?<verb>in|clear|out|slip)  (?<verb>view) @view(?: with @scopeTip)?  (?<verb>at) @station  (?<verb>pad) @pad
            (?<verb>watch) *parts  (?<verb>ask) @row *parts  (?<verb>skip|feed) MOVE  (?<verb>turn|draw) MOVESECONDSTHROUGH
            (?<verb>look)SECONDSTHROUGH  (?<verb>round) #airfoilPLUSMINUSSECONDS  (?<verb>here) #airfoilPLUSMINUS
            (?<verb>datum) @row #airfoil(?: at #shaftAngle(?: deg| ?°)?)?PLUSMINUS  (?<verb>vanes) @row @position
            (?:find )?(?:@row )?FIND  @row find FIND  (?:@row )?(?<verb>recheck) #airfoil(?: *rest)?
            (?<verb>recheck) @row #airfoil(?: *rest)?  (?<verb>photo) @file(?: of #airfoil(?: @zone)?)?
            (?:@row )?(?<verb>saw) ZONES RUN photo @file  (?<verb>saw) @row ZONES RUN photo @file
            (?:@row )?(?<verb>noaccess) ZONES(?: RUN)?,? because *reason  (?<verb>open) @thing
            (?<verb>noaccess) @row ZONES(?: RUN)?,? because *reason  (?<verb>shut) @thing(?: *text)?
            (?<verb>tool out|tool in|lost) *tool  (?<verb>heat) #temperature ?°?(?<fahrenheit>c|f)  (?<verb>condition) *words
            (?<verb>proof) #size ?mm at #distance ?mm  (?<verb>refer|note) *text  (?<verb>fact) @name *value
            (?<verb>fact) (?<name>scope serial|eye test) *value  (?<verb>again) in #number (?<interval>cycle|hour|day)s?
            (?<verb>pause)(?: (?<held>held))?  (?<verb>handover|takeover) *name  (?<verb>takeover) *name (?<held>held)
            (?<verb>settle|void) #entry,? because *reason""";
    private static final List<Pattern> PATTERNS =
            Stream.of(ALL.split("\\s{2,}|\n")).map(Wording::pattern).toList();

    private Wording() {}

    private static Pattern pattern(String with) {
        String regex = with.replace("MOVE", MOVE)
                .replace("FIND", FIND)
                .replace("RUN", RUN)
                .replace("ZONES", "(?<zone>[^\" ,]+(?: and [^\" ,]+)*)")
                .replace("PLUSMINUS", "(?: ?(?:±|\\+-) ?#plusMinus(?: deg| ?°)?)?")
                .replace("SECONDS", "(?: in #seconds ?s)?")
                .replace("THROUGH", "(?: through @from @to)?")
                .replaceAll("#([a-zA-Z]+)", "(?<$1>[+-]?[0-9]+(?:[.,][0-9]+)?)")
                .replaceAll("@([a-zA-Z]+)", "(?<$1>\"(?:[^\"]|\"\")*\"|[^\" ][^ ]*)")
                .replaceAll(" \\*([a-zA-Z]+)", " (?<$1>.+)");
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** Whether the text of an entry and its meaning agree; null if no pattern reads the text. */
    static Boolean agrees(Map<String, String> entry) {
        Map<String, String> meant = new TreeMap<>();
        entry.forEach((path, value) -> put(path, value, path.startsWith("means.") ? meant : new TreeMap<>()));
        Boolean agrees = null;
        String line = entry.get("text").strip().replaceAll("\\s+", " ").replace('−', '-');
        for (Pattern pattern : PATTERNS) {
            Matcher matcher = pattern.matcher(line);
            if (!Boolean.TRUE.equals(agrees) && matcher.matches()) {
                Map<String, String> said = new TreeMap<>();
                Matcher names = Pattern.compile("\\(\\?<([a-zA-Z]+)>").matcher(pattern.pattern());
                while (names.find()) {
                    put(names.group(1), matcher.group(names.group(1)), said);
                }
                agrees = said.equals(meant);
            }
        }
        return agrees;
    }

    /** In one form whatever was typed; what goes without saying is left out. */
    private static void put(String path, String given, Map<String, String> into) {
        String name = path.replaceAll("\\.[0-9]+$", "").replaceAll(".*\\.", "");
        String value = given == null ? "" : given.strip().replaceAll("\\s+", " ");
        if (value.matches("\".*\"")) {
            value = value.substring(1, value.length() - 1).replace("\"\"", "\"");
        }
        if (value.matches("[+-]?[0-9]+([.,][0-9]+)?")) {
            value = new BigDecimal(value.replace(',', '.')).stripTrailingZeros().toPlainString();
        } else if (name.matches("verb|sense|unit|interval|kind|held|move|fahrenheit")) {
            value = value.toLowerCase(Locale.ROOT)
                    .replaceAll("tool (out|in)", "tool$1")
                    .replaceAll("s$", "");
        } else if (name.equals("zone")) {
            value = value.replaceAll("(?i) and ", " and ");
        } else if (name.equals("parts")) {
            value = value.replaceAll("[,\"]", "");
        }
        String both = name + " " + value;
        if (!both.matches("\\w+ |verb find|move by|unit (deg|°|mm)|held false|fahrenheit (false|c)")) {
            into.merge(
                    name,
                    both.equals("fahrenheit f") ? "true" : both.equals("held held") ? "true" : value,
                    (a, b) -> a + " " + b);
        }
        if (into.containsKey("first")) {
            into.putIfAbsent("last", into.get("first"));
        }
    }
}
