package everyblade.picture.report;

import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.Zoning;
import everyblade.core.gap.OutOfReach;
import everyblade.core.move.LeastTurns;
import everyblade.core.move.Outline;
import everyblade.core.move.Plan;
import everyblade.core.move.Ticked;
import everyblade.core.move.ToldBy;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A plan before the first move in words: the same on paper and on screen.
 *
 * @param words in which
 */
public record OutlineWords(Words words) {

    private static final BigDecimal TURN = BigDecimal.valueOf(360);

    String say(String key, Object... parts) {
        return words.say("report.plan." + key, parts);
    }

    /** A port that is opened. */
    public String port(EngineModel model, Outline.Visit visit) {
        return visit.port()
                .flatMap(model::port)
                .map(port -> port.clock().isPresent()
                        ? say(
                                "port.at",
                                port.id(),
                                port.name(),
                                degrees(port.clock().getAsDouble()))
                        : port.id() + ", " + port.name())
                .orElse(say("port.none"));
    }

    /** What is done at a view, without how long it takes. */
    public String stop(Outline.Stop stop) {
        List<String> told = new ArrayList<>();
        if (!stop.stations().isEmpty()) {
            told.add(say("stations", stop.stations().size(), String.join(say("then"), stop.stations())));
        }
        if (stop.turning().signum() > 0) {
            told.add(turning(stop.turning()));
        }
        if (stop.drawing().signum() > 0) {
            told.add(drawing(stop.drawing()));
        }
        stop.identified().stream().distinct().forEach(n -> told.add(landmark(stop.row(), n)));
        return Telling.row(stop.row()) + ": " + String.join("; ", told);
    }

    /** How far a port is. */
    public String how(Ticked.Visit visit) {
        return say("how.port", visit.how(), visit.left(), visit.stops().size());
    }

    /** How far a view is. */
    public String how(Ticked.Stop stop) {
        return say("how.view", stop.how(), stop.left());
    }

    /** What is left by a list. */
    public String left(Ticked ticked) {
        return say("left", ticked.views(), minutes(ticked.minutes()));
    }

    /** The views of a visit in one line, where a card has no room for a line each. */
    String views(Outline.Visit visit) {
        return visit.stops().stream().map(this::view).collect(Collectors.joining("; "));
    }

    /** The same of a list: where only a part of it was begun, which. */
    String views(Ticked.Visit visit) {
        return visit.how() != Ticked.How.BEGUN
                ? views(visit.planned())
                : visit.stops().stream()
                        .map(stop -> view(stop.planned()) + (stop.how() == Ticked.How.OPEN ? "" : " – " + how(stop)))
                        .collect(Collectors.joining("; "));
    }

    private String view(Outline.Stop stop) {
        return stop.view().id()
                + (stop.stations().isEmpty() ? "" : " (" + String.join(", ", stop.stations()) + ")")
                + stop.identified().stream()
                        .distinct()
                        .map(n -> " " + say("from", n))
                        .collect(Collectors.joining());
    }

    private String landmark(Row row, int airfoil) {
        return say("landmark", words.airfoil(row), airfoil, toldBy(row, airfoil).orElse(say("landmark.any")));
    }

    /** How an airfoil is told from the others; empty if any will do that is marked. */
    public Optional<String> toldBy(Row row, int airfoil) {
        return ToldBy.of(row, airfoil)
                .map(told -> told.apart() == 0
                        ? told.landmark().what()
                        : say(
                                "landmark.beside",
                                words.airfoil(row),
                                told.landmark().airfoil(),
                                told.landmark().what()));
    }

    /** What all of it takes. */
    public String effort(Plan plan) {
        List<String> told = new ArrayList<>(
                List.of(say("ports", plan.openings()), say("views", plan.views()), turning(plan.turning())));
        if (plan.drawing().signum() > 0) {
            told.add(drawing(plan.drawing()));
        }
        return say(
                "effort",
                String.join(", ", told),
                minutes(plan.minutes()),
                plan.proved(),
                minutes(plan.bound(), RoundingMode.FLOOR));
    }

    /** What must be turned and drawn whichever stations are taken; empty where that is no whole turn. */
    public Optional<String> least(LeastTurns least) {
        List<String> told = new ArrayList<>();
        if (least.shaft() >= 1) {
            told.add(turning(least(least.shaft())));
        }
        if (least.scopeTip() >= 1) {
            told.add(drawing(least(least.scopeTip())));
        }
        return told.isEmpty() ? Optional.empty() : Optional.of(say("least", String.join(", ", told)));
    }

    /** Degrees of so many turns, tenths of a turn rounded down. */
    private static BigDecimal least(double turns) {
        return BigDecimal.valueOf(turns).setScale(1, RoundingMode.FLOOR).multiply(TURN);
    }

    /** What no move reaches of a row, and why. */
    public String outOfReach(OutOfReach out) {
        String told = say(
                "outOfReach",
                Telling.row(out.row()),
                out.cells(),
                ZonePhrase.of(Zoning.of(out.row()), out.zones()),
                out.why());
        return out.hindrance().map(mostly -> say("mostly", told, mostly)).orElse(told);
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
    public String minutes(double minutes) {
        return minutes(minutes, RoundingMode.HALF_EVEN);
    }

    private String minutes(double minutes, RoundingMode rounding) {
        return words.plain(BigDecimal.valueOf(minutes).setScale(minutes < 10 ? 1 : 0, rounding)) + " min";
    }

    private String turning(BigDecimal degrees) {
        BigDecimal turns = turns(degrees);
        return say("turning", words.plain(turns), isOne(turns));
    }

    private String drawing(BigDecimal degrees) {
        BigDecimal turns = turns(degrees);
        return say("drawing", words.plain(turns), isOne(turns));
    }

    private static BigDecimal turns(BigDecimal degrees) {
        return degrees.divide(TURN, 1, RoundingMode.HALF_EVEN).stripTrailingZeros();
    }

    private static boolean isOne(BigDecimal turns) {
        return turns.compareTo(BigDecimal.ONE) == 0;
    }

    private String degrees(double degrees) {
        return words.plain(
                BigDecimal.valueOf(degrees).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros());
    }
}
