package everyblade.window;

import everyblade.json.Problem;
import everyblade.json.jar.CodeJar;
import everyblade.session.CommandRun;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.Course.Lesson;
import everyblade.session.drill.DrillMaker;
import everyblade.session.drill.DrillRecord;
import everyblade.session.model.Shelf;
import everyblade.window.view.NewJob;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a person does on the start screen of a window. */
final class Starting implements StartPanel.Doing {

    private final MainWindow window;
    private final Surroundings around;
    private final Shelf shelf;
    private final CommandRun commands;
    private final Places places;
    private final Door door;

    Starting(MainWindow window, Surroundings around, Shelf shelf, CommandRun commands, Places places, Door door) {
        this.window = window;
        this.around = around;
        this.shelf = shelf;
        this.commands = commands;
        this.places = places;
        this.door = door;
    }

    private Words words() {
        return window.words();
    }

    @Override
    public void open(Path folder) {
        if (DrillRecord.isOne(around, folder)) {
            goOn(folder);
            return;
        }
        boolean demo = places.demo().filter(folder::equals).isPresent();
        door.run(
                words().say("wait.open"),
                () -> {
                    Path place = demo ? places.copyOfDemo() : folder;
                    return window.opening().opened(place);
                },
                window::enter);
    }

    @Override
    public boolean isDrill(Path folder) {
        return DrillRecord.isOne(around, folder);
    }

    @Override
    public void review(Path folder) {
        door.run(words().say("wait.open"), () -> window.opening().reviewed(folder), window::review);
    }

    @Override
    public void choose(boolean review) {
        places.askFolder(window.frame(), words().say(review ? "start.review" : "start.open"))
                .ifPresent(review ? this::review : this::open);
    }

    @Override
    public void author() {
        places.askFolder(window.frame(), words().say("start.author")).ifPresent(folder -> {
            window.author(folder);
            window.authoring().ifPresent(AuthorScreen::watch);
        });
    }

    @Override
    public void practise() {
        CoursePanel course = new CoursePanel(words(), this::practise, window::startAgain);
        window.middle(course.component());
        course.focus();
    }

    /** Goes on with a drill, or tells what came of it if it has ended. */
    private void goOn(Path folder) {
        door.run(words().say("wait.open"), () -> drilled(folder), Runnable::run);
    }

    private Runnable drilled(Path folder) {
        DrillRecord drill = DrillRecord.read(around, folder);
        return window.drilled(drill, drill.truth(Optional.empty()));
    }

    private void practise(Lesson lesson) {
        String by = window.choices().by().isBlank()
                ? words().say("drill.trainee")
                : window.choices().by();
        door.run(
                words().say("wait.open"),
                () -> {
                    Path folder = places.proposedDrill();
                    new DrillMaker(around).make(folder, shelf, lesson, by);
                    return drilled(folder);
                },
                Runnable::run);
    }

    @Override
    public void fleet() {
        new FleetDoing(window, around, places, door, this).show();
    }

    @Override
    public void newJob() {
        choose(shelf);
    }

    /** Shows the form, with the models that are known, and runs nothing. */
    private void choose(Shelf shelf) {
        door.run(words().say("wait.models"), shelf::models, found -> {
            NewJobPanel[] form = new NewJobPanel[1];
            form[0] = new NewJobPanel(
                    words(),
                    Looks.theme(window.choices()),
                    found.models(),
                    found.notRun(),
                    jar -> ask(shelf, jar),
                    places.proposed().toString(),
                    window.choices().by(),
                    wanted -> start(shelf, wanted, form[0]),
                    window::startAgain);
            window.middle(form[0].component());
            form[0].focus();
        });
    }

    /** Lets the code in a jar tell its models, if a person says so. */
    private void ask(Shelf shelf, CodeJar jar) {
        if (shelf.consent().covers(jar) || CodeQuestion.of(jar, words()).asked(window.frame())) {
            door.run(
                    words().say("wait.code"),
                    () -> {
                        Shelf trusting = shelf.trusting(jar);
                        List<Problem> problems = trusting.run(jar);
                        return Map.entry(trusting, problems);
                    },
                    ran -> {
                        choose(ran.getKey());
                        ran.getValue().stream().findFirst().ifPresent(problem -> window.failed(problem.toString()));
                    });
        }
    }

    private void start(Shelf shelf, NewJob wanted, NewJobPanel form) {
        door.run(words().say("wait.open"), () -> new JobStarting(around, shelf, commands).start(wanted), problem -> {
            problem.ifPresent(form::tell);
            if (problem.isEmpty()) {
                window.choose(window.choices().by(wanted.by()));
                open(around.path(Path.of(wanted.folder())));
            }
        });
    }
}
