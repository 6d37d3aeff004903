package everyblade.desktop.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.entry.Zoning;
import everyblade.core.move.Move;
import everyblade.core.move.Plan;
import everyblade.core.move.WatchWords;
import java.util.List;

/** A plan as {@code next --json} prints it. */
final class PlanJson {

    private PlanJson() {}

    static ObjectNode of(Plan plan) {
        ObjectNode json = JsonText.object();
        ArrayNode moves = json.putArray("moves");
        plan.moves().forEach(move -> moves.add(of(move)));
        json.put("turning", plan.turning());
        json.put("bound", plan.bound());
        json.put("proved", plan.proved());
        json.put("drawing", plan.drawing());
        json.put("left", plan.left());
        json.put("unsure", plan.unsure());
        ObjectNode unidentified = json.putObject("unidentified");
        plan.unidentified().forEach((row, cells) -> unidentified.put(row.id(), cells));
        return json;
    }

    /** Where nothing needs to be skipped, the reading at which watching begins is the present one. */
    private static ObjectNode of(Move move) {
        ObjectNode json = JsonText.object();
        json.put("view", move.view().id());
        move.station().ifPresent(station -> json.put("station", station));
        json.put(move.drawn() ? "feedTo" : "skipTo", move.from());
        json.put(move.drawn() ? "draw" : "turn", move.sweep());
        Zoning zoning = Zoning.of(move.row());
        WatchWords.of(zoning, move.watch()).forEach(json.putArray("watch")::add);
        json.put("row", move.row().id());
        ArrayNode closes = json.putArray("closes");
        for (Move.Closing closing : move.closes()) {
            ObjectNode one = closes.addObject();
            closing.airfoils().forEach(one.putArray("airfoils")::add);
            ArrayNode zones = one.putArray("zones");
            List<String> names = zoning.names();
            for (int zone = 0; zone < names.size(); zone++) {
                if (closing.zones().contains(zone)) {
                    zones.add(names.get(zone));
                }
            }
        }
        return json;
    }
}
