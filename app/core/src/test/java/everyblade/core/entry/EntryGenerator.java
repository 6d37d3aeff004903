package everyblade.core.entry;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry.Airfoils;
import everyblade.core.entry.Entry.Interval;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Entry.Size;
import everyblade.core.entry.Entry.Through;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Makes entries that a line can say, every kind in turn, the same ones for the same seed. Names and texts are as odd as
 * the grammar allows; every column is 1. Whether a view or row of that name exists plays no part.
 */
public final class EntryGenerator {

    private static final List<String> CHARACTERS = List.of(
            "a",
            "b",
            "H",
            "\u0130",
            "\u00e9",
            "7",
            "0",
            "-",
            "+",
            "/",
            ".",
            ",",
            "\"",
            "'",
            "\u00b1",
            "\u00b0",
            " ",
            "\ud83d\udd27");
    private static final List<String> WORDS = List.of(
            "c2", "p1-c1", "held", "because", "all", "of", "in", "to", "on", "with", "through", "photo", "nick", "3",
            "3-5", "at", "mm", "\"", ",", "turn", "+-1", "in 5s");
    private static final List<String> ZONES =
            List.of("tip", "tip/pressure/leading", "tpl", "all", "S2P", "concave", "of", "no-zone");

    private final SplittableRandom random;
    private int made;

    private final List<Supplier<Entry>> verbs;

    public EntryGenerator(long seed) {
        random = new SplittableRandom(seed);
        verbs = verbs();
    }

    /** How many entries it takes until every kind has come once. */
    public int kinds() {
        return verbs.size();
    }

    /** The next entry. */
    public Entry next() {
        return verbs.get(made++ % verbs.size()).get();
    }

    private List<Supplier<Entry>> verbs() {
        Map<Class<?>, Supplier<Entry>> special = Map.of(
                TurnEntry.Draw.class, () -> new TurnEntry.Draw(said(drawing()), maybe(this::positive)),
                TurnEntry.Feed.class, () -> new TurnEntry.Feed(said(drawing())),
                TurnEntry.Datum.class,
                        () -> new TurnEntry.Datum(name(), whole(), maybe(() -> said(signed())), maybe(this::unsigned)),
                FindingEntry.Recheck.class,
                        () -> new FindingEntry.Recheck(
                                maybe(this::name),
                                whole(),
                                said(maybe(this::text).orElse(""))),
                FindingEntry.Photo.class, this::photo,
                RecordEntry.Shut.class,
                        () -> new RecordEntry.Shut(name(), maybe(this::text).orElse("")));
        return EntryKind.all().stream()
                .map(kind -> special.getOrDefault(kind.type(), () -> ofComponents(kind.type())))
                .toList();
    }

    /** An entry made of what its components can be by their types and names. */
    private Entry ofComponents(Class<? extends Entry> type) {
        RecordComponent[] components = type.getRecordComponents();
        try {
            Class<?>[] types =
                    Stream.of(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            Object[] values = Stream.of(components)
                    .map(component -> value(component.getGenericType(), component.getName()))
                    .toArray();
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException impossible) {
            throw new AssertionError("entries are records with public constructors", impossible);
        }
    }

    private Object value(Type type, String name) {
        return switch (type.getTypeName().replaceAll("[\\w.]*[.$](?=\\w)", "")) {
            case "String" -> name.equals("name") ? name().value() : text();
            case "boolean" -> random.nextBoolean();
            case "BigDecimal" -> name.equals("seconds") ? positive() : unsigned();
            case "Said<String>" -> name.equals("zone") ? zone() : name();
            case "Said<Integer>" -> whole();
            case "Said<BigDecimal>" -> said(positive());
            case "Said<Movement>" -> said(turning());
            case "List<Said<String>>" -> names();
            case "Kind" -> oneOf(List.of(Kind.values()));
            case "Interval" -> oneOf(List.of(Interval.values()));
            case "Size" -> size();
            case "Airfoils" -> random.nextBoolean() ? run() : all();
            case "Through" -> through();
            default -> {
                assertThat(type).as("a component that the generator can make").isInstanceOf(ParameterizedType.class);
                ParameterizedType generic = (ParameterizedType) type;
                assertThat(generic.getRawType()).isEqualTo(Optional.class);
                yield maybe(() -> value(generic.getActualTypeArguments()[0], name));
            }
        };
    }

    private Entry photo() {
        Optional<Said<Integer>> airfoil = maybe(this::whole);
        return new FindingEntry.Photo(name(), airfoil, airfoil.flatMap(number -> maybe(this::zone)));
    }

    private Movement turning() {
        return movement(List.of(Unit.values()));
    }

    private Movement drawing() {
        return movement(List.of(Unit.DEG, Unit.BLADES));
    }

    private Movement movement(List<Unit> units) {
        Optional<Sense> sense = maybe(() -> oneOf(List.of(Sense.values())));
        if (random.nextBoolean()) {
            return new Movement.To(sense, signed(), maybe(this::unsigned));
        }
        BigDecimal number = sense.isPresent() ? unsigned() : signed();
        return new Movement.By(sense, number, oneOf(units), maybe(this::unsigned));
    }

    private Through through() {
        return new Through(name(), name());
    }

    private Size size() {
        return new Size(
                maybe(this::unsigned),
                maybe(this::unsigned),
                maybe(this::unsigned),
                maybe(this::unsigned),
                oneOf(List.of(LengthUnit.values())));
    }

    private Airfoils run() {
        Said<Integer> first = whole();
        return new Airfoils(Optional.of(first), Optional.of(random.nextBoolean() ? first : whole()));
    }

    private static Airfoils all() {
        return new Airfoils(Optional.empty(), Optional.empty());
    }

    private Said<Integer> whole() {
        return said(random.nextInt(1, random.nextBoolean() ? 30 : 1_000_000_000));
    }

    private BigDecimal unsigned() {
        int scale = random.nextInt(10);
        int integerDigits = random.nextInt(1, 10);
        long digits = random.nextLong((long) Math.pow(10, scale + integerDigits));
        return BigDecimal.valueOf(digits, scale);
    }

    private BigDecimal positive() {
        BigDecimal number = unsigned();
        return number.signum() == 0 ? BigDecimal.ONE : number;
    }

    private BigDecimal signed() {
        return random.nextBoolean() ? unsigned() : unsigned().negate();
    }

    private Said<String> zone() {
        return said(oneOf(ZONES));
    }

    private Said<String> name() {
        return said(random.nextBoolean() ? oneOf(WORDS) : oddText());
    }

    private List<Said<String>> names() {
        return Stream.generate(this::name).limit(random.nextInt(1, 4)).toList();
    }

    private String text() {
        String text = (random.nextBoolean() ? oneOf(WORDS) + " " : "") + oddText();
        return text.strip();
    }

    /** Up to nine characters, not all of them white space. */
    private String oddText() {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(1, 10);
        for (int index = 0; index < length; index++) {
            text.append(oneOf(CHARACTERS));
        }
        return text.toString().isBlank() ? "x" : text.toString();
    }

    private <T> T oneOf(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private <T> Optional<T> maybe(Supplier<T> supplier) {
        return random.nextBoolean() ? Optional.of(supplier.get()) : Optional.empty();
    }

    private static <T> Said<T> said(T value) {
        return new Said<>(value, 1);
    }
}
