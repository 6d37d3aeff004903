package everyblade.core.finding;

import everyblade.core.finding.Figure.Counted;
import everyblade.core.finding.Step.Counts;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.ToIntFunction;

/** Counts the findings of one rule in one row, of which some surely count and some maybe. */
final class Tallies {

    private final Finding finding;
    private final List<Finding> sure;
    private final List<Finding> maybe;

    /**
     * @param finding round which is counted
     * @param sure of its row, those that surely count
     * @param maybe of its row, those that may count, the sure ones included
     */
    Tallies(Finding finding, List<Finding> sure, List<Finding> maybe) {
        this.finding = finding;
        this.sure = sure;
        this.maybe = maybe;
    }

    /** A figure for each number that is limited. */
    List<Figure> figures(Counts counts) {
        RowKind kind = finding.row().kind();
        List<Figure> figures = new ArrayList<>();
        counts.perAirfoil().ifPresent(most -> figures.add(figure(new Counted.OnAirfoil(kind), this::onAirfoil, most)));
        counts.perRow().ifPresent(most -> figures.add(figure(Counted.Whole.IN_ROW, List::size, most)));
        counts.airfoils()
                .ifPresent(most -> figures.add(figure(
                        new Counted.AirfoilsWith(kind), found -> airfoils(found).cardinality(), most)));
        counts.neighbours()
                .ifPresent(most -> figures.add(figure(new Counted.SideBySide(kind), this::sideBySide, most)));
        return figures;
    }

    private Figure figure(Counted what, ToIntFunction<List<Finding>> number, int most) {
        return Figures.count(what, number.applyAsInt(sure), number.applyAsInt(maybe), most);
    }

    private int onAirfoil(List<Finding> found) {
        return (int) found.stream()
                .filter(other -> other.airfoil() == finding.airfoil())
                .count();
    }

    private static BitSet airfoils(List<Finding> found) {
        BitSet airfoils = new BitSet();
        found.forEach(other -> airfoils.set(other.airfoil() - 1));
        return airfoils;
    }

    /** How many airfoils with any stand side by side round this one; the row is a ring. */
    private int sideBySide(List<Finding> found) {
        BitSet airfoils = airfoils(found);
        int count = finding.row().count();
        int here = finding.airfoil() - 1;
        if (!airfoils.get(here)) {
            return 0;
        }
        if (airfoils.cardinality() == count) {
            return count;
        }
        int run = 1;
        for (int step : new int[] {1, -1}) {
            for (int at = Math.floorMod(here + step, count); airfoils.get(at); at = Math.floorMod(at + step, count)) {
                run++;
            }
        }
        return run;
    }
}
