package everyblade.core.doubt;

import everyblade.core.coverage.Coverage;
import everyblade.core.doubt.Doubt.Kind;
import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.ZoneSet;
import everyblade.core.finding.closing.Acceptance;
import everyblade.core.finding.closing.ReasonGiven;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** What is doubtful about an entry, asked of the journal before it and after it. */
public final class Doubts {

    private static final Pattern UNIT_SAID =
            Pattern.compile("(?i)(\u00b1|\\+[-\u2212])\\s*[0-9]+([.,][0-9]+)?\\s*(deg|\u00b0)");

    private final Fold before;
    private final Logged logged;
    private final Situation after;
    private final Supplier<Coverage> seen;

    private Doubts(Fold before, Logged logged, Situation after, Supplier<Coverage> seen) {
        this.seen = seen;
        this.before = before;
        this.logged = logged;
        this.after = after;
    }

    /**
     * All doubts about an entry.
     *
     * @param before the journal without it
     * @param after the journal with it, in which it may be
     * @param seen the coverage of the journal without it; asked for only where something is accepted as not seen
     */
    public static List<Doubt> about(Fold before, Logged logged, Fold after, Supplier<Coverage> seen) {
        return new Doubts(before, logged, after.situation(), seen).all();
    }

    /** Each asks of any entry, and finds nothing in most. */
    private List<Doubt> all() {
        Entry entry = logged.entry();
        List<Doubt> doubts = new ArrayList<>(new MoveDoubts(before, entry, after).all());
        lostCount().ifPresent(doubts::add);
        unitOfPlace(entry).ifPresent(doubts::add);
        wraps(entry).ifPresent(doubts::add);
        if (entry instanceof FindingEntry.NoAccess noAccess) {
            doubts.addAll(accepting(noAccess));
        }
        if (entry instanceof FindingEntry.Find find) {
            doubts.addAll(new FindingDoubts(before, find).all());
        }
        if (entry instanceof RecordEntry.Shut shut) {
            scopeIn(shut.thing().value()).ifPresent(doubts::add);
        }
        if (entry instanceof FindingEntry.Ask ask) {
            asksFor(row(Optional.of(ask.row()))).ifPresent(doubts::add);
        }
        MoveDoubts.byBlades(entry)
                .flatMap(move -> unit(move.plusMinus(), inView()))
                .ifPresent(doubts::add);
        return doubts;
    }

    /** A ± of a place that may be meant in airfoils; beside an angle that was read it can only be degrees. */
    private Optional<Doubt> unitOfPlace(Entry entry) {
        if (entry instanceof TurnEntry.Datum datum) {
            return datum.shaftAngle().isEmpty()
                    ? unit(datum.plusMinus(), row(Optional.of(datum.row())))
                    : Optional.empty();
        }
        return entry instanceof Entry.Placing placing ? unit(placing.plusMinus(), inView()) : Optional.empty();
    }

    private Optional<Row> inView() {
        return before.situation().lastSeat().map(Seat::row);
    }

    /** The row that is named, else the one in view. */
    private Optional<Row> row(Optional<Said<String>> named) {
        return named.isPresent()
                ? Optional.of(before.situation().engine().rows().get(named.get().value()))
                : inView();
    }

    private Optional<Doubt> unit(Optional<BigDecimal> plusMinus, Optional<Row> row) {
        boolean said = UNIT_SAID.matcher(logged.text()).find();
        return plusMinus
                .filter(number -> number.signum() != 0 && !said)
                .flatMap(number -> row.map(counted -> new Doubt(Kind.UNIT, counted, number, Engine.pitch(counted))));
    }

    private Optional<Doubt> lostCount() {
        return after.countErrorsSince(before.situation()).stream()
                .filter(CountError::lost)
                .findFirst()
                .map(error -> new Doubt(Kind.LOST, after.engine().rows().get(error.row()), error.airfoils()));
    }

    private Optional<Doubt> wraps(Entry entry) {
        if (!(entry instanceof Entry.OfAirfoils of)
                || of.airfoils().first().isEmpty()
                || of.airfoils().last().isEmpty()) {
            return Optional.empty();
        }
        Entry.Airfoils airfoils = of.airfoils();
        int first = airfoils.first().get().value();
        int last = airfoils.last().get().value();
        return row(of.row()).filter(row -> first > last).map(row -> {
            BitSet run = new BitSet(row.count());
            run.set(first - 1, row.count());
            run.set(0, last);
            return new Doubt(Kind.WRAPS, row, first, last, run.cardinality(), run);
        });
    }

    /** What is accepted, always; and whether views can show it, or the reason tells nobody why. */
    private List<Doubt> accepting(FindingEntry.NoAccess noAccess) {
        List<Doubt> doubts = new ArrayList<>();
        Coverage coverage = seen.get();
        for (Remark remark : after.ledger().remarks()) {
            if (remark.entry() == logged.number()) {
                Acceptance acceptance = Acceptance.of(coverage, remark);
                if (acceptance.cells() == 0 && remark.what() == Remark.What.ACCEPTED_UNSHOWN) {
                    continue;
                }
                Row row = after.engine().rows().get(remark.row());
                doubts.add(new Doubt(Kind.ACCEPTS, row, acceptance.cells(), remark.airfoils(), acceptance.canBeSeen()));
                if (acceptance.givenAway() > 0) {
                    doubts.add(new Doubt(
                            Kind.ACCEPTS_SHOWN,
                            row,
                            acceptance.cells(),
                            acceptance.givenAway(),
                            String.join(", ", acceptance.through())));
                }
            }
        }
        if (doubts.isEmpty()) {
            doubts.add(new Doubt(Kind.ACCEPTS_NOTHING));
        }
        if (!new ReasonGiven(noAccess.reason()).says()) {
            doubts.add(new Doubt(Kind.REASON, noAccess.reason()));
        }
        return doubts;
    }

    /** Nobody said that the scope is out, so the way in that it went last may still hold it. */
    private Optional<Doubt> scopeIn(String thing) {
        return before.situation()
                .seat()
                .filter(seat -> seat.view().port().filter(thing::equals).isPresent())
                .map(seat -> new Doubt(Kind.SCOPE_IN, thing, seat.view().id()));
    }

    private Optional<Doubt> asksFor(Optional<Row> row) {
        return row.flatMap(of -> {
            ZoneSet all = after.engine().zonings().get(of.id()).all();
            ZoneSet asked = after.ledger().asked().getOrDefault(of.id(), all);
            return asked.equals(all)
                    ? Optional.empty()
                    : Optional.of(new Doubt(Kind.ASKS_FOR, of, asked, all.minus(asked)));
        });
    }
}
