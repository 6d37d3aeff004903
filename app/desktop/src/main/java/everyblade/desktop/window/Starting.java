package everyblade.desktop.window;

import everyblade.desktop.command.Shelf;
import everyblade.desktop.command.Surroundings;
import everyblade.desktop.view.NewJob;
import everyblade.desktop.words.Words;
import java.nio.file.Path;

/** What a person does on the start screen of a window. */
final class Starting implements StartPanel.Doing {

    private final MainWindow window;
    private final Surroundings around;
    private final Shelf shelf;
    private final Places places;
    private final Door door;

    Starting(MainWindow window, Surroundings around, Shelf shelf, Places places, Door door) {
        this.window = window;
        this.around = around;
        this.shelf = shelf;
        this.places = places;
        this.door = door;
    }

    private Words words() {
        return window.words();
    }

    @Override
    public void open(Path folder) {
        boolean demo = places.demo().filter(folder::equals).isPresent();
        door.run(
                words().say("wait.open"),
                () -> {
                    Path place = demo ? places.copyOfDemo() : folder;
                    return window.opened(place);
                },
                window::enter);
    }

    @Override
    public void review(Path folder) {
        door.run(words().say("wait.open"), () -> window.reviewed(folder), window::enter);
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
    public void newJob() {
        door.run(words().say("wait.models"), () -> shelf.models().models(), models -> {
            NewJobPanel[] form = new NewJobPanel[1];
            form[0] = new NewJobPanel(
                    words(),
                    Looks.theme(window.choices()),
                    models,
                    places.proposed().toString(),
                    window.choices().by(),
                    wanted -> start(wanted, form[0]),
                    window::startAgain);
            window.middle(form[0].component());
            form[0].focus();
        });
    }

    private void start(NewJob wanted, NewJobPanel form) {
        door.run(words().say("wait.open"), () -> new JobStarting(around, shelf).start(wanted), problem -> {
            problem.ifPresent(form::tell);
            if (problem.isEmpty()) {
                window.choose(window.choices().by(wanted.by()));
                open(around.path(Path.of(wanted.folder())));
            }
        });
    }
}
