package everyblade.window;

import everyblade.fleet.StoreRefusal;
import everyblade.record.JobFolder;
import everyblade.session.around.Surroundings;
import everyblade.session.fleet.ShopStore;
import everyblade.window.view.FleetBoard;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;

/** What a person does on the page of a shop's fleet. */
final class FleetDoing implements FleetPanel.Doing {

    private final MainWindow window;
    private final Surroundings around;
    private final Places places;
    private final Door door;
    private final StartPanel.Doing start;
    private final FleetPanel page;

    /** @param start opens the jobs that were brought */
    FleetDoing(MainWindow window, Surroundings around, Places places, Door door, StartPanel.Doing start) {
        this.window = window;
        this.around = around;
        this.places = places;
        this.door = door;
        this.start = start;
        this.page = new FleetPanel(
                window.words(),
                Looks.theme(window.choices()),
                address(),
                window.choices().follows(),
                this);
    }

    private String address() {
        String given = window.choices().store();
        return given.isEmpty() ? around.variable(ShopStore.VARIABLE).orElse("") : given;
    }

    /** Shows the page, and asks the store at once where one is known. */
    void show() {
        window.middle(page.component());
        page.focus();
        if (address().isEmpty()) {
            page.tell(window.words().say("fleet.page.none"));
        } else {
            look(address());
        }
    }

    /** What came of asking: something to show, or why there is nothing. */
    private record Asked(Optional<FleetBoard> board, String why) {}

    @Override
    public void look(String address) {
        page.tell(window.words().say("fleet.page.asking"));
        watched(
                () -> new Asked(
                        Optional.of(FleetBoard.of(ShopStore.at(address, around.environment(), Optional.empty()))), ""),
                asked -> asked.board()
                        .ifPresentOrElse(
                                board -> {
                                    window.choose(window.choices()
                                            .store(address, window.choices().follows()));
                                    page.show(board);
                                },
                                () -> page.tell(asked.why())));
    }

    private void watched(Callable<Asked> work, java.util.function.Consumer<Asked> then) {
        door.watched(
                window.words().say("wait.fleet"),
                progress -> {
                    try {
                        return work.call();
                    } catch (StoreRefusal refusal) {
                        return new Asked(Optional.empty(), ShopStore.told(refusal, window.words()));
                    }
                },
                asked -> then.accept(asked.orElseGet(
                        () -> new Asked(Optional.empty(), window.words().say("fleet.page.stopped")))));
    }

    @Override
    public void follow(String address, boolean always) {
        window.choose(window.choices().store(address, always));
        window.follow();
    }

    @Override
    public void open(String job) {
        places.askPlace(window.frame(), window.words().say("fleet.page.bring"), job)
                .ifPresent(folder -> bring(job, folder));
    }

    private void bring(String job, Path folder) {
        String address = window.choices().store();
        watched(
                () -> new Asked(
                        Optional.empty(),
                        ShopStore.at(address, around.environment(), Optional.empty())
                                .bring(job, new JobFolder(around.disk(), folder), window.words())
                                .orElse("")),
                brought -> {
                    if (brought.why().isEmpty()) {
                        start.open(folder);
                    } else {
                        page.tell(brought.why());
                    }
                });
    }

    @Override
    public void back() {
        window.startAgain();
    }
}
