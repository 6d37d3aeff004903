package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Zoning;
import everyblade.core.move.LeastTurns;
import everyblade.core.move.Move;
import everyblade.core.move.Plan;
import everyblade.core.move.WatchWords;
import everyblade.core.turning.Situation;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** A plan as {@code next --json} prints it. */
final class PlanJson {

    private PlanJson() {}

    /** @param now where the plan goes on from */
    static ObjectNode of(Plan plan, Situation now) {
        ObjectNode json = JsonText.object();
        HeatFirst.of(plan, now).ifPresent(first -> {
            ObjectNode heat = json.putObject("heat");
            first.scopeTips().forEach(heat.putArray("scopeTips")::add);
            heat.put("hottest", first.hottest());
        });
        ArrayNode moves = json.putArray("moves");
        plan.moves().forEach(move -> moves.add(of(move)));
        json.put("turning", plan.turning());
        json.put("drawing", plan.drawing());
        json.put("openings", plan.openings());
        json.put("views", plan.views());
        json.put("minutes", thousandths(plan.minutes()));
        json.put("bound", thousandths(Math.min(plan.bound(), plan.minutes())));
        json.put("proved", plan.proved());
        json.set("least", of(plan.least()));
        json.put("left", plan.left());
        json.put("unsure", plan.unsure());
        return json;
    }

    /** Whole turns that it takes at least, whichever stations are taken. */
    static ObjectNode of(LeastTurns least) {
        ObjectNode json = JsonText.object();
        json.put("turns", thousandths(least.shaft()));
        json.put("drawnTurns", thousandths(least.scopeTip()));
        return json;
    }

    static BigDecimal thousandths(double number) {
        BigDecimal rounded =
                BigDecimal.valueOf(number).setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** Where nothing needs to be skipped, the reading at which watching begins is the present one, if anybody knows it. */
    private static ObjectNode of(Move move) {
        ObjectNode json = JsonText.object();
        json.put("view", move.view().id());
        json.put("port", move.view().port().orElse(null));
        json.put("station", move.station().orElse(null));
        json.put(move.drawn() ? "feedTo" : "skipTo", move.from().orElse(null));
        json.put(move.drawn() ? "draw" : "turn", move.sweep());
        Zoning zoning = Zoning.of(move.row());
        WatchWords.of(zoning, move.watch()).forEach(json.putArray("watch")::add);
        json.put("row", move.row().id());
        move.identifies().ifPresent(airfoil -> json.put("identifies", airfoil));
        ArrayNode entries = json.putArray("entries");
        move.entries().forEach(entry -> entries.add(EntryText.of(entry)));
        json.put("minutes", thousandths(move.minutes()));
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
