package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a job counts as seen and what its steps take, fixed when it starts: every setting by name, defaults filled in,
 * each within its range.
 *
 * @param values by name; settings without a default are absent unless given
 */
public record Settings(SortedMap<String, BigDecimal> values) {

    /**
     * One setting.
     *
     * @param name as typed and kept
     * @param unit for people
     * @param least smallest value
     * @param most greatest value
     * @param standard value unless given; empty if it is then not judged
     */
    public record Setting(String name, String unit, double least, double most, Optional<String> standard) {}

    /** Every setting there is. */
    public static final List<Setting> ALL = List.of(
            new Setting("clearance", "mm from the scope tip to what turns, at least", 0, 100, Optional.of("2")),
            new Setting("detail", "mm, the finest detail that must show", 0.001, 100, Optional.empty()),
            new Setting("edge", "share of an edge's outermost strip that must be seen too", 0, 1, Optional.of("0.95")),
            new Setting("grazing", "degrees between line of sight and surface, at least", 0, 89, Optional.of("30")),
            new Setting("grazing-leading", "the same at leading edges", 0, 89, Optional.of("30")),
            new Setting("grazing-middle", "the same between the edges", 0, 89, Optional.of("30")),
            new Setting("grazing-trailing", "the same at trailing edges", 0, 89, Optional.of("30")),
            new Setting("least-view", "seconds in view, at least", 0.001, 3600, Optional.empty()),
            new Setting(
                    "minutes-identify", "minutes to bring a known airfoil to the reference", 0, 60, Optional.of("0.5")),
            new Setting("minutes-move", "minutes to begin and end a move", 0, 60, Optional.of("0.25")),
            new Setting("minutes-port", "minutes to open a port and shut it again", 0, 600, Optional.of("8")),
            new Setting("minutes-station", "minutes to reach another station of a view", 0, 60, Optional.of("0.5")),
            new Setting("minutes-unwatched", "minutes for an unwatched turn", 0, 60, Optional.of("1")),
            new Setting("minutes-view", "minutes to reach another view", 0, 60, Optional.of("2")),
            new Setting("minutes-watched", "minutes for a watched turn", 0, 60, Optional.of("4")),
            new Setting("pixels", "picture points across a detail, at least", 1, 100, Optional.of("3")),
            new Setting("reach", "share of a cell that must be within reach", 0, 1, Optional.of("0.05")),
            new Setting("seen", "share of a cell that must be seen", 0.01, 1, Optional.of("0.95")));

    /** The finest detail, mm, that a new job asks for unless it says otherwise: without one no view is too coarse. */
    public static final BigDecimal DETAIL = new BigDecimal("0.8");

    /** What holds unless a job says otherwise. */
    public static final Settings USUAL = of(Map.of());

    /** What a new job is judged by unless it says otherwise. */
    public static final Settings PROPOSED = of(Map.of("detail", DETAIL));

    public Settings {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    /**
     * The settings of these values; a common {@code grazing} stands for the bands that are not given.
     *
     * @throws IllegalArgumentException with one line for the person who gave them, if one is unknown or out of range
     */
    public static Settings of(Map<String, BigDecimal> given) {
        TreeMap<String, BigDecimal> values = new TreeMap<>();
        for (Setting setting : ALL) {
            Optional<BigDecimal> fallback = setting.name().startsWith("grazing-")
                    ? Optional.ofNullable(given.get("grazing"))
                    : Optional.empty();
            Optional.ofNullable(given.get(setting.name()))
                    .or(() -> fallback)
                    .or(() -> setting.standard().map(BigDecimal::new))
                    .ifPresent(value -> values.put(setting.name(), inRange(setting, value)));
        }
        for (String name : given.keySet()) {
            if (ALL.stream().noneMatch(setting -> setting.name().equals(name))) {
                throw new IllegalArgumentException("there is no setting " + name + "; there are "
                        + String.join(", ", ALL.stream().map(Setting::name).toList()));
            }
        }
        return new Settings(values);
    }

    private static BigDecimal inRange(Setting setting, BigDecimal value) {
        if (value.compareTo(BigDecimal.valueOf(setting.least())) < 0
                || value.compareTo(BigDecimal.valueOf(setting.most())) > 0) {
            throw new IllegalArgumentException("setting " + setting.name() + " (" + setting.unit() + ") goes from "
                    + plain(setting.least()) + " to " + plain(setting.most()) + ", not " + value.toPlainString());
        }
        return value;
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** The value of a setting; empty if it is not judged. */
    public OptionalDouble number(String name) {
        BigDecimal value = values.get(name);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value.doubleValue());
    }

    /** Seconds for which a cell must be in view, where the job asks for it. */
    public OptionalDouble leastView() {
        return number("least-view");
    }
}
