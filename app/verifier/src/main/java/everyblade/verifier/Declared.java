package everyblade.verifier;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What was seen of rows that are watched through stated windows, from model and journal alone: for each watched move each
 * airfoil is asked whether it passed the window. Errors are not in it: a row that they reach is not told. Angles are degrees;
 * what differs by less than a hundredth of a thousandth of an arc second is the same.
 */
final class Declared {

    private static final double SAME = 2e-9;

    /** Cells that were seen, such as {@code 3 tip/pressure}, by row. */
    final Map<String, Set<String>> seen = new TreeMap<>();
    /** Why a row is not told. */
    final Map<String, String> untold = new TreeMap<>();

    private record Anchor(double airfoil, double clock, double angle) {}

    private final Map<String, Part> rows = new TreeMap<>();
    private final Map<String, Part> views = new HashMap<>();
    private final Map<String, Part> spools = new HashMap<>();
    private final Map<String, Part> pads = new HashMap<>();
    private final Map<String, Double> angles = new HashMap<>();
    private final Map<String, Double> readings = new HashMap<>();
    private final Map<String, Anchor> anchors = new HashMap<>();
    private final String firstSpool;
    private Part view;
    private Part row;
    private List<String> watched;
    private boolean unsure;
    private int k;

    Declared(Map<String, String> model, List<Map<String, String>> lines) {
        Part whole = new Part(model, "");
        whole.parts("spools").forEach(spool -> spools.put(spool.text("id", ""), spool));
        firstSpool = model.getOrDefault("spools.0.id", "shaft");
        spools.putIfAbsent(firstSpool, new Part(Map.of(), ""));
        whole.parts("views").forEach(each -> views.put(each.text("id", ""), each));
        for (Part each : whole.parts("rows")) {
            String id = each.text("id", "");
            rows.put(id, each);
            seen.put(id, new TreeSet<>());
            boolean other =
                    lines.get(0).containsKey("settings.least-view") || each.has("phase") || each.number("rock", 0) != 0;
            boolean computed =
                    views.values().stream().anyMatch(one -> one.text("row", "").equals(id) && one.has("stations.0"));
            if (other || computed) {
                untold.put(id, computed ? "its sight is computed" : "speed, a fixed or a loose place matter to it");
            }
        }
        Set<String> voided = new HashSet<>();
        for (k = lines.size() - 1; k > 0; k--) {
            Map<String, String> line = lines.get(k);
            voided.add(
                    "void".equals(line.get("means.verb")) && !voided.contains("" + k) ? line.get("means.entry") : "");
        }
        for (k = 1; k < lines.size(); k++) {
            if (!voided.contains("" + k)) {
                entry(new Part(lines.get(k), "means."));
            }
        }
        seen.keySet().removeAll(untold.keySet());
    }

    private void entry(Part says) {
        switch (says.text("verb", "")) {
            case "view" -> {
                view = views.get(says.text("view", ""));
                row = rows.get(view.text("row", ""));
                watched = List.of("all");
                angles.computeIfPresent("row " + row.text("id", ""), (still, travelled) -> 0.0);
            }
            case "watch" -> watched = says.words("parts");
            case "pad" -> pads.putAll(padsNamed(says.text("pad", "")));
            case "turn", "draw" -> go(movement(says), true);
            case "skip", "feed" -> go(movement(says), false);
            case "look" -> go(0, true);
            case "round" -> {
                identify(row, says);
                go(360 * normal(), true);
            }
            case "here" -> identify(row, says);
            case "datum" -> {
                identify(rows.get(says.text("row", "")), says);
                readings.put(place(row), says.number("shaftAngle", readings.getOrDefault(place(row), 0.0)));
            }
            case "slip", "pause", "takeover" -> unsure |= !says.text("held", "").equals("true");
            default -> {
                // says nothing of what was seen
            }
        }
    }

    private Map<String, Part> padsNamed(String id) {
        Map<String, Part> named = new HashMap<>();
        spools.forEach((spool, each) -> each.parts("pads").stream()
                .filter(pad -> pad.text("id", "").equals(id))
                .forEach(pad -> named.put(spool, pad)));
        return named;
    }

    /** Where a row's angle is kept: with its spool, or with itself where it stands still. */
    private String place(Part of) {
        boolean turns = of.text("kind", "").equals("rotor");
        return turns ? of.text("spool", firstSpool) : "row " + of.text("id", "");
    }

    private double angle(Part of) {
        return angles.getOrDefault(place(of), 0.0);
    }

    private int normal() {
        Part spool = spools.get(place(row));
        return spool != null && spool.text("normal", "cw").equals("ccw") ? -1 : 1;
    }

