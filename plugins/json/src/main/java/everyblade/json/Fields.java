package everyblade.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Takes one object of a file apart: every key that is asked for comes back as a value that fits its type, or
 * the log has an error and a harmless stand-in comes back, so that reading goes on and finds the next mistake.
 */
public final class Fields {

    private static final int LONGEST_TEXT = 2000;
    private static final Pattern NUMBER = Pattern.compile("\\s*[+-]?[0-9]{1,20}(?:[.,][0-9]{1,20})?\\s*");

    private final Json.Obj object;
    private final String subject;
    private final ProblemLog log;

    /** Keys that others were most likely meant to be; those are told, so that these are not missing as well. */
    private final Set<String> mistyped = new HashSet<>();

    /**
     * @param kind what the object is, for messages, such as "row"
     * @param known every key it may have
     */
    public Fields(Json.Obj object, String kind, List<String> known, ProblemLog log) {
        this.object = object;
        this.log = log;
        String id = object.textOf("id");
        this.subject = id.isEmpty() ? "the " + kind : "the " + kind + " " + Wording.plain(id);
        object.members().forEach((key, member) -> {
            if (!known.contains(key)) {
                log.unknown(
                        "unknown-key",
                        member.key(),
                        subject + " has the key " + Wording.quoted(key),
                        "there is no such key here",
                        key,
                        known,
                        "delete it");
                Wording.nearest(key, known).ifPresent(mistyped::add);
            }
        });
    }

    public ProblemLog log() {
        return log;
    }

    public Json.Obj object() {
        return object;
    }

    /** The object for messages, such as "the row c1". */
    public String subject() {
        return subject;
    }

    /** Where the key's value stands, or the object if it has none. */
    public Place place(String key) {
        Json.Member member = object.members().get(key);
        return member == null ? object.place() : member.value().place();
    }

    /** The value, if the key is there and not null; for keys where null means the same as nothing. */
    public Optional<Json> stated(String key) {
        return present(key).filter(json -> !(json instanceof Json.Nil));
    }

    /** The value, if the key is there. */
    Optional<Json> present(String key) {
        return Optional.ofNullable(object.members().get(key)).map(Json.Member::value);
    }

    /** The value; an error if the key is not there. */
    public Optional<Json> required(String key) {
        Optional<Json> json = present(key);
        if (json.isEmpty() && !mistyped.contains(key)) {
            log.error(
                    "missing-key",
                    object.place(),
                    subject + " has no key " + Wording.quoted(key),
                    "it is needed",
                    "add it");
        }
        return json;
    }

    public String requiredText(String key) {
        return required(key).map(json -> text(key, json)).orElse("");
    }

    public String text(String key, String otherwise) {
        return present(key).map(json -> text(key, json)).orElse(otherwise);
    }

    public Optional<String> textIfStated(String key) {
        return stated(key).map(json -> text(key, json));
    }

    double requiredNumber(String key, Range range) {
        return required(key).map(json -> number(key, json, range)).orElse(0.0);
    }

    public double number(String key, double otherwise, Range range) {
        return present(key).map(json -> number(key, json, range)).orElse(otherwise);
    }

    OptionalDouble numberIfStated(String key, Range range) {
        Optional<Json> json = stated(key);
        return json.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(number(key, json.get(), range));
    }

    /** A whole number; the stand-in is the greatest that it may be. */
    int requiredWhole(String key, Range range) {
        return required(key).map(json -> whole(key, json, range)).orElse((int) range.most());
    }

    public int whole(String key, int otherwise, Range range) {
        return present(key).map(json -> whole(key, json, range)).orElse(otherwise);
    }

    public boolean flag(String key, boolean otherwise) {
        Optional<Json> json = present(key);
        if (json.isEmpty()) {
            return otherwise;
        }
        if (json.get() instanceof Json.Flag flag) {
            return flag.value();
        }
        wrongType(key, json.get(), "true or false");
        return otherwise;
    }

    /** One of a few words; the stand-in is the first of them. */
    public <E> E requiredWord(String key, E[] words, Function<E, String> word) {
        return required(key)
                .flatMap(json -> word(key, json, List.of(words), word))
                .orElse(words[0]);
    }

    public <E> E word(String key, E otherwise, E[] words, Function<E, String> word) {
        return present(key)
                .flatMap(json -> word(key, json, List.of(words), word))
                .orElse(otherwise);
    }

    <E> Optional<E> wordIfStated(String key, E[] words, Function<E, String> word) {
        return stated(key).flatMap(json -> word(key, json, List.of(words), word));
    }

    /** A list of different words, in the order of the file; empty if the key is not there or a word is wrong. */
    public <E> Optional<List<E>> words(String key, List<E> words, Function<E, String> word) {
        return elements(key).flatMap(elements -> {
            Set<E> read = new LinkedHashSet<>();
            int known = 0;
            for (Json element : elements) {
                Optional<E> one = word(key, element, words, word);
                known += one.isPresent() ? 1 : 0;
                if (one.isPresent() && !read.add(one.get())) {
                    log.error(
                            "repeated-word",
                            element.place(),
                            wordsOf(key) + " names " + word.apply(one.get()) + " twice",
                            "once is enough",
                            "delete one of them");
                }
            }
            return known == elements.size() ? Optional.of(List.copyOf(read)) : Optional.empty();
        });
    }

