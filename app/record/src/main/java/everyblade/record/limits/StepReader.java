package everyblade.record.limits;

import everyblade.core.entry.Entry.Interval;
import everyblade.core.finding.Bounds;
import everyblade.core.finding.Dimension;
import everyblade.core.finding.Length;
import everyblade.core.finding.Repeat;
import everyblade.core.finding.Step;
import everyblade.core.finding.Step.Counts;
import everyblade.json.Fields;
import everyblade.json.Range;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads one step of a rule.
 *
 * @param fields of the step
 * @param lengths of the file
 */
record StepReader(Fields fields, Lengths lengths) {

    private static final Range COUNT = Range.closed(0, 100_000);
    private static final Range REPEAT = Range.SIZE;

    Step step() {
        Map<Dimension, Bounds> sizes = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            bounds(dimension.word()).ifPresent(bounds -> sizes.put(dimension, bounds));
        }
        Counts counts = new Counts(count("perAirfoil"), count("perRow"), count("airfoils"), count("neighbours"));
        Optional<Length> apart = lengths.ifStated(fields, "apart");
        checkNoLimit(sizes.isEmpty() && counts.equals(Counts.ANY) && apart.isEmpty());
        return new Step(sizes, counts, apart, fields.requiredText("outcome"), again());
    }

    /** A step that takes everything must say so, lest a key that was forgotten should allow all. */
    private void checkNoLimit(boolean takesEverything) {
        boolean says = fields.flag("noLimit", false);
        if (takesEverything != says) {
            fields.log()
                    .error(
                            says ? "contradiction" : "missing-key",
                            fields.place("noLimit"),
                            fields.subject() + (says ? " has a limit and \"noLimit\"" : " has no limit"),
                            says ? "it cannot have both" : "it would take everything",
                            says ? "delete one of them" : "write \"noLimit\": true if that is meant, or the limit");
        }
    }

    private Optional<Bounds> bounds(String key) {
        Optional<Fields> ends = fields.objectIfStated(key, key + " of " + fields.subject(), "least", "most");
        if (ends.isEmpty()) {
            return Optional.empty();
        }
        Optional<Length> least = lengths.ifStated(ends.get(), "least");
        Optional<Length> most = lengths.ifStated(ends.get(), "most");
        if (least.isEmpty() && most.isEmpty()) {
            ends.get()
                    .log()
                    .error(
                            "missing-key",
                            ends.get().object().place(),
                            "\"" + key + "\" has neither \"least\" nor \"most\"",
                            "one of them is the limit",
                            "add it");
            return Optional.empty();
        }
        if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
            ends.get()
                    .log()
                    .error(
                            "wrong-order",
                            ends.get().object().place(),
                            "the \"least\" of \"" + key + "\" is above its \"most\"",
                            "no size could keep to it",
                            "exchange them");
            return Optional.empty();
        }
        return Optional.of(new Bounds(least, most));
    }

    private OptionalInt count(String key) {
        return fields.stated(key).isPresent() ? OptionalInt.of(fields.whole(key, 0, COUNT)) : OptionalInt.empty();
    }

    private Optional<Repeat> again() {
        Optional<Fields> again = fields.objectIfStated("again", "repeat of " + fields.subject(), "in", "unit");
        if (again.isEmpty()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number =
                again.get().required("in").flatMap(json -> Lengths.exact(again.get(), "in", json, REPEAT));
        Interval unit = again.get()
                .requiredWord(
                        "unit", Interval.values(), interval -> interval.name().toLowerCase(Locale.ROOT));
        return number.map(value -> new Repeat(value, unit));
    }
}
