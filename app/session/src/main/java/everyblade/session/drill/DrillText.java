package everyblade.session.drill;

import everyblade.core.entry.ZonePhrase;
import everyblade.core.finding.Finding;
import everyblade.core.surface.Facets;
import everyblade.core.surface.UnusableShape;
import everyblade.practice.account.Debrief.Trials;
import everyblade.practice.account.Outcome;
import everyblade.practice.account.Outcome.Fate;
import everyblade.practice.account.SeenFacets.Turning;
import everyblade.practice.drill.Drill;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.harm.Harm;
import everyblade.practice.progress.Discrimination;
import everyblade.practice.progress.HitMissCurve;
import everyblade.practice.progress.HitMissCurve.Point;
import everyblade.practice.progress.ShareFound;
import everyblade.session.drill.DrillRecord.Told;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What came of drills, line by line in the person's language; the window and the commands say the same. */
public final class DrillText {

    private static final double SURE = 0.95;

    private final Words words;

    public DrillText(Words words) {
        this.words = words;
    }

    /** Whether calls are answered. */
    public String mode(Drill.Mode mode) {
        return words.say(mode == Drill.Mode.BURST ? "drill.mode.burst" : "drill.mode.quiet");
    }

    /** A drill that has ended. */
    public List<String> result(DrillRecord drill, Told told) {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("drill.result.title", drill.drill().title()));
        lines.add(summary(told));
        List<Outcome> outcomes = told.debrief().outcomes();
        for (int i = 0; i < outcomes.size(); i++) {
            lines.add(words.say("drill.result.outcome", i + 1, outcome(drill, outcomes.get(i), told.track())));
        }
        told.debrief().falseCalls().stream().map(this::falseCall).forEach(lines::add);
        for (String id : told.truth().recipe().rows()) {
            lines.add(share(drill, told, id));
        }
        lines.add(time(told));
        search(List.of(told)).ifPresent(lines::add);
        lost(told.track().lost()).ifPresent(lines::add);
        discrimination(told.debrief().trials()).ifPresent(lines::add);
        lines.add(words.say("drill.caution"));
        return lines;
    }

    private String summary(Told told) {
        List<Outcome> outcomes = told.debrief().outcomes();
        return words.say(
                "drill.result.summary",
                outcomes.size(),
                outcomes.stream().filter(Outcome::found).count(),
                count(outcomes, Fate.NEVER_IN_SIGHT),
                count(outcomes, Fate.TOO_LITTLE),
                count(outcomes, Fate.NOT_CALLED),
                told.debrief().falseCalls().size());
    }

    private static long count(List<Outcome> outcomes, Fate fate) {
        return outcomes.stream().filter(outcome -> outcome.fate() == fate).count();
    }

    /** Which airfoil it is. */
    public String airfoil(Row row, int number) {
        return words.airfoil(row) + " " + number;
    }

    /** The first of the zones that it lies in. */
    public String zone(Harm harm) {
        return words.say(ZonePhrase.named(harm.zones().get(0)));
    }

    private String outcome(DrillRecord drill, Outcome outcome, TipTrack track) {
        Row row = drill.row(outcome.harm());
        String what = words.say(
                "drill.result.damage",
                words.say(outcome.harm().kind().called().orElseThrow()),
                words.number(outcome.harm().size(), 2),
                row.id(),
                airfoil(row, outcome.harm().airfoil()),
                zone(outcome.harm()));
        String fate = words.say(
                "drill.fate." + outcome.fate().name().toLowerCase(Locale.ROOT),
                words.number(outcome.sighting().seconds(), 1),
                words.number(outcome.sighting().poorly(), 1),
                outcome.call().map(call -> airfoil(row, call.airfoil())).orElse(""));
        OptionalDouble search = outcome.search(track);
        return what + ": "
                + (search.isEmpty()
                        ? fate
                        : words.say("drill.fate.search", fate, words.number(search.getAsDouble(), 1)));
    }

    private Optional<String> search(List<Told> drills) {
        double[] times = drills.stream()
                .flatMap(told -> told.debrief().outcomes().stream().map(outcome -> outcome.search(told.track())))
                .flatMapToDouble(OptionalDouble::stream)
                .sorted()
                .toArray();
        return times.length == 0
                ? Optional.empty()
                : Optional.of(words.say(
                        "drill.result.search",
                        words.number(times[(times.length - 1) / 2], 1),
                        words.number(times[times.length - 1], 1)));
    }

    private Optional<String> lost(List<String> rows) {
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(words.say(
                        "drill.result.lost",
                        rows.size(),
                        rows.stream().distinct().collect(Collectors.joining(", "))));
    }

    private String falseCall(Finding call) {
        return words.say(
                "drill.result.false",
                call.entry(),
                words.say(call.kind()),
                call.row().id(),
                airfoil(call.row(), call.airfoil()));
    }

    private String share(DrillRecord drill, Told told, String id) {
        return words.say(
                "drill.result.share", id, words.percent(seen(drill, told, id)), words.percent(claimed(told, id)));
    }

    /** The share of a row's surface that was properly in the picture. */
    public static double seen(DrillRecord drill, Told told, String id) {
        try {
            Row row = drill.job().engine().rows().get(id);
            Facets facets = Facets.of(drill.scene().airfoil(row).orElseThrow());
            double area = 0;
            for (BitSet airfoil : told.seen().facets().get(id)) {
                area += airfoil.stream().mapToDouble(facets::area).sum();
            }
            return area / (facets.area() * row.count());
        } catch (UnusableShape impossible) {
            throw new IllegalStateException("it was drawn", impossible);
        }
    }

    /** The share of a row's surface that the entries say was seen. */
    public static double claimed(Told told, String id) {
        var row = told.coverage().row(id);
        return row.areas(row.zoning().all()).seen();
    }

    private String time(Told told) {
        Turning turning = told.seen().turning();
        OptionalDouble each = told.truth().recipe().rows().stream()
                .flatMapToDouble(row -> Arrays.stream(told.seen().seconds().get(row)))
                .average();
        return words.say(
                "drill.result.time",
                words.number(told.track().seconds() / 60, 1),
                words.number(each.orElse(0), 1),
                words.number(turning.mean(), 1),
                words.number(turning.fastest(), 1));
    }

    private Optional<String> discrimination(Trials trials) {
        return Discrimination.of(trials)
                .map(told -> words.say(
                        "drill.result.discrimination",
                        words.number(told.sensitivity(), 2),
                        words.signed(told.criterion(), 2),
                        words.say(
                                told.criterion() > 0.3
                                        ? "drill.leans.little"
                                        : told.criterion() < -0.3 ? "drill.leans.much" : "drill.leans.not")));
    }

    /** Several drills that have ended, together. */
    public List<String> progress(List<Told> drills) {
        List<Point> points = points(drills);
        List<String> lines = new ArrayList<>();
        lines.add(words.say("drill.progress.title", drills.size(), points.size()));
        if (points.isEmpty()) {
            lines.add(words.say("drill.progress.none"));
        } else {
            ShareFound share =
                    new ShareFound((int) points.stream().filter(Point::found).count(), points.size());
            lines.add(words.say(
                    "drill.progress.share",
                    share.found(),
                    share.of(),
                    words.percent(share.share()),
                    words.percent(share.atLeast(SURE))));
            lines.add(curve(points));
        }
        search(drills).ifPresent(lines::add);
        lost(drills.stream().flatMap(told -> told.track().lost().stream()).toList())
                .ifPresent(lines::add);
        drills.stream()
                .map(told -> told.debrief().trials())
                .reduce(Trials::and)
                .flatMap(this::discrimination)
                .ifPresent(lines::add);
        lines.add(words.say("drill.caution"));
        return lines;
    }

    private String curve(List<Point> points) {
        if (points.size() < HitMissCurve.LEAST_POINTS) {
            return words.say("drill.progress.few", HitMissCurve.LEAST_POINTS);
        }
        return HitMissCurve.of(points)
                .map(curve -> words.say(
                        "drill.progress.curve",
                        words.number(curve.a90(), 2),
                        curve.a90Surely().isPresent()
                                ? words.say(
                                        "drill.progress.surely",
                                        words.number(curve.a90Surely().getAsDouble(), 2))
                                : words.say("drill.progress.unsure")))
                .orElseGet(() -> words.say("drill.progress.noCurve"));
    }

    /** Damage that was well in sight: what was not is no matter of the eye. */
    public static List<Point> points(List<Told> drills) {
        return drills.stream()
                .flatMap(told -> told.debrief().outcomes().stream())
                .filter(outcome -> outcome.sighting().enough())
                .map(outcome -> new Point(outcome.harm().size(), outcome.found()))
                .toList();
    }
}
