package everyblade.window;

import everyblade.json.Problem;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.spi.Row;
import everyblade.window.author.Attempt;
import everyblade.window.author.AuthorKey;
import everyblade.window.author.AuthorState;
import everyblade.window.author.ReadModel;
import everyblade.window.author.Standpoint;
import everyblade.window.author.StatusLine;
import everyblade.window.author.TextMark;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.awt.Dimension;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** The screen of a model author: the drawings, renewed with each save, and beside them what is wrong and where. */
final class AuthorScreen {

    private static final int LOOK_MILLIS = 150;
    private static final double DRAWINGS = 0.65;
    private static final double MESSAGES = 0.42;
    private static final String HIGH = "hmin " + Looks.USUAL_TARGET + "px";

    private final Words words;
    private final Theme theme;
    private final AuthorDesk desk;
    private final Timer looking;
    private final JPanel panel = new JPanel(
            new MigLayout("insets 8 8 8 8, fill, wrap, hidemode 3", "[grow, fill]", "[]4[]4[]8[grow, fill]"));
    private final JLabel title = Texts.bold(new JLabel(), 1.3f);
    private final Paragraph notice = new Paragraph();
    private final Paragraph status = new Paragraph();
    private final JComboBox<String> rows = new JComboBox<>();
    private final JComboBox<Standpoint> places = new JComboBox<>();
    private final DrawingPages drawings;
    private final MessageList messages;
    private final ModelText text;
    private Optional<Attempt> shown = Optional.empty();
    private boolean filling;

    /**
     * @param start what is known of the folder already
     * @param back leaves this screen
     */
    AuthorScreen(AuthorState start, Door door, Words words, Choices choices, InstantSource clock, Runnable back) {
        this.words = words;
        this.theme = Looks.theme(choices);
        this.drawings = new DrawingPages(words, theme);
        this.messages = new MessageList(words, theme, this::showPlace);
        this.text = new ModelText(words, theme);
        this.desk = new AuthorDesk(start, door, words, clock, this::show);
        this.looking = new Timer(LOOK_MILLIS, due -> look());
        notice.setForeground(Looks.colour(theme, Ink.ALERT));
        panel.add(head(back));
        panel.add(notice, "wmin 0");
        status.setOpaque(true);
        status.setBorder(BorderFactory.createEmptyBorder(5, 12, 5, 12));
        panel.add(status, "wmin 0");
        panel.add(body(choices), "wmin 0, hmin 0");
        bind(back);
        show(start);
    }

    private JComponent head(Runnable back) {
        JPanel head = new JPanel(new MigLayout("insets 0", "[][]push[][]"));
        head.add(title, "wmin 0");
        head.add(Texts.label(desk.state().folder().path().toString()), "wmin 0");
        head.add(button(ButtonSign.AGAIN, "author.read", AuthorKey.READ, desk::read), HIGH);
        head.add(button(ButtonSign.BACK, "author.back", AuthorKey.BACK, back), HIGH);
        return head;
    }

    private JButton button(ButtonSign sign, String key, AuthorKey by, Runnable action) {
        JButton button =
                Texts.button(words.say(key) + " (" + KeyNames.of(by.keys().get(0), words) + ")");
        button.setIcon(sign);
        button.setName(key);
        button.getAccessibleContext().setAccessibleDescription(words.say(by.words()));
        button.addActionListener(pressed -> action.run());
        return button;
    }

    private JComponent body(Choices choices) {
        JPanel choosers = new JPanel(new MigLayout("insets 0 0 4 0", "[][grow, fill]16[][grow, fill]"));
        chooser(choosers, "author.row", rows);
        chooser(choosers, "author.view", places);
        rows.setRenderer(new RowCells());
        places.setRenderer(new VisibleCells());
        rows.addActionListener(chosen -> {
            if (!filling && rows.getSelectedItem() != null) {
                desk.row((String) rows.getSelectedItem());
            }
        });
        places.addActionListener(chosen -> {
            if (!filling && places.getSelectedItem() != null) {
                desk.from((Standpoint) places.getSelectedItem());
            }
        });
        choosers.setOpaque(false);
        JPanel left = new Card(new MigLayout("insets 8 10 8 10, fill, wrap", "[grow, fill]", "[][grow, fill]"));
        left.add(choosers);
        left.add(drawings.component(), "wmin 200, hmin 0");
        JPanel above = new Card(new MigLayout("insets 8 10 8 10, fill", "[grow, fill]", "[grow, fill]"));
        above.add(messages.component(), "wmin 0, hmin 0");
        JPanel below = new Card(new MigLayout("insets 8 10 8 10, fill, wrap", "[grow, fill]", "[]4[grow, fill]"));
        JLabel name = Texts.bold(Texts.label(words.say("author.text")), 1.1f);
        below.add(name);
        below.add(text.component(), "wmin 0, hmin 60");
        JSplitPane right = split(JSplitPane.VERTICAL_SPLIT, above, below, MESSAGES);
        return split(JSplitPane.HORIZONTAL_SPLIT, left, right, DRAWINGS);
    }

