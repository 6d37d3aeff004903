package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.window.view.Choices;
import everyblade.window.view.Shortcut;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** The upper edge of the window: which job this is and how far it is, what ends it, and in a menu how all is shown. */
final class TopBar {

    /** What the bar asks of the window. */
    interface Doing {

        void change(Choices other);

        void start();

        void watchFolder();

        void report();

        void handover();

        void saveElsewhere();

        /** Shows a shop's fleet, and leaves the job for that. */
        void fleet();

        void keys();
    }

    private static final float TITLE = 1.1f;

    private final Words words;
    private final Choices choices;
    private final Optional<JobScreen> job;
    private final Doing doing;
    private final JPanel panel = new JPanel(
            new MigLayout("insets 4 10 4 10, fillx, gap 8", "[grow, fill][fill, shrinkprio 50][pref!][pref!][pref!]"));
    private final JPopupMenu more = new JPopupMenu();
    private final Map<Shortcut, Runnable> actions = new EnumMap<>(Shortcut.class);
    private final Overview overview;
    private final JButton closing;

    TopBar(Words words, Choices choices, Optional<JobScreen> job, Doing doing) {
        this.words = words;
        this.choices = choices;
        this.job = job;
        this.doing = doing;
        this.overview = new Overview(words);
        this.closing = Texts.button(words.say("bar.toClose", "…"));
        panel.add(title(), "wmin 0");
        actions();
        if (job.isPresent()) {
            panel.add(overview.component(), "wmin 0");
            add(closing, Shortcut.CLOSING, "bar.closing");
            closing.setIcon(Looks.large() ? null : ButtonSign.CLOSING);
            JButton report = new JButton();
            Texts.sign(report, ButtonSign.REPORT, words.say("bar.report"), !Looks.large());
            add(report, Shortcut.REPORT, "bar.report");
            job.get().onShown(this::show);
            job.get().stages().onTurn(actions.get(Shortcut.STRIPS));
        }
        menu();
        JButton opens = new JButton();
        Texts.sign(opens, ButtonSign.MORE, words.say("bar.more"), !Looks.large());
        opens.setName("bar.more");
        Texts.leaveFocus(opens);
        actions.put(Shortcut.MORE, () -> more.show(opens, 0, opens.getHeight()));
        opens.addActionListener(pressed -> actions.get(Shortcut.MORE).run());
        Texts.tip(
                opens,
                words.say(Shortcut.MORE.words()) + " ("
                        + KeyNames.of(Shortcut.MORE.keys().get(0), words) + ")");
        panel.add(opens, "hmin 34px, cell 4 0");
    }

    JComponent component() {
        return panel;
    }

    private void show(Shown shown) {
        overview.show(shown.state(), Looks.theme(choices));
        job.orElseThrow().countOpen(shown, open -> Texts.say(closing, words.say("bar.toClose", open)));
    }

    private JComponent title() {
        JPanel lines = new JPanel(new MigLayout("insets 0, fillx, wrap, gap 0", "[grow, fill]"));
        if (job.isEmpty()) {
            lines.add(Texts.bold(Texts.label("Everyblade"), 1.1f));
            return lines;
        }
        JobScreen screen = job.get();
        String engine = screen.state().model().name();
        String serial = screen.state().beginning().serial();
        String task = screen.state().beginning().task()
                + screen.state().model().notice().map(notice -> " · " + notice).orElse("");
        boolean large = Looks.large();
        JLabel title = Texts.bold(Texts.label(large ? engine : engine + " · " + serial), TITLE);
        JLabel below = Texts.label(large ? serial + " · " + task : task);
        Texts.tip(title, engine + " · " + serial);
        below.putClientProperty("FlatLaf.style", "font: 85%");
        below.setForeground(Looks.colour(
                Looks.theme(choices), screen.state().model().notice().isPresent() ? Ink.ALERT : Ink.FAINT));
        Texts.tip(below, below.getText());
        lines.add(title, "wmin 0");
        lines.add(below, "wmin 0");
        return lines;
    }

