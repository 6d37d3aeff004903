package everyblade.desktop.window;

import everyblade.desktop.view.Choices;
import everyblade.desktop.view.Shortcut;
import everyblade.desktop.words.Words;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** The upper edge of the window: which job this is, and how everything is shown. Each button has its key. */
final class TopBar {

    /** What the bar asks of the window. */
    interface Doing {

        void change(Choices other);

        void start();

        void watchFolder();

        void report();

        void handover();

        void saveElsewhere();

        void keys();
    }

    private final Words words;
    private final Choices choices;
    private final Optional<JobScreen> job;
    private final Doing doing;
    private final JPanel panel = new JPanel(new MigLayout("insets 4 8 4 8, gap 4"));
    private final Map<Shortcut, Runnable> actions = new EnumMap<>(Shortcut.class);

    TopBar(Words words, Choices choices, Optional<JobScreen> job, Doing doing) {
        this.words = words;
        this.choices = choices;
        this.job = job;
        this.doing = doing;
        panel.add(title(), "wmin 0, growx, pushx");
        actions();
        toggle(Shortcut.LOOK_DARK, "bar.dark", choices.dark());
        toggle(Shortcut.DENSITY, "bar.gloves", choices.gloves());
        if (job.isPresent()) {
            toggle(Shortcut.FACING, "bar.fromAhead", choices.fromAhead());
            toggle(Shortcut.TURN_MAP, "bar.turnMap", choices.turnMap());
            button(Shortcut.NUMBERS, "bar.numbers");
            button(Shortcut.FOLDER, "bar.folder");
            button(Shortcut.CLOSING, "bar.closing");
            button(Shortcut.REPORT, "bar.report");
            button(Shortcut.START, "bar.start");
        }
        language();
        button(Shortcut.KEYS, "bar.keys");
    }

    JComponent component() {
        return panel;
    }

    private JComponent title() {
        JLabel label = new JLabel();
        Texts.say(
                label,
                job.map(screen -> words.say(
                                "bar.title",
                                screen.state().model().name(),
                                screen.state().beginning().serial(),
                                screen.state().beginning().task()))
                        .orElse("Everyblade"));
        Texts.tip(label, job.flatMap(screen -> screen.state().model().notice()).orElse(null));
        return label;
    }

    private void actions() {
        actions.put(Shortcut.KEYS, doing::keys);
        actions.put(Shortcut.LOOK_DARK, () -> doing.change(choices.dark(!choices.dark())));
        actions.put(Shortcut.DENSITY, () -> doing.change(choices.gloves(!choices.gloves())));
        job.ifPresent(screen -> {
            actions.put(Shortcut.GO_ENTRY, screen.entry()::focus);
            actions.put(Shortcut.GO_MAP, screen.map()::focus);
            actions.put(Shortcut.GO_LEFT, screen.side().left()::focus);
            actions.put(Shortcut.NEXT_PAGE, screen.side()::nextPage);
            actions.put(Shortcut.ZOOM_IN, screen.map()::zoomIn);
            actions.put(Shortcut.ZOOM_OUT, screen.map()::zoomOut);
            actions.put(Shortcut.FIT, screen.map()::fit);
            actions.put(Shortcut.FACING, () -> doing.change(choices.fromAhead(!choices.fromAhead())));
            actions.put(Shortcut.TURN_MAP, () -> doing.change(choices.turnMap(!choices.turnMap())));
            actions.put(Shortcut.NUMBERS, screen.numbers()::toggle);
            actions.put(Shortcut.FOLDER, doing::watchFolder);
            actions.put(Shortcut.CLOSING, screen.middle()::turnClosing);
            actions.put(Shortcut.ACCEPT_UNSHOWN, screen::acceptUnshown);
            actions.put(Shortcut.PICTURE, screen.middle()::turnPictures);
            actions.put(Shortcut.REPORT, doing::report);
            actions.put(Shortcut.HANDOVER, doing::handover);
            actions.put(Shortcut.SAVE, doing::saveElsewhere);
            actions.put(Shortcut.START, doing::start);
        });
    }

    /** Makes the keys work anywhere in the window of this component. */
    void bind(JComponent root) {
        root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).clear();
        root.getActionMap().clear();
        actions.forEach((shortcut, action) -> shortcut.keys().forEach(key -> Keys.anywhere(root, key, action)));
    }

    private void toggle(Shortcut shortcut, String key, boolean on) {
        JToggleButton button = Texts.toggle(words.say(key), on);
        button.addActionListener(pressed -> actions.get(shortcut).run());
        add(button, shortcut, key);
    }

    private void button(Shortcut shortcut, String key) {
        JButton button = Texts.button(words.say(key));
        button.addActionListener(pressed -> actions.get(shortcut).run());
        add(button, shortcut, key);
    }

    private void add(javax.swing.AbstractButton button, Shortcut shortcut, String key) {
        button.setName(key);
        button.setFocusable(false);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        String told =
                words.say(shortcut.words()) + " (" + KeyNames.of(shortcut.keys().get(0), words) + ")";
        Texts.tip(button, told);
        button.getAccessibleContext().setAccessibleDescription(told);
        panel.add(button, "hmin 32");
    }

    /** The other language, by its own name. */
    private void language() {
        Locale other = Words.LANGUAGES.stream()
                .filter(one -> !one.equals(words.locale()))
                .findFirst()
                .orElseThrow();
        JButton button = Texts.button(other.getDisplayLanguage(other));
        button.setName("bar.language");
        button.setFocusable(false);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.addActionListener(pressed -> doing.change(choices.language(other)));
        panel.add(button, "hmin 32");
    }
}
