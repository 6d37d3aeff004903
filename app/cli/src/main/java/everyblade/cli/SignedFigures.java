package everyblade.cli;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Headline;
import everyblade.core.finding.Findings;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.session.job.OpenedJob;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The figures that stand in a signature: those with which every answer begins, in words and always in English. */
final class SignedFigures {

    private SignedFigures() {}

    /** Each by its name, in the order in which they are told. */
    static Map<String, String> of(OpenedJob job, Coverage coverage) {
        Map<String, String> all = new LinkedHashMap<>();
        for (Basis basis : Basis.values()) {
            if (coverage.tally(basis).cells() > 0) {
                Headline headline = coverage.headline(basis);
                ShareFigures figures = new ShareFigures(headline, MapWords.of(Locale.ENGLISH));
                all.put(
                        basis.word() + ", left of what these views can show",
                        figures.left() + ", " + headline.left() + " of " + headline.within() + " cells");
                all.put(basis.word() + ", surface seen", figures.seen());
                all.put(basis.word() + ", surface that no view shows", figures.beyond());
            }
        }
        all.put("findings", "" + Findings.of(job.fold()).size());
        all.put("open", "" + job.closing(coverage).items().size());
        all.put("count", coverage.lostCount() ? "lost" : "not lost");
        return all;
    }

    /** All in one line. */
    static String line(Map<String, String> figures) {
        return String.join(
                "; ",
                figures.entrySet().stream()
                        .map(figure -> figure.getKey() + " " + figure.getValue())
                        .toList());
    }
}
