package everyblade.core.turning;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.Optional;

/** Entries that say something about single cells, or ask for some. */
final class Remarking {

    private Remarking() {}

    static Step judge(Situation now, int number, Entry entry) throws Refusal {
        Ledger ledger = now.ledger();
        if (entry instanceof Entry.Find find) {
            Row row = row(now, find.row(), find.airfoil().column());
            return new Step(now.noted(ledger.remarked(new Remark(
                    number,
                    Remark.What.FOUND,
                    row.id(),
                    one(row, find.airfoil()),
                    ZoneWords.zone(zoning(now, row), find.zone())))));
        }
        if (entry instanceof Entry.Recheck recheck) {
            Row row = row(now, recheck.row(), recheck.airfoil().column());
            ZoneSet zones = ZoneWords.opening(zoning(now, row), recheck.rest().value())
                    .orElse(zoning(now, row).all());
            String what =
                    "recheck " + row.kind().airfoil() + " " + recheck.airfoil().value() + " of " + row.id();
            return new Step(now.noted(ledger.remarked(
                            new Remark(number, Remark.What.RECHECK, row.id(), one(row, recheck.airfoil()), zones))
                    .questioned(
                            number,
                            recheck.rest().value().isBlank()
                                    ? what
                                    : what + ": " + recheck.rest().value())));
        }
        if (entry instanceof Entry.Photo photo) {
            if (photo.airfoil().isPresent()) {
                Row row = row(now, Optional.empty(), photo.airfoil().get().column());
                one(row, photo.airfoil().get());
                if (photo.zone().isPresent()) {
                    ZoneWords.zone(zoning(now, row), photo.zone().get());
                }
            }
            return new Step(now);
        }
        if (entry instanceof Entry.Saw saw) {
            Row row = row(now, saw.row(), saw.zone().column());
            return new Step(now.noted(ledger.remarked(new Remark(
                    number,
                    Remark.What.STATED,
                    row.id(),
                    run(row, saw.airfoils()),
                    ZoneWords.zone(zoning(now, row), saw.zone())))));
        }
        if (entry instanceof Entry.NoAccess noAccess) {
            Row row = row(now, noAccess.row(), noAccess.zone().column());
            return new Step(now.noted(ledger.remarked(new Remark(
                    number,
                    Remark.What.ACCEPTED,
                    row.id(),
                    run(row, noAccess.airfoils()),
                    ZoneWords.zone(zoning(now, row), noAccess.zone())))));
        }
        Entry.Ask ask = (Entry.Ask) entry;
        Row row = row(now, Optional.of(ask.row()), ask.row().column());
        return new Step(now.noted(ledger.asking(row.id(), ZoneWords.parts(zoning(now, row), ask.parts()))));
    }

    /** The row that is named, else the row in view. */
    static Row row(Situation now, Optional<Said<String>> said, int column) throws Refusal {
        if (said.isEmpty()) {
            return Seating.seat(now, column).row();
        }
        return Seating.named(
                said.get(),
                "row",
                Optional.ofNullable(now.engine().rows().get(said.get().value())),
                java.util.List.copyOf(now.engine().rows().keySet()));
    }

    /** The number of an airfoil, checked against its row. */
    static int airfoil(Row row, Said<Integer> said) throws Refusal {
        if (said.value() < 1 || said.value() > row.count()) {
            throw new Refusal(
                    said.column(),
                    "row " + row.id() + " has " + row.kind().airfoil() + "s 1 to " + row.count() + ", no "
                            + said.value());
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
