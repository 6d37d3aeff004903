package everyblade.json;

import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.View;
import everyblade.spi.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads views: by a declared window, or from stations. */
final class ViewReader {

    private static final Range HALF_WIDTH = Range.closed(0, 180);

    private ViewReader() {}

    static List<Located<View>> views(
            Fields model, References<Located<Row>> rows, References<ScopeTip> scopeTips, References<Port> ports) {
        Ids ids = new Ids("view", Set.of());
        List<Located<View>> views = new ArrayList<>();
        List<Fields> objects = model.objects(
                "views", "view", "id", "port", "row", "scopeTip", "reference", "aim", "window", "stations", "travels");
        for (Fields fields : objects) {
            long errors = fields.log().errorCount();
            String id = ids.required(fields);
            Optional<String> port = ports.ifStated(fields, "port");
            Optional<Located<Row>> row = rows.required(fields, "row");
            View view = new View(
                    id,
                    port,
                    row.map(there -> there.value().id()).orElse(""),
                    scopeTips.ifStated(fields, "scopeTip"),
                    fields.number("reference", 0, Range.ANGLE),
                    fields.number("aim", 0, Range.ANGLE_ERROR),
                    fields.objectIfStated("window", "window of " + fields.subject(), "halfWidth", "shows")
                            .map(window -> window(window, row)),
                    StationReader.stations(fields),
                    fields.flag("travels", false));
            views.add(new Located<>(view, fields.object(), fields.log().errorCount() == errors));
        }
        return views;
    }

    private static Window window(Fields window, Optional<Located<Row>> row) {
        double halfWidth = window.requiredNumber("halfWidth", HALF_WIDTH);
        return new Window(
                halfWidth,
                PartWords.read(window, "shows", row, "a window that shows nothing is of no use", "name what it shows"));
    }
}
