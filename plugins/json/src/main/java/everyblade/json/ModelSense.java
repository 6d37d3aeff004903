package everyblade.json;

import everyblade.spi.Row;
import everyblade.spi.Shape;
import everyblade.spi.Spool;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Judges what only shows when the parts of a model are seen together. */
final class ModelSense {

    private ModelSense() {}

    static void judge(
            List<Located<Spool>> spools,
            List<Located<Wall>> walls,
            List<Located<Row>> rows,
            List<Located<View>> views,
            ProblemLog log) {
        refuseUnequalRings(rows.stream().filter(Located::sound).toList(), log);
        refuseAxialWithoutWalls(walls, rows, log);
        Set<String> viewed = views.stream().map(view -> view.value().row()).collect(Collectors.toSet());
        rows.forEach(row -> warnOfRow(row, viewed, log));
        warnOfUnusedSpools(spools, walls, rows, log);
        Map<String, Row> byId = new HashMap<>();
        rows.stream()
                .filter(Located::sound)
                .forEach(row -> byId.putIfAbsent(row.value().id(), row.value()));
        views.forEach(view -> warnOfView(view, byId, log));
    }

    private static void refuseUnequalRings(List<Located<Row>> rows, ProblemLog log) {
        Map<String, Row> firsts = new LinkedHashMap<>();
        for (Located<Row> located : rows) {
            Row row = located.value();
            Row first = row.ring().isEmpty()
                    ? row
                    : firsts.computeIfAbsent(row.ring().get(), ring -> row);
            if (row.count() != first.count()
                    || row.kind() != first.kind()
                    || !row.spool().equals(first.spool())) {
                log.error(
                        "unequal-ring",
                        located.from().placeOf("ring"),
                        "the row " + Wording.plain(row.id()) + " and the row " + Wording.plain(first.id())
                                + " stand in one ring but differ in count, kind or spool",
                        "rows of one ring stand blade for blade between each other",
                        "make them equal or delete \"ring\"");
            }
        }
    }

    private static void refuseAxialWithoutWalls(List<Located<Wall>> walls, List<Located<Row>> rows, ProblemLog log) {
        Set<String> there = walls.stream().map(wall -> wall.value().id()).collect(Collectors.toSet());
        if (there.containsAll(List.of("hub", "casing"))) {
            return;
        }
        for (Located<Row> row : rows) {
            if (row.value().shape().filter(Shape.Axial.class::isInstance).isPresent()) {
                log.error(
                        "no-walls",
                        row.from().placeOf("shape"),
                        "the row " + Wording.plain(row.value().id()) + " has an axial shape but the model lacks a wall",
                        "its sections lie between the walls \"hub\" and \"casing\"",
                        "add both to \"walls\"");
            }
        }
    }

    private static void warnOfRow(Located<Row> located, Set<String> viewed, ProblemLog log) {
        Row row = located.value();
        String subject = "the row " + Wording.plain(row.id());
        if (row.landmarks().isEmpty()) {
            log.warning(
                    "no-landmark",
                    located.from().place(),
                    subject + " has no landmark",
                    "a lost count can hardly be found again",
                    "name an airfoil that can be told from the others");
        }
        if (!viewed.contains(row.id())) {
            log.warning(
                    "no-view",
                    located.from().place(),
                    subject + " has no view",
                    "all of it is counted as not accessible",
                    "add a view of it");
        }
        if (row.shape().isPresent() && row.source().isEmpty()) {
            log.warning(
                    "no-source",
                    located.from().placeOf("shape"),
                    subject + " does not say where its shape comes from",
                    "others cannot tell how far to trust it",
                    "add \"source\"");
        }
    }

    private static void warnOfUnusedSpools(
            List<Located<Spool>> spools, List<Located<Wall>> walls, List<Located<Row>> rows, ProblemLog log) {
        Set<String> used = new HashSet<>();
        rows.forEach(row -> row.value().spool().ifPresent(used::add));
        walls.forEach(wall -> wall.value().spool().ifPresent(used::add));
        for (Located<Spool> spool : spools) {
            if (spool.from() != null && !used.contains(spool.value().id())) {
                log.warning(
                        "unused-spool",
                        spool.from().place(),
                        "no row turns with the spool "
                                + Wording.plain(spool.value().id()),
                        "turning it would show nothing",
                        "put a rotor on it or delete it");
            }
        }
    }

    private static void warnOfView(Located<View> located, Map<String, Row> rows, ProblemLog log) {
        View view = located.value();
        if (view.window().isEmpty() && view.stations().isEmpty()) {
            log.warning(
                    "blind-view",
                    located.from().place(),
                    "the view " + Wording.plain(view.id()) + " has neither a window nor a station",
                    "it sees nothing",
                    "add one of them");
        }
        Row row = rows.get(view.row());
        if (row != null && view.window().isPresent() && view.window().get().halfWidth() * 2 * row.count() > 360) {
            log.warning(
                    "wide-window",
                    located.from().placeOf("window"),
                    "the window of the view " + Wording.plain(view.id()) + " is wider than a pitch of the row "
                            + Wording.plain(row.id()),
                    "more than one airfoil is counted as seen at a time",
                    "make sure that all of it is seen well, or narrow it");
        }
    }
}
