package everyblade.json;

import everyblade.spi.Shape;
import java.io.IOException;
import java.util.List;

/** Writes the members of a shape. */
final class ShapeWriter {

    private ShapeWriter() {}

    static void write(CanonicalJson json, Shape shape) throws IOException {
        if (shape instanceof Shape.Axial axial) {
            json.text("type", "axial");
            if (axial.clearance() != Shape.Axial.USUAL_CLEARANCE) {
                json.number("clearance", axial.clearance());
            }
            json.objects("sections", axial.sections(), section -> {
                json.number("span", section.span());
                json.number("chord", section.chord());
                json.number("stagger", section.stagger());
                json.number("camber", section.camber());
                json.number("thickness", section.thickness());
                json.number("x", section.x());
            });
        } else if (shape instanceof Shape.Radial radial) {
            json.text("type", "radial");
            json.curve("hub", radial.hub());
            json.curve("shroud", radial.shroud());
            json.object("wrap", () -> {
                wrap(json, "hub", radial.hubWrap());
                wrap(json, "shroud", radial.shroudWrap());
            });
            json.object("thickness", () -> {
                json.number("hub", radial.hubThickness());
                json.number("shroud", radial.shroudThickness());
            });
            json.number("splitterFrom", radial.splitterFrom());
        } else if (shape instanceof Shape.Liner liner) {
            json.text("type", "liner");
            json.curve("outer", liner.outer());
            json.curve("inner", liner.inner());
        } else if (shape instanceof Shape.Mesh mesh) {
            json.text("type", "mesh");
            json.text("file", mesh.file());
        }
    }

    private static void wrap(CanonicalJson json, String key, List<Shape.WrapPoint> wrap) throws IOException {
        json.pairs(key, wrap, Shape.WrapPoint::m, Shape.WrapPoint::angle);
    }
}
