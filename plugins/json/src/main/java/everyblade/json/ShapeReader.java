package everyblade.json;

import everyblade.spi.MeridionalPoint;
import everyblade.spi.Shape;
import everyblade.spi.Spool;
import everyblade.spi.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Reads walls and the surfaces of airfoils and liners. */
final class ShapeReader {

    private static final String[] TYPES = {"axial", "radial", "liner", "mesh"};
    private static final Range SPLITTER = new Range(0, 1, true, "above 0 and below 1");
    private static final Range BEND = new Range(-180, 180, true, "above -180 and below 180");
    private static final Range THICKNESS = new Range(0, 1, true, "above 0 and below 1");

    private ShapeReader() {}

    static List<Located<Wall>> walls(Fields model, References<Spool> spools) {
        Ids ids = new Ids("wall", Set.of());
        List<Located<Wall>> walls = new ArrayList<>();
        for (Fields fields : model.objects("walls", "wall", "id", "spool", "curve")) {
            long errors = fields.log().errorCount();
            Wall wall = new Wall(ids.required(fields), spools.ifStated(fields, "spool"), curve(fields, "curve"));
            walls.add(new Located<>(wall, fields.object(), fields.log().errorCount() == errors));
        }
        return walls;
    }

    static Optional<Shape> shape(Fields row) {
        return row.stated("shape").flatMap(json -> {
            String type = json instanceof Json.Obj object ? object.textOf("type") : "";
            return row.object("shape", json, keysOf(type)).flatMap(ShapeReader::ofType);
        });
    }

    private static String[] keysOf(String type) {
        return switch (type) {
            case "axial" -> new String[] {"type", "clearance", "sections"};
            case "radial" -> new String[] {"type", "hub", "shroud", "wrap", "thickness", "splitterFrom"};
            case "liner" -> new String[] {"type", "outer", "inner"};
            case "mesh" -> new String[] {"type", "file"};
            default ->
                new String[] {
                    "type",
                    "clearance",
                    "sections",
                    "hub",
                    "shroud",
                    "wrap",
                    "thickness",
                    "splitterFrom",
                    "outer",
                    "inner",
                    "file"
                };
        };
    }

    private static Optional<Shape> ofType(Fields shape) {
        shape.requiredWord("type", TYPES, word -> word);
        return Optional.ofNullable(
                switch (shape.object().textOf("type")) {
                    case "axial" -> axial(shape);
                    case "radial" -> radial(shape);
                    case "liner" -> new Shape.Liner(curve(shape, "outer"), curve(shape, "inner"));
                    case "mesh" -> new Shape.Mesh(file(shape));
                    default -> null;
                });
    }

    private static Shape axial(Fields shape) {
        shape.required("sections");
        List<Shape.Section> sections = new ArrayList<>();
        List<Fields> objects =
                shape.objects("sections", "section", "span", "chord", "stagger", "camber", "thickness", "x");
        for (Fields fields : objects) {
            sections.add(new Shape.Section(
                    fields.requiredNumber("span", Range.SHARE),
                    fields.requiredNumber("chord", Range.SIZE),
                    fields.requiredNumber("stagger", BEND),
                    fields.requiredNumber("camber", BEND),
                    fields.requiredNumber("thickness", THICKNESS),
                    fields.requiredNumber("x", Range.AXIAL)));
        }
        refuseFewerThanTwo(shape, "sections", sections);
        refuseFalling(shape, "sections-out-of-order", "sections", "span", sections, Shape.Section::span);
        return new Shape.Axial(sections, shape.number("clearance", Shape.Axial.USUAL_CLEARANCE, Range.LENGTH));
    }

    private static Shape radial(Fields shape) {
        List<MeridionalPoint> hub = curve(shape, "hub");
        List<MeridionalPoint> shroud = curve(shape, "shroud");
        Optional<Fields> wrap = shape.requiredObject("wrap", "wrap", "hub", "shroud");
        Optional<Fields> thickness = shape.requiredObject("thickness", "thickness", "hub", "shroud");
        return new Shape.Radial(
                hub,
                shroud,
                wrap.map(fields -> wrap(fields, "hub")).orElse(List.of()),
                wrap.map(fields -> wrap(fields, "shroud")).orElse(List.of()),
                thickness
                        .map(fields -> fields.requiredNumber("hub", Range.SIZE))
                        .orElse(1.0),
                thickness
                        .map(fields -> fields.requiredNumber("shroud", Range.SIZE))
                        .orElse(1.0),
                shape.numberIfStated("splitterFrom", SPLITTER));
    }

    private static List<MeridionalPoint> curve(Fields fields, String key) {
        List<MeridionalPoint> curve = Tuples.required(fields, key, "[x, r]", Range.AXIAL, Range.LENGTH).stream()
                .map(point -> new MeridionalPoint(point[0], point[1]))
                .toList();
        refuseFewerThanTwo(fields, key, curve);
        return curve;
    }

    private static List<Shape.WrapPoint> wrap(Fields fields, String key) {
        List<Shape.WrapPoint> wrap = Tuples.required(fields, key, "[m, deg]", Range.SHARE, Range.ANGLE).stream()
                .map(point -> new Shape.WrapPoint(point[0], point[1]))
                .toList();
        refuseFewerThanTwo(fields, key, wrap);
        refuseFalling(fields, "wrap-out-of-order", key, "m", wrap, Shape.WrapPoint::m);
        return wrap;
    }

    private static String file(Fields shape) {
        String file = shape.requiredText("file");
        boolean inside = !file.startsWith("/")
                && !file.contains("\\")
                && !file.contains(":")
                && !List.of(file.split("/", -1)).contains("..");
        if (!inside) {
            shape.log()
                    .error(
                            "file-outside-folder",
                            shape.place("file"),
                            "the mesh file is " + Wording.quoted(file),
                            "it must lie in the folder of the model",
                            "write its path from there with forward slashes");
        }
        return file;
    }

    private static void refuseFewerThanTwo(Fields fields, String key, List<?> read) {
        boolean asArray = fields.present(key).filter(Json.Arr.class::isInstance).isPresent();
        if (asArray && read.size() < 2) {
            fields.log()
                    .error(
                            "too-few",
                            fields.place(key),
                            Wording.quoted(key) + " of " + fields.subject() + " has fewer than two entries",
                            "a surface is spanned between two at least",
                            "add what is missing");
        }
    }

    private static <T> void refuseFalling(
            Fields fields, String code, String key, String by, List<T> read, ToDoubleFunction<T> value) {
        for (int i = 1; i < read.size(); i++) {
            if (!(value.applyAsDouble(read.get(i)) > value.applyAsDouble(read.get(i - 1)))) {
                fields.log()
                        .error(
                                code,
                                fields.place(key),
                                "entry " + (i + 1) + " of " + Wording.quoted(key) + " of " + fields.subject()
                                        + " does not lie beyond the one before",
                                by + " must rise from entry to entry",
                                "put them in order");
                return;
            }
        }
    }
}
