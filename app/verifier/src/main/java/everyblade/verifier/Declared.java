package everyblade.verifier;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedList;
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
    private static final Part NONE = new Part(Map.of(), "");

    /** Cells that were seen, such as {@code 3 tip/pressure}, by row. */
    final Map<String, Set<String>> seen = new TreeMap<>();
    /** Why a row is not told. */
    final Map<String, String> untold = new TreeMap<>();

    private record Anchor(double airfoil, double clock, double angle) {}

    private final Map<String, Part> parts = new HashMap<>();
    private final Map<String, Anchor> anchors = new HashMap<>();
    private final Map<String, Double> angles = new HashMap<>();
    private final Map<String, Double> readings = new HashMap<>();
    private final List<String> pads = new LinkedList<>();
    private final Part model;
    private Part view;
    private Part row;
    private List<String> watched;
    private boolean unsure;
    private int k;

    Declared(Map<String, String> file, List<Map<String, String>> lines) {
        model = new Part(file, "");
        for (String kind : List.of("spools", "rows", "views")) {
            model.parts(kind).forEach(each -> parts.put(kind + " " + each.text("id"), each));
        }
        for (Part each : model.parts("rows")) {
            seen.put(each.text("id"), new TreeSet<>());
            if (lines.get(0).containsKey("settings.least-view")
                    || !each.text("phase").isEmpty()
                    || each.number("rock", 0) != 0) {
                untold.put(each.text("id"), "speed, a fixed or a loose place matter to it");
            }
        }
        model.parts("views").stream()
                .filter(each -> !each.parts("stations").isEmpty())
                .forEach(each -> untold.put(each.text("row"), "its sight is computed"));
        Set<String> voided = new HashSet<>();
        for (k = lines.size() - 1; k > 0; k--) {
            boolean strikes = "void".equals(lines.get(k).get("means.verb")) && !voided.contains("" + k);
            voided.add(strikes ? lines.get(k).get("means.entry") : "");
        }
        for (k = 1; k < lines.size(); k++) {
            entry(voided.contains("" + k) ? NONE : new Part(lines.get(k), "means."));
        }
        seen.keySet().removeAll(untold.keySet());
    }

    private void entry(Part says) {
        String verb = says.text("verb");
        if (verb.equals("view")) {
            view = parts.get("views " + says.text("view"));
            row = parts.get("rows " + view.text("row"));
            watched = List.of("all");
            angles.remove("row " + row.text("id"));
        } else if (verb.equals("watch")) {
            watched = says.words("parts");
        } else if (verb.equals("pad")) {
            pads.add(0, says.text("pad"));
        } else if (verb.matches("slip|pause|takeover")) {
            unsure |= !says.text("held").equals("true");
        } else if (verb.matches("here|datum|round")) {
            identify(verb.equals("datum") ? parts.get("rows " + says.text("row")) : row, says);
        }
        if (verb.matches("turn|draw|skip|feed|look|round")) {
            double by = verb.equals("round") ? 360 * normal() : verb.equals("look") ? 0 : movement(says);
            go(by, !verb.matches("skip|feed"));
        }
    }

    /** Where a row's angle is kept: with its spool, or with itself where it stands still. */
    private String place(Part of) {
        String first = model.all().getOrDefault("spools.0.id", "shaft");
        String spool = of.text("spool").isEmpty() ? first : of.text("spool");
        return of.text("kind").equals("rotor") ? spool : "row " + of.text("id");
    }

    private double angle(Part of) {
        return angles.getOrDefault(place(of), 0.0);
    }

    private int normal() {
        return parts.getOrDefault("spools " + place(row), NONE).text("normal").equals("ccw") ? -1 : 1;
    }

    /** How far the shaft turned, or the row as the scope tip saw it: that goes the other way than the tip. */
    private double movement(Part says) {
        Part by = new Part(says.all(), "means.movement.");
        boolean scope = says.text("verb").matches("draw|feed");
        List<Part> here = parts.getOrDefault("spools " + place(row), NONE).parts("pads");
        Part first = here.isEmpty() ? NONE : here.get(0);
        Part pad = pads.stream()
                .flatMap(id -> here.stream().filter(each -> each.text("id").equals(id)))
                .findFirst()
                .orElse(first);
        boolean errs = pad.number("play", 0) + pad.number("backlash", 0) + pad.number("drift", 0) > 0
                || pad.words("directions").size() == 1
                || !scope && !row.text("kind").equals("rotor");
        String unit = by.text("unit");
        if (by.number("plusMinus", errs && !unit.equals("blades") ? 1 : 0) != 0) {
            leave(row);
        }
        int on = scope ? 1 : normal();
        int way = by.text("sense").isEmpty() ? 0 : by.text("sense").equals("on") ? on : -on;
        double each = unit.equals("blades") ? 360 / row.number("count", 1) : unit.matches("rev|tool") ? 360 : 1;
        double amount = by.number("number", 0) * each * (unit.startsWith("tool") ? pad.number("ratio", 1) : 1);
        amount = way == 0 ? amount : Math.abs(amount) * way;
        if (by.text("move").equals("to")) {
            double from = scope
                    ? view.number("reference", 0) - angle(row)
                    : readings.getOrDefault(place(row), 0.0) + angle(row);
            double clockwise = wrapped(by.number("angle", 0) - from);
            amount = clockwise > 0 && (way < 0 || way == 0 && clockwise > 180) ? clockwise - 360 : clockwise;
        }
        return scope ? -amount : amount;
    }

    private void identify(Part of, Part says) {
        Anchor now = new Anchor(says.number("airfoil", 1), view.number("reference", 0), angle(of));
        Anchor before = anchors.put(of.text("id"), now);
        double off = before == null ? 0 : wrapped(clock(before, of, now.airfoil, angle(of)) - now.clock);
        if (says.number("plusMinus", view.number("aim", 0)) != 0 || off != 0 || unsure) {
            leave(of);
        }
        if (!says.text("shaftAngle").isEmpty()) {
            readings.put(place(of), says.number("shaftAngle", 0) - angle(of));
        }
    }

    /** What errs in one row of a shaft may move all. */
    private void leave(Part of) {
        for (String id : seen.keySet()) {
            String why = "errors, or doubt of the count, reach it by entry " + k;
            untold.computeIfAbsent(id, none -> place(parts.get("rows " + id)).equals(place(of)) ? why : null);
        }
    }

    private static double clock(Anchor anchor, Part row, double airfoil, double angle) {
        double pitch = (row.text("numbering").equals("ccw") ? -360 : 360) / row.number("count", 1);
        return anchor.clock + pitch * (airfoil - anchor.airfoil) + angle - anchor.angle;
    }

    private void go(double by, boolean watching) {
        double from = angle(row);
        double to = angles.merge(place(row), by, Double::sum);
        Anchor anchor = anchors.get(row.text("id"));
        if (watching && unsure) {
            leave(row);
        }
        double low = view.number("reference", 0) - view.number("window.halfWidth", 0) - SAME;
        double high = view.number("reference", 0) + view.number("window.halfWidth", 0) + SAME;
        for (int n = 1; watching && anchor != null && n <= row.number("count", 1); n++) {
            double turns = 360 * Math.ceil((low - clock(anchor, row, n, Math.max(from, to))) / 360);
            if (clock(anchor, row, n, Math.min(from, to)) + turns <= high) {
                see(n);
            }
        }
    }

    private void see(int n) {
        List<String> zones = List.of("");
        for (List<String> kind : kinds()) {
            zones = zones.stream()
                    .flatMap(zone -> kind.stream().map(word -> zone + "/" + word))
                    .toList();
        }
        for (String zone : zones) {
            if (includes(view.words("window.shows"), zone) && includes(watched, zone)) {
                seen.get(row.text("id")).add(n + " " + (zone.isEmpty() ? "all" : zone.substring(1)));
            }
        }
    }

    private List<List<String>> kinds() {
        boolean shaped = row.all().containsKey(row.path() + "shape");
        int bands = (int) row.number("spanBands", 2);
        List<String> many =
                IntStream.rangeClosed(1, bands).mapToObj(band -> "s" + band).toList();
        List<String> two = row.text("kind").equals("liner") ? List.of("outer", "inner") : List.of("root", "tip");
        boolean sides =
                row.text("sides").equals("true") || shaped && row.text("sides").isEmpty();
        boolean chords = shaped && !row.all().containsKey(row.path() + "chordBands");
        List<String> edges = chords ? List.of("leading", "middle", "trailing") : row.words("chordBands");
        return Stream.of(
                        bands > 2 ? many : bands < 2 ? List.<String>of() : two,
                        sides ? List.of("pressure", "suction") : List.<String>of(),
                        edges)
                .filter(kind -> !kind.isEmpty())
                .toList();
    }

    /** Parts of one kind unite, of different kinds intersect; no parts are nothing. */
    private boolean includes(List<String> parts, String zone) {
        boolean all = parts.equals(List.of("all"));
        boolean some = all || !parts.isEmpty();
        for (List<String> kind : kinds()) {
            List<String> named = kind.stream().filter(parts::contains).toList();
            some &= all || named.isEmpty() || named.stream().anyMatch(word -> zone.contains("/" + word));
        }
        if (!all && !kinds().stream().flatMap(List::stream).toList().containsAll(parts)) {
            untold.putIfAbsent(row.text("id"), "its parts are said in words that are not known here");
        }
        return some;
    }

    /** From 0 up to a turn. */
    private static double wrapped(double degrees) {
        double rest = degrees - 360 * Math.floor(degrees / 360);
        return rest < SAME || rest > 360 - SAME ? 0 : rest;
    }
}