    private static JSplitPane split(int how, JComponent first, JComponent second, double share) {
        JSplitPane split = new JSplitPane(how, true, first, second);
        split.setBorder(null);
        split.setResizeWeight(share);
        for (JComponent one : List.of(first, second)) {
            one.setMinimumSize(new Dimension(120, 80));
            int part = (int) (1000 * (one == first ? share : 1 - share));
            one.setPreferredSize(new Dimension(part, part)); // how they share what there is before anybody drags
        }
        return split;
    }

    private void chooser(JPanel into, String key, JComboBox<?> box) {
        JLabel label = Texts.label(words.say(key));
        label.setLabelFor(box);
        box.setName(key);
        Texts.name(box, words.say(key));
        into.add(label);
        into.add(box, "wmin 60");
    }

    /** Rows by id and name. */
    private final class RowCells extends VisibleCells {

        private static final long serialVersionUID = 1;

        @Override
        String told(Object id) {
            return desk.state()
                    .drawn()
                    .flatMap(read -> read.model().row(String.valueOf(id)))
                    .map(row -> row.id() + ", " + row.name())
                    .orElse("");
        }
    }

    private void bind(Runnable back) {
        Map<AuthorKey, Runnable> actions = new EnumMap<>(AuthorKey.class);
        actions.put(AuthorKey.BACK, back);
        actions.put(AuthorKey.READ, desk::read);
        actions.put(AuthorKey.STOP, desk::stop);
        actions.put(AuthorKey.GO_DRAWING, drawings::focus);
        actions.put(AuthorKey.GO_MESSAGES, messages::focus);
        actions.put(AuthorKey.GO_TEXT, text::focus);
        actions.put(AuthorKey.NEXT_PAGE, () -> drawings.page(drawings.page() + 1));
        actions.put(AuthorKey.LAST_PAGE, () -> drawings.page(drawings.page() - 1));
        actions.put(AuthorKey.ZOOM_IN, () -> drawings.drawing().ifPresent(DrawingPanel::zoomIn));
        actions.put(AuthorKey.ZOOM_OUT, () -> drawings.drawing().ifPresent(DrawingPanel::zoomOut));
        actions.put(AuthorKey.FIT, () -> drawings.drawing().ifPresent(DrawingPanel::fit));
        actions.forEach((key, action) -> key.keys().forEach(one -> Keys.anywhere(panel, one, action)));
    }

    /** Begins to watch the folder. */
    void watch() {
        look();
        looking.start();
        drawings.focus();
    }

    /** Looks whether something was saved. */
    void look() {
        desk.look();
    }

    /** Watches no more. */
    void close() {
        looking.stop();
        desk.close();
    }

    JComponent component() {
        return panel;
    }

    AuthorState state() {
        return desk.state();
    }

    /** Which page of the drawings is shown. */
    int page() {
        return drawings.page();
    }

    /** Shows this page of the drawings. */
    AuthorScreen page(int number) {
        drawings.page(number);
        return this;
    }

    /** Tells what went wrong beside the model. */
    void tell(String message) {
        tell(message, Ink.PAPER, Ink.ALERT);
    }

    String told() {
        return status.getText();
    }

    /** The line whose place is shown, from 1; 0 if none is. */
    int markedLine() {
        return text.markedLine();
    }

    private void showPlace(Problem problem) {
        desk.state().last().ifPresent(last -> text.mark(TextMark.of(last.text(), problem)));
    }

    private void show(AuthorState state) {
        Texts.say(title, state.drawn().map(read -> read.model().name()).orElse(words.say("author.title")));
        String said = state.drawn().flatMap(read -> read.model().notice()).orElse("");
        notice.say(said);
        notice.setVisible(!said.isEmpty());
        tell(StatusLine.of(state, words, ZoneId.systemDefault()));
        state.drawn().ifPresent(read -> fill(read, state));
        drawings.show(state);
        if (!state.last().equals(shown)) {
            shown = state.last();
            state.last().ifPresent(last -> {
                text.show(last.text());
                messages.show(last);
                messages.chosen().ifPresent(this::showPlace);
            });
        }
    }

    private void tell(StatusLine line) {
        boolean broken = line.kind() == StatusLine.Kind.BROKEN;
        String sign = broken ? "✖ " : line.kind() == StatusLine.Kind.VALID ? "✔ " : "";
        tell(sign + line.text(), broken ? Ink.PAPER : Ink.LINE, broken ? Ink.ALERT : Ink.PART_WASH);
    }

    private void tell(String said, Ink ink, Ink ground) {
        status.say(said);
        status.setForeground(Looks.colour(theme, ink));
        status.setBackground(Looks.colour(theme, ground));
    }

    private void fill(ReadModel read, AuthorState state) {
        filling = true;
        choose(rows, read.model().rows().stream().map(Row::id).toList(), state.row());
        choose(places, Standpoint.of(read.model()), state.from());
        filling = false;
    }

    private static <T> void choose(JComboBox<T> box, List<T> all, Optional<T> chosen) {
        DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
        Consumer<T> add = model::addElement;
        all.forEach(add);
        boolean same = model.getSize() == box.getItemCount();
        for (int i = 0; same && i < model.getSize(); i++) {
            same = model.getElementAt(i).equals(box.getItemAt(i));
        }
        if (!same) {
            box.setModel(model); // only then, since it closes a list that a person has open
        }
        box.setSelectedItem(chosen.orElse(null));
    }
}
