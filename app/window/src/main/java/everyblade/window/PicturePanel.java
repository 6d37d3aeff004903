package everyblade.window;

import everyblade.core.entry.Kind;
import everyblade.core.entry.Refusal;
import everyblade.session.JobState;
import everyblade.session.photo.Album;
import everyblade.session.photo.JobPhoto;
import everyblade.session.photo.PhotoImage;
import everyblade.session.photo.PictureSize;
import everyblade.session.photo.PictureSize.Surface;
import everyblade.session.photo.Subject;
import everyblade.window.view.Marks.Tool;
import everyblade.window.view.PictureTask;
import everyblade.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** A picture in place of the map, and beside it what it shows, how large something in it is, and how surely. */
final class PicturePanel {

    private final Words words;
    private final Door door;
    private final Consumer<String> begin;
    private final PictureCanvas canvas;
    private final PictureHands hands;
    private final JPanel panel = new Card(new MigLayout(
            "insets 6 10 6 10, fill, wrap 4, gapy 4, hidemode 3",
            "[][grow, fill, sizegroup][][grow, fill, sizegroup]"));
    private final JLabel title = Texts.bold(new JLabel(), 1.1f);
    private final Paragraph told = new Paragraph();
    private final JTextField airfoil = new JTextField(4);
    private final JTextField zone = new JTextField(4);
    private final JTextField known = new JTextField(4);
    private final JComboBox<Kind> kind = new JComboBox<>(Kind.values());
    private final Paragraph size = new Paragraph(1.3f);
    private final Paragraph details = new Paragraph();
    private JobState state;
    private Optional<Album> album = Optional.empty();
    private Optional<PictureTask> task = Optional.empty();
    private Optional<Subject> subject = Optional.empty();
    private Surface surface = Surface.UNKNOWN;
    private boolean filling;

    PicturePanel(Words words, Door door, Consumer<String> begin, Runnable back) {
        this.words = words;
        this.door = door;
        this.begin = begin;
        this.canvas = new PictureCanvas(words);
        this.hands = new PictureHands(canvas);
        kind.setName("picture.kind");
        kind.setRenderer(new KindCells(words));
        size.setName("picture size");
        details.setName("picture details");
        lay(back);
        listen(back);
    }

    private void lay(Runnable back) {
        panel.add(title, "span 4, wmin 0");
        panel.add(told, "span 4, wmin 0, growx");
        Form form = new Form(panel, words);
        form.field("picture.airfoil", airfoil);
        form.field("picture.zone", zone);
        form.field("picture.known", known);
        form.field("finding.kind", kind);
        known.putClientProperty("JTextField.placeholderText", "38 ± 0.2 mm");
        JPanel buttons =
                new JPanel(new MigLayout("insets 0, gap 4, wrap 2", "[grow, fill, sizegroup][grow, fill, sizegroup]"));
        button(buttons, ButtonSign.KNOWN, "picture.takeKnown", () -> hands.take(Tool.KNOWN));
        button(buttons, ButtonSign.SIZE, "picture.takeSize", () -> hands.take(Tool.SIZE));
        button(buttons, ButtonSign.CONFIRM, "picture.confirm", this::confirm);
        button(buttons, ButtonSign.INTO_LINE, "picture.use", this::use);
        button(buttons, ButtonSign.WHOLE, "picture.fit", canvas::fit);
        button(buttons, ButtonSign.BACK, "picture.back", back);
        panel.add(buttons, "span 4, growx, wmin 0");
        panel.add(size, "span 4, wmin 0, growx, gaptop 4");
        panel.add(Form.scrolled(details), "span 4, grow, pushy, hmin 40");
        panel.setMinimumSize(new java.awt.Dimension(300, 100));
    }

    private void button(JPanel buttons, ButtonSign sign, String key, Runnable action) {
        JButton button = Texts.button(words.say(key));
        button.setName(key);
        Texts.leaveFocus(button);
        button.addActionListener(pressed -> action.run());
        Texts.tight(button);
        Texts.signOver(button, sign);
        buttons.add(button, "wmin 0, hmin " + Looks.USUAL_TARGET + "px");
    }

    private void listen(Runnable back) {
        for (JTextField field : List.of(airfoil, zone)) {
            field.getDocument().addDocumentListener(new Typing(this::retyped));
        }
        known.getDocument().addDocumentListener(new Typing(this::measure));
        kind.addActionListener(chosen -> measure());
        for (JTextField field : List.of(airfoil, zone, known)) {
            field.addActionListener(entered -> canvas.requestFocusInWindow());
            field.putClientProperty("JTextField.selectAllOnFocusPolicy", "always");
        }
        Keys.within(panel, "ESCAPE", canvas::requestFocusInWindow);
        canvas.onChange(this::measure);
        hands.install(back);
        Keys.on(canvas, "ENTER", this::use);
        Keys.on(canvas, "typed c", this::confirm);
        Keys.on(canvas, "typed C", this::confirm);
        Keys.on(canvas, "PAGE_DOWN", () -> leaf(1));
        Keys.on(canvas, "PAGE_UP", () -> leaf(-1));
    }

