package everyblade.session.job;

import everyblade.core.finding.Figure;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Ruling;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/** What entered limits say, in their own words, the same wherever it is told. */
public final class VerdictText {

    /** What is said where a job has no limits. */
    public static final String NO_LIMITS =
            "No limits were entered, so nothing is judged; the manual in force says what is within limits.";

    private VerdictText() {}

    /** Whose limits these are. */
    public static String source(Limits limits) {
        return "Limits: " + limits.name()
                + limits.manual().map(manual -> ", from " + manual).orElse("")
                + limits.revision().map(revision -> ", revision " + revision).orElse("") + "."
                + limits.notice().map(notice -> " " + notice).orElse("");
    }

    /** Each rule that is on a finding with its outcome, and below it, indented, the figures that led to that. */
    public static List<String> rulings(Judgement judgement, Words words) {
        List<String> lines = new ArrayList<>();
        for (Ruling ruling : judgement.rulings()) {
            lines.add("rule " + ruling.rule().id() + ": " + words.say(ruling.verdict()) + ": "
                    + words.say(ruling.outcome())
                    + ruling.again()
                            .map(again -> "; again in " + words.say(again))
                            .orElse(""));
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
