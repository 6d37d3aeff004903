package everyblade.window;

import everyblade.core.entry.Settings;
import everyblade.json.jar.CodeJar;
import everyblade.picture.MapWords;
import everyblade.picture.Terms;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.spi.EngineModel;
import everyblade.spi.ScopeTip;
import everyblade.spi.TaskCard;
import everyblade.window.view.NewJob;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The form for a new job. */
final class NewJobPanel {

    private final Words words;
    private static final String ALL = "span 3, growx";

    private final Column panel =
            new Column(new MigLayout("insets 24 32 24 32, wrap 4", "[]16[180:200:200, fill]16[]16[180:200:200, fill]"));
    private final JScrollPane scroll = new JScrollPane(panel);
    private final JComboBox<String> model = new JComboBox<>();
    private final JComboBox<String> scopeTip = new JComboBox<>();
    private final JComboBox<String> card = new JComboBox<>();
    private final JTextField serial = new JTextField();
    private final JTextField task = new JTextField();
    private final JTextField by = new JTextField();
    private final JTextField folder = new JTextField();
    private final Map<String, JTextField> facts = new LinkedHashMap<>();
    private final Paragraph notice = new Paragraph();
    private final Paragraph problem = new Paragraph();
    private final List<EngineModel> models;

    /**
     * @param models to choose from, by name
     * @param code jars whose models are not known before somebody lets them run
     * @param ask about one of these
     * @param proposed folder for the job
     * @param worker who worked last
     */
    NewJobPanel(
            Words words,
            Theme theme,
            List<EngineModel> models,
            List<CodeJar> code,
            Consumer<CodeJar> ask,
            String proposed,
            String worker,
            Consumer<NewJob> start,
            Runnable back) {
        this.words = words;
        scroll.setBorder(BorderFactory.createEmptyBorder());
        this.models = List.copyOf(models);
        models.forEach(one -> model.addItem(one.name() + " (" + one.id() + ")"));
        model.setRenderer(new VisibleCells());
        scopeTip.setRenderer(new VisibleCells());
        card.setRenderer(new VisibleCells());
        model.addActionListener(chosen -> modelChosen());
        card.addActionListener(chosen -> cardChosen());
        folder.setText(proposed);
        by.setText(worker);
        problem.setForeground(Looks.colour(theme, Ink.ALERT));
        panel.add(Texts.bold(Texts.label(words.say("form.title")), 1.6f), "span 4");
        field("form.model", model, ALL);
        panel.add(notice, "skip, wmin 0, " + ALL);
        for (CodeJar jar : code) {
            JButton question = Texts.button(words.say(
                    "form.code", jar.plugin(), String.valueOf(jar.jar().getFileName())));
            question.setName("form.code");
            question.addActionListener(pressed -> ask.accept(jar));
            panel.add(question, "skip, wmin 0, " + ALL);
        }
        field("form.serial", serial, ALL);
        field("form.card", card, ALL);
        field("form.task", task, ALL);
        field("form.by", by, ALL);
        NewJob.FACTS.forEach(fact -> {
            JTextField input = new JTextField();
            facts.put(fact, input);
            field("form." + fact, input, "growx");
        });
        field("form.scopeTip", scopeTip, ALL);
        field("form.folder", folder, ALL);
        panel.add(new Paragraph(new Terms(Settings.PROPOSED, true, MapWords.of(words)).line()), "skip, wmin 0, " + ALL);
        panel.add(new Paragraph(words.say("caution.before")), "span 4, wmin 0, growx");
        panel.add(problem, "span 4, wmin 0, growx");
        JButton begin = Texts.button(words.say("form.start"));
        begin.setIcon(ButtonSign.NEW);
        begin.setName("form.start");
        begin.addActionListener(pressed -> begin(start));
        JButton cancel = Texts.button(words.say("form.back"));
        cancel.setIcon(ButtonSign.BACK);
        cancel.setName("form.back");
        cancel.addActionListener(pressed -> back.run());
        panel.add(begin, "skip, span 3, split 2, growx, hmin 44, sg go");
        panel.add(cancel, "hmin 44, growx, sg go");
        Keys.anywhere(panel, "ESCAPE", back);
        for (JTextField field : List.of(serial, task, by, folder)) {
            field.addActionListener(entered -> field.transferFocus());
        }
        modelChosen();
    }

    private void field(String key, JComponent input, String place) {
        JLabel label = Texts.label(words.say(key));
        label.setLabelFor(input);
        input.setName(key);
        input.getAccessibleContext().setAccessibleName(words.say(key));
        panel.add(label);
        panel.add(input, place + ", wmin 0");
    }

    private Optional<EngineModel> chosen() {
        int index = model.getSelectedIndex();
        return index < 0 ? Optional.empty() : Optional.of(models.get(index));
    }

    private void modelChosen() {
        notice.say(chosen().flatMap(EngineModel::notice).orElse(" "));
        List<String> tips = new ArrayList<>(List.of(words.say("form.viewsOwn")));
        chosen().ifPresent(one -> one.scopeTips().stream().map(ScopeTip::id).forEach(tips::add));
        scopeTip.setModel(new DefaultComboBoxModel<>(tips.toArray(String[]::new)));
        List<String> cards = new ArrayList<>(List.of(words.say("form.wholeEngine")));
        cards().forEach(one -> cards.add(one.name()));
        card.setModel(new DefaultComboBoxModel<>(cards.toArray(String[]::new)));
        card.setEnabled(cards.size() > 1);
    }

    private List<TaskCard> cards() {
        return chosen().map(EngineModel::taskCards).orElse(List.of());
    }

    private Optional<TaskCard> chosenCard() {
        int index = card.getSelectedIndex();
        return index < 1 ? Optional.empty() : Optional.of(cards().get(index - 1));
    }

    /** The card's name is what is to be done, unless the person wrote something else. */
    private void cardChosen() {
        boolean isOurs = task.getText().isBlank()
                || cards().stream().anyMatch(one -> one.name().equals(task.getText()));
        if (isOurs) {
            task.setText(chosenCard().map(TaskCard::name).orElse(""));
        }
    }

    private void begin(Consumer<NewJob> start) {
        NewJob job = new NewJob(
                folder.getText().strip(),
                chosen().map(EngineModel::id).orElse(""),
                serial.getText().strip(),
                task.getText().strip(),
                chosenCard().map(TaskCard::id).orElse(""),
                by.getText().strip(),
                scopeTip.getSelectedIndex() > 0 ? String.valueOf(scopeTip.getSelectedItem()) : "",
                facts.entrySet().stream()
                        .map(fact -> Map.entry(fact.getKey(), fact.getValue().getText()))
                        .toList());
        Optional<String> missing = job.missing(words);
        problem.say(missing.orElse(" "));
        if (missing.isEmpty()) {
            start.accept(job);
        }
    }

    /** Why no job could be started. */
    void tell(String message) {
        problem.say(message);
    }

    JComponent component() {
        return scroll;
    }

    void focus() {
        model.requestFocusInWindow();
    }
}
