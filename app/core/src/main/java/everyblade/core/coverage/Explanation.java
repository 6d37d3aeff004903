package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Remark;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.fact.Fact;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Why a cell has its state, pass by pass. */
public final class Explanation {

    private final Situation situation;
    private final RowCoverage coverage;
    private final Row row;
    private final int airfoil;
    private final int zone;
    private final SmoothedTrack placing;
    private final Map<String, DeclaredWindow> windows;
    private final List<Row> unidentified;

    private Explanation(Coverage coverage, String row, int airfoil, int zone) {
        this.situation = coverage.situation();
        this.coverage = coverage.row(row);
        this.row = this.coverage.row();
        this.airfoil = airfoil;
        this.zone = zone;
        this.placing = situation.placing(this.row);
        this.unidentified = coverage.sights().unidentified(this.row);
        this.windows = RowTally.windows(situation.engine(), this.row, coverage.sights());
    }

    /** The steps that explain one zone of airfoil n of a row, the conclusion last. */
    public static List<Explained> of(Coverage coverage, String row, int airfoil, int zone) {
        return new Explanation(coverage, row, airfoil, zone).steps();
    }

    private List<Explained> steps() {
        List<Explained> steps = new ArrayList<>();
        if (!situation.counting(row)) {
            steps.add(new Explained.NeverIdentified(row.kind()));
        } else {
            List<Pass> open = List.of();
            for (Leg leg : situation.legsOf(row)) {
                Pass.Sorted sorted = Pass.Sorted.after(open, leg);
                sorted.ended().forEach(pass -> explain(pass, steps));
                open = sorted.open();
                unwatched(leg, steps);
            }
            open.forEach(pass -> explain(pass, steps));
        }
        // Accepting what no view shows is a way to accept.
        Arrays.stream(Remark.What.values())
                .filter(what -> coverage.remarked(what, airfoil, zone))
                .map(Explanation::told)
                .distinct()
                .forEach(steps::add);
        if (coverage.basis() == Basis.COMPUTED && coverage.state(airfoil, zone) != State.SEEN) {
            unidentified.forEach(other -> steps.add(Explained.Unidentified.of(other)));
        }
        steps.add(conclusion());
        return steps;
    }

    private void explain(Pass pass, List<Explained> steps) {
        DeclaredWindow window = windows.get(pass.view());
        if (!pass.zones().contains(zone)) {
            return;
        }
        Explained.By by = new Explained.By(
                pass.legs().get(0).entry(),
                pass.legs().last().entry(),
                pass.legs().size(),
                pass.view());
        if (coverage.basis() == Basis.COMPUTED) {
            Fact shown = window == null ? inSight(pass) : Explained.Shown.WINDOW_APART;
            steps.add(new Explained.Passed(by, track(pass), shown));
        } else if (window == null || !window.zones().contains(zone)) {
            steps.add(new Explained.NotShown(by, named()));
        } else {
            steps.add(new Explained.Passed(by, track(pass), inWindow(coverage.only(situation, pass))));
        }
    }

    private ZonePhrase named() {
        return ZonePhrase.named(coverage.zoning().names().get(zone));
    }

    /** What one pass by itself makes of a cell that a window shows. */
    private Fact inWindow(Cells only) {
        return switch (only.state(airfoil, zone).grade()) {
            case DONE -> Explained.Shown.SURELY;
            case DOUBTFUL -> new Explained.Doubtful(because(only));
            case LEFT ->
                only.why(airfoil, zone).equals(Optional.of(Why.FAST)) ? because(only) : Explained.Shown.NOT_AT_ALL;
        };
    }

    private Why because(Cells of) {
        return of.why(airfoil, zone).orElseThrow();
    }

    /** How much of the cell one pass shows. */
    private Explained.Share inSight(Pass pass) {
        Cells only = coverage.only(situation, pass);
        Areas areas = only.areas(airfoil, new ZoneSet(1L << zone));
        return new Explained.Share(
                Explained.percent(areas.seen()),
                Explained.percent(areas.maybe()),
                areas.maybe() == 0,
                only.why(airfoil, zone).equals(Optional.of(Why.FAST)),
                pass.legs().get(0).stance().stations(),
                only.state(airfoil, zone).grade() == State.Grade.DOUBTFUL
                        ? Optional.of(because(only))
                        : Optional.empty());
    }

    private void unwatched(Leg leg, List<Explained> steps) {
        if (leg.watched().contains(zone)) {
            return;
        }
        Cells only = coverage.unwatched(situation, leg);
        if (only.why(airfoil, zone).equals(Optional.of(Why.NOT_WATCHED))) {
            steps.add(new Explained.Unwatched(
                    new Explained.By(leg.entry(), leg.entry(), 1, leg.view()), Why.NOT_WATCHED));
        }
    }

    private Explained.Track track(Pass pass) {
        int last = pass.to();
        Turn all = placing.counted(pass.from(), last).abs();
        Optional<Place> place = placing.at(row.id(), row.rock(), last).place();
        double widened = SmoothedTrack.widening(pass.run());
        return new Explained.Track(
                placing.counted(pass.from()).degrees(),
                placing.counted(last).degrees(),
                all.compareTo(Turn.FULL) < 0 ? Optional.empty() : Optional.of(all.degrees()),
                placing.adjusted(pass.from()).degrees(),
                placing.adjusted(last).degrees(),
                place.map(at -> new Explained.Spread(
                        at.best().minus(at.low()).degrees(),
                        at.high().minus(at.best()).degrees())),
                widened == 1 ? Optional.empty() : Optional.of(new Explained.Widened(widened, pass.run())));
    }

    private Explained.Conclusion conclusion() {
        State state = coverage.state(airfoil, zone);
        return new Explained.Conclusion(
                row.kind(),
                airfoil,
                row.name(),
                row.id(),
                named(),
                state,
                state == State.PART && coverage.glimpsed(airfoil, zone),
                state == State.PART && coverage.lacksEdgeAlone(airfoil, zone),
                coverage.why(airfoil, zone),
                coverage.basis() == Basis.DECLARED ? Explained.Ground.WINDOWS : computed());
    }

    private Explained.Computed computed() {
        Areas areas = coverage.areas(airfoil, zone);
        return new Explained.Computed(
                Explained.percent(areas.seen()),
                Explained.percent(areas.maybe()),
                Explained.percent(areas.reach()),
                coverage.hindrance(airfoil, zone));
    }

    private static Explained.Remarked told(Remark.What what) {
        return switch (what) {
            case FOUND -> Explained.Remarked.FOUND;
            case RECHECK -> Explained.Remarked.RECHECK;
            case STATED -> Explained.Remarked.STATED;
            case ACCEPTED, ACCEPTED_UNSHOWN -> Explained.Remarked.ACCEPTED;
        };
    }
}
