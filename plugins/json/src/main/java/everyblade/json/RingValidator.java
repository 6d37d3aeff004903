package everyblade.json;

import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Judges rows that stand in one ring: they must go together blade for blade. */
record RingValidator(ProblemLog log) {

    private static final double SAME_PLACE = 1e-9;

    void judge(List<Located<Row>> rows) {
        Map<String, List<Located<Row>>> rings = new LinkedHashMap<>();
        for (Located<Row> row : rows) {
            row.value()
                    .ring()
                    .ifPresent(ring -> rings.computeIfAbsent(ring, name -> new ArrayList<>())
                            .add(row));
        }
        rings.values().forEach(this::ring);
    }

    private void ring(List<Located<Row>> ring) {
        Row first = ring.get(0).value();
        if (ring.size() == 1) {
            log.warning(
                    "ring-of-one",
                    ring.get(0).from().placeOf("ring"),
                    ModelValidator.named(first) + " stands alone in its ring",
                    "a ring says which rows stand between each other",
                    "name the same \"ring\" in another row, or delete the key");
        }
        for (int i = 1; i < ring.size(); i++) {
            Row row = ring.get(i).value();
            Place place = ring.get(i).from().placeOf("ring");
            if (row.count() != first.count()) {
                refuse("ring-counts-differ", place, row, first, "count", row.count() + " and " + first.count());
            }
            if (row.kind() != first.kind()) {
                refuse(
                        "ring-kinds-differ",
                        place,
                        row,
                        first,
                        "kind",
                        row.kind().word() + " and " + first.kind().word());
            }
            if (!row.spool().equals(first.spool())) {
                refuse(
                        "ring-spools-differ",
                        place,
                        row,
                        first,
                        "spool",
                        row.spool().orElse("none") + " and " + first.spool().orElse("none"));
            }
            for (Located<Row> other : ring.subList(0, i)) {
                warnOfSamePlace(ring.get(i), other.value());
            }
        }
    }

    private void refuse(String code, Place place, Row row, Row first, String what, String values) {
        log.error(
                code,
                place,
                ModelValidator.named(row) + " and " + ModelValidator.named(first) + " stand in one ring but differ in "
                        + what + ": " + Wording.plain(values),
                "rows of one ring stand blade for blade between each other and turn together",
                "make them equal or delete \"ring\"");
    }

    /** Where both have shapes, whether they cut each other says it better. */
    private void warnOfSamePlace(Located<Row> located, Row other) {
        Row row = located.value();
        boolean shaped = row.shape().isPresent() && other.shape().isPresent();
        double apart = row.ringOffset() - other.ringOffset();
        if (!shaped && Math.abs(apart - Math.rint(apart)) < SAME_PLACE) {
            log.warning(
                    "ring-mates-coincide",
                    located.from().placeOf("ringOffset"),
                    ModelValidator.named(row) + " stands at the clock angles of " + ModelValidator.named(other),
                    "two blades of a ring can hardly stand in one place",
                    "state a \"ringOffset\" such as 0.5");
        }
    }
}
