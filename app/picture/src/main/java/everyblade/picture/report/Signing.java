package everyblade.picture.report;

import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;

/** Who signed the record, on the first page; what nobody signed is left blank for a pen. */
final class Signing {

    private Signing() {}

    /** A line for each signature; one that counts for nothing, or does not cover all, or sends back, must not be overlooked. */
    static List<PageWords> lines(List<SignedAccount> signatures) {
        return signatures.stream().map(Signing::line).toList();
    }

    private static PageWords line(SignedAccount signed) {
        String begins = "Signature " + signed.number() + ": ";
        if (!signed.wrong().isEmpty()) {
            return PageWords.alert(begins + "counts for nothing: " + String.join("; ", signed.wrong()) + ".");
        }
        String who = begins + signed.told() + " " + signed.name()
                + signed.licence().map(licence -> ", " + licence).orElse("")
                + signed.at().map(at -> ", " + Telling.minute(at) + " UTC").orElse("")
                + signed.because().map(why -> ", because " + why).orElse("") + "; ";
        if (signed.after() > 0) {
            return PageWords.alert(who + "it covers the first " + Telling.count(signed.covers(), "entry") + ", and "
                    + Telling.count(signed.after(), "entry") + " came after it.");
        }
        return signed.because().isPresent()
                ? PageWords.alert(who + "it covers every entry.")
                : PageWords.of(who + "it covers every entry.");
    }

    /** One row for each signature, and a blank one for each role that nobody signed in. */
    static List<List<Cell>> rows(List<SignedAccount> signatures) {
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

    private static boolean none(List<SignedAccount> signatures, boolean inspector) {
        return signatures.stream()
                .noneMatch(signed ->
                        signed.inspector() == inspector && signed.wrong().isEmpty());
    }

    private static List<Cell> row(SignedAccount signed) {
        if (!signed.wrong().isEmpty()) {
            return List.of(
                    Cell.of(PageWords.struck(signed.told())),
                    Cell.of(PageWords.struck(signed.name())),
                    Cell.of(""),
                    Cell.of(PageWords.alert("signature " + signed.number() + " counts for nothing")),
                    Cell.of(""));
        }
        return List.of(
                Cell.of(PageWords.faint(signed.told())),
                Cell.of(signed.name()),
                Cell.of(signed.licence().map(PageWords::of).orElse(PageWords.alert("not stated"))),
                Cell.of(
                        PageWords.of("no. " + signed.number() + ", key " + signed.shortKey()),
                        signed.after() == 0
                                ? PageWords.faint("covers every entry")
                                : PageWords.alert(Telling.count(signed.after(), "entry") + " after it")),
                Cell.of(signed.at().map(Telling::minute).orElse("")));
    }

    private static List<Cell> blank(String role) {
        Cell blank = Cell.of("");
        return List.of(Cell.of(PageWords.faint(role), PageWords.of(" ")), blank, blank, blank, blank);
    }
}
