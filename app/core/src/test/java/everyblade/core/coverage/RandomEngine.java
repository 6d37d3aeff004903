package everyblade.core.coverage;

import everyblade.core.Engines;
import everyblade.core.coverage.Oracle.OracleRow;
import everyblade.core.coverage.Oracle.OracleView;
import everyblade.core.turning.Engine;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.hipparchus.fraction.BigFraction;

/**
 * A random engine with one spool, two pads {@code pad0} and {@code pad1}, up to three rows {@code row0} … and views of
 * them such as {@code row0-1}, said once for the program and once for the oracle.
 */
final class RandomEngine {

    private static final int[] COUNTS = {1, 2, 5, 7, 11, 12, 19, 24, 28, 36, 40, 47, 60, 94, 100};
    private static final Ratio[] RATIOS = {new Ratio(29, 77), new Ratio(-17, 52), new Ratio(3, 1)};

    private final SplittableRandom random;
    final List<OracleRow> rows = new ArrayList<>();
    final List<OracleView> views = new ArrayList<>();
    final Ratio[] ratios = new Ratio[2];
    final Direction normal;

    RandomEngine(SplittableRandom random) {
        this.random = random;
        normal = random.nextBoolean() ? Direction.CW : Direction.CCW;
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = RATIOS[random.nextInt(RATIOS.length)];
        }
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            addRow("row" + i);
        }
    }

    /** The engine for the program, its pads without errors. */
    Engine exact() {
        return built(0, false);
    }

    /** The same, each move at either pad good to ± so many degrees. */
    Engine withPlay(double play) {
        return built(play, false);
    }

    /** The same as it looks in a mirror that stands upright on the axis. */
    Engine mirrored() {
        return built(0, true);
    }

    private Engine built(double play, boolean inMirror) {
        Engines engines = new Engines().normal(inMirror ? normal.opposite() : normal);
        for (int i = 0; i < ratios.length; i++) {
            engines.pad("pad" + i, ratios[i], play, 0, 0);
        }
        for (OracleRow row : rows) {
            Direction numbering = row.sense() > 0 ? Direction.CW : Direction.CCW;
            engines.row(
                    row.id(),
                    row.turns() ? RowKind.ROTOR : RowKind.STATOR,
                    row.count(),
                    inMirror ? numbering.opposite() : numbering,
                    row.kinds().stream()
                            .filter(kind -> kind.contains("root") || kind.contains("s1"))
                            .mapToInt(List::size)
                            .findFirst()
                            .orElse(1),
                    row.divides("leading")
                            ? List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING)
                            : List.of(),
                    row.divides("pressure"),
                    0);
        }
        for (OracleView view : views) {
            double reference = view.reference().doubleValue();
            engines.view(
                    view.id(),
                    view.row().id(),
                    inMirror ? (360 - reference) % 360 : reference,
                    view.halfWidth().doubleValue(),
                    view.shows().toArray(String[]::new));
        }
        return engines.built();
    }

    private void addRow(String id) {
        boolean turns = random.nextInt(4) > 0;
        int count = COUNTS[random.nextInt(COUNTS.length)];
        int sense = random.nextBoolean() ? 1 : -1;
        int bands = 1 + random.nextInt(3);
        List<List<String>> kinds = new ArrayList<>();
        if (bands > 1) {
            kinds.add(bands == 2 ? List.of("root", "tip") : List.of("s1", "s2", "s3"));
        }
        if (random.nextBoolean()) {
            kinds.add(List.of("pressure", "suction"));
        }
        if (random.nextBoolean()) {
            kinds.add(List.of("leading", "middle", "trailing"));
        }
        OracleRow row = new OracleRow(id, count, sense, turns, kinds);
        rows.add(row);
        int howMany = 1 + random.nextInt(2);
        for (int i = 0; i < howMany; i++) {
            BigDecimal halfWidth = BigDecimal.valueOf(
                    (long)
                            switch (random.nextInt(5)) {
                                case 0 -> 0;
                                case 1 -> 180e5 / count;
                                case 2 -> 180e5 * random.nextDouble();
                                default -> 180e5 / count * random.nextDouble();
                            },
                    5);
            views.add(new OracleView(
                    id + "-" + i, row, new BigFraction(random.nextInt(360)), exact(halfWidth), parts(row)));
        }
    }

    /** Random words of how a row is divided, or {@code all}. */
    List<String> parts(OracleRow row) {
        if (row.kinds().isEmpty() || random.nextInt(3) == 0) {
            return List.of("all");
        }
        Set<String> parts = new LinkedHashSet<>();
        for (List<String> kind : row.kinds()) {
            if (random.nextBoolean()) {
                parts.add(kind.get(random.nextInt(kind.size())));
                parts.add(kind.get(random.nextInt(kind.size())));
            }
        }
        return parts.isEmpty() ? List.of("all") : List.copyOf(parts);
    }

    static BigFraction exact(BigDecimal decimal) {
        return new BigFraction(decimal.movePointRight(9).toBigIntegerExact(), BigInteger.TEN.pow(9));
    }
}
