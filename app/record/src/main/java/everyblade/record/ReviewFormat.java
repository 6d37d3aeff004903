package everyblade.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** How a line of a review reads, its hash aside: version 1, the first line and the lines of remarks. */
final class ReviewFormat {

    private static final String SCHEMA = "everyblade/review/1";
    private static final List<String> FIRST_KEYS = List.of("schema", "job", "hash");
    private static final List<String> REMARK_KEYS =
            List.of("n", "at", "by", "head", "entries", "what", "text", "row", "first", "last", "zone", "of", "hash");

    private ReviewFormat() {}

    /**
     * The first line.
     *
     * @param job hash of the first line of the journal that is reviewed
     */
    static String firstLine(String job) throws Unreadable {
        ObjectNode line = JobJson.object();
        line.put("schema", SCHEMA);
        line.put("job", job);
        return JobJson.text(line);
    }

    /** Of which job a first line says that it is. */
    static String readFirst(byte[] line) throws Unreadable {
        ObjectNode node = JobJson.object(line);
        Meaning.require(SCHEMA.equals(LineFormat.text(node, "schema")), "schema", SCHEMA);
        Meaning.requireKnown(node, FIRST_KEYS);
        return LineFormat.text(node, "job");
    }

    static String remarkLine(ReviewRemark remark) throws Unreadable {
        ObjectNode line = JobJson.object();
        line.put("n", remark.number());
        line.put("at", remark.at().toString());
        line.put("by", remark.by());
        line.put("head", remark.head());
        line.put("entries", remark.entries());
        line.put("what", remark.what().word());
        line.put("text", remark.text());
        remark.place()
                .ifPresent(place -> line.put("row", place.row())
                        .put("first", place.first())
                        .put("last", place.last())
                        .put("zone", place.zone()));
        remark.of().ifPresent(of -> line.put("of", of));
        return JobJson.text(line);
    }

    /** Reads the line of a remark, which must have this number. */
    static ReviewRemark readRemark(byte[] line, int number) throws Unreadable {
        ObjectNode node = JobJson.object(line);
        Meaning.requireKnown(node, REMARK_KEYS);
        Meaning.require(whole(node, "n") == number, "n", Integer.toString(number));
        String word = LineFormat.text(node, "what");
        Optional<What> what = Arrays.stream(What.values())
                .filter(one -> one.word().equals(word))
                .findFirst();
        Meaning.require(what.isPresent(), "what", LineFlaw.Sort.REMARK);
        return new ReviewRemark(
                number,
                LineFormat.time(node, "at"),
                LineFormat.text(node, "by"),
                LineFormat.text(node, "head"),
                whole(node, "entries"),
                what.orElseThrow(),
                LineFormat.text(node, "text"),
                node.has("row") ? Optional.of(place(node)) : Optional.empty(),
                node.has("of") ? OptionalInt.of(whole(node, "of")) : OptionalInt.empty());
    }

    private static ReviewedPlace place(ObjectNode node) throws Unreadable {
        return new ReviewedPlace(
                LineFormat.text(node, "row"), whole(node, "first"), whole(node, "last"), LineFormat.text(node, "zone"));
    }

    private static int whole(ObjectNode node, String key) throws Unreadable {
        Meaning.require(node.path(key).isInt() && node.get(key).intValue() >= 0, key, LineFlaw.Sort.WHOLE_NUMBER);
        return node.get(key).intValue();
    }
}
