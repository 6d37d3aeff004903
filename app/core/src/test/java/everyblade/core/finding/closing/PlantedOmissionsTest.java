package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.English;
import everyblade.core.finding.Limits;
import everyblade.core.finding.LimitsUnderTest;
import everyblade.core.finding.closing.OpenItem.Kind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Jobs made by chance in which everything is closed but for one thing, which somebody forgot. */
class PlantedOmissionsTest {

    private static final int JOBS = 500;

    /** A hand-over, a repeat that the limits ask for, the scope tip. */
    private static final Set<Integer> ONCE = Set.of(6, 9, 10);

    private static final Pattern LABEL = Pattern.compile("\\{(\\w+)}");

    /**
     * A line of a job.
     *
     * @param text in which {@code {x}} stands for the number of the line labelled x
     * @param label others refer to; empty for none
     */
    private record Line(String text, String label) {}

    /**
     * Lines that follow each other in this order, others between.
     *
     * @param forgotten how many of the last lines a person may forget
     * @param kind under which the list then names it
     * @param words with which
     */
    private record Episode(List<Line> lines, int forgotten, Kind kind, String words) {}

    private final Limits limits = limits();

    private static Limits limits() {
        LimitsUnderTest limits = new LimitsUnderTest();
        return limits.rule("nicks", "", "nick", "", LimitsUnderTest.again(limits.step("length 1"), 25))
                .built();
    }

    private static Episode episode(Kind kind, String words, int forgotten, String label, String... texts) {
        List<Line> lines = new ArrayList<>();
        for (String text : texts) {
            lines.add(new Line(text, lines.isEmpty() ? label : label + "x" + lines.size()));
        }
        return new Episode(lines, forgotten, kind, words);
    }

    private static List<Episode> episodes(SplittableRandom random) {
        List<Episode> all = new ArrayList<>();
        Set<Integer> used = new HashSet<>();
        int count = random.nextInt(4, 10);
        for (int i = 0; i < count; i++) {
            String name = "thing " + i;
            String blade = Integer.toString(random.nextInt(1, 13));
            String row = random.nextBoolean() ? "a" : "b";
            String x = "e" + i;
            int drawn = random.nextInt(11);
            // One such thing closed would close the other as well.
            int choice = ONCE.contains(drawn) && !used.add(drawn) ? 0 : drawn;
            all.add(
                    switch (choice) {
                        case 0 ->
                            episode(Kind.OPENING, name, 1, x, "open \"" + name + "\"", "shut \"" + name + "\" torqued");
                        case 1 -> episode(Kind.TOOL, name, 1, x, "tool out " + name, "tool in " + name);
                        case 2 -> episode(Kind.LOST, name, 1, x, "lost " + name, "settle {" + x + "} because found");
                        case 3 ->
                            episode(
                                    Kind.RECHECK,
                                    name,
                                    1,
                                    x,
                                    row + " recheck " + blade + " " + name,
                                    "settle {" + x + "} because looked again");
                        case 4 ->
                            episode(Kind.QUESTION, name, 1, x, "refer " + name, "settle {" + x + "} because answered");
                        case 5 ->
                            episode(
                                    Kind.REPEAT,
                                    "cycles",
                                    1,
                                    x,
                                    "again in 30 cycles",
                                    "settle {" + x + "} because entered");
                        case 6 -> episode(Kind.HANDOVER, name, 1, x, "handover " + name, "takeover " + name);
                        case 7 ->
                            episode(
                                    Kind.FINDING,
                                    "blade " + blade,
                                    1,
                                    x,
                                    row + " crack " + blade + " tip 2 ± 0.1",
                                    "settle {" + x + "} because blended out");
                        case 8 -> episode(Kind.FACT, name, 0, x, "note " + name);
                        case 9 ->
                            episode(
                                    Kind.INTERVAL,
                                    "blade " + blade,
                                    2,
                                    x,
                                    row + " nick " + blade + " tip 0.5 ± 0.1",
                                    "again in " + random.nextInt(20, 26) + " cycles",
                                    "settle {" + x + "x1} because entered");
                        default -> episode(Kind.TIP, "among", 1, x, "in", "clear");
                    });
        }
        return all;
    }

