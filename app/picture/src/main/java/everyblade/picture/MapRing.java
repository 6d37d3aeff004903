package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One row as a ring: its airfoils where they stand now, root inside, and a lane outside them for numbers.
 *
 * @param coverage of the row
 * @param standing where its airfoils are
 * @param polar the wheel
 * @param low radius at which the cells begin, mm
 * @param high radius at which they end and the lane begins, mm
 * @param lane height of the lane, mm
 */
record MapRing(RowCoverage coverage, Standing standing, Polar polar, double low, double high, double lane)
        implements RowPlace {

    /** Share of a pitch that is left free between airfoils, and at most so many degrees. */
    static final double GAP = 0.06;

    static final double GAP_MOST = 1.5;

    /** Numbers are set at every one of these, the first that leaves room. */
    private static final int[] STEPS = {1, 2, 5, 10, 20, 50};

    private static final double ROUNDING = 1e-6;

    @Override
    public Patch patch(int airfoil) {
        double middle = standing.clock(airfoil);
        double pitch = Engine.pitch(coverage.row());
        double half = (pitch - Math.min(GAP * pitch, GAP_MOST)) / 2;
        return new Patch(polar, middle - half, middle + half, low, high);
    }

    @Override
    public Optional<Cell> cellAt(Point place) {
        double across = polar.across(place);
        if (across < low || across >= high) {
            return Optional.empty();
        }
        Row row = coverage.row();
        double along = polar.along(place);
        int airfoil = nearest(along);
        Patch patch = patch(airfoil);
        double share = CurvedText.wrapped(along - patch.from()) / (patch.to() - patch.from());
        if (share >= 1) {
            return Optional.empty();
        }
        ZonePlan plan = plan();
        int column = (int) (share * plan.columns());
        int band = (int) ((across - low) / (high - low) * plan.bands());
        return Optional.of(new Cell(row.id(), airfoil, plan.zone(column, band)));
    }

    /** The airfoil that stands nearest to a clock angle. */
    int nearest(double clock) {
        Row row = coverage.row();
        double pitches = (clock - standing.clock(1))
                / Engine.pitch(row)
                * row.numbering().sign();
        return Math.floorMod(Math.round(pitches), row.count()) + 1;
    }

    @Override
    public boolean liesLike(RowPlace other) {
        return other instanceof MapRing ring
                && low == ring.low
                && high == ring.high
                && polar.equals(ring.polar)
                && standing.equals(ring.standing);
    }

    @Override
    public ZonePlan plan() {
        return ZonePlan.unwrapped(
                coverage.row(), coverage.zoning(), coverage.row().numbering());
    }

    /** All cells, a group for each airfoil. */
    List<Group> airfoils(MapWords words) {
        AirfoilDrawing drawing = drawing();
        List<Group> groups = new ArrayList<>();
        for (int n = 1; n <= coverage.row().count(); n++) {
            groups.add(drawing.whole(n, patch(n), words));
        }
        return groups;
    }

    /** All cells, a group for each of them. */
    List<Group> cells(MapWords words) {
        AirfoilDrawing drawing = drawing();
        List<Group> groups = new ArrayList<>();
        for (int n = 1; n <= coverage.row().count(); n++) {
            groups.addAll(drawing.cells(n, patch(n), words));
        }
        return groups;
    }

    private AirfoilDrawing drawing() {
        return new AirfoilDrawing(coverage, plan());
    }

    /**
     * Numbers in the lane: of airfoil 1, of damaged ones, and of as many of the others as there is room for.
     *
     * @param labels words that stand in the lane already, in the middle of the top and of the bottom
     */
    List<Item> numbers(List<String> labels) {
        CurvedText text = lettering();
        int count = coverage.row().count();
        double reach = text.reach(" " + count + " ");
        int step = step(reach);
        List<Integer> wanted = new ArrayList<>(List.of(1));
        IntStream.rangeClosed(1, count).filter(this::isDamaged).forEach(wanted::add);
        IntStream.rangeClosed(1, count).filter(n -> n % step == 0).forEach(wanted::add);
        List<Double> taken = new ArrayList<>();
        List<Item> items = new ArrayList<>();
        for (int n : wanted) {
            double clock = standing.clock(n);
            boolean free = taken.stream().allMatch(other -> CurvedText.apart(clock, other) >= 2 * reach - ROUNDING);
            if (free && isFree(clock, reach, labels, text)) {
                taken.add(clock);
                Ink ink = isDamaged(n) ? Ink.ALERT : n == 1 ? Ink.LINE : Ink.FAINT;
                items.addAll(text.at(clock, Integer.toString(n), ink));
            }
        }
        return items;
    }

    private boolean isDamaged(int airfoil) {
        return IntStream.range(0, coverage.zoning().size())
                .anyMatch(zone -> coverage.remarked(Remark.What.FOUND, airfoil, zone));
    }

    /** Words in the middle of the top and of the bottom of the lane. */
    List<Item> labels(List<String> labels) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            items.addAll(lettering().at(place(i, labels), labels.get(i), Ink.LINE));
        }
        return items;
    }

    private CurvedText lettering() {
        return new CurvedText(polar, high + lane / 2, 0.84 * lane);
    }

    private int step(double reach) {
        for (int step : STEPS) {
            if (step * Engine.pitch(coverage.row()) >= 2 * reach) {
                return step;
            }
        }
        return coverage.row().count();
    }

    private static boolean isFree(double clock, double reach, List<String> labels, CurvedText text) {
        for (int i = 0; i < labels.size(); i++) {
            if (CurvedText.apart(clock, place(i, labels)) < reach + text.reach(labels.get(i) + "  ")) {
                return false;
            }
        }
        return true;
    }

    private static double place(int label, List<String> labels) {
        return 360.0 * label / labels.size();
    }
}
