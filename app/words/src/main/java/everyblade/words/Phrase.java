package everyblade.words;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.ArgType;
import com.ibm.icu.text.MessagePattern.Part;
import com.ibm.icu.text.PluralRules;
import everyblade.fact.Fact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * One pattern of a bundle, in the syntax of ICU's message format, and how its places are filled in: {@code {name}},
 * {@code {name, number, 0.0}}, {@code {names, list, or}}, {@code {count, plural, one {# blade} other {# blades}}} and
 * {@code {what, select, none {…} other {…}}}. A list is {@code plain}, with commas alone, or ends in {@code and} or {@code or};
 * {@code /} stands between all of it, as does the word for and of {@code ands}. A select asks for a constant's name, for {@code true} and {@code false}, for
 * {@code none} where there is nothing, and for {@code other}; a plural of a list counts it. Numbers are never grouped: blade
 * 1,234 would look like two numbers.
 */
final class Phrase {

    private final MessagePattern pattern;
    private final Locale locale;
    private final Function<Fact, String> facts;
    private final Function<String, String> joints;
    private final StringBuilder said = new StringBuilder();

    /**
     * @param facts says a fact that stands in another
     * @param joints what stands between the last two of a list, by its style
     */
    Phrase(String text, Locale locale, Function<Fact, String> facts, Function<String, String> joints) {
        this.pattern = new MessagePattern(text);
        this.locale = locale;
        this.facts = facts;
        this.joints = joints;
    }

    /**
     * The pattern with its places filled in.
     *
     * @throws IllegalArgumentException if it asks for a part that is not there
     */
    String with(Map<String, ?> parts) {
        said.setLength(0);
        message(0, parts, null);
        return said.toString();
    }

    /** Says the message that starts at this part, and gives where it ends. */
    private int message(int start, Map<String, ?> parts, Object counted) {
        int from = pattern.getPart(start).getLimit();
        for (int i = start + 1; ; i++) {
            Part part = pattern.getPart(i);
            said.append(pattern.getPatternString(), from, part.getIndex());
            from = part.getLimit();
            switch (part.getType()) {
                case MSG_LIMIT -> {
                    return i;
                }
                case REPLACE_NUMBER -> said.append(text(counted, ""));
                case ARG_START -> {
                    place(i, parts, counted);
                    i = pattern.getLimitPartIndex(i);
                    from = pattern.getPart(i).getLimit();
                }
                default -> {
                    // An apostrophe to skip, or one to insert, which no text of ours has.
                }
            }
        }
    }

    private void place(int start, Map<String, ?> parts, Object counted) {
        String name = pattern.getSubstring(pattern.getPart(start + 1));
        if (!parts.containsKey(name)) {
            throw new IllegalArgumentException("nothing is there for {" + name + "} of: " + pattern.getPatternString());
        }
        Object value = bare(parts.get(name));
        ArgType type = pattern.getPart(start).getArgType();
        switch (type) {
            case NONE -> said.append(text(value, ""));
            case SIMPLE -> said.append(styled(start, value));
            case PLURAL -> {
                double number = number(value);
                int chosen = pluralMessage(start + 2, number);
                message(chosen, parts, value instanceof Collection<?> all ? all.size() : value);
            }
            case SELECT -> message(selected(start + 2, selector(value)), parts, counted);
            default -> throw new IllegalArgumentException("no place of this kind is filled in: " + type);
        }
    }

    private String styled(int start, Object value) {
        String kind = pattern.getSubstring(pattern.getPart(start + 2));
        boolean hasStyle = pattern.getPart(start + 3).getType() == Part.Type.ARG_STYLE;
        String style =
                hasStyle ? pattern.getSubstring(pattern.getPart(start + 3)).strip() : "";
        return switch (kind) {
            case "number" -> decimal(style, value);
            case "list" -> text(value, style);
            default -> throw new IllegalArgumentException("no value is told as " + kind);
        };
    }

    private int pluralMessage(int first, double number) {
        String keyword = null;
        int other = -1;
        for (int i = first; pattern.getPart(i).getType() != Part.Type.ARG_LIMIT; ) {
            String selector = pattern.getSubstring(pattern.getPart(i));
            boolean isExact = pattern.getPart(i + 1).getType().hasNumericValue();
            int message = i + (isExact ? 2 : 1);
            if (isExact && pattern.getNumericValue(pattern.getPart(i + 1)) == number) {
                return message;
            }
            if (!isExact) {
                keyword = keyword == null ? PluralRules.forLocale(locale).select(number) : keyword;
                if (selector.equals(keyword)) {
                    return exactAfter(message, number).orElse(message);
                }
                other = selector.equals("other") ? message : other;
            }
            i = pattern.getLimitPartIndex(message) + 1;
        }
        return other;
    }

    /** The message for just this number, if it stands behind that for its kind. */
    private OptionalInt exactAfter(int message, double number) {
        for (int i = pattern.getLimitPartIndex(message) + 1; pattern.getPart(i).getType() != Part.Type.ARG_LIMIT; ) {
            boolean isExact = pattern.getPart(i + 1).getType().hasNumericValue();
            if (isExact && pattern.getNumericValue(pattern.getPart(i + 1)) == number) {
                return OptionalInt.of(i + 2);
            }
            i = pattern.getLimitPartIndex(i + (isExact ? 2 : 1)) + 1;
        }
        return OptionalInt.empty();
    }

    private int selected(int first, String selector) {
        int other = -1;
        for (int i = first; pattern.getPart(i).getType() != Part.Type.ARG_LIMIT; ) {
            String offered = pattern.getSubstring(pattern.getPart(i));
            if (offered.equals(selector)) {
                return i + 1;
            }
            other = offered.equals("other") ? i + 1 : other;
            i = pattern.getLimitPartIndex(i + 1) + 1;
        }
        return other;
    }

    private static String selector(Object value) {
        return value == null
                ? "none"
                : value instanceof Enum<?> constant
                        ? constant.name()
                        : value instanceof Boolean truth ? truth.toString() : "other";
    }

    /** What an optional value holds, nothing as null. */
    private static Object bare(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.orElse(null);
        }
        if (value instanceof OptionalInt optional) {
            return optional.isPresent() ? optional.getAsInt() : null;
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? optional.getAsDouble() : null;
        }
        return value;
    }

    private static double number(Object value) {
        return value instanceof Collection<?> all ? all.size() : ((Number) value).doubleValue();
    }

    private String text(Object value, String style) {
        if (value == null) {
            return "";
        }
        if (value instanceof Fact fact) {
            return facts.apply(fact);
        }
        if (value instanceof Collection<?> all) {
            return joined(all.stream().map(one -> text(bare(one), "")).toList(), style);
        }
        if (value instanceof Double || value instanceof BigDecimal) {
            return decimal("0.#########", value);
        }
        return Visible.text(String.valueOf(value));
    }

    /** Rounded half up as it is written: 0.15 to 0.2, though as a binary number it is a little less. */
    private String decimal(String style, Object value) {
        DecimalFormat format = new DecimalFormat(style, DecimalFormatSymbols.getInstance(locale));
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(value instanceof BigDecimal exact ? exact : BigDecimal.valueOf(number(value)));
    }

    private String joined(List<String> all, String style) {
        if (all.size() < 2 || style.equals("plain")) {
            return String.join(", ", all);
        }
        if (style.equals("/")) {
            return String.join(style, all);
        }
        if (style.equals("ands")) {
            return String.join(joints.apply("and"), all);
        }
        int last = all.size() - 1;
        return String.join(", ", all.subList(0, last)) + joints.apply(style.isEmpty() ? "and" : style) + all.get(last);
    }
}
