package everyblade.verifier;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** An engine with stated windows and no errors, as a model file, and what somebody might type who inspects it. */
final class RandomShift {

    private static final int[] COUNTS = {1, 2, 5, 7, 11, 12, 19, 24, 28, 36, 40, 47, 60, 94, 100};

    private record Row(String id, boolean turns, int count, int sense, List<List<String>> kinds) {}

    private final SplittableRandom random;
    private final List<Row> rows = new ArrayList<>();
    private final int normal;
    private final StringBuilder views = new StringBuilder();
    private final List<Row> viewed = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();

    RandomShift(long seed) {
        random = new SplittableRandom(seed);
        normal = random.nextBoolean() ? 1 : -1;
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            row("row" + i);
        }
        type();
    }

    List<String> lines() {
        return lines;
    }

    String model() {
        StringBuilder json = new StringBuilder(
                        "{\"schema\":\"everyblade/engine-model/1\",\"id\":\"m\",\"name\":\"M\",\"spools\":[{\"id\":\"gas\",\"normal\":\"")
                .append(normal > 0 ? "cw" : "ccw")
                .append(
                        "\",\"pads\":[{\"id\":\"pad0\",\"ratio\":\"29/77\"},{\"id\":\"pad1\",\"ratio\":\"-17/52\"}]}],\"rows\":[");
        for (Row row : rows) {
            json.append(rows.indexOf(row) > 0 ? "," : "")
                    .append(String.format(
                            Locale.ROOT,
                            "{\"id\":\"%s\",\"kind\":\"%s\",\"count\":%d,\"numbering\":\"%s\",\"spanBands\":%d,\"sides\":%b,"
                                    + "\"chordBands\":%s}",
                            row.id,
                            row.turns ? "rotor" : "stator",
                            row.count,
                            row.sense > 0 ? "cw" : "ccw",
                            row.kinds.get(0).size() == 0 ? 1 : row.kinds.get(0).size(),
                            !row.kinds.get(1).isEmpty(),
                            quoted(row.kinds.get(2))));
        }
        return json.append("],\"views\":[").append(views).append("]}").toString();
    }

    private static String quoted(List<String> words) {
        return "["
                + String.join(
                        ",", words.stream().map(word -> "\"" + word + "\"").toList()) + "]";
    }

    private void row(String id) {
        int bands = 1 + random.nextInt(3);
        List<String> spans = bands == 1 ? List.of() : bands == 2 ? List.of("root", "tip") : List.of("s1", "s2", "s3");
        Row row = new Row(
                id,
                random.nextInt(4) > 0,
                COUNTS[random.nextInt(COUNTS.length)],
                random.nextBoolean() ? 1 : -1,
                List.of(
                        spans,
                        random.nextBoolean() ? List.of("pressure", "suction") : List.of(),
                        random.nextBoolean() ? List.of("leading", "middle", "trailing") : List.of()));
        rows.add(row);
        for (int i = 0; i < 2; i++) {
            double half = random.nextInt(3) == 0 ? 180.0 / row.count : 180 * random.nextDouble() / row.count;
            views.append(views.length() == 0 ? "" : ",")
                    .append(String.format(
                            Locale.ROOT,
                            "{\"id\":\"%s-%d\",\"row\":\"%s\",\"reference\":%d,\"travels\":%b,\"window\":{\"halfWidth\":%.5f,"
                                    + "\"shows\":%s}}",
                            id,
                            i,
                            id,
                            random.nextInt(360),
                            !row.turns,
                            half,
                            quoted(parts(row))));
            viewed.add(row);
        }
    }

    private List<String> parts(Row row) {
        List<String> parts = new ArrayList<>();
        for (List<String> kind : row.kinds) {
            if (!kind.isEmpty() && random.nextBoolean()) {
                parts.add(kind.get(random.nextInt(kind.size())));
            }
        }
        return parts.isEmpty() ? List.of("all") : parts;
    }

    /** Some of it will be refused, which the program says and the journal does not keep. */
    private void type() {
        int views = 2 + random.nextInt(5);
        for (int v = 0; v < views; v++) {
            int view = random.nextInt(viewed.size());
            Row row = viewed.get(view);
            lines.add("view " + row.id + "-" + view % 2);
            int airfoil = 1 + random.nextInt(row.count);
            if (lines.stream().noneMatch(line -> line.startsWith("datum " + row.id + " "))) {
                lines.add("datum " + row.id + " " + airfoil + (row.turns && random.nextBoolean() ? " at 40" : ""));
                int on = random.nextInt(row.count);
                if (row.turns) {
                    lines.add("turn on " + on + " blades");
                    lines.add("here " + (1 + Math.floorMod(airfoil - 1 - row.sense * normal * on, row.count)));
                }
            }
            IntStream.range(0, 1 + random.nextInt(6)).forEach(i -> step(row));
        }
    }

    private void step(Row row) {
        String sense = List.of("", "on ", "back ").get(random.nextInt(3));
        String moved =
                row.turns ? random.nextInt(3) > 0 ? "turn " : "skip " : random.nextInt(3) > 0 ? "draw " : "feed ";
        String number = String.format(Locale.ROOT, "%.2f", 100 * random.nextDouble());
        lines.add(
                switch (random.nextInt(10)) {
                    case 0 -> "watch " + String.join(random.nextBoolean() ? " " : ", ", parts(row));
                    case 1 -> "look";
                    case 2 -> moved + sense + "to " + random.nextInt(360);
                    case 3 -> "pad pad" + random.nextInt(2);
                    case 4 -> moved + sense + random.nextInt(9) + " blades";
                    case 5 -> row.turns ? moved + sense + "0,5 rev" : moved + "12";
                    case 6 -> row.turns ? moved + sense + "2 tool" : moved + "-30.5 deg";
                    case 7 ->
                        random.nextInt(3) == 0
                                ? "void " + (1 + random.nextInt(lines.size())) + " because it was wrong"
                                : "note x";
                    case 8 ->
                        "nick 1 "
                                + (row.kinds.get(0).isEmpty()
                                        ? "all"
                                        : row.kinds.get(0).get(0)) + " 0,8";
                    default -> moved + sense + number;
                });
    }
}
