package everyblade.json;

import everyblade.spi.Landmark;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Shape;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Warns of rows that can be counted only with difficulty, or that say less or more than has a meaning. */
record RowValidator(ModelValidator model) {

    void judge() {
        Set<String> viewed =
                model.views().stream().map(view -> view.value().row()).collect(Collectors.toSet());
        Map<String, String> names = new HashMap<>();
        for (Located<Row> row : model.rows()) {
            ofLandmarks(row);
            ofShape(row);
            if (!viewed.contains(row.value().id())) {
                warn(
                        "no-view",
                        row.from().place(),
                        ModelValidator.named(row.value()) + " has no view",
                        "all of it is counted as not accessible",
                        "add a view of it");
            }
            String same = names.putIfAbsent(
                    row.value().name().toLowerCase(Locale.ROOT), row.value().id());
            if (same != null && row.from().members().containsKey("name") && row.sound()) {
                warn(
                        "like-names",
                        row.from().placeOf("name"),
                        ModelValidator.named(row.value()) + " has the name of the row " + Wording.plain(same),
                        "people could not tell them apart in the report",
                        "give one of them another name");
            }
        }
    }

    private void ofLandmarks(Located<Row> located) {
        Row row = located.value();
        if (row.landmarks().isEmpty()) {
            warn(
                    "no-landmark",
                    located.from().place(),
                    ModelValidator.named(row) + " has no landmark",
                    "a lost count can hardly be found again",
                    "name an airfoil that can be told from the others");
        }
        Set<String> marks = new HashSet<>();
        for (int i = 0; located.sound() && i < row.landmarks().size(); i++) {
            Landmark landmark = row.landmarks().get(i);
            if (!marks.add(landmark.what().toLowerCase(Locale.ROOT))) {
                warn(
                        "like-landmarks",
                        located.from().placeAt("/landmarks/" + i + "/what"),
                        "two landmarks of " + ModelValidator.named(row) + " are told alike: "
                                + Wording.quoted(landmark.what()),
                        "a count started at the wrong one of them would be wrong",
                        "say what tells them apart");
            }
        }
    }

    private void ofShape(Located<Row> located) {
        Row row = located.value();
        if (row.shape().isPresent() && row.source().isEmpty()) {
            warn(
                    "no-source",
                    located.from().placeOf("shape"),
                    ModelValidator.named(row) + " does not say where its shape comes from",
                    "others cannot tell how far to trust it",
                    "add \"source\"");
        }
        boolean movable = row.kind() == RowKind.STATOR
                && row.shape().map(Shape.Axial.class::isInstance).orElse(true);
        if (located.sound() && !row.positions().isEmpty() && !movable) {
            warn(
                    "positions-without-effect",
                    located.from().placeOf("positions"),
                    ModelValidator.named(row) + " has positions but is no row of vanes with axial sections",
                    "a position adds to the stagger of such sections and to nothing else",
                    "delete the positions, or correct \"kind\" or \"shape\"");
        }
    }

    private void warn(String code, Place place, String what, String why, String mend) {
        model.log().warning(code, place, what, why, mend);
    }
}
