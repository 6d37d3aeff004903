package everyblade.window;

import everyblade.core.finding.Finding;
import everyblade.practice.account.Burst;
import everyblade.practice.account.Burst.Tally;
import everyblade.practice.account.Glance;
import everyblade.practice.drill.Hands.Moment;
import everyblade.practice.harm.Harm;
import everyblade.session.drill.DrillText;
import everyblade.window.view.Practising;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/** What is told during a burst: of each call what it is worth, of damage that went by what it was, and how each burst went. */
final class BurstTelling {

    private final Practising practising;
    private final Words words;
    private final Burst burst;
    private final Glance glance;
    private Tally before;

    BurstTelling(Practising practising, Words words) {
        this.practising = practising;
        this.words = words;
        this.burst = practising.burst();
        this.glance = practising.glance();
        this.before = burst.tally();
    }

    /** What is in the picture; behind the door of the eye. */
    Glance.Harms look(Moment moment) {
        return glance.at(moment);
    }

    /** After a call that was answered so. */
    List<String> called(String answer, List<Finding> findings) {
        burst.called(findings);
        return withTally(new ArrayList<>(List.of(answer)));
    }

    /** After this was in the picture for some seconds. */
    List<String> saw(Glance.Harms seen, double stood, List<Finding> findings) {
        burst.called(findings);
        List<String> lines = new ArrayList<>();
        for (int index : burst.saw(seen, stood)) {
            practising.told(index);
            Harm harm = practising.truth().harms().get(index);
            lines.add(words.say(
                    "drill.passed",
                    words.say(harm.kind().called().orElseThrow()),
                    words.number(harm.size(), 2),
                    harm.row(),
                    new DrillText(words).airfoil(practising.drill().row(harm), harm.airfoil()),
                    new DrillText(words).zone(harm),
                    words.number(burst.seconds(index), 1)));
        }
        return lines.isEmpty() ? lines : withTally(lines);
    }

    private List<String> withTally(List<String> lines) {
        Tally now = burst.tally();
        if (now.answers() / Burst.SIZE > before.answers() / Burst.SIZE) {
            lines.add(
                    words.say("drill.burst", now.answers(), now.called(), now.passed(), now.falseCalls(), Burst.SIZE));
        }
        before = now;
        return lines;
    }
}
