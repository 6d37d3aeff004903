package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.practice.account.Debrief.Trials;
import everyblade.practice.account.Outcome;
import everyblade.practice.progress.Discrimination;
import everyblade.practice.progress.HitMissCurve;
import everyblade.practice.progress.HitMissCurve.Point;
import everyblade.practice.progress.ShareFound;
import everyblade.session.drill.DrillRecord;
import everyblade.session.drill.DrillRecord.Told;
import everyblade.session.drill.DrillText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** What came of drills, as JSON. */
final class DrillJson {

    private static final int DIGITS = 4;

    private DrillJson() {}

    static String result(DrillRecord drill, Told told) {
        ObjectNode json = JsonText.object();
        json.put("drill", drill.drill().title());
        json.put("seed", told.truth().seed());
        ArrayNode damage = json.putArray("damage");
        for (Outcome outcome : told.debrief().outcomes()) {
            ObjectNode one = damage.addObject();
            one.put("kind", outcome.harm().kind().called().orElseThrow().word());
            one.put("row", outcome.harm().row());
            one.put("airfoil", outcome.harm().airfoil());
            outcome.harm().zones().forEach(one.putArray("zones")::add);
            one.put("size", number(outcome.harm().size()));
            one.put("secondsInSight", number(outcome.sighting().seconds()));
            one.put("secondsPoorly", number(outcome.sighting().poorly()));
            one.put("fate", outcome.fate().name().toLowerCase(Locale.ROOT).replace('_', ' '));
            outcome.call().ifPresent(call -> one.put("entry", call.entry()));
            outcome.search(told.track()).ifPresent(seconds -> one.put("searchSeconds", number(seconds)));
        }
        ArrayNode calls = json.putArray("falseCalls");
        told.debrief().falseCalls().forEach(call -> calls.add(call.entry()));
        ArrayNode rows = json.putArray("rows");
        for (String id : told.truth().recipe().rows()) {
            ObjectNode row = rows.addObject();
            row.put("row", id);
            row.put("seen", number(DrillText.seen(drill, told, id)));
            row.put("claimed", number(DrillText.claimed(told, id)));
        }
        json.put("seconds", number(told.track().seconds()));
        json.put("turningMean", number(told.seen().turning().mean()));
        json.put("turningFastest", number(told.seen().turning().fastest()));
        told.track().lost().forEach(json.putArray("tipLost")::add);
        trials(json, told.debrief().trials());
        return JsonText.of(json);
    }

    static String progress(List<Told> drills) {
        ObjectNode json = JsonText.object();
        List<Point> points = DrillText.points(drills);
        int found = (int) points.stream().filter(Point::found).count();
        json.put("drills", drills.size());
        json.put("inSight", points.size());
        json.put("found", found);
        if (!points.isEmpty()) {
            json.put("foundAtLeast", number(new ShareFound(found, points.size()).atLeast(0.95)));
        }
        HitMissCurve.of(points).ifPresent(curve -> {
            json.put("intercept", number(curve.intercept()));
            json.put("slope", number(curve.slope()));
            json.put("a90", number(curve.a90()));
            curve.a90Surely().ifPresent(surely -> json.put("a9095", number(surely)));
        });
        drills.stream()
                .map(told -> told.debrief().trials())
                .reduce(Trials::and)
                .ifPresent(trials -> trials(json, trials));
        return JsonText.of(json);
    }

    private static void trials(ObjectNode json, Trials trials) {
        ObjectNode node = json.putObject("trials");
        node.put("hits", trials.hits());
        node.put("misses", trials.misses());
        node.put("falseAlarms", trials.falseAlarms());
        node.put("rejections", trials.rejections());
        Discrimination.of(trials).ifPresent(told -> {
            node.put("sensitivity", number(told.sensitivity()));
            node.put("criterion", number(told.criterion()));
        });
    }

    private static BigDecimal number(double value) {
        return BigDecimal.valueOf(value).setScale(DIGITS, RoundingMode.HALF_EVEN);
    }
}
