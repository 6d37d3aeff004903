package everyblade.core.doubt;

import everyblade.spi.Row;
import java.util.List;
import java.util.Optional;

/**
 * What is doubtful about an entry.
 *
 * @param kind of doubt
 * @param row whose airfoils and zones the values are; empty if there are none among them
 * @param values that its sentence names, in this order: numbers, texts, airfoils as a {@code BitSet} (bit i stands for
 *     airfoil i + 1), zones as a {@code ZoneSet}
 */
public record Doubt(Kind kind, Optional<Row> row, List<Object> values) {

    public Doubt {
        values = List.copyOf(values);
    }

    Doubt(Kind kind, Object... values) {
        this(kind, Optional.empty(), List.of(values));
    }

    Doubt(Kind kind, Row row, Object... values) {
        this(kind, Optional.of(row), List.of(values));
    }

    /** What may be wrong. */
    public enum Kind {
        /** A number far from all before: the number, a usual one, the unit. */
        OFF_BY_TEN("offByTen"),
        /** A size far from all before: mm, a usual one. */
        SIZE("size"),
        /** A step that never stands at some airfoils: the step, the count, those missed. */
        STEP("step"),
        /** Hardly anybody turns a rotor so far in one move: whole turns. */
        FAR("far"),
        /** Turns of the tool, where degrees of it may be meant: turns, degrees of the shaft. */
        TOOL("tool"),
        /** A plus that goes against the normal direction: the number, its unit. */
        AGAINST("against"),
        /** A ± behind airfoils that may be meant in airfoils: the ±, degrees from one airfoil to the next. */
        UNIT("unit"),
        /** Turned after a break without an identification: the entry, its text. */
        BREAK("break"),
        /** An identification at which the count is lost: by how many airfoils. */
        LOST("lost"),
        /** A run of airfoils over the last one: first, last, how many, which. */
        WRAPS("wraps"),
        /** A size greater than anything on the airfoil: mm, the greatest length there, mm. */
        LONGER("longer"),
        /** A finding on an airfoil that was not in view: its number, the one at the reference. */
        NOT_IN_VIEW("notInView"),
        /** A port shut while the scope was last in it: port, view. */
        SCOPE_IN("scopeIn"),
        /** Watched through a port that was shut: port, the entry. */
        THROUGH_SHUT("throughShut"),
        /** A reason that tells nobody anything: the reason. */
        REASON("reason"),
        /** Cells accepted as not seen that views can show: how many, of these shown and not seen, through which views. */
        ACCEPTS_SHOWN("acceptsShown"),
        /** Told, not asked: cells accepted as not seen: how many, of which airfoils, of these views can show. */
        ACCEPTS("accepts"),
        /** Told, not asked: all that no view shows was accepted, and there is nothing of the kind. */
        ACCEPTS_NOTHING("acceptsNothing"),
        /** Told, not asked: what a task asks for from now on, and what it no longer does. */
        ASKS_FOR("asksFor");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** By which its sentence is found. */
        public String word() {
            return word;
        }
    }

    /** Whether a person is to say that it is meant; else it is only told. */
    public boolean asks() {
        return kind != Kind.ASKS_FOR && kind != Kind.ACCEPTS && kind != Kind.ACCEPTS_NOTHING;
    }
}
