package everyblade.picture.report;

import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Words;
import java.util.ArrayList;
import java.util.List;

/** Who signed the record, on the first page; what nobody signed is left blank for a pen. */
final class Signing {

    private Signing() {}

    /** What must not be overlooked: a signature that counts for nothing, one that no longer covers all, one that sends back. */
    static List<String> alerts(List<Signed> signatures) {
        List<String> alerts = new ArrayList<>();
        for (Signed signed : signatures) {
            String which = "Signature " + signed.number() + " (" + signed.told() + " " + signed.name() + ")";
            if (!signed.wrong().isEmpty()) {
                alerts.add("Signature " + signed.number() + " counts for nothing: " + String.join("; ", signed.wrong())
                        + ".");
            } else if (signed.after() > 0) {
                alerts.add(which + " covers the first " + Telling.count(signed.covers(), "entry") + "; "
                        + Telling.count(signed.after(), "entry") + " came after it.");
            } else if (signed.because().isPresent()) {
                alerts.add(which + ": " + signed.because().get());
            }
        }
        return alerts;
    }

    /** One row for each signature, and a blank one for each role that nobody signed in. */
    static List<List<Cell>> rows(List<Signed> signatures) {
        List<List<Cell>> rows = new ArrayList<>();
        signatures.forEach(signed -> rows.add(row(signed)));
        if (none(signatures, true)) {
            rows.add(blank("inspected by"));
        }
        if (none(signatures, false)) {
            rows.add(blank("reviewed by"));
        }
        return rows;
    }

    private static boolean none(List<Signed> signatures, boolean inspector) {
        return signatures.stream()
                .noneMatch(signed ->
                        signed.inspector() == inspector && signed.wrong().isEmpty());
    }

    private static List<Cell> row(Signed signed) {
        if (!signed.wrong().isEmpty()) {
            return List.of(
                    Cell.of(Words.struck(signed.told())),
                    Cell.of(Words.struck(signed.name())),
                    Cell.of(""),
                    Cell.of(Words.alert("signature " + signed.number() + " counts for nothing")),
                    Cell.of(""));
        }
        return List.of(
                Cell.of(Words.faint(signed.told())),
                Cell.of(signed.name()),
                Cell.of(signed.licence().map(Words::of).orElse(Words.alert("not stated"))),
                Cell.of(
                        Words.of("no. " + signed.number() + ", key " + signed.shortKey()),
                        signed.after() == 0
                                ? Words.faint("covers every entry")
                                : Words.alert(Telling.count(signed.after(), "entry") + " after it")),
                Cell.of(signed.at().map(Telling::minute).orElse("")));
    }

    private static List<Cell> blank(String role) {
        Cell blank = Cell.of("");
        return List.of(Cell.of(Words.faint(role), Words.of(" ")), blank, blank, blank, blank);
    }
}