    private void actions() {
        actions.put(Shortcut.KEYS, doing::keys);
        actions.put(Shortcut.LOOK_DARK, () -> doing.change(choices.dark(!choices.dark())));
        actions.put(Shortcut.DENSITY, () -> doing.change(choices.gloves(!choices.gloves())));
        job.ifPresent(screen -> {
            actions.put(Shortcut.GO_ENTRY, screen.entry()::focus);
            actions.put(Shortcut.GO_MAP, screen.stages()::focus);
            actions.put(Shortcut.GO_LEFT, screen.side()::goLeft);
            actions.put(Shortcut.NEXT_PAGE, screen.side()::nextPage);
            actions.put(Shortcut.ZOOM_IN, screen.stages()::zoomIn);
            actions.put(Shortcut.ZOOM_OUT, screen.stages()::zoomOut);
            actions.put(Shortcut.FIT, screen.stages()::fit);
            actions.put(Shortcut.FACING, () -> doing.change(choices.fromAhead(!choices.fromAhead())));
            actions.put(Shortcut.STRIPS, () -> doing.change(choices.strips(!choices.strips())));
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

    private void menu() {
        if (job.isPresent()) {
            item(Shortcut.START, "bar.start");
            item(Shortcut.PICTURE, "bar.picture");
            item(Shortcut.FOLDER, "bar.folder");
            item(Shortcut.HANDOVER, "bar.handover");
            item(Shortcut.SAVE, "bar.save");
            more.addSeparator();
            check(Shortcut.STRIPS, "bar.strips", choices.strips());
            check(Shortcut.FACING, "bar.fromAhead", choices.fromAhead());
            check(Shortcut.NUMBERS, "bar.numbers", job.get().numbers().isShown());
        }
        check(Shortcut.LOOK_DARK, "bar.dark", choices.dark());
        check(Shortcut.DENSITY, "bar.gloves", choices.gloves());
        more.add(texts());
        language();
        JMenuItem fleet = new JMenuItem();
        Texts.say(fleet, words.say("start.fleet"));
        fleet.setName("bar.fleet");
        fleet.addActionListener(pressed -> doing.fleet());
        fleet.getAccessibleContext().setAccessibleDescription(words.say("start.fleet.about"));
        more.add(fleet);
        more.addSeparator();
        item(Shortcut.KEYS, "bar.keys");
    }

    private void check(Shortcut shortcut, String key, boolean on) {
        JCheckBoxMenuItem item = new JCheckBoxMenuItem();
        item.setSelected(on);
        item(item, shortcut, key);
    }

    private void item(Shortcut shortcut, String key) {
        item(new JMenuItem(), shortcut, key);
    }

    private void item(JMenuItem item, Shortcut shortcut, String key) {
        Texts.say(item, words.say(key));
        item.setAccelerator(KeyStroke.getKeyStroke(shortcut.keys().get(0)));
        item.setName(key);
        item.addActionListener(pressed -> actions.get(shortcut).run());
        item.getAccessibleContext().setAccessibleDescription(words.say(shortcut.words()));
        more.add(item);
    }

    private void add(AbstractButton button, Shortcut shortcut, String key) {
        button.addActionListener(pressed -> actions.get(shortcut).run());
        button.setName(key);
        Texts.leaveFocus(button);
        String told =
                words.say(shortcut.words()) + " (" + KeyNames.of(shortcut.keys().get(0), words) + ")";
        Texts.tip(button, told);
        button.getAccessibleContext().setAccessibleDescription(told);
        panel.add(button, "hmin 34px");
    }

    /** How large letters are, to be chosen. */
    private JMenu texts() {
        JMenu menu = new JMenu();
        Texts.say(menu, words.say("bar.text"));
        menu.setName("bar.text");
        ButtonGroup one = new ButtonGroup();
        for (int percent : Choices.TEXTS) {
            boolean system = percent == Choices.AS_THE_SYSTEM;
            JRadioButtonMenuItem item = new JRadioButtonMenuItem();
            Texts.say(item, system ? words.say("bar.text.system") : percent + " %");
            item.setName("bar.text " + percent);
            item.setSelected(percent == choices.text());
            item.addActionListener(pressed -> doing.change(choices.text(percent)));
            one.add(item);
            menu.add(item);
        }
        return menu;
    }

    /** The other language, by its own name. */
    private void language() {
        Locale other = Words.languages().stream()
                .filter(one -> !one.equals(words.locale()))
                .findFirst()
                .orElseThrow();
        JMenuItem item = new JMenuItem();
        Texts.say(item, other.getDisplayLanguage(other));
        item.setName("bar.language");
        item.addActionListener(pressed -> doing.change(choices.language(other)));
        more.add(item);
    }
}
