package everyblade.testkit;

import static everyblade.testkit.Force.OPTIONAL;
import static everyblade.testkit.Force.REQUIRED;
import static everyblade.testkit.Force.UNTESTED;

import everyblade.core.sight.Progress;
import everyblade.spi.EngineModel;
import everyblade.testkit.Evidence.Told;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * All rules, in order: chapter 1 of the model as it is handed over, 2 of its rows and their surfaces, 3 of its views, 4 of
 * turning, 5 of what no program can tell.
 */
public final class RuleBook {

    /** What makes the rest of the surfaces, and of sight, not worth asking. */
    private static final Set<String> WITHOUT_SURFACE = Set.of("no-surface", "missing-mesh", "bad-mesh");

    private static final List<Asked> ALL = List.of(
            read("1.1", "The model is read without an error."),
            of("1.2", REQUIRED, "Written out as engine.json and read again, it is the same model.", RuleBook::sameRead),
            of("1.3", REQUIRED, "It is the same each time it is handed over.", RuleBook::sameAgain),
            of(
                    "1.4",
                    OPTIONAL,
                    "Its notice says where its figures come from, or that they are invented.",
                    RuleBook::notice),
            others("1.5", "Nothing else in it calls for a warning."),
            codes("2.1", REQUIRED, "Every shape gives a surface.", WITHOUT_SURFACE),
            surfaces("2.2", REQUIRED, "Surfaces look out of the metal.", Set.of("mesh-inside-out")),
            surfaces(
                    "2.3",
                    REQUIRED,
                    "No blade cuts another blade or a wall.",
                    Set.of("blades-cut", "ring-mates-cut", "rows-cut", "blade-cuts-wall")),
            surfaces("2.4", OPTIONAL, "Vanes do not cut each other at any of their positions.", Set.of("vanes-cut")),
            surfaces("2.5", OPTIONAL, "The airfoil of a mesh file stands at 12 o'clock.", Set.of("mesh-off-clock")),
            codes(
                    "2.6",
                    OPTIONAL,
                    "Each row has airfoils that can be told from the others, each told in its own words.",
                    Set.of("no-landmark", "like-landmarks")),
            codes("2.7", OPTIONAL, "Each row says where its shape comes from.", Set.of("no-source")),
            codes(
                    "2.8",
                    OPTIONAL,
                    "Walls reach past the blades and do not cross themselves.",
                    Set.of("blade-beyond-walls", "wall-crosses-itself")),
            surfaces(
                    "2.9",
                    OPTIONAL,
                    "Chords and pitch go together, so that both can be in millimetres.",
                    Set.of("unlikely-chord")),
            surfaces(
                    "3.1",
                    REQUIRED,
                    "At each station the scope tip has room between walls and blades.",
                    Set.of("station-outside-walls", "station-in-blades")),
            codes("3.2", OPTIONAL, "Each row has a view.", Set.of("no-view")),
            sight(
                    "3.3",
                    OPTIONAL,
                    "Each view shows something of its row.",
                    Set.of("sees-nothing", "blind-view", "stations-without-shape", "no-scope-tip", "narrow-window")),
            sight("3.4", OPTIONAL, "So does each of its stations.", Set.of("station-sees-nothing")),
            new Asked(
                    new ModelRule("3.5", OPTIONAL, "Each zone of a row that has views is within reach of one."),
                    Set.of(),
                    RuleBook::reach),
            codes(
                    "3.6",
                    OPTIONAL,
                    "A travelling view holds at every clock angle in one station only.",
                    Set.of("sectors-leave-gap", "sectors-overlap", "sector-without-travel", "travels-past-rotor")),
            sight("3.7", OPTIONAL, "At the reference of each view an airfoil is in sight.", Set.of("reference-unseen")),
            codes("3.8", OPTIONAL, "Each station says how far off it may be.", Set.of("tolerance-not-stated")),
            surfaces(
                    "3.9",
                    OPTIONAL,
                    "No view states an aim that the tolerance of its stations does not allow.",
                    Set.of("aim-within-tolerance")),
            of(
                    "4.1",
                    REQUIRED,
                    "In a cool engine, a whole turn or a look can be entered at each view and station.",
                    RuleBook::entered),
            codes(
                    "4.2",
                    OPTIONAL,
                    "No error of a pad or of an aim is so large that a blade is taken for its neighbour.",
                    Set.of("play-of-half-a-pitch", "aim-of-half-a-pitch")),
            codes("4.3", OPTIONAL, "Each spool can be turned in its normal direction.", Set.of("normal-not-allowed")),
            surfaces(
                    "4.4",
                    OPTIONAL,
                    "No tolerance of a station is so large that a blade is taken for its neighbour.",
                    Set.of("tolerance-of-half-a-pitch")),
            hand("5.1", "The counts are those of the engine.", "count each row, or find it in the manual in force"),
            hand(
                    "5.2",
                    "Blade 1 of each row is what its landmark says, and numbers rise the way the row says.",
                    "find the landmark, turn on by two pitches, and see which blade comes"),
            hand(
                    "5.3",
                    "At the reference of each view a blade stands in the middle of the picture.",
                    "turn until one does, and measure its clock angle"),
            hand(
                    "5.4",
                    "Ratio and direction of each pad are right.",
                    "turn the tool until a row has gone round once, and count the turns"),
            hand(
                    "5.5",
                    "The scope passes every opening on the way, bends included, and reaches each station.",
                    "try it with the scope named, before it is needed"),
            hand("5.6", "Shapes are those of the engine.", "lay a drawing over what everyblade show draws"),
            hand("5.7", "Its author may hand on what is in it.", "read the terms of the documents it was taken from"));

    private RuleBook() {}

