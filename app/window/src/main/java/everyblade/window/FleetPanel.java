package everyblade.window;

import everyblade.picture.chart.CourseChart;
import everyblade.picture.scene.Theme;
import everyblade.window.view.FleetBoard;
import everyblade.words.Words;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** A shop's fleet: each engine's rows as their last inspection left them, how that went over time, and what is open. */
final class FleetPanel {

    /** What a person may do here. */
    interface Doing {

        /** Asks the store at this address. */
        void look(String address);

        /** Keeps the job that is worked on in this store as well, or no more. */
        void follow(String address, boolean always);

        /** Brings a job to a folder that the person names, and opens it. */
        void open(String job);

        void back();
    }

    private final Words words;
    private final JPanel panel = new JPanel(new MigLayout(
            "insets 16 24 16 24, fill, wrap, hidemode 3", "[grow, fill]", "[][][][grow 60, fill][grow 40, fill][]"));
    private final JTextField address = new JTextField();
    private final Paragraph told = new Paragraph();
    private final Theme theme;
    private final FleetGrid grid;
    private final Course course = new Course();
    private final LineList<FleetBoard.Open> open;
    private final JButton opens;

    /**
     * The page before anything was asked.
     *
     * @param store address that was given last; may be empty
     * @param always whether the job that is worked on is kept there as well
     */
    FleetPanel(Words words, Theme theme, String store, boolean always, Doing doing) {
        this.words = words;
        this.theme = theme;
        this.grid = new FleetGrid(words, theme, this::chosen);
        this.open = new LineList<>("fleet.open", this::line);
        Texts.name(open, words.say("fleet.page.open"));
        address.setText(store);
        address.setName("fleet.address");
        address.addActionListener(pressed -> doing.look(address.getText()));
        JLabel label = Texts.label(words.say("fleet.page.address"));
        label.setLabelFor(address);
        JCheckBox follows = new JCheckBox();
        Texts.say(follows, words.say("fleet.page.follow"));
        follows.setName("fleet.follow");
        follows.setSelected(always);
        follows.addActionListener(pressed -> doing.follow(address.getText(), follows.isSelected()));
        opens = button(ButtonSign.FOLDER, "fleet.page.bring", () -> jobChosen().ifPresent(doing::open));
        opens.setEnabled(false);
        open.addListSelectionListener(moved -> opens.setEnabled(jobChosen().isPresent()));
        panel.add(Texts.bold(Texts.label(words.say("fleet.page.title")), 1.6f));
        panel.add(label, "split 3");
        panel.add(address, "growx, pushx, hmin 34");
        panel.add(button(ButtonSign.LOOK, "fleet.page.look", () -> doing.look(address.getText())), "hmin 34");
        panel.add(told, "wmin 0");
        panel.add(grid.component(), "hmin 120");
        JPanel below = new JPanel(new MigLayout("insets 0, fill", "[grow 50, fill][grow 50, fill]", "[][grow, fill]"));
        below.add(Texts.bold(Texts.label(words.say("fleet.page.course")), 1.1f));
        below.add(Texts.bold(Texts.label(words.say("fleet.page.open")), 1.1f), "wrap");
        below.add(course, "wmin 0");
        below.add(open.scrolled(), "wmin 0");
        panel.add(below, "hmin 120");
        panel.add(opens, "split 3, growx 0, hmin 44");
        panel.add(button(ButtonSign.BACK, "fleet.page.back", doing::back), "growx 0, hmin 44");
        panel.add(follows, "pushx, align right");
        Keys.on(panel, "ESCAPE", doing::back);
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        address.requestFocusInWindow();
    }

    /** Tells one thing, such as why nothing is shown. */
    void tell(String what) {
        told.say(what);
    }

    void show(FleetBoard shown) {
        grid.show(shown);
        open.show(shown.open());
        String what = shown.engines().isEmpty()
                ? words.say("fleet.page.empty")
                : words.say(
                        "fleet.page.engines",
                        shown.engines().size(),
                        shown.open().size());
        tell(shown.missing() == 0 ? what : what + " " + words.say("fleet.page.behind", shown.missing()));
    }

    private String line(FleetBoard.Open one) {
        return words.say(
                "fleet.page.openLine", one.site(), one.days(), one.model(), one.serial(), one.what(), one.where());
    }

    private void chosen(Optional<FleetBoard.Engine> engine) {
        course.points = engine.map(FleetBoard.Engine::course).orElse(List.of()).stream()
                .map(one -> new CourseChart.Point(one.at(), one.left(), one.findings()))
                .toList();
        course.repaint();
        opens.setEnabled(jobChosen().isPresent());
    }

    /** The job of the open item that is chosen while the list has the focus, else the last one of the engine. */
    private Optional<String> jobChosen() {
        Optional<String> ofOpen = Optional.ofNullable(open.getSelectedValue()).map(FleetBoard.Open::job);
        return open.isFocusOwner() && ofOpen.isPresent()
                ? ofOpen
                : grid.chosen().map(FleetBoard.Engine::job).or(() -> ofOpen);
    }

    private JButton button(ButtonSign sign, String key, Runnable action) {
        JButton button = Texts.button(words.say(key));
        button.setIcon(sign);
        button.setName(key);
        button.addActionListener(pressed -> action.run());
        return button;
    }

    /** The inspections of the engine that is chosen, as a chart. */
    private final class Course extends JComponent {

        private static final long serialVersionUID = 1;

        private transient List<CourseChart.Point> points = List.of();

        Course() {
            setName("fleet.course");
            setPreferredSize(new Dimension(400, 200));
        }

        @Override
        protected void paintComponent(Graphics g) {
            if (!points.isEmpty()) {
                Graphics2D graphics = (Graphics2D) g.create();
                CourseChart.paint(points, words, theme, graphics, getWidth(), getHeight());
                graphics.dispose();
            }
        }
    }
}
