package everyblade.json;

import everyblade.spi.MeridionalPoint;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Judges walls, and whether what needs them lies along them. */
record WallValidator(ModelValidator model) {

    private static final String HUB = "hub";
    private static final String CASING = "casing";
    /** Every piece of a curve is held against every other one, which of longer curves takes too long. */
    private static final int MOST_PIECES = 500;

    void judge() {
        model.walls().stream().filter(Located::sound).forEach(this::ofCurve);
        refuseAxialWithoutWalls();
        Optional<Located<Wall>> hub = model.wall(HUB);
        Optional<Located<Wall>> casing = model.wall(CASING);
        if (hub.isPresent() && casing.isPresent()) {
            refuseCrossing(hub.get(), casing.get());
            model.soundRows()
                    .forEach(row ->
                            warnOfEnds(row, hub.get().value(), casing.get().value()));
        }
        casing.ifPresent(this::refusePortsBesideIt);
    }

    private void ofCurve(Located<Wall> located) {
        List<MeridionalPoint> curve = located.value().curve();
        String named = "the wall " + Wording.plain(located.value().id());
        if (curve.stream().distinct().count() < 2) {
            model.log()
                    .error(
                            "curve-without-length",
                            located.from().placeOf("curve"),
                            "the curve of " + named + " stays in one point",
                            "no surface follows from it",
                            "give two points apart");
        } else if (Crossing.ofItself(curve, MOST_PIECES)) {
            model.log()
                    .warning(
                            "wall-crosses-itself",
                            located.from().placeOf("curve"),
                            "the curve of " + named + " crosses itself",
                            "a wall has one side that faces the air",
                            "look for a point out of order or with a wrong figure");
        }
    }

    private void refuseAxialWithoutWalls() {
        Set<String> there =
                model.walls().stream().map(wall -> wall.value().id()).collect(Collectors.toSet());
        if (there.containsAll(List.of(HUB, CASING))) {
            return;
        }
        for (Located<Row> row : model.rows()) {
            if (row.value().shape().filter(Shape.Axial.class::isInstance).isPresent()) {
                model.log()
                        .error(
                                "no-walls",
                                row.from().placeOf("shape"),
                                ModelValidator.named(row.value()) + " has an axial shape but the model lacks a wall",
                                "its sections lie between the walls \"hub\" and \"casing\"",
                                "add both to \"walls\"");
            }
        }
    }

    private void refuseCrossing(Located<Wall> hub, Located<Wall> casing) {
        if (Crossing.of(hub.value().curve(), casing.value().curve(), MOST_PIECES)) {
            model.log()
                    .error(
                            "walls-cross",
                            casing.from().placeOf("curve"),
                            "the walls \"hub\" and \"casing\" cross",
                            "there is no room for blades where they do",
                            "look for a point with a wrong figure");
        }
    }

    private void warnOfEnds(Located<Row> located, Wall hub, Wall casing) {
        Row row = located.value();
        if (row.shape().orElse(null) instanceof Shape.Axial axial) {
            double front = axial.sections().stream()
                    .mapToDouble(one -> Math.min(one.x(), end(one)))
                    .min()
                    .orElse(0);
            double rear = axial.sections().stream()
                    .mapToDouble(one -> Math.max(one.x(), end(one)))
                    .max()
                    .orElse(0);
            if (front < Math.max(least(hub), least(casing)) || rear > Math.min(most(hub), most(casing))) {
                model.log()
                        .warning(
                                "blade-beyond-walls",
                                located.from().placeOf("shape"),
                                ModelValidator.named(row) + " reaches beyond the ends of the walls",
                                "the radius there is taken to be that of the wall's end",
                                "lengthen \"hub\" and \"casing\", or correct the sections' \"x\"");
            }
        }
    }

    private static double end(Shape.Section section) {
        return section.x() + section.chord() * Math.cos(Math.toRadians(section.stagger()));
    }

    private void refusePortsBesideIt(Located<Wall> casing) {
        for (Located<Port> located : model.ports()) {
            Port port = located.value();
            boolean inCasing = port.kind() != Port.Kind.INLET && port.kind() != Port.Kind.PANEL;
            if (!located.sound() || !inCasing || port.x().isEmpty()) {
                continue;
            }
            double x = port.x().getAsDouble();
            if (x < least(casing.value()) || x > most(casing.value())) {
                model.log()
                        .error(
                                "port-outside-casing",
                                located.from().placeOf("x"),
                                "the port " + Wording.plain(port.id()) + " sits at x = " + x + " mm",
                                "the wall \"casing\" reaches from " + least(casing.value()) + " to "
                                        + most(casing.value()) + " mm",
                                "correct \"x\", lengthen the casing, or make it an inlet or a panel");
            }
        }
    }

    private static double least(Wall wall) {
        return wall.curve().stream().mapToDouble(MeridionalPoint::x).min().orElse(0);
    }

    private static double most(Wall wall) {
        return wall.curve().stream().mapToDouble(MeridionalPoint::x).max().orElse(0);
    }
}