    /** Every rule, in order. */
    public static List<ModelRule> rules() {
        return ALL.stream().map(Asked::rule).toList();
    }

    /** The codes of the problems that break a rule; empty if it is judged otherwise. */
    static Set<String> codes(ModelRule rule) {
        return ALL.stream()
                .filter(asked -> asked.rule().equals(rule))
                .findFirst()
                .orElseThrow()
                .codes();
    }

    /**
     * What becomes of every rule, in order.
     *
     * @param progress of computing what views can show
     */
    public static List<JudgedRule> judge(Evidence evidence, Progress progress) {
        return ALL.stream()
                .map(asked -> new JudgedRule(asked.rule(), asked.verdict(evidence, progress)))
                .toList();
    }

    /**
     * A rule with how it is judged.
     *
     * @param codes those of the problems that break it
     */
    private record Asked(ModelRule rule, Set<String> codes, BiFunction<Evidence, Progress, RuleVerdict> judge) {

        RuleVerdict verdict(Evidence evidence, Progress progress) {
            boolean asked = evidence.model().isPresent() || rule.number().equals("1.1") || rule.force() == UNTESTED;
            return asked ? judge.apply(evidence, progress) : new RuleVerdict.NotAsked("there is no model to ask");
        }
    }

    private static Asked of(String number, Force force, String sentence, Function<Evidence, RuleVerdict> judge) {
        return new Asked(
                new ModelRule(number, force, sentence), Set.of(), (evidence, progress) -> judge.apply(evidence));
    }

    /** Broken by what reading the model says. */
    private static Asked codes(String number, Force force, String sentence, Set<String> codes) {
        return codes(number, force, sentence, codes, evidence -> Optional.empty());
    }

    /** Broken by what surfaces show; of a shape without one nothing can be said. */
    private static Asked surfaces(String number, Force force, String sentence, Set<String> codes) {
        return codes(number, force, sentence, codes, RuleBook::withoutSurface);
    }

    /** Broken by what views see as well. */
    private static Asked sight(String number, Force force, String sentence, Set<String> codes) {
        return codes(number, force, sentence, codes, RuleBook::withoutSight);
    }

    /** @param hindrance why it cannot be asked of a model */
    private static Asked codes(
            String number,
            Force force,
            String sentence,
            Set<String> codes,
            Function<Evidence, Optional<RuleVerdict>> hindrance) {
        return new Asked(new ModelRule(number, force, sentence), codes, (evidence, progress) -> {
            List<String> against = lines(evidence, told -> codes.contains(told.code()));
            return against.isEmpty()
                    ? hindrance.apply(evidence).orElse(new RuleVerdict.Kept())
                    : new RuleVerdict.Broken(against);
        });
    }

    private static Optional<RuleVerdict> withoutSurface(Evidence evidence) {
        return evidence.told().stream().anyMatch(told -> WITHOUT_SURFACE.contains(told.code()))
                ? Optional.of(new RuleVerdict.NotAsked("a shape gives no surface"))
                : Optional.empty();
    }

    private static Optional<RuleVerdict> withoutSight(Evidence evidence) {
        return evidence.sight()
                ? withoutSurface(evidence)
                : Optional.of(new RuleVerdict.NotAsked("sight was not computed"));
    }

    private static Asked hand(String number, String sentence, String how) {
        return of(number, UNTESTED, sentence, evidence -> new RuleVerdict.ByHand(how));
    }

    private static Asked read(String number, String sentence) {
        return of(
                number,
                REQUIRED,
                sentence,
                evidence -> evidence.model().isPresent()
                        ? new RuleVerdict.Kept()
                        : RuleVerdict.of(lines(evidence, told -> true)));
    }

    /** Whatever no other rule speaks of. */
    private static Asked others(String number, String sentence) {
        return of(number, OPTIONAL, sentence, evidence -> {
            Set<String> spokenOf =
                    ALL.stream().map(Asked::codes).flatMap(Collection::stream).collect(Collectors.toSet());
            return RuleVerdict.of(lines(evidence, told -> !spokenOf.contains(told.code())));
        });
    }

    private static List<String> lines(Evidence evidence, Predicate<Told> of) {
        return evidence.told().stream().filter(of).map(Told::line).toList();
    }

    private static RuleVerdict sameRead(Evidence evidence) {
        return evidence.handed().get(0).equals(evidence.model().orElseThrow())
                ? new RuleVerdict.Kept()
                : new RuleVerdict.Broken(
                        List.of("a job would keep another model than this one; state what is left empty as a"
                                + " file would, such as the spool of a rotor"));
    }

    private static RuleVerdict sameAgain(Evidence evidence) {
        List<EngineModel> handed = evidence.handed();
        if (handed.size() < 2) {
            return new RuleVerdict.Broken(List.of("asked a second time, it was not handed over"));
        }
        return handed.stream().distinct().count() == 1
                ? new RuleVerdict.Kept()
                : new RuleVerdict.Broken(
                        List.of("asked a second time, it was another; compute it from nothing that changes,"
                                + " such as time, chance or the order of a hash set"));
    }

    private static RuleVerdict notice(Evidence evidence) {
        return evidence.model().orElseThrow().notice().isPresent()
                ? new RuleVerdict.Kept()
                : new RuleVerdict.Broken(List.of("it has no notice"));
    }

    private static RuleVerdict entered(Evidence evidence) {
        return RuleVerdict.of(new RuleTrial(evidence.model().orElseThrow(), evidence.files()).refusals());
    }

    private static RuleVerdict reach(Evidence evidence, Progress progress) {
        return withoutSight(evidence)
                .orElseGet(() -> RuleVerdict.of(
                        new RuleTrial(evidence.model().orElseThrow(), evidence.files()).beyondReach(progress)));
    }
}
