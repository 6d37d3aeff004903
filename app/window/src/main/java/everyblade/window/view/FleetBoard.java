package everyblade.window.view;

import everyblade.fleet.DerivedTables;
import everyblade.fleet.FleetAnswer;
import everyblade.fleet.FleetQuestion;
import everyblade.fleet.Store;
import everyblade.fleet.StoreRefusal;
import everyblade.session.fleet.ShopStore;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What a shop's store tells of its engines, as a page shows it.
 *
 * @param rows ids of all rows that any engine has, in their order
 * @param engines each as its last inspection left it, by site, model and serial number
 * @param open what is open, by site, the oldest first
 * @param missing how many jobs are in none of this, since nothing is computed of them as they stand
 */
public record FleetBoard(List<String> rows, List<Engine> engines, List<Open> open, int missing) {

    /**
     * An engine.
     *
     * @param days since its last inspection began
     * @param job how its last job begins in the store
     * @param cells of its rows, by their ids
     * @param course its inspections in the order of time
     */
    public record Engine(
            String site,
            String model,
            String serial,
            int days,
            String job,
            Map<String, Cell> cells,
            List<Inspection> course) {}

    /**
     * A row of an engine.
     *
     * @param cells that the row has, zone by zone of each airfoil
     * @param left of these, that were not wholly seen though a view shows them
     * @param noView of these, that no view shows
     * @param findings on it
     */
    public record Cell(int cells, int left, int noView, int findings) {

        /** Of what views show, the share that is left, from 0 to 1. */
        public double shareLeft() {
            return cells == noView ? 0 : (double) left / (cells - noView);
        }
    }

    /**
     * An inspection.
     *
     * @param left of what views show, the share that was left, from 0 to 1
     * @param findings of all rows
     */
    public record Inspection(Instant at, double left, int findings) {}

    /**
     * Something that is open.
     *
     * @param days since it was told
     * @param job how its job begins in the store
     */
    public record Open(String site, int days, String model, String serial, String what, String where, String job) {}

    /** Asks a store, opened for that. */
    public static FleetBoard of(ShopStore shop) throws StoreRefusal {
        try (Store store = shop.open()) {
            return of(store);
        }
    }

    /** Asks a store. */
    public static FleetBoard of(Store store) throws StoreRefusal {
        Map<List<String>, List<Inspection>> courses = courses(FleetAnswer.of(store, FleetQuestion.COURSE));
        Map<List<String>, Engine> engines = new LinkedHashMap<>();
        TreeSet<String> rows = new TreeSet<>();
        FleetAnswer answer = FleetAnswer.of(store, FleetQuestion.ENGINES);
        for (List<Object> line : answer.rows()) {
            Line at = new Line(answer.columns(), line);
            rows.add(at.text("row"));
            engines.computeIfAbsent(
                            at.engine(),
                            engine -> new Engine(
                                    at.text("site"),
                                    at.text("model"),
                                    at.text("serial"),
                                    at.number("days"),
                                    at.text("job"),
                                    new LinkedHashMap<>(),
                                    courses.getOrDefault(engine, List.of())))
                    .cells()
                    .put(at.text("row"), cell(at));
        }
        FleetAnswer open = FleetAnswer.of(store, FleetQuestion.OPEN);
        return new FleetBoard(
                List.copyOf(rows),
                List.copyOf(engines.values()),
                open.rows().stream()
                        .map(line -> open(new Line(open.columns(), line)))
                        .toList(),
                DerivedTables.missing(store));
    }

    private static Cell cell(Line at) {
        int unseen = at.number("unseen");
        int noView = at.number("no view");
        int left = at.number("part") + at.number("maybe") + unseen - noView;
        return new Cell(at.number("seen") + left + noView, left, noView, at.number("findings"));
    }

    private static Open open(Line at) {
        return new Open(
                at.text("site"),
                at.number("days"),
                at.text("model"),
                at.text("serial"),
                at.text("what"),
                at.text("where"),
                at.text("job"));
    }

    private static Map<List<String>, List<Inspection>> courses(FleetAnswer answer) {
        Map<List<String>, List<Inspection>> courses = new LinkedHashMap<>();
        for (List<Object> line : answer.rows()) {
            Line at = new Line(answer.columns(), line);
            int left = at.number("left");
            int all = left + at.number("seen");
            courses.computeIfAbsent(at.engine(), engine -> new ArrayList<>())
                    .add(new Inspection(
                            Instant.parse(at.text("begun")),
                            all == 0 ? 0 : (double) left / all,
                            at.number("findings")));
        }
        return courses;
    }

    /** A line of an answer. */
    private record Line(List<String> columns, List<Object> values) {

        private Object value(String column) {
            return values.get(columns.indexOf(column));
        }

        String text(String column) {
            return value(column) == null ? "" : value(column).toString();
        }

        int number(String column) {
            return value(column) instanceof Number number ? number.intValue() : 0;
        }

        /** An engine goes from site to site and stays the same. */
        List<String> engine() {
            return List.of(text("model"), text("serial"));
        }
    }
}
