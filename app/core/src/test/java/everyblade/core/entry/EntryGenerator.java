package everyblade.core.entry;

import everyblade.core.entry.Entry.Airfoils;
import everyblade.core.entry.Entry.Interval;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Entry.Size;
import everyblade.core.entry.Entry.Through;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Makes entries that a line can say, every verb in turn, the same ones for the same seed. Names and texts are as odd as
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
        return List.of(
                () -> new Entry.View(name(), maybe(this::name)),
                () -> new Entry.At(name()),
                () -> new Entry.Watch(names()),
                Entry.In::new,
                Entry.Clear::new,
                Entry.Out::new,
                () -> new Entry.Turn(said(turning()), maybe(this::positive), maybe(this::through)),
                () -> new Entry.Skip(said(turning())),
                () -> new Entry.Round(whole(), maybe(this::unsigned), maybe(this::positive)),
                () -> new Entry.Look(maybe(this::positive), maybe(this::through)),
                () -> new Entry.Draw(said(drawing()), maybe(this::positive)),
                () -> new Entry.Feed(said(drawing())),
                () -> new Entry.Pad(name()),
                () -> new Entry.Datum(name(), whole(), maybe(() -> said(signed())), maybe(this::unsigned)),
                () -> new Entry.Here(whole(), maybe(this::unsigned)),
                Entry.Slip::new,
                () -> new Entry.Find(maybe(this::name), oneOf(List.of(Kind.values())), whole(), zone(), size()),
                () -> new Entry.Recheck(maybe(this::name), whole(), said(random.nextBoolean() ? text() : "")),
                this::photo,
                () -> new Entry.Saw(maybe(this::name), zone(), run(), name()),
                () -> new Entry.NoAccess(maybe(this::name), zone(), random.nextBoolean() ? run() : all(), text()),
                () -> new Entry.Ask(name(), names()),
                () -> new Entry.Open(name()),
                () -> new Entry.Shut(name(), random.nextBoolean() ? text() : ""),
                () -> new Entry.ToolOut(name()),
                () -> new Entry.ToolIn(name()),
                () -> new Entry.Lost(name()),
                () -> new Entry.Vanes(name(), name()),
                () -> new Entry.Heat(said(unsigned()), random.nextBoolean()),
                () -> new Entry.Proof(said(positive()), said(positive())),
                () -> new Entry.Condition(text()),
                () -> new Entry.Fact(name(), text()),
                () -> new Entry.Refer(text()),
                () -> new Entry.Again(said(positive()), oneOf(List.of(Interval.values()))),
                () -> new Entry.Pause(random.nextBoolean()),
                () -> new Entry.Handover(name().value()),
                () -> new Entry.Takeover(name().value(), random.nextBoolean()),
                () -> new Entry.Settle(whole(), text()),
                () -> new Entry.Void(whole(), text()),
                () -> new Entry.Note(text()));
    }

    private Entry photo() {
        Optional<Said<Integer>> airfoil = maybe(this::whole);
        return new Entry.Photo(name(), airfoil, airfoil.flatMap(number -> maybe(this::zone)));
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
