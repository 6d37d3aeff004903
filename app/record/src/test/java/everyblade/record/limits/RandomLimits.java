package everyblade.record.limits;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Files of limits and findings made by chance; sizes lie on a coarse grid, so that limits are often met exactly. */
final class RandomLimits {

    static final List<String> ROWS = List.of("a", "b", "c");
    private static final List<String> KINDS = List.of("nick", "dent", "crack");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final SplittableRandom random;

    RandomLimits(SplittableRandom random) {
        this.random = random;
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** A grid of 0.05 mm, or of 0.002 in. */
    private BigDecimal size(boolean inches, int most) {
        return inches
                ? BigDecimal.valueOf(2L * random.nextInt(1, most), 3)
                : BigDecimal.valueOf(5L * random.nextInt(1, most), 2);
    }

    ObjectNode file() {
        ObjectNode file = JSON.createObjectNode();
        boolean inches = chance(0.3);
        file.put("schema", "everyblade/limits/1").put("name", "made by chance").put("notice", "Invented for tests.");
        file.put("unit", inches ? "in" : "mm");
        if (chance(0.5)) {
            file.put("guard", chance(0.5) ? "expanded" : "conformance");
        }
        if (chance(0.3)) {
            file.set("plusMinus", decimal(size(inches, 4)));
        }
        ArrayNode rules = file.putArray("rules");
        int count = random.nextInt(1, 6);
        for (int i = 0; i < count; i++) {
            rules.add(rule("rule " + i, inches));
        }
        return file;
    }

    private ObjectNode rule(String id, boolean inches) {
        ObjectNode rule = JSON.createObjectNode().put("id", id);
        String row = one(ROWS);
        if (chance(0.8)) {
            rule.putArray("rows").add(row);
        }
        if (chance(0.6)) {
            ArrayNode kinds = rule.putArray("kinds").add("nick");
            if (chance(0.5)) {
                kinds.add(one(KINDS.subList(1, 3)));
            }
        }
        if (chance(0.5)) {
            rule.putArray("zones").add(one(List.of("tip", "root", "leading", "pressure", "tip/suction")));
        }
        if (chance(0.6)) {
            rule.put("bothFaces", chance(0.3));
        }
        // Rows hang only on rows before them, so that there is no circle.
        if (rule.has("rows") && !row.equals("a") && chance(0.25)) {
            rule.putArray("onlyWhile").add(row.equals("b") ? "a" : one(List.of("a", "b")));
        }
        ArrayNode steps = rule.putArray("steps");
        int count = random.nextInt(0, 4);
        for (int i = 0; i < count; i++) {
            steps.add(step(i, inches));
        }
        return rule.put("beyond", "reject");
    }

    private ObjectNode step(int index, boolean inches) {
        ObjectNode step = JSON.createObjectNode();
        for (String dimension : List.of("length", "depth")) {
            if (chance(dimension.equals("length") ? 0.8 : 0.2)) {
                ObjectNode bounds = step.putObject(dimension);
                BigDecimal most = size(inches, 12).multiply(BigDecimal.valueOf(index + 1));
                bounds.set("most", decimal(most));
                if (chance(0.2)) {
                    bounds.set("least", decimal(size(inches, 3).min(most)));
                }
            }
        }
        for (String count : List.of("perAirfoil", "perRow", "airfoils", "neighbours")) {
            if (chance(0.2)) {
                step.put(count, random.nextInt(0, 4));
            }
        }
        if (step.isEmpty()) {
            step.put("noLimit", true);
        }
        return step.put("outcome", "step " + index);
    }

    private static JsonNode decimal(BigDecimal value) {
        return com.fasterxml.jackson.databind.node.DecimalNode.valueOf(value);
    }

    /** Entries: some looking, then findings. */
    List<String> entries() {
        List<String> lines = new ArrayList<>();
        for (String row : ROWS) {
            for (String side : List.of("pressure", "suction")) {
                if (chance(0.5)) {
                    lines.add("view v" + row);
                    lines.add("watch " + side);
                    lines.add("round 1");
                }
            }
        }
        int count = random.nextInt(1, 9);
        for (int i = 0; i < count; i++) {
            lines.add(finding());
        }
        return lines;
    }

    private String finding() {
        StringBuilder line = new StringBuilder(one(ROWS) + " " + one(KINDS) + " " + one(List.of(1, 1, 2, 2, 3, 5, 12))
                + " " + one(List.of("tpl", "rpl", "tip", "tip/pressure", "rst", "tip/suction/middle")));
        boolean inches = chance(0.3);
        boolean sized = false;
        for (String dimension : List.of("length", "depth")) {
            if (chance(dimension.equals("length") ? 0.9 : 0.4)) {
                line.append(' ')
                        .append(dimension)
                        .append(' ')
                        .append(size(inches, 30).toPlainString());
                sized = true;
            }
        }
        if (sized && chance(0.8)) {
            line.append(" ± ").append(chance(0.3) ? "0" : size(inches, 6).toPlainString());
        }
        return line.append(sized ? inches ? " in" : " mm" : "").toString();
    }
}
