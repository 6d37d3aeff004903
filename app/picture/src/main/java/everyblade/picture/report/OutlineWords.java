package everyblade.picture.report;

import everyblade.core.entry.Zoning;
import everyblade.core.gap.GapText;
import everyblade.core.gap.OutOfReach;
import everyblade.core.move.Outline;
import everyblade.core.move.Plan;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A plan before the first move in words: the same on paper and on screen. */
public final class OutlineWords {

    private static final BigDecimal TURN = BigDecimal.valueOf(360);

    private OutlineWords() {}

    /** A port that is opened. */
    public static String port(EngineModel model, Outline.Visit visit) {
        Optional<Port> port = visit.port().flatMap(model::port);
        return port.map(known -> known.id() + ", " + known.name()
                        + (known.clock().isPresent()
                                ? ", at " + degrees(known.clock().getAsDouble()) + "°"
                                : ""))
                .orElse("through no port");
    }

    /** What is done at a view, without how long it takes. */
    public static String stop(Outline.Stop stop) {
        List<String> words = new ArrayList<>();
        if (!stop.stations().isEmpty()) {
            words.add(
                    (stop.stations().size() == 1 ? "station " : "stations ") + String.join(", then ", stop.stations()));
        }
        if (stop.turning().signum() > 0) {
            words.add(turns(stop.turning()) + " of the shaft");
        }
        if (stop.drawing().signum() > 0) {
            words.add("the scope tip " + turns(stop.drawing()) + " round");
        }
        stop.identified().stream().distinct().forEach(n -> words.add("from " + landmark(stop.row(), n)));
        return stop.row().name() + " (" + stop.row().id() + "): " + String.join("; ", words);
    }

    /** The views of a visit in one line, where a card has no room for a line each. */
    static String views(Outline.Visit visit) {
        return visit.stops().stream()
                .map(stop -> stop.view().id()
                        + (stop.stations().isEmpty() ? "" : " (" + String.join(", ", stop.stations()) + ")")
                        + stop.identified().stream()
                                .distinct()
                                .map(n -> " from " + n)
                                .collect(Collectors.joining()))
                .collect(Collectors.joining("; "));
    }

    private static String landmark(Row row, int airfoil) {
        return row.kind().airfoil() + " " + airfoil
                + row.landmarks().stream()
                        .filter(known -> known.airfoil() == airfoil)
                        .findFirst()
                        .map(known -> ", " + known.what())
                        .orElse(", any that you mark");
    }

    /** What all of it takes. */
    public static String effort(Plan plan) {
        List<String> words = new ArrayList<>(List.of(
                Telling.count(plan.openings(), "port"),
                Telling.count(plan.views(), "view"),
                turns(plan.turning()) + " of the shaft"));
        if (plan.drawing().signum() > 0) {
            words.add("the scope tip " + turns(plan.drawing()) + " round");
        }
        words.add(minutes(plan.minutes()) + " in all");
        return String.join(", ", words) + "; "
                + (plan.proved()
                        ? "no plan takes less"
                        : "no plan takes less than " + minutes(Math.min(plan.bound(), plan.minutes())));
    }

    /** What no move reaches of a row, and why. */
    public static String outOfReach(OutOfReach out) {
        return out.row().name() + " (" + out.row().id() + "), " + Telling.count(out.cells(), "cell") + ": "
                + GapText.zones(Zoning.of(out.row()), out.zones()) + ": "
                + out.why().words()
                + out.hindrance().map(mostly -> ", mostly " + mostly.words()).orElse("");
    }

    /** Rows of which something is out of reach, in few words. */
    static String outOfReach(List<OutOfReach> all) {
        return all.stream()
                .collect(Collectors.groupingBy(
                        out -> out.row().id(), LinkedHashMap::new, Collectors.summingInt(OutOfReach::cells)))
                .entrySet()
                .stream()
                .map(row -> row.getKey() + " " + row.getValue())
                .collect(Collectors.joining(", "));
    }

    /** Minutes, whole where they are many. */
    public static String minutes(double minutes) {
        return BigDecimal.valueOf(minutes).setScale(minutes < 10 ? 1 : 0, RoundingMode.HALF_EVEN) + " min";
    }

    private static String turns(BigDecimal degrees) {
        BigDecimal turns = degrees.divide(TURN, 1, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return turns.toPlainString() + (turns.compareTo(BigDecimal.ONE) == 0 ? " turn" : " turns");
    }

    private static String degrees(double degrees) {
        return BigDecimal.valueOf(degrees)
                .setScale(1, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
