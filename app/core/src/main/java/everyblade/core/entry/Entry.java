package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One entry of the journal: what the technician did, saw or said. Numbers are as typed, angles in degrees, times in
 * seconds; {@code plusMinus} is always ± degrees of shaft at 95 % unless said otherwise, and not negative.
 */
public sealed interface Entry {

    /** Seated at a view, at its first station; a new placement, watching everything. */
    record View(Said<String> view, Optional<Said<String>> scopeTip) implements Entry {}

    /** Moved to another station of the view in use. */
    record At(Said<String> station) implements Entry {}

    /** From now on only these parts are watched; parts of one kind unite, of different kinds intersect. */
    record Watch(List<Said<String>> parts) implements Entry {}

    /** The scope tip is among the blades. */
    record In() implements Entry {}

    /** The scope tip is clear of the blades. */
    record Clear() implements Entry {}

    /** The scope was taken out of the port in use. */
    record Out() implements Entry {}

    /** Turned while watching. */
    record Turn(Said<Movement> movement, Optional<BigDecimal> seconds, Optional<Through> through)
            implements Entry, Moving, Timed {}

    /** Turned without watching. */
    record Skip(Said<Movement> movement) implements Entry, Moving {}

    /** One full watched turn that began and ended with this airfoil at the reference. */
    record Round(Said<Integer> airfoil, Optional<BigDecimal> plusMinus, Optional<BigDecimal> seconds)
            implements Entry, Timed, Placing {}

    /** Watched at rest. */
    record Look(Optional<BigDecimal> seconds, Optional<Through> through) implements Entry, Timed {}

    /** The scope tip was drawn round the annulus while watching. */
    record Draw(Said<Movement> movement, Optional<BigDecimal> seconds) implements Entry, Moving, Timed {}

    /** The scope tip was fed round the annulus without watching. */
    record Feed(Said<Movement> movement) implements Entry, Moving {}

    /** From now on turned at this pad. */
    record Pad(Said<String> pad) implements Entry {}

    /** Start of counting: this airfoil of this row is at the reference of the view in use. */
    record Datum(
            Said<String> row,
            Said<Integer> airfoil,
            Optional<Said<BigDecimal>> shaftAngle,
            Optional<BigDecimal> plusMinus)
            implements Entry, Placing {}

    /** This airfoil of the row in view is at the reference now. */
    record Here(Said<Integer> airfoil, Optional<BigDecimal> plusMinus) implements Entry, Placing {}

    /** The rotor may have moved unwatched by an unknown angle. */
    record Slip() implements Entry {}

    /** A finding on an airfoil of the row in view, or of the row named. */
    record Find(Optional<Said<String>> row, Kind kind, Said<Integer> airfoil, Said<String> zone, Size size)
            implements Entry {}

    /** Something to come back to; {@code rest} may begin with a zone and goes on in free words. */
    record Recheck(Optional<Said<String>> row, Said<Integer> airfoil, Said<String> rest) implements Entry {}

    /** A picture. */
    record Photo(Said<String> file, Optional<Said<Integer>> airfoil, Optional<Said<String>> zone)
            implements Entry, Pictured {}

    /** Stated with a picture, where the computation cannot tell. */
    record Saw(Optional<Said<String>> row, Said<String> zone, Airfoils airfoils, Said<String> file)
            implements Entry, Pictured {}

    /** Accepted as not seen. */
    record NoAccess(Optional<Said<String>> row, Said<String> zone, Airfoils airfoils, String reason) implements Entry {}

    /** The task asks for these parts of a row only. */
    record Ask(Said<String> row, List<Said<String>> parts) implements Entry {}

    /** A port, cover or panel is open. */
    record Open(Said<String> thing) implements Entry {}

    /** A port, cover or panel is shut again. */
    record Shut(Said<String> thing, String text) implements Entry {}

    /** A tool, light or plug left its place. */
    record ToolOut(Said<String> tool) implements Entry {}

    /** A tool, light or plug is back. */
    record ToolIn(Said<String> tool) implements Entry {}

    /** A tool, light or plug is missing. */
    record Lost(Said<String> tool) implements Entry {}

    /** Movable vanes stand at this position of the model. */
    record Vanes(Said<String> row, Said<String> position) implements Entry {}

    /** Metal temperature read, in °C or °F as {@code fahrenheit} says. */
    record Heat(Said<BigDecimal> temperature, boolean fahrenheit) implements Entry {}

    /** The finest line seen on today's test target, and at what distance; mm. */
    record Proof(Said<BigDecimal> size, Said<BigDecimal> distance) implements Entry {}

    /** How the surfaces are from here on. */
    record Condition(String words) implements Entry {}

    /** A fact for the record, such as hours or the manual's revision. */
    record Fact(Said<String> name, String value) implements Entry {}

    /** A question to someone who decides; open until settled. */
    record Refer(String text) implements Entry {}

    /** A repeat inspection is due; open until settled. */
    record Again(Said<BigDecimal> number, Interval interval) implements Entry {}

    /** Work stops; {@code held} if the rotor surely stays. */
    record Pause(boolean held) implements Entry {}

    /** Work is handed over. */
    record Handover(String name) implements Entry {}

    /** Work is accepted; {@code held} if the rotor surely stayed. */
    record Takeover(String name, boolean held) implements Entry {}

    /** What entry K left open is settled. */
    record Settle(Said<Integer> entry, String reason) implements Entry {}

    /** Entry K does not count. */
    record Void(Said<Integer> entry, String reason) implements Entry {}

    /** Anything. */
    record Note(String text) implements Entry {}

    /** What moves what turns, or the scope tip round the annulus, by an amount or to a reading. */
    interface Moving {
        Said<Movement> movement();
    }

    /** What may say how long it took, s. */
    interface Timed {
        Optional<BigDecimal> seconds();
    }

    /** What says where an airfoil is, and may say how far that may be off, ± degrees. */
    interface Placing {
        Optional<BigDecimal> plusMinus();
    }

    /** What names a picture. */
    interface Pictured {
        Said<String> file();
    }

    /** Moving between two stations of the view in use. */
    record Through(Said<String> from, Said<String> to) {}

    /** A run of airfoil numbers, ends included, or all of a row if both are empty. */
    record Airfoils(Optional<Said<Integer>> first, Optional<Said<Integer>> last) {}

    /**
     * The size of a finding.
     *
     * @param plusMinus of every dimension, in {@code unit}
     * @param unit mm or in
     */
    record Size(
            Optional<BigDecimal> length,
            Optional<BigDecimal> depth,
            Optional<BigDecimal> width,
            Optional<BigDecimal> plusMinus,
            LengthUnit unit) {}

    /** Unit of a length. */
    enum LengthUnit {
        MM,
        IN
    }

    /** Unit of a repeat interval. */
    enum Interval {
        CYCLES,
        HOURS,
        DAYS
    }
}
