package everyblade.picture.report;

import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Words;
import java.util.ArrayList;
import java.util.List;

/** Who signed the record, on the first page; what nobody signed is left blank for a pen. */
final class Signing {

    private Signing() {}

    /** A line for each signature; one that counts for nothing, or does not cover all, or sends back, must not be overlooked. */
    static List<Words> lines(List<Signed> signatures) {
        return signatures.stream().map(Signing::line).toList();
    }

    private static Words line(Signed signed) {
        String begins = "Signature " + signed.number() + ": ";
        if (!signed.wrong().isEmpty()) {
            return Words.alert(begins + "counts for nothing: " + String.join("; ", signed.wrong()) + ".");
        }
        String who = begins + signed.told() + " " + signed.name()
                + signed.licence().map(licence -> ", " + licence).orElse("")
                + signed.at().map(at -> ", " + Telling.minute(at) + " UTC").orElse("")
                + signed.because().map(why -> ", because " + why).orElse("") + "; ";
        if (signed.after() > 0) {
            return Words.alert(who + "it covers the first " + Telling.count(signed.covers(), "entry") + ", and "
                    + Telling.count(signed.after(), "entry") + " came after it.");
        }
        return signed.because().isPresent()
                ? Words.alert(who + "it covers every entry.")
                : Words.of(who + "it covers every entry.");
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