    /** All that is to be seen and stated, one line each; each is forgotten alone. */
    private static List<Line> frame() {
        List<Line> lines = new ArrayList<>();
        for (String fact : ClosingList.FACTS) {
            lines.add(new Line("fact " + fact + " 7", fact));
        }
        lines.add(new Line("view va", ""));
        lines.add(new Line("round 1", "round a"));
        lines.add(new Line("view vb", ""));
        lines.add(new Line("round 1", "round b"));
        return lines;
    }

    /** One line from any episode at a time, each episode's in their order. */
    private static List<Line> mixed(List<List<Line>> episodes, SplittableRandom random) {
        List<Line> mixed = new ArrayList<>();
        List<List<Line>> left = new ArrayList<>();
        episodes.forEach(lines -> left.add(new ArrayList<>(lines)));
        left.removeIf(List::isEmpty);
        while (!left.isEmpty()) {
            List<Line> from = left.get(random.nextInt(left.size()));
            mixed.add(from.remove(0));
            left.removeIf(List::isEmpty);
        }
        return mixed;
    }

    private static List<String> texts(List<Line> lines) {
        Map<String, Integer> numbers = new HashMap<>();
        List<String> texts = new ArrayList<>();
        for (Line line : lines) {
            Matcher matcher = LABEL.matcher(line.text());
            texts.add(matcher.replaceAll(found -> "" + numbers.get(found.group(1))));
            numbers.put(line.label(), texts.size());
        }
        return texts;
    }

    @Test
    void areNamedAllFiveHundredOfThem() {
        SplittableRandom random = new SplittableRandom(20260515);
        Map<Kind, Integer> planted = new EnumMap<>(Kind.class);
        for (int job = 0; job < JOBS; job++) {
            List<Episode> episodes = episodes(random);
            List<Line> frame = frame();
            List<List<Line>> lines = new ArrayList<>();
            episodes.forEach(episode -> lines.add(episode.lines()));
            List<Line> whole = new ArrayList<>(frame);
            whole.addAll(mixed(lines, random.split()));
            assertThat(list(whole).items())
                    .as("job %d, nothing forgotten: %s", job, texts(whole))
                    .isEmpty();

            int which = random.nextInt(episodes.size() + 2);
            Kind kind;
            String words;
            String label = "";
            if (which < episodes.size() && episodes.get(which).forgotten() > 0) {
                Episode episode = episodes.get(which);
                int kept = episode.lines().size() - episode.forgotten();
                lines.set(which, episode.lines().subList(0, kept));
                kind = episode.kind();
                words = episode.words();
                label = episode.lines().get(0).label();
            } else {
                int[] candidates = {0, 1, 2, 3, 4, 6, 8};
                Line forgotten = frame.remove(candidates[random.nextInt(candidates.length)]);
                boolean seeing = forgotten.label().startsWith("round");
                kind = seeing ? Kind.GAP : Kind.FACT;
                words = seeing ? "row " + forgotten.label().substring(6) : forgotten.label();
            }
            List<Line> forgetful = new ArrayList<>(frame);
            forgetful.addAll(mixed(lines, random.split()));
            assertNamed(job, forgetful, kind, words, label);
            planted.merge(kind, 1, Integer::sum);
        }
        assertThat(planted).hasSizeGreaterThanOrEqualTo(11);
    }

    private ClosingList list(List<Line> lines) {
        return ClosingListTest.list(Optional.of(limits), texts(lines));
    }

    private void assertNamed(int job, List<Line> lines, Kind kind, String words, String label) {
        assertThat(list(lines).items())
                .as("job %d, forgotten: %s %s: %s", job, kind, words, texts(lines))
                .isNotEmpty()
                .allSatisfy(item -> {
                    assertThat(item.kind()).isEqualTo(kind);
                    assertThat(English.say(item.line())).contains(words);
                    if (!label.isEmpty()) {
                        int opened =
                                1 + lines.stream().map(Line::label).toList().indexOf(label);
                        assertThat(item.opened().orElseThrow().number()).isEqualTo(opened);
                        assertThat(item.opened().orElseThrow().by()).isEqualTo("Test");
                    }
                });
    }
}
