package everyblade.session.job;

import everyblade.core.finding.Figure;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Ruling;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What entered limits say, in their own words, the same wherever it is told. */
public final class VerdictText {

    private VerdictText() {}

    /** Whose limits these are, or what it means that there are none. */
    public static String source(Optional<Limits> limits, Words words) {
        return limits.map(known ->
                        words.say("limits.source", known.name(), known.manual(), known.revision(), known.notice()))
                .orElseGet(() -> words.say("limits.noneEntered"));
    }

    /** Each rule that is on a finding with its outcome, and below it, indented, the figures that led to that. */
    public static List<String> rulings(Judgement judgement, Words words) {
        List<String> lines = new ArrayList<>();
        for (Ruling ruling : judgement.rulings()) {
            lines.add(words.say("limits.rule", ruling.rule().id(), ruling.verdict(), ruling.outcome(), ruling.again()));
            ruling.figures().forEach(figure -> lines.add("  " + figure(figure, words)));
        }
        return lines;
    }

    private static String figure(Figure figure, Words words) {
        return words.say(figure.what()) + ": " + words.say(figure.value()) + "; " + words.say(figure.limit())
                + figure.margin().map(margin -> "; " + words.say(margin)).orElse("") + ": "
                + words.say(figure.verdict());
    }
}
