package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Entries that say something about single cells, or ask for some. */
final class CellEntries {

    private static final Pattern OF_ROW = Pattern.compile("(?iU)of\\s+(\\S+?)[,:;]?(\\s.*)?");

    static final Rules RULES = Rules.NONE
            .and(FindingEntry.Find.class, CellEntries::find)
            .and(FindingEntry.Recheck.class, CellEntries::recheck)
            .and(FindingEntry.Photo.class, CellEntries::photo)
            .and(FindingEntry.Saw.class, CellEntries::saw)
            .and(FindingEntry.NoAccess.class, CellEntries::accepted)
            .and(FindingEntry.Ask.class, CellEntries::ask);

    private CellEntries() {}

    private static EntryEffect find(Moment moment, FindingEntry.Find find) throws Refusal {
        Situation now = moment.now();
        Row row = row(now, find.row(), find.airfoil().column());
        return new EntryEffect(now.noted(now.ledger()
                .remarked(new Remark(
                        moment.number(),
                        Remark.What.FOUND,
                        row.id(),
                        one(row, find.airfoil()),
                        ZoneWords.zone(zoning(now, row), find.zone())))));
    }

    private static EntryEffect recheck(Moment moment, FindingEntry.Recheck recheck) throws Refusal {
        Situation now = moment.now();
        int number = moment.number();
        Rest rest = rest(now, recheck);
        Row row = row(now, rest.row(), recheck.airfoil().column());
        ZoneSet zones = ZoneWords.opening(zoning(now, row), rest.text())
                .orElse(zoning(now, row).all());
        Question again = new Question.Recheck(
                row.kind(),
                recheck.airfoil().value(),
                row.id(),
                Optional.of(rest.text()).filter(text -> !text.isBlank()));
        return new EntryEffect(now.noted(now.ledger()
                .remarked(new Remark(number, Remark.What.RECHECK, row.id(), one(row, recheck.airfoil()), zones))
                .questioned(number, again)));
    }

    private static EntryEffect photo(Moment moment, FindingEntry.Photo photo) throws Refusal {
        Situation now = moment.now();
        if (photo.airfoil().isPresent()) {
            Row row = row(now, Optional.empty(), photo.airfoil().get().column());
            one(row, photo.airfoil().get());
            if (photo.zone().isPresent()) {
                ZoneWords.zone(zoning(now, row), photo.zone().get());
            }
        }
        return new EntryEffect(now);
    }

    private static EntryEffect saw(Moment moment, FindingEntry.Saw saw) throws Refusal {
        Situation now = moment.now();
        Row row = row(now, saw.row(), saw.zone().column());
        return new EntryEffect(now.noted(now.ledger()
                .remarked(new Remark(
                        moment.number(),
                        Remark.What.STATED,
                        row.id(),
                        run(row, saw.airfoils()),
                        ZoneWords.zone(zoning(now, row), saw.zone())))));
    }

    private static EntryEffect ask(Moment moment, FindingEntry.Ask ask) throws Refusal {
        Situation now = moment.now();
        Row row = row(now, Optional.of(ask.row()), ask.row().column());
        return new EntryEffect(now.noted(
                now.ledger().asking(row.id(), ZoneWords.asked(zoning(now, row), ask.parts()), moment.number())));
    }

    /** What no view shows is accepted of every row, unless one is named or its airfoils are. */
    private static EntryEffect accepted(Moment moment, FindingEntry.NoAccess said) throws Refusal {
        Situation now = moment.now();
        boolean unshown = ZoneWords.isUnshown(said.zone().value());
        boolean everywhere =
                unshown && said.row().isEmpty() && said.airfoils().first().isEmpty();
        List<Row> rows = everywhere
                ? List.copyOf(now.engine().rows().values())
                : List.of(row(now, said.row(), said.zone().column()));
        Ledger ledger = now.ledger();
        for (Row row : rows) {
            ledger = ledger.remarked(new Remark(
                    moment.number(),
                    unshown ? Remark.What.ACCEPTED_UNSHOWN : Remark.What.ACCEPTED,
                    row.id(),
                    run(row, said.airfoils()),
                    unshown ? zoning(now, row).all() : ZoneWords.zone(zoning(now, row), said.zone())));
        }
        return new EntryEffect(now.noted(ledger));
    }

    /**
     * What follows the number of a recheck.
     *
     * @param row that is named before the number, or behind it as in {@code 7 of c2}; {@code of} anything else is text
     */
    private record Rest(Optional<Said<String>> row, String text) {}

    private static Rest rest(Situation now, FindingEntry.Recheck recheck) {
        String text = recheck.rest().value();
        Matcher matcher = OF_ROW.matcher(text);
        if (recheck.row().isPresent()
                || !matcher.matches()
                || !now.engine().rows().containsKey(matcher.group(1))) {
            return new Rest(recheck.row(), text);
        }
        return new Rest(
                Optional.of(new Said<>(matcher.group(1), recheck.rest().column())),
                Optional.ofNullable(matcher.group(2)).orElse("").strip());
    }

    /** The row that is named, else the row in view, or that was in view last. */
    static Row row(Situation now, Optional<Said<String>> said, int column) throws Refusal {
        if (said.isEmpty()) {
            // A finding is written up when the scope is out, too.
            return now.lastSeat().isPresent()
                    ? now.lastSeat().get().row()
                    : ViewEntries.seat(now, column).row();
        }
        return ViewEntries.named(
                said.get(),
                SeatProblem.Named.ROW,
                Optional.ofNullable(now.engine().rows().get(said.get().value())),
                List.copyOf(now.engine().rows().keySet()));
    }

    /** The number of an airfoil, checked against its row. */
    static int airfoil(Row row, Said<Integer> said) throws Refusal {
        if (said.value() < 1 || said.value() > row.count()) {
            throw new Refusal(
                    said.column(), new EntryProblem.NoAirfoil(row.id(), row.kind(), row.count(), said.value()));
        }
        return said.value();
    }

    private static Zoning zoning(Situation now, Row row) {
        return now.engine().zonings().get(row.id());
    }

    private static BitSet one(Row row, Said<Integer> said) throws Refusal {
        BitSet set = new BitSet(row.count());
        set.set(airfoil(row, said) - 1);
        return set;
    }

    private static BitSet run(Row row, Entry.Airfoils airfoils) throws Refusal {
        BitSet set = new BitSet(row.count());
        if (airfoils.first().isEmpty()) {
            set.set(0, row.count());
            return set;
        }
        int first = airfoil(row, airfoils.first().get());
        int last = airfoils.last().isPresent() ? airfoil(row, airfoils.last().get()) : first;
        for (int n = first; ; n = n % row.count() + 1) {
            set.set(n - 1);
            if (n == last) {
                return set;
            }
        }
    }
}
