package everyblade.core.entry;

import everyblade.fact.Fact;
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
     * @param meaning what it says, and in which unit
     * @param least smallest value
     * @param most greatest value
     * @param standard value unless given; empty if it is then not judged
     */
    public record Setting(String name, Meaning meaning, double least, double most, Optional<String> standard) {}

    /** What a setting says, and in which unit. */
    public enum Meaning implements Fact {
        CLEARANCE,
        DETAIL,
        EDGE,
        GRAZING,
        GRAZING_LEADING,
        GRAZING_MIDDLE,
        GRAZING_TRAILING,
        LEAST_VIEW,
        MINUTES_IDENTIFY,
        MINUTES_MOVE,
        MINUTES_PORT,
        MINUTES_STATION,
        MINUTES_UNWATCHED,
        MINUTES_VIEW,
        MINUTES_WATCHED,
        PIXELS,
        REACH,
        SEEN
    }

    /** Every setting there is. */
    public static final List<Setting> ALL = List.of(
            new Setting("clearance", Meaning.CLEARANCE, 0, 100, Optional.of("2")),
            new Setting("detail", Meaning.DETAIL, 0.001, 100, Optional.empty()),
            new Setting("edge", Meaning.EDGE, 0, 1, Optional.of("0.95")),
            new Setting("grazing", Meaning.GRAZING, 0, 89, Optional.of("30")),
            new Setting("grazing-leading", Meaning.GRAZING_LEADING, 0, 89, Optional.of("30")),
            new Setting("grazing-middle", Meaning.GRAZING_MIDDLE, 0, 89, Optional.of("30")),
            new Setting("grazing-trailing", Meaning.GRAZING_TRAILING, 0, 89, Optional.of("30")),
            new Setting("least-view", Meaning.LEAST_VIEW, 0.001, 3600, Optional.empty()),
            new Setting("minutes-identify", Meaning.MINUTES_IDENTIFY, 0, 60, Optional.of("0.5")),
            new Setting("minutes-move", Meaning.MINUTES_MOVE, 0, 60, Optional.of("0.25")),
            new Setting("minutes-port", Meaning.MINUTES_PORT, 0, 600, Optional.of("8")),
            new Setting("minutes-station", Meaning.MINUTES_STATION, 0, 60, Optional.of("0.5")),
            new Setting("minutes-unwatched", Meaning.MINUTES_UNWATCHED, 0, 60, Optional.of("1")),
            new Setting("minutes-view", Meaning.MINUTES_VIEW, 0, 60, Optional.of("2")),
            new Setting("minutes-watched", Meaning.MINUTES_WATCHED, 0, 60, Optional.of("4")),
            new Setting("pixels", Meaning.PIXELS, 1, 100, Optional.of("3")),
            new Setting("reach", Meaning.REACH, 0, 1, Optional.of("0.05")),
            new Setting("seen", Meaning.SEEN, 0.01, 1, Optional.of("0.95")));

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
     * @throws UnfitSetting if one is unknown or out of range
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
                throw new UnfitSetting(new SettingProblem.Unknown(
                        name, ALL.stream().map(Setting::name).toList()));
            }
        }
        return new Settings(values);
    }

    private static BigDecimal inRange(Setting setting, BigDecimal value) {
        if (value.compareTo(BigDecimal.valueOf(setting.least())) < 0
                || value.compareTo(BigDecimal.valueOf(setting.most())) > 0) {
            throw new UnfitSetting(new SettingProblem.OutOfRange(
                    setting.name(),
                    setting.meaning(),
                    plain(setting.least()),
                    plain(setting.most()),
                    value.toPlainString()));
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