    /** The elements of an array; empty if the key is not there. */
    public Optional<List<Json>> elements(String key) {
        return present(key).map(json -> {
            if (json instanceof Json.Arr array) {
                return array.elements();
            }
            wrongType(key, json, "an array");
            return List.<Json>of();
        });
    }

    /** An error if the array at a key is there and has no element. */
    public void refuseEmpty(String key, String why, String mend) {
        if (present(key).orElse(null) instanceof Json.Arr array
                && array.elements().isEmpty()) {
            log.error("empty-list", array.place(), wordsOf(key) + " is empty", why, mend);
        }
    }

    /** The objects of an array, each with its keys checked; what is no object is an error and left out. */
    public List<Fields> objects(String key, String kind, String... known) {
        List<Fields> objects = new ArrayList<>();
        for (Json element : elements(key).orElse(List.of())) {
            object(kind, element, known).ifPresent(objects::add);
        }
        return objects;
    }

    /** The object at a key, if it is there and not null. */
    public Optional<Fields> objectIfStated(String key, String kind, String... known) {
        return stated(key).flatMap(json -> object(kind, json, known));
    }

    /** The object at a key that must be there. */
    Optional<Fields> requiredObject(String key, String kind, String... known) {
        return required(key).flatMap(json -> object(kind, json, known));
    }

    public Optional<Fields> object(String kind, Json json, String... known) {
        if (json instanceof Json.Obj member) {
            return Optional.of(new Fields(member, kind, Arrays.asList(known), log));
        }
        wrongType(kind, json, "an object");
        return Optional.empty();
    }

    public String text(String key, Json json) {
        if (!(json instanceof Json.Text text)) {
            wrongType(key, json, "a text");
            return "";
        }
        String value = text.value();
        if (value.isBlank()) {
            log.error(
                    "empty-text",
                    json.place(),
                    wordsOf(key) + " is empty",
                    "people read it where this is meant",
                    "write a few words, or delete the key if it may be left out");
        } else if (value.length() > LONGEST_TEXT) {
            log.error(
                    "long-text",
                    json.place(),
                    wordsOf(key) + " has " + value.length() + " characters",
                    "it must be one line of at most " + LONGEST_TEXT,
                    "shorten it");
        } else if (!value.codePoints().allMatch(Wording::isPrintable)) {
            log.error(
                    "unprintable-text",
                    json.place(),
                    wordsOf(key) + " is " + Wording.quoted(value),
                    "it must be one line of characters that can be shown",
                    "take out line breaks and control characters");
        }
        return value;
    }

    public double number(String key, Json json, Range range) {
        if (!(json instanceof Json.Num number)) {
            refuseNoNumber(key, json);
            return 0;
        }
        double value = number.value();
        if (!range.contains(value)) {
            log.error(
                    "out-of-range",
                    json.place(),
                    wordsOf(key) + " is " + Wording.plain(number.digits()),
                    "it must be " + range.words(),
                    "correct the number");
        }
        return value;
    }

    private void refuseNoNumber(String key, Json json) {
        if (json instanceof Json.Text text && NUMBER.matcher(text.value()).matches()) {
            log.error(
                    "quoted-number",
                    json.place(),
                    wordsOf(key) + " is the number " + Wording.plain(text.value()) + " in quotes",
                    "quotes make a text of it",
                    "take the quotes away and write a decimal point, not a comma");
        } else {
            wrongType(key, json, "a number");
        }
    }

    private int whole(String key, Json json, Range range) {
        double value = number(key, json, range);
        if (json instanceof Json.Num number && range.contains(value) && value != Math.rint(value)) {
            log.error(
                    "not-whole",
                    json.place(),
                    wordsOf(key) + " is " + Wording.plain(number.digits()),
                    "it must be a whole number",
                    "correct the number");
        }
        return range.contains(value) ? (int) value : (int) range.most();
    }

    private <E> Optional<E> word(String key, Json json, List<E> words, Function<E, String> word) {
        List<String> known = words.stream().map(word).toList();
        if (!(json instanceof Json.Text text)) {
            wrongType(key, json, "one of " + String.join(", ", known));
            return Optional.empty();
        }
        int index = known.indexOf(text.value());
        if (index < 0) {
            log.unknown(
                    "unknown-word",
                    json.place(),
                    wordsOf(key) + " is " + Wording.quoted(text.value()),
                    "it must be one of " + String.join(", ", known),
                    text.value(),
                    known,
                    "write one of these");
            return Optional.empty();
        }
        return Optional.of(words.get(index));
    }

    void wrongType(String key, Json json, String expected) {
        log.error(
                "wrong-type",
                json.place(),
                wordsOf(key) + " is " + json.type(),
                "it must be " + expected,
                json instanceof Json.Nil ? "write one or delete the key" : "write it so");
    }

    private String wordsOf(String key) {
        return Wording.quoted(key) + " of " + subject;
    }
}
