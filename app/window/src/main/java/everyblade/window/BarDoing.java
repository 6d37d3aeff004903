package everyblade.window;

import everyblade.window.view.Choices;

/**
 * What the bar and its keys do with the window.
 *
 * @param window that they are in
 * @param places that are asked for a folder
 */
record BarDoing(MainWindow window, Places places) implements TopBar.Doing {

    @Override
    public void change(Choices other) {
        Choices before = window.choices();
        boolean letters = other.text() != before.text();
        boolean looks = other.dark() != before.dark() || other.gloves() != before.gloves() || letters;
        boolean language = !other.language().equals(before.language());
        window.choose(other);
        if (looks) {
            Looks.use(other);
        }
        if (language) {
            window.speak(other.language());
        }
        if (language || letters) {
            window.onceSettled(window::anew);
            return;
        }
        window.job().ifPresent(screen -> {
            screen.acts().resize();
            screen.numbers().resize();
            screen.restyle();
        });
        window.again(looks);
        window.show();
        window.focus();
    }

    @Override
    public void start() {
        window.leaveFor(window::startAgain);
    }

    @Override
    public void watchFolder() {
        places.askFolder(window.frame(), window.words().say("bar.folder"))
                .ifPresent(folder -> change(window.choices().pictures(folder)));
    }

    @Override
    public void report() {
        window.job().ifPresent(screen -> window.papers().write(screen, Papers.Paper.REPORT));
    }

    @Override
    public void handover() {
        window.job().ifPresent(screen -> window.papers().write(screen, Papers.Paper.HANDOVER));
    }

    @Override
    public void fleet() {
        window.leaveFor(() -> {
            window.startAgain();
            window.starting().fleet();
        });
    }

    @Override
    public void saveElsewhere() {
        window.job().ifPresent(screen -> window.saving(screen).elsewhere());
    }

    @Override
    public void keys() {
        KeySheet sheet = new KeySheet(window.words());
        sheet.show(
                window.frame(),
                window.authoring().isPresent()
                        ? sheet.ofAuthor()
                        : window.reviewing().isPresent() ? sheet.ofReview() : sheet.component());
    }
}
