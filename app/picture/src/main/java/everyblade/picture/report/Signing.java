package everyblade.picture.report;

import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;

/** Who signed the record, on the first page; what nobody signed is left blank for a pen. */
final class Signing {

    private Signing() {}

    /** A line for each signature; one that counts for nothing, or does not cover all, or sends back, must not be overlooked. */
    static List<PageWords> lines(Reported job) {
        return job.facts().signatures().stream()
                .map(signed -> line(job, signed))
                .toList();
    }

    private static PageWords line(Reported job, SignedAccount signed) {
        if (!signed.wrong().isEmpty()) {
            return PageWords.alert(job.say("signed.wrong", signed.number(), String.join("; ", signed.wrong())));
        }
        String who = signed.told() + " " + signed.name()
                + signed.licence().map(licence -> ", " + licence).orElse("")
                + signed.at().map(at -> ", " + Telling.minute(at) + " UTC").orElse("")
                + signed.because()
                        .map(why -> ", " + job.say("signed.because", why))
                        .orElse("");
        if (signed.after() > 0) {
            return PageWords.alert(job.say("signed.covers", signed.number(), who, signed.covers(), signed.after()));
        }
        String all = job.say("signed.all", signed.number(), who);
        return signed.because().isPresent() ? PageWords.alert(all) : PageWords.of(all);
    }

    /** One row for each signature, and a blank one for each role that nobody signed in. */
    static List<List<Cell>> rows(Reported job) {
        List<SignedAccount> signatures = job.facts().signatures();
        List<List<Cell>> rows = new ArrayList<>();
        signatures.forEach(signed -> rows.add(row(job, signed)));
        if (none(signatures, true)) {
            rows.add(blank(job.say("signed.inspected")));
        }
        if (none(signatures, false)) {
            rows.add(blank(job.say("signed.reviewed")));
        }
        return rows;
    }

    private static boolean none(List<SignedAccount> signatures, boolean inspector) {
        return signatures.stream()
                .noneMatch(signed ->
                        signed.inspector() == inspector && signed.wrong().isEmpty());
    }

    private static List<Cell> row(Reported job, SignedAccount signed) {
        if (!signed.wrong().isEmpty()) {
            return List.of(
                    Cell.of(PageWords.struck(signed.told())),
                    Cell.of(PageWords.struck(signed.name())),
                    Cell.of(""),
                    Cell.of(PageWords.alert(job.say("signed.forNothing", signed.number()))),
                    Cell.of(""));
        }
        return List.of(
                Cell.of(PageWords.faint(signed.told())),
                Cell.of(signed.name()),
                Cell.of(signed.licence().map(PageWords::of).orElse(PageWords.alert(job.say("signed.noLicence")))),
                Cell.of(
                        PageWords.of(job.say("signed.key", signed.number(), signed.shortKey())),
                        signed.after() == 0
                                ? PageWords.faint(job.say("signed.coversAll"))
                                : PageWords.alert(job.say("signed.after", signed.after()))),
                Cell.of(signed.at().map(Telling::minute).orElse("")));
    }

    private static List<Cell> blank(String role) {
        Cell blank = Cell.of("");
        return List.of(Cell.of(PageWords.faint(role), PageWords.of(" ")), blank, blank, blank, blank);
    }
}
