package everyblade.session.job;

import everyblade.core.finding.Figure;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Ruling;
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
    public static List<String> rulings(Judgement judgement) {
        List<String> lines = new ArrayList<>();
        for (Ruling ruling : judgement.rulings()) {
            lines.add("rule " + ruling.rule().id() + ": " + ruling.verdict().words() + ": " + ruling.outcome()
                    + ruling.again().map(again -> "; again in " + again.text()).orElse(""));
            ruling.figures().forEach(figure -> lines.add("  " + figure(figure)));
        }
        return lines;
    }

    private static String figure(Figure figure) {
        return figure.what() + ": " + figure.value() + "; " + figure.limit()
                + (figure.margin().isEmpty() ? "" : "; " + figure.margin()) + ": "
                + figure.verdict().words();
    }
}
