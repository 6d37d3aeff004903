package everyblade.json;

import everyblade.spi.Port;
import everyblade.spi.ScopeTip;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads what gets in: ends of borescopes, and ways in. */
final class AccessReader {

    private static final Range CONE = new Range(0, 180, true, "above 0 and below 180");
    private static final Range LOOK_ANGLE = Range.closed(0, 180);
    private static final Range PIXELS = Range.closed(1, 100_000);
    private static final Range TEMPERATURE = Range.closed(-273, 3000);

    private AccessReader() {}

    static List<ScopeTip> scopeTips(Fields model) {
        Ids ids = new Ids("scope tip", Set.of());
        List<ScopeTip> tips = new ArrayList<>();
        List<Fields> objects = model.objects(
                "scopeTips", "scope tip", "id", "cone", "lookAngle", "near", "far", "pixels", "diameter", "hottest");
        for (Fields fields : objects) {
            ScopeTip tip = new ScopeTip(
                    ids.required(fields),
                    fields.requiredNumber("cone", CONE),
                    fields.number("lookAngle", 0, LOOK_ANGLE),
                    fields.requiredNumber("near", Range.LENGTH),
                    fields.requiredNumber("far", Range.LENGTH),
                    fields.requiredWhole("pixels", PIXELS),
                    fields.requiredNumber("diameter", Range.SIZE),
                    fields.numberIfStated("hottest", TEMPERATURE));
            refuseFarBeforeNear(fields, tip);
            tips.add(tip);
        }
        return tips;
    }

    static List<Located<Port>> ports(Fields model) {
        Ids ids = new Ids("port", Set.of());
        List<Located<Port>> ports = new ArrayList<>();
        for (Fields fields : model.objects("ports", "port", "id", "name", "kind", "clock", "x", "through")) {
            String id = ids.required(fields);
            OptionalDouble clock = fields.numberIfStated("clock", Range.ANGLE);
            long errors = fields.log().errorCount();
            Port port = new Port(
                    id,
                    fields.text("name", id),
                    fields.word("kind", Port.Kind.PLUG, Port.Kind.values(), Port.Kind::word),
                    clock,
                    fields.numberIfStated("x", Range.AXIAL),
                    openings(fields));
            ports.add(new Located<>(port, fields.object(), fields.log().errorCount() == errors));
        }
        return ports;
    }

    private static List<Port.Opening> openings(Fields port) {
        List<Port.Opening> openings = new ArrayList<>();
        for (Fields fields : port.objects("through", "opening of " + port.subject(), "what", "diameter")) {
            openings.add(new Port.Opening(fields.requiredText("what"), fields.requiredNumber("diameter", Range.SIZE)));
        }
        return openings;
    }

    private static void refuseFarBeforeNear(Fields fields, ScopeTip tip) {
        boolean bothRead =
                fields.present("near").isPresent() && fields.present("far").isPresent();
        if (bothRead && !(tip.far() > tip.near())) {
            fields.log()
                    .error(
                            "far-before-near",
                            fields.place("far"),
                            "\"far\" of " + fields.subject() + " does not lie beyond \"near\"",
                            "the scope tip would see nothing",
                            "correct one of the two");
        }
    }
}
