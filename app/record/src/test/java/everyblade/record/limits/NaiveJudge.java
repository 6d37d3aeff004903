package everyblade.record.limits;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Judges findings straight from the text of the file and of the entries, the slow way: lengths as whole numbers of
 * 0.0001 mm, chances by adding up the bell curve, numbers of findings in every world that the doubts allow.
 */
final class NaiveJudge {

    static final List<String> WORST_LAST =
            List.of("WITHIN", "OTHER_FACE", "CLOSE", "NOT_MEASURED", "NO_RULE", "BEYOND");

    private static final int BLADES = 12;
    private static final int SLICES = 20_000;

    /** One finding as its line says it; sizes and ± in units of 0.0001 mm, −1 if not said. */
    private record Found(
            String row, String kind, int blade, Set<String> zones, long length, long depth, long plusMinus) {}

    private final JsonNode file;
    private final List<Found> all = new ArrayList<>();
    private final Set<String> seenSides = new HashSet<>();

    NaiveJudge(JsonNode file, List<String> entries) {
        this.file = file;
        String row = "";
        for (String line : entries) {
            String[] words = line.split(" ");
            switch (words[0]) {
                case "view" -> row = words[1].substring(1);
                case "watch" -> seenSides.add(row + " " + words[1]);
                case "round" -> {}
                default -> all.add(found(words));
            }
        }
    }

    private static Found found(String[] words) {
        long[] sizes = {-1, -1, -1};
        String unit = words[words.length - 1];
        for (int i = 4; i + 1 < words.length; i++) {
            int which = List.of("length", "depth", "±").indexOf(words[i]);
            if (which >= 0) {
                sizes[which] = units(new BigDecimal(words[i + 1]), unit);
            }
        }
        return new Found(words[0], words[1], Integer.parseInt(words[2]), zones(words[3]), sizes[0], sizes[1], sizes[2]);
    }

    private static long units(BigDecimal number, String unit) {
        return number.multiply(new BigDecimal(unit.equals("in") ? "254000" : "10000"))
                .longValueExact();
    }

    /** Every zone of two bands, two sides and three bands that a word names. */
    private static Set<String> zones(String word) {
        String full = switch (word) {
            case "tpl" -> "tip/pressure/leading";
            case "rpl" -> "root/pressure/leading";
            case "rst" -> "root/suction/trailing";
            default -> word;
        };
        Set<String> zones = new TreeSet<>();
        for (String span : List.of("root", "tip")) {
            for (String side : List.of("pressure", "suction")) {
                for (String chord : List.of("leading", "middle", "trailing")) {
                    List<String> zone = List.of(span, side, chord);
                    if (zone.containsAll(List.of(full.split("/")))) {
                        zones.add(String.join("/", zone));
                    }
                }
            }
        }
        return zones;
    }

    List<String> verdicts() {
        return all.stream().map(this::verdict).toList();
    }

    private String verdict(Found found) {
        String worst = "";
        for (JsonNode rule : file.get("rules")) {
            if (isOn(rule, found)) {
                worst = worse(worst, verdict(rule, found));
            }
        }
        return worst.isEmpty() ? "NO_RULE" : worst;
    }

    private static String worse(String one, String other) {
        return WORST_LAST.indexOf(one) > WORST_LAST.indexOf(other) ? one : other;
    }

    private static boolean isOn(JsonNode rule, Found found) {
        return names(rule, "rows", found.row())
                && names(rule, "kinds", found.kind())
                && (!rule.has("zones")
                        || zones(rule.get("zones").get(0).textValue()).stream().anyMatch(found.zones()::contains));
    }

    private static boolean names(JsonNode rule, String key, String word) {
        if (!rule.has(key)) {
            return true;
        }
        for (JsonNode each : rule.get(key)) {
            if (each.textValue().equals(word)) {
                return true;
            }
        }
        return false;
    }

    private String verdict(JsonNode rule, Found found) {
        String hanging = "WITHIN";
        if (rule.has("onlyWhile")) {
            hanging = kept(rule.get("onlyWhile").get(0).textValue());
        }
        if (hanging.equals("BEYOND")) {
            return "BEYOND";
        }
        for (int i = 0; i < rule.get("steps").size(); i++) {
            String step = step(rule, i, found);
            if (!step.equals("BEYOND")) {
                String both = worse(step, hanging);
                return both.equals("WITHIN") && rule.path("bothFaces").asBoolean(true) && !otherFaceSeen(found)
                        ? "OTHER_FACE"
                        : both;
            }
        }
        return "BEYOND";
    }

    private String kept(String row) {
        String worst = "WITHIN";
        for (Found other : all) {
            if (other.row().equals(row)) {
                worst = worse(worst, verdict(other));
            }
        }
        boolean whole = seenSides.contains(row + " pressure") && seenSides.contains(row + " suction");
        return worst.equals("BEYOND") ? worst : worst.equals("WITHIN") && whole ? worst : "CLOSE";
    }

