package everyblade.session.job;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Measured;
import everyblade.core.finding.growth.Growth;
import everyblade.core.finding.growth.Matching;
import everyblade.core.finding.growth.Usage;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What became of the findings since the last record, for people, one line each. */
public final class GrowthText {

    private static final int DECIMALS = 3;

    private GrowthText() {}

    public static List<String> of(OpenedJob now, OpenedJob then, Words words) {
        Matching matching = Matching.of(Findings.of(then.fold()), Findings.of(now.fold()));
        Optional<Usage.Run> run = Usage.of(now.fold()).since(Usage.of(then.fold()));
        List<String> lines = new ArrayList<>();
        lines.add("Since the last record, of " + then.beginning().at()
                + run.map(known -> ", " + known.number().stripTrailingZeros().toPlainString() + " "
                                + known.interval().name().toLowerCase(Locale.ROOT) + " ago")
                        .orElse("")
                + ":");
        for (Matching.Pair pair : matching.pairs()) {
            for (Growth growth : Growth.of(pair)) {
                lines.add("  entry " + pair.now().entry() + " (then "
                        + pair.then().entry() + "): "
                        + words.say(growth.dimension()) + " from " + size(growth.then(), words) + " to "
                        + size(growth.now(), words)
                        + ", by " + size(growth.amount(), words) + ": "
                        + words.say(growth.trend())
                        + run.map(known -> rate(growth, known)).orElse(""));
            }
        }
        matching.fresh().forEach(finding -> lines.add("  entry " + finding.entry() + ": not in the last record"));
        matching.missing().forEach(finding -> lines.add("  not entered now: " + told(finding, words)));
        return lines;
    }

    private static String told(Finding finding, Words words) {
        return words.say(finding.kind()) + ", " + finding.row().id() + ", "
                + finding.row().kind().airfoil() + " " + finding.airfoil() + " (entry " + finding.entry() + " then)";
    }

    private static String size(Measured size, Words words) {
        return words.say(size.value().shown(LengthUnit.MM, DECIMALS))
                + size.plusMinus()
                        .map(plusMinus -> " ± " + words.say(plusMinus.shown(LengthUnit.MM, DECIMALS)))
                        .orElse("");
    }

    private static String rate(Growth growth, Usage.Run run) {
        String unit = " mm per 100 " + run.interval().name().toLowerCase(Locale.ROOT);
        return String.format(Locale.ROOT, "; %.4f", 100 * growth.rate(run))
                + (growth.rateError(run).isEmpty()
                        ? ""
                        : String.format(
                                Locale.ROOT,
                                " ± %.4f",
                                100 * growth.rateError(run).getAsDouble()))
                + unit;
    }
}
