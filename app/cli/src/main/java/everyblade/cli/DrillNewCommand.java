package everyblade.cli;

import everyblade.practice.drill.Drill;
import everyblade.practice.drill.Reachable;
import everyblade.practice.drill.Truth;
import everyblade.practice.harm.HarmKind;
import everyblade.practice.harm.Recipe;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.Course;
import everyblade.session.drill.DrillMaker;
import everyblade.session.model.Shelf;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a drill. */
@Command(name = "new", description = "${bundle:help.drillNew}")
final class DrillNewCommand implements Callable<Integer> {

    private static final List<HarmKind> DAMAGE =
            Arrays.stream(HarmKind.values()).filter(HarmKind::isDamage).toList();

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "DRILL", description = "${bundle:help.folderToMake}")
    private Path path;

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "${bundle:help.drillNew.by}")
    private String by;

    @Option(names = "--course", paramLabel = "N", description = "${bundle:help.drillNew.course}")
    private Integer course;

    @Option(names = "--model", paramLabel = "M", description = "${bundle:help.drillNew.model}")
    private String model;

    @Option(names = "--row", paramLabel = "ID", description = "${bundle:help.drillNew.row}")
    private List<String> rows = List.of();

    @Option(names = "--kind", paramLabel = "KIND", description = "${bundle:help.drillNew.kind}")
    private List<String> kinds = List.of();

    @Option(names = "--damage", paramLabel = "N", description = "${bundle:help.drillNew.damage}")
    private int damage = 8;

    @Option(names = "--harmless", paramLabel = "N", description = "${bundle:help.drillNew.harmless}")
    private int harmless = 6;

    @Option(names = "--sizes", paramLabel = "A-B", description = "${bundle:help.drillNew.sizes}")
    private String sizes = "0.8-5";

    @Option(names = "--grime", paramLabel = "SHARE", description = "${bundle:help.drillNew.grime}")
    private String grime = "0.3";

    @Option(names = "--burst", description = "${bundle:help.drillNew.burst}")
    private boolean burst;

    @Option(names = "--task", paramLabel = "TEXT", description = "${bundle:help.drillNew.task}")
    private String task;

    @Option(names = "--seed", paramLabel = "N", description = "${bundle:help.drillNew.seed}")
    private Long seed;

    @Mixin
    private ExaminerKey key;

    DrillNewCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        String who = Given.words("--by", by);
        Optional<String> words = key.words(around);
        Optional<Course.Lesson> ofCourse = ofCourse(words.isPresent());
        Shelf.Chosen chosen = everyblade
                .shelf()
                .chooseByOption(ofCourse.map(Course.Lesson::model).orElse(model));
        Course.Lesson lesson = ofCourse.orElseGet(() -> own(chosen.model(), words.isPresent()));
        Truth truth = new DrillMaker(around).make(path, chosen, lesson, words, Optional.ofNullable(seed), who);
        around.out()
                .println(around.words()
                        .say(
                                "drill.made",
                                path,
                                lesson.drill().title(),
                                chosen.model().name()));
        around.out().println(OneLine.of(lesson.drill().task()));
        if (truth.damage().size() < lesson.recipe().damage()) {
            around.err().println(around.words().say("drill.made.less"));
        }
        return Commands.FINE;
    }

    private Optional<Course.Lesson> ofCourse(boolean examined) {
        if (course == null) {
            if (model == null || rows.isEmpty()) {
                throw Failure.of("stopped.drillNew.drillNewNeitherDrillCourse");
            }
            return Optional.empty();
        }
        List<Course.Lesson> lessons = Course.shipped(around.words()).lessons();
        if (course < 1 || course > lessons.size() || model != null) {
            throw Failure.of(model == null ? "drill.new.noSuch" : "drill.new.ownEngine", course, lessons.size());
        }
        Course.Lesson lesson = lessons.get(course - 1);
        Drill drill = lesson.drill();
        return Optional.of(new Course.Lesson(
                lesson.model(),
                new Drill(drill.title(), drill.mode(), drill.task(), drill.views(), drill.kinds(), examined),
                lesson.recipe(),
                lesson.why()));
    }

    private Course.Lesson own(EngineModel engine, boolean examined) {
        for (String id : rows) {
            if (engine.row(id).isEmpty()) {
                throw Failure.of(
                        "stopped.drillNew.engineHasNoSuchRow",
                        id,
                        engine.rows().stream().map(Row::id).collect(Collectors.joining(", ")));
            }
            if (engine.row(id).get().shape().isEmpty()
                    || Reachable.views(engine, List.of(id)).isEmpty()) {
                throw Failure.of("stopped.drillNew.hasNoShapeOrNo", id);
            }
        }
        List<HarmKind> wanted = kinds.isEmpty()
                ? DAMAGE
                : kinds.stream().map(DrillNewCommand::kind).distinct().toList();
        Drill drill = new Drill(
                around.words().say("drill.own.title", String.join(" ", rows)),
                burst ? Drill.Mode.BURST : Drill.Mode.QUIET,
                task == null ? around.words().say("drill.own.task") : Given.words("--task", task),
                Reachable.views(engine, rows).stream().map(View::id).toList(),
                wanted,
                examined);
        return new Course.Lesson(model, drill, recipe(wanted), "");
    }

    private Recipe recipe(List<HarmKind> wanted) {
        String[] ends = sizes.split("-", 2);
        double least = Given.number("--sizes", ends[0], "mm").doubleValue();
        double most = ends.length == 1
                ? least
                : Given.number("--sizes", ends[1], "mm").doubleValue();
        double dirt = Given.number("--grime", grime, "").doubleValue();
        Optional<Recipe.Flaw> flaw = Recipe.flaw(rows, wanted, damage, harmless, least, most, dirt);
        if (flaw.isPresent()) {
            throw Failure.of("stopped.drillNew.drillNew", flaw.get());
        }
        return new Recipe(rows, wanted, damage, harmless, least, most, dirt);
    }

    private static HarmKind kind(String word) {
        return DAMAGE.stream()
                .filter(kind -> kind.name().toLowerCase(Locale.ROOT).equals(word))
                .findFirst()
                .orElseThrow(() -> Failure.of(
                        "stopped.drillNew.noSuchDamageInventedThere",
                        word,
                        DAMAGE.stream()
                                .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                                .collect(Collectors.joining(", "))));
    }
}