    JComponent component() {
        return panel;
    }

    /** The picture itself. */
    JComponent picture() {
        return canvas;
    }

    void focus() {
        canvas.requestFocusInWindow();
    }

    void show(JobState newState) {
        state = newState;
    }

    /** Goes through these pictures, beginning with one of them; says so if there is none. */
    void open(Album newAlbum, Optional<JobPhoto> first) {
        album = Optional.of(newAlbum);
        first.ifPresentOrElse(this::turnTo, () -> {
            task = Optional.empty();
            Texts.say(title, words.say("picture.none"));
            told.say(words.say("picture.noneAbout"));
            canvas.clear("");
            canvas.describe(title.getText() + ". " + told.getText());
        });
    }

    private void leaf(int pages) {
        task.ifPresent(now -> {
            List<JobPhoto> photos = album.orElseThrow().photos();
            int next = photos.indexOf(now.photo()) + pages;
            if (next >= 0 && next < photos.size()) {
                turnTo(photos.get(next));
            }
        });
    }

    private void turnTo(JobPhoto photo) {
        Album all = album.orElseThrow();
        fill(PictureTask.first(photo));
        task = Optional.of(new PictureTask(all, photo, typed()));
        Texts.say(
                title,
                words.say(
                        "picture.title",
                        photo.kept().file(),
                        all.photos().indexOf(photo) + 1,
                        all.photos().size()));
        told.say(String.join("\n", task.get().told(words, ZoneId.systemDefault())));
        canvas.clear(words.say("wait.picture"));
        retyped();
        door.aside(words.say("wait.picture"), () -> PhotoImage.of(all.folder(), photo.kept()), image -> {
            if (task.filter(now -> now.photo() == photo).isPresent()) {
                image.ifPresentOrElse(
                        canvas::show,
                        () -> canvas.clear(
                                words.say("picture.notShown", photo.kept().file())));
            }
        });
    }

    private void fill(PictureTask.Typed first) {
        filling = true;
        airfoil.setText(first.airfoil());
        zone.setText(first.zone());
        kind.setSelectedItem(first.kind());
        filling = false;
    }

    private PictureTask.Typed typed() {
        return new PictureTask.Typed(airfoil.getText(), zone.getText(), known.getText(), (Kind) kind.getSelectedItem());
    }

    /** Works out anew how the place was seen that is typed now. */
    private void retyped() {
        if (filling || task.isEmpty()) {
            return;
        }
        measure();
        PictureTask asked = task.get();
        Optional<Subject> shown = subject;
        door.latest(
                "surface",
                () -> shown.map(place -> Surface.of(asked.album(), asked.photo(), place))
                        .orElse(Surface.UNKNOWN),
                found -> {
                    surface = found;
                    measure();
                });
    }

    /** Says what is known of the picture, and the size as soon as everything for it is there. */
    private void measure() {
        if (filling || task.isEmpty()) {
            return;
        }
        PictureTask now = new PictureTask(task.get().album(), task.get().photo(), typed());
        task = Optional.of(now);
        List<String> lines = new ArrayList<>();
        try {
            subject = now.subject();
        } catch (Refusal refusal) {
            subject = Optional.empty();
            lines.add(words.say(refusal.why()));
        }
        Optional<PictureSize> measured = now.size(canvas.marks(), surface);
        size.say(measured.map(PictureSize::text).orElse(""));
        size.setVisible(measured.isPresent());
        lines.add(now.next(canvas.marks(), words));
        surface.seen().ifPresent(seen -> lines.add(words.say(PictureSize.seen(seen))));
        measured.ifPresentOrElse(
                done -> {
                    lines.addAll(words.say(done.shares()));
                    words.say(done.warnings()).forEach(warning -> lines.add("⚠ " + warning));
                },
                () -> lines.addAll(words.say(surface.extents())));
        lines.add(words.say("picture.hint"));
        details.say(String.join("\n", lines));
        canvas.describe(title.getText() + ". " + told.getText() + " " + String.join(" ", lines));
    }

    /** Begins the finding with its size in the entry line. */
    private void use() {
        task.ifPresent(now -> now.size(canvas.marks(), surface)
                .ifPresent(measured -> begin.accept(now.finding(state, subject, measured))));
    }

    /** Begins the entry that names the airfoil with the picture. */
    private void confirm() {
        task.ifPresent(now -> now.confirmation(state, subject)
                .ifPresentOrElse(begin, () -> details.say(words.say("picture.otherRow"))));
    }
}