    /** How far the shaft turned, or the row as the scope tip saw it: that goes the other way than the tip. */
    private double movement(Part says) {
        Part by = new Part(says.all(), says.path() + "movement.");
        boolean scope = says.text("verb", "").matches("draw|feed");
        Part spool = spools.getOrDefault(place(row), new Part(Map.of(), ""));
        Part first = spool.has("pads.0") ? spool.parts("pads").get(0) : new Part(Map.of(), "");
        Part pad = scope ? new Part(Map.of(), "") : pads.getOrDefault(place(row), first);
        boolean errs = pad.number("play", 0) + pad.number("backlash", 0) + pad.number("drift", 0) > 0
                || pad.has("directions.0") && !pad.has("directions.1")
                || !scope && !spools.containsKey(place(row));
        if (by.number("plusMinus", errs && !by.text("unit", "").equals("blades") ? 1 : 0) != 0) {
            leave(row);
        }
        int on = scope ? 1 : normal();
        int way = by.has("sense") ? by.text("sense", "").equals("on") ? on : -on : 0;
        double each = Map.of(
                        "tool",
                        360 * pad.number("ratio", 1),
                        "tooldeg",
                        pad.number("ratio", 1),
                        "rev",
                        360.0,
                        "blades",
                        360 / row.number("count", 1))
                .getOrDefault(by.text("unit", ""), 1.0);
        double amount = by.number("number", 0) * each;
        amount = way == 0 ? amount : Math.abs(amount) * way;
        if (by.has("angle")) {
            double from = scope ? view.number("reference", 0) - angle(row) : readings.getOrDefault(place(row), 0.0);
            double clockwise = wrapped(by.number("angle", 0) - from);
            boolean back = clockwise > 0 && (way < 0 || way == 0 && clockwise > 180);
            amount = back ? clockwise - 360 : clockwise;
        }
        return scope ? -amount : amount;
    }

    private void identify(Part of, Part says) {
        Anchor now = new Anchor(says.number("airfoil", 1), view.number("reference", 0), angle(of));
        Anchor before = anchors.put(of.text("id", ""), now);
        double off = before == null ? 0 : wrapped(clock(before, of, now.airfoil, angle(of)) - now.clock);
        if (says.number("plusMinus", view.number("aim", 0)) != 0 || off != 0 || unsure) {
            leave(of);
        }
    }

    /** What errs in one row of a shaft may move all. */
    private void leave(Part of) {
        rows.values().stream()
                .filter(each -> place(each).equals(place(of)))
                .forEach(each -> untold.putIfAbsent(
                        each.text("id", ""), "errors, or doubt of the count, reach it by entry " + k));
    }

    private static double clock(Anchor anchor, Part row, double airfoil, double angle) {
        double pitch = (row.text("numbering", "cw").equals("ccw") ? -360 : 360) / row.number("count", 1);
        return anchor.clock + pitch * (airfoil - anchor.airfoil) + angle - anchor.angle;
    }

    private void go(double by, boolean watching) {
        double from = angle(row);
        double to = from + by;
        angles.put(place(row), to);
        readings.merge(place(row), by, Double::sum);
        Anchor anchor = anchors.get(row.text("id", ""));
        if (watching && unsure) {
            leave(row);
        }
        double low = view.number("reference", 0) - view.number("window.halfWidth", 0) - SAME;
        double high = view.number("reference", 0) + view.number("window.halfWidth", 0) + SAME;
        for (int n = 1; watching && anchor != null && view.has("window") && n <= row.number("count", 1); n++) {
            double last = clock(anchor, row, n, Math.max(from, to));
            double turns = 360 * Math.ceil((low - last) / 360);
            if (clock(anchor, row, n, Math.min(from, to)) + turns <= high) {
                see(n);
            }
        }
    }

    private void see(int n) {
        Stream<String> zones = Stream.of("");
        for (List<String> kind : kinds()) {
            zones = zones.flatMap(zone -> kind.stream().map(word -> zone + "/" + word));
        }
        zones.filter(zone -> includes(view.words("window.shows"), zone) && includes(watched, zone))
                .forEach(zone ->
                        seen.get(row.text("id", "")).add(n + " " + (zone.isEmpty() ? "all" : zone.substring(1))));
    }

    private List<List<String>> kinds() {
        boolean liner = row.text("kind", "").equals("liner");
        int bands = (int) row.number("spanBands", 2);
        List<String> spans = bands == 2
                ? List.of(liner ? "outer" : "root", liner ? "inner" : "tip")
                : IntStream.rangeClosed(1, bands > 2 ? bands : 0)
                        .mapToObj(band -> "s" + band)
                        .toList();
        boolean sides = row.text("sides", "" + row.has("shape")).equals("true");
        boolean chords = row.has("shape") && !row.has("chordBands");
        List<String> both = sides ? List.of("pressure", "suction") : List.of();
        List<String> edges = chords ? List.of("leading", "middle", "trailing") : row.words("chordBands");
        return Stream.of(spans, both, edges).filter(kind -> !kind.isEmpty()).toList();
    }

    /** Parts of one kind unite, of different kinds intersect. */
    private boolean includes(List<String> parts, String zone) {
        List<List<String>> kinds = kinds();
        boolean all = parts.equals(List.of("all"));
        if (!all && !kinds.stream().flatMap(List::stream).toList().containsAll(parts)) {
            untold.putIfAbsent(row.text("id", ""), "its parts are said in words that are not known here");
        }
        return all
                || kinds.stream()
                        .allMatch(kind -> parts.stream().noneMatch(kind::contains)
                                || kind.stream().anyMatch(word -> parts.contains(word) && zone.contains("/" + word)));
    }

    /** From 0 up to a turn. */
    private static double wrapped(double degrees) {
        double rest = degrees - 360 * Math.floor(degrees / 360);
        return rest < SAME || rest > 360 - SAME ? 0 : rest;
    }
}
