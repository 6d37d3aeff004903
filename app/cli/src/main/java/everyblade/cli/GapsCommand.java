package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Explained;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.growth.LeftAgain;
import everyblade.core.gap.Gap;
import everyblade.core.gap.GapGroups;
import everyblade.core.gap.Gaps;
import everyblade.core.gap.ToldGap;
import everyblade.core.turning.Fold;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.words.Words;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what is left, and how to see it. */
@Command(name = "gaps", description = "${bundle:help.gaps}")
final class GapsCommand implements Callable<Integer> {

    /** So many gaps, with what they are grouped by and the figures, are read without scrolling. */
    private static final int SCREENFUL = 20;

    private final Surroundings around;
    /** All that was said. */
    private final Supplier<List<String>> question;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--all", description = "${bundle:help.gaps.all}")
    private boolean all;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    @Option(names = "--csv", description = "${bundle:help.gaps.csv}")
    private boolean csv;

    GapsCommand(Surroundings around) {
        this.around = around;
        this.question = () -> Commands.question(spec);
    }

    /** Asked no more than this. */
    GapsCommand(Surroundings around, ShortLine asked) {
        this.around = around;
        this.job = asked.job();
        this.json = asked.json();
        this.question = asked::question;
    }

    @Override
    public Integer call() {
        Csv.requireOnly(json && csv);
        return OpenedJob.answer(around, job, Optional.empty(), question.get(), this::tell);
    }

    private int tell(OpenedJob opened, PrintStream out) {
        Coverage coverage = opened.coverage();
        List<LeftAgain.Left> gaps = left(opened, Gaps.of(coverage));
        if (csv) {
            out.print(CellTables.gaps(gaps));
        } else if (json) {
            out.println(JsonText.of(json(gaps)));
        } else {
            text(gaps, opened.fold(), coverage, out);
        }
        return gaps.isEmpty() ? Commands.FINE : Commands.NOT_COMPLETE;
    }

    /** The gaps; those that were not seen in the last record either come first. */
    private static List<LeftAgain.Left> left(OpenedJob opened, List<Gap> gaps) {
        return opened.previous()
                .map(then -> LeftAgain.first(gaps, then.coverage()))
                .orElseGet(() ->
                        gaps.stream().map(gap -> new LeftAgain.Left(gap, false)).toList());
    }

    private void text(List<LeftAgain.Left> gaps, Fold fold, Coverage coverage, PrintStream out) {
        if (gaps.isEmpty()) {
            out.println(NothingLeft.told(fold, coverage, around.words()));
            new CoverageText(around.words()).figures(coverage).forEach(out::println);
            return;
        }
        int number = 0;
        List<GapGroups.Group<LeftAgain.Left>> groups = GapGroups.of(coverage.situation(), gaps, LeftAgain.Left::gap);
        boolean byPort = groups.size() > 1
                && groups.stream().anyMatch(group -> group.port().isPresent());
        for (GapGroups.Group<LeftAgain.Left> group : groups) {
            if (byPort && (all || number < SCREENFUL)) {
                out.println(OneLine.of(told(group)));
            }
            for (LeftAgain.Left left : group.gaps()) {
                number++;
                if (all || number <= SCREENFUL) {
                    ToldGap.Sentence gap = new ToldGap.Sentence(ToldGap.of(left.gap()), left.lastTimeToo());
                    out.println(number + ". " + OneLine.of(around.words().say(gap)));
                }
            }
        }
        if (!all && number > SCREENFUL) {
            out.println(around.words().say("gaps.more", number - SCREENFUL));
        }
        gaps.stream()
                .map(left -> left.gap().row())
                .distinct()
                .flatMap(row -> coverage.sights().unidentified(row).stream())
                .distinct()
                .forEach(row -> out.println(around.words().say(Explained.Unidentified.of(row))));
        int cells = gaps.stream()
                .map(LeftAgain.Left::gap)
                .mapToInt(gap -> gap.airfoils().size() * gap.zones().size())
                .sum();
        out.println(around.words().say("gaps.left", gaps.size(), cells));
    }

    private String told(GapGroups.Group<LeftAgain.Left> group) {
        Words words = around.words();
        return group.view()
                .map(view -> group.port()
                        .map(port -> words.say("gaps.throughPort", port.name(), port.id(), view.id()))
                        .orElseGet(() -> words.say("gaps.throughView", view.id())))
                .orElseGet(() -> words.say("gaps.outOfReach"));
    }

    private static ObjectNode json(List<LeftAgain.Left> gaps) {
        ObjectNode json = JsonText.object();
        ArrayNode list = json.putArray("gaps");
        for (LeftAgain.Left left : gaps) {
            ObjectNode one = json(left.gap());
            if (left.lastTimeToo()) {
                one.put("lastTimeToo", true);
            }
            list.add(one);
        }
        return json;
    }

    private static ObjectNode json(Gap gap) {
        ObjectNode json = JsonText.object();
        json.put("row", gap.row().id());
        gap.airfoils().forEach(json.putArray("airfoils")::add);
        List<String> names = Zoning.of(gap.row()).names();
        ArrayNode zones = json.putArray("zones");
        for (int zone = 0; zone < names.size(); zone++) {
            if (gap.zones().contains(zone)) {
                zones.add(names.get(zone));
            }
        }
        json.put("state", gap.state().word());
        json.put("why", gap.why().word());
        gap.reach().ifPresentOrElse(reach -> json.set("reach", json(reach)), () -> json.putNull("reach"));
        return json;
    }

    /** Of a row that stands still the scope tip is drawn, and no shaft turned. */
    private static ObjectNode json(Gap.Reach reach) {
        ObjectNode json = JsonText.object();
        json.put("view", reach.view());
        json.put("station", reach.station().orElse(null));
        if (reach.drawn()) {
            json.putNull("turnTo");
            json.put("drawTo", JsonText.position(reach.from()));
        } else {
            json.put("turnTo", JsonText.position(reach.from()));
        }
        json.put("sweep", JsonText.degrees(reach.sweep()));
        return json;
    }
}
