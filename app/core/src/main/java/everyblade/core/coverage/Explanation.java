package everyblade.core.coverage;

import everyblade.core.angle.Turn;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Remark;
import everyblade.core.turning.Situation;
import everyblade.core.turning.SmoothedTrack;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.core.turning.SmoothedTrack.Stand;
import everyblade.fact.Percent;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Why a cell has its state, pass by pass, in plain words. */
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

    /** The lines that explain one zone of airfoil n of a row, the conclusion last. */
    public static List<String> of(Coverage coverage, String row, int airfoil, int zone) {
        return new Explanation(coverage, row, airfoil, zone).lines();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        Zoning zoning = coverage.zoning();
        String cell = row.kind().airfoil() + " " + airfoil + " of " + row.name() + " (" + row.id() + "), "
                + zoning.names().get(zone);
        if (!situation.counting(row)) {
            lines.add("no " + row.kind().airfoil() + " of this row was ever identified, so nothing that was watched"
                    + " can be told to one of them");
        } else {
            List<Pass> open = List.of();
            for (Leg leg : situation.legsOf(row)) {
                Pass.Sorted sorted = Pass.Sorted.after(open, leg);
                sorted.ended().forEach(pass -> explain(pass, lines));
                open = sorted.open();
                unwatched(leg, lines);
            }
            open.forEach(pass -> explain(pass, lines));
        }
        for (Remark.What what : Remark.What.values()) {
            if (coverage.remarked(what, airfoil, zone)) {
                lines.add(told(what));
            }
        }
        if (coverage.basis() == Basis.COMPUTED && coverage.state(airfoil, zone) != State.SEEN) {
            unidentified.forEach(other -> lines.add(toIdentify(other)));
        }
        lines.add("so " + cell + " is " + conclusion());
        return lines;
    }

    /** What to do about a row of which nobody knows where it stands, though what is hidden hangs on it. */
    public static String toIdentify(Row row) {
        return "nobody said where the " + row.kind().airfoil() + "s of " + row.name() + " (" + row.id()
                + ") stand, so all counts as hidden that they may hide: identify one of them (datum " + row.id()
                + " N, with N at the reference), and what was watched before is judged anew";
    }

    private void explain(Pass pass, List<String> lines) {
        DeclaredWindow window = windows.get(pass.view());
        if (!pass.zones().contains(zone)) {
            return;
        }
        String who = (pass.legs().size() == 1
                        ? "entry " + pass.legs().last().entry()
                        : "entries " + pass.legs().get(0).entry() + " to "
                                + pass.legs().last().entry())
                + ", through " + pass.view() + ": ";
        if (coverage.basis() == Basis.COMPUTED) {
            lines.add(who + angles(pass) + "; " + (window == null ? inSight(pass) : "a window, which counts apart"));
            return;
        }
        if (window == null || !window.zones().contains(zone)) {
            lines.add(
                    who + "this view does not show " + coverage.zoning().names().get(zone));
            return;
        }
        lines.add(who + angles(pass) + "; " + inWindow(coverage.only(situation, pass)));
    }

    /** What one pass by itself makes of a cell that a window shows. */
    private String inWindow(Cells only) {
        return switch (only.state(airfoil, zone)) {
            case SEEN, PART -> "surely in sight";
            case MAYBE -> "only maybe in sight: " + because(only);
            case UNSEEN -> only.why(airfoil, zone).equals(Optional.of(Why.FAST)) ? because(only) : "not in sight";
        };
    }

    private String because(Cells of) {
        return of.why(airfoil, zone).orElseThrow().words();
    }

    /** How much of the cell one pass shows. */
    private String inSight(Pass pass) {
        Cells only = coverage.only(situation, pass);
        Areas areas = only.areas(airfoil, new ZoneSet(1L << zone));
        List<String> stations = pass.legs().get(0).stance().stations();
        String from = " from " + (stations.size() == 1 ? "station " : "stations ") + String.join(", ", stations);
        boolean isBrief = only.why(airfoil, zone).equals(Optional.of(Why.FAST));
        boolean isDoubtful = only.state(airfoil, zone) == State.MAYBE;
        return (areas.maybe() == 0
                        ? "none of it in sight" + (isBrief ? " for long enough" : "") + from
                        : percent(areas.seen()) + " of it surely in sight, " + percent(areas.maybe())
                                + " surely or maybe," + from)
                + (isDoubtful ? ": " + because(only) : "");
    }

    private static String percent(double share) {
        return Percent.good(share, 1) + " %";
    }

    private void unwatched(Leg leg, List<String> lines) {
        if (leg.watched().contains(zone)) {
            return;
        }
        Cells only = coverage.unwatched(situation, leg);
        if (only.why(airfoil, zone).equals(Optional.of(Why.NOT_WATCHED))) {
            lines.add("entry " + leg.entry() + ", through " + leg.view() + ": " + because(only));
        }
    }

    private String angles(Pass pass) {
        int last = pass.to();
        Stand stand = placing.at(row.id(), row.rock(), last);
        String turned =
                "counted from " + degrees(placing.counted(pass.from())) + " to " + degrees(placing.counted(last));
        Turn all = placing.counted(pass.from(), last);
        String round = all.abs().compareTo(Turn.FULL) < 0 ? "" : ", " + degrees(all.abs()) + " in all";
        String adjusted =
                ", adjusted from " + degrees(placing.adjusted(pass.from())) + " to " + degrees(placing.adjusted(last));
        Optional<Place> place = stand.place();
        String off = place.map(
                        at -> ", at the end good to −" + degrees(at.best().minus(at.low())) + " +"
                                + degrees(at.high().minus(at.best())))
                .orElse(", at the end not known at all");
        double widened = SmoothedTrack.widening(pass.run());
        String many = widened == 1
                ? ""
                : String.format(Locale.ROOT, ", taken %.1f times as wide in run %d of this job", widened, pass.run());
        return turned + round + adjusted + off + many;
    }

    private String conclusion() {
        State state = coverage.state(airfoil, zone);
        String name = switch (state) {
            case SEEN -> "seen";
            case PART ->
                "seen as far as it can be"
                        + (coverage.glimpsed(airfoil, zone) ? ", which is less than half of it" : "")
                        + (coverage.lacksEdgeAlone(airfoil, zone)
                                ? ", which leaves out its outermost strip at the edge, where nicks sit"
                                : "");
            case MAYBE -> "only maybe seen";
            case UNSEEN -> "not seen";
        };
        return name
                + coverage.why(airfoil, zone).map(why -> ": " + why.words()).orElse("")
                + (coverage.basis() == Basis.DECLARED ? " (declared, by windows)" : computed());
    }

    private String computed() {
        Areas areas = coverage.areas(airfoil, zone);
        return " (computed: " + percent(areas.seen()) + " of it surely seen, " + percent(areas.maybe())
                + " surely or maybe, " + percent(areas.reach()) + " within reach"
                + coverage.hindrance(airfoil, zone)
                        .map(hindrance -> ", mostly " + hindrance.words())
                        .orElse("")
                + ")";
    }

    private String told(Remark.What what) {
        return switch (what) {
            case FOUND -> "a finding was entered here";
            case RECHECK -> "someone meant to come back here";
            case STATED -> "someone states with a picture that this was seen; that is shown apart";
            case ACCEPTED, ACCEPTED_UNSHOWN -> "someone accepted that this was not seen";
        };
    }

    private static String degrees(Turn angle) {
        return String.format(Locale.ROOT, "%.1f°", angle.degrees());
    }
}
