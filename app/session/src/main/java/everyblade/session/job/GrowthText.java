package everyblade.session.job;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Measured;
import everyblade.core.finding.Repeat;
import everyblade.core.finding.growth.Growth;
import everyblade.core.finding.growth.Matching;
import everyblade.core.finding.growth.Usage;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What became of the findings since the last record, for people, one line each. */
public final class GrowthText {

    private static final int DECIMALS = 3;

    private GrowthText() {}

    public static List<String> of(OpenedJob now, OpenedJob then, Words words) {
        Matching matching = Matching.of(Findings.of(then.fold()), Findings.of(now.fold()));
        Optional<Usage.Run> run = Usage.of(now.fold()).since(Usage.of(then.fold()));
        List<String> lines = new ArrayList<>();
        lines.add(words.say(
                "growth.since", then.beginning().at(), run.map(known -> new Repeat(known.number(), known.interval()))));
        for (Matching.Pair pair : matching.pairs()) {
            for (Growth growth : Growth.of(pair)) {
                lines.add("  "
                        + words.say(
                                "growth.pair",
                                pair.now().entry(),
                                pair.then().entry(),
                                growth.dimension(),
                                size(growth.then(), words),
                                size(growth.now(), words),
                                size(growth.amount(), words),
                                growth.trend(),
                                run.map(known -> rate(growth, known, words))));
            }
        }
        matching.fresh().forEach(finding -> lines.add("  " + words.say("growth.fresh", finding.entry())));
        matching.missing()
                .forEach(finding -> lines.add("  "
                        + words.say(
                                "growth.missing",
                                finding.kind(),
                                finding.row().id(),
                                words.airfoil(finding.row()),
                                finding.airfoil(),
                                finding.entry())));
        return lines;
    }

    private static String size(Measured size, Words words) {
        return words.say(size.value().shown(LengthUnit.MM, DECIMALS))
                + size.plusMinus()
                        .map(plusMinus -> " ± " + words.say(plusMinus.shown(LengthUnit.MM, DECIMALS)))
                        .orElse("");
    }

    private static String rate(Growth growth, Usage.Run run, Words words) {
        OptionalDouble error = growth.rateError(run);
        return words.say(
                "growth.rate",
                100 * growth.rate(run),
                error.isEmpty() ? error : OptionalDouble.of(100 * error.getAsDouble()),
                run.interval());
    }
}