    private boolean otherFaceSeen(Found found) {
        boolean pressure = found.zones().stream().anyMatch(zone -> zone.contains("pressure"));
        boolean suction = found.zones().stream().anyMatch(zone -> zone.contains("suction"));
        return pressure && suction || seenSides.contains(found.row() + (pressure ? " suction" : " pressure"));
    }

    private String step(JsonNode rule, int index, Found found) {
        JsonNode step = rule.get("steps").get(index);
        String worst = sizes(step, found);
        List<Found> sure = new ArrayList<>();
        List<Found> doubtful = new ArrayList<>();
        for (Found other : all) {
            if (!other.row().equals(found.row()) || !isOn(rule, other)) {
                continue;
            }
            boolean surely = true;
            boolean maybe = true;
            for (int i = 0; i < index; i++) {
                String earlier = sizes(rule.get("steps").get(i), other);
                surely &= earlier.equals("BEYOND");
                maybe &= !earlier.equals("WITHIN");
            }
            (surely ? sure : maybe ? doubtful : new ArrayList<Found>()).add(other);
        }
        for (String count : List.of("perAirfoil", "perRow", "airfoils", "neighbours")) {
            if (step.has(count)) {
                worst = worse(worst, counted(count, step.get(count).intValue(), found, sure, doubtful));
            }
        }
        return worst;
    }

    /** Holds in every world: within. In none: beyond. */
    private static String counted(String what, int most, Found found, List<Found> sure, List<Found> doubtful) {
        boolean ever = false;
        boolean always = true;
        for (int world = 0; world < 1 << doubtful.size(); world++) {
            List<Found> there = new ArrayList<>(sure);
            for (int i = 0; i < doubtful.size(); i++) {
                if ((world >> i & 1) == 1) {
                    there.add(doubtful.get(i));
                }
            }
            boolean holds = number(what, found, there) <= most;
            ever |= holds;
            always &= holds;
        }
        return always ? "WITHIN" : ever ? "CLOSE" : "BEYOND";
    }

    private static int number(String what, Found found, List<Found> there) {
        Set<Integer> blades = new TreeSet<>();
        there.forEach(each -> blades.add(each.blade()));
        return switch (what) {
            case "perAirfoil" ->
                (int) there.stream()
                        .filter(each -> each.blade() == found.blade())
                        .count();
            case "perRow" -> there.size();
            case "airfoils" -> blades.size();
            default -> {
                int longest = 0;
                for (int first = 1; first <= BLADES; first++) {
                    for (int length = 1; length <= BLADES; length++) {
                        boolean run = true;
                        boolean here = false;
                        for (int i = 0; i < length; i++) {
                            int blade = (first - 1 + i) % BLADES + 1;
                            run &= blades.contains(blade);
                            here |= blade == found.blade();
                        }
                        longest = run && here ? Math.max(longest, length) : longest;
                    }
                }
                yield longest;
            }
        };
    }

    private String sizes(JsonNode step, Found found) {
        String worst = "WITHIN";
        for (String dimension : List.of("length", "depth")) {
            if (step.has(dimension)) {
                long value = dimension.equals("length") ? found.length() : found.depth();
                worst = worse(worst, size(step.get(dimension), value, found.plusMinus()));
            }
        }
        return worst;
    }

    private String size(JsonNode bounds, long value, long plusMinus) {
        String unit = file.get("unit").textValue();
        long expanded = plusMinus < 0 && file.has("plusMinus")
                ? units(file.get("plusMinus").decimalValue(), unit)
                : plusMinus;
        if (value < 0 || expanded < 0) {
            return "NOT_MEASURED";
        }
        long most = units(bounds.get("most").decimalValue(), unit);
        long least = bounds.has("least") ? units(bounds.get("least").decimalValue(), unit) : Long.MIN_VALUE / 4;
        if (expanded == 0) {
            return value >= least && value <= most ? "WITHIN" : "BEYOND";
        }
        if (file.path("guard").asText("conformance").equals("expanded")) {
            if (value + expanded <= most && value - expanded >= least) {
                return "WITHIN";
            }
            return value - expanded >= most || value + expanded <= least ? "BEYOND" : "CLOSE";
        }
        double chance = chance((least - value) / (expanded / 2.0), (most - value) / (expanded / 2.0));
        return chance >= 0.95 ? "WITHIN" : chance <= 0.05 ? "BEYOND" : "CLOSE";
    }

    /** The area under the bell curve between two numbers of standard deviations, by Simpson's rule. */
    private static double chance(double from, double to) {
        double a = Math.max(-9, Math.min(9, from));
        double b = Math.max(-9, Math.min(9, to));
        double h = (b - a) / SLICES;
        double sum = 0;
        for (int i = 0; i <= SLICES; i++) {
            double x = a + i * h;
            sum += Math.exp(-x * x / 2) * (i == 0 || i == SLICES ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * h / 3 / Math.sqrt(2 * Math.PI);
    }
}
