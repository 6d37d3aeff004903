package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.entry.Zoning;
import everyblade.core.gap.OutOfReach;
import everyblade.core.move.Outline;
import everyblade.core.move.Plan;
import everyblade.core.move.Ticked;
import everyblade.session.job.JobList;
import everyblade.session.job.Prepared;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** A plan before the first move, or the list of a job, as {@code plan --json} prints it; {@code turns} are whole turns of shafts. */
final class OutlineJson {

    private static final BigDecimal TURN = BigDecimal.valueOf(360);

    private OutlineJson() {}

    /** The list of a job: the same with how far each view and port is, and what is left by it. */
    static ObjectNode of(JobList list, Words words) {
        ObjectNode json = of(list.begun(), words);
        json.put("entries", list.job().fold().entries().size());
        List<Ticked.Visit> visits = list.ticked().visits();
        for (int i = 0; i < visits.size(); i++) {
            ObjectNode port = (ObjectNode) json.get("ports").get(i);
            port.put("done", visits.get(i).how() == Ticked.How.DONE);
            List<Ticked.Stop> stops = visits.get(i).stops();
            for (int j = 0; j < stops.size(); j++) {
                ObjectNode view = (ObjectNode) port.get("views").get(j);
                view.put("done", stops.get(j).how() == Ticked.How.DONE);
                view.put("cells", stops.get(j).cells());
                view.put("left", stops.get(j).left());
            }
        }
        ObjectNode left = json.putObject("left");
        left.put("views", list.ticked().views());
        left.put("minutes", PlanJson.thousandths(list.ticked().minutes()));
        left.put("beside", list.ticked().beside());
        return json;
    }

    static ObjectNode of(Prepared prepared, Words words) {
        Plan plan = prepared.plan();
        ObjectNode json = JsonText.object();
        json.put("model", prepared.model().id());
        ArrayNode ports = json.putArray("ports");
        for (Outline.Visit visit : Outline.of(plan).visits()) {
            ObjectNode port = ports.addObject();
            port.put("port", visit.port().orElse(null));
            ArrayNode views = port.putArray("views");
            visit.stops().forEach(stop -> views.add(of(stop)));
        }
        json.put("openings", plan.openings());
        json.put("turns", turns(plan.turning()));
        json.put("drawing", plan.drawing());
        json.put("minutes", PlanJson.thousandths(plan.minutes()));
        json.put("bound", PlanJson.thousandths(Math.min(plan.bound(), plan.minutes())));
        json.put("proved", plan.proved());
        json.set("least", PlanJson.of(plan.least()));
        ArrayNode outOfReach = json.putArray("outOfReach");
        prepared.outOfReach().forEach(out -> outOfReach.add(of(out, words)));
        return json;
    }

    private static ObjectNode of(Outline.Stop stop) {
        ObjectNode json = JsonText.object();
        json.put("view", stop.view().id());
        json.put("row", stop.row().id());
        stop.stations().forEach(json.putArray("stations")::add);
        json.put("turns", turns(stop.turning()));
        json.put("drawing", stop.drawing());
        stop.identified().forEach(json.putArray("identifies")::add);
        json.put("minutes", PlanJson.thousandths(stop.minutes()));
        return json;
    }

    private static ObjectNode of(OutOfReach out, Words words) {
        ObjectNode json = JsonText.object();
        json.put("row", out.row().id());
        ArrayNode zones = json.putArray("zones");
        List<String> names = Zoning.of(out.row()).names();
        for (int zone = 0; zone < names.size(); zone++) {
            if (out.zones().contains(zone)) {
                zones.add(names.get(zone));
            }
        }
        json.put("why", out.why().word());
        out.hindrance().ifPresent(hindrance -> json.put("mostly", words.say(hindrance)));
        json.put("cells", out.cells());
        return json;
    }

    private static BigDecimal turns(BigDecimal degrees) {
        BigDecimal turns = degrees.divide(TURN, 3, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return turns.scale() < 0 ? turns.setScale(0) : turns;
    }
}
