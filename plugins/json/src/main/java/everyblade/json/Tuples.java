package everyblade.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads short arrays of numbers, such as points of a curve. */
final class Tuples {

    private Tuples() {}

    /** The tuples at a key that must be there; those with mistakes are left out, and the log has an error. */
    static List<double[]> required(Fields fields, String key, String form, Range... ranges) {
        if (fields.required(key).isEmpty()) {
            return List.of();
        }
        List<double[]> tuples = new ArrayList<>();
        for (Json element : fields.elements(key).orElse(List.of())) {
            tuple(fields, key, element, form, ranges).ifPresent(tuples::add);
        }
        return tuples;
    }

    /** One tuple, a number for each range; empty, and an error in the log, if it is none. */
    static Optional<double[]> tuple(Fields fields, String key, Json json, String form, Range... ranges) {
        if (!(json instanceof Json.Arr array)) {
            fields.wrongType(key, json, form);
            return Optional.empty();
        }
        if (array.elements().size() != ranges.length) {
            fields.log()
                    .error(
                            "wrong-length",
                            json.place(),
                            Wording.quoted(key) + " of " + fields.subject() + " has an array of "
                                    + array.elements().size(),
                            "it must be " + form,
                            "write " + ranges.length + " numbers");
            return Optional.empty();
        }
        double[] numbers = new double[ranges.length];
        for (int i = 0; i < ranges.length; i++) {
            numbers[i] = fields.number(key, array.elements().get(i), ranges[i]);
        }
        return Optional.of(numbers);
    }
}
