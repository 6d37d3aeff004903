package everyblade.window;

import everyblade.picture.MapStyle;
import everyblade.practice.account.Outcome;
import everyblade.practice.drill.TipTrack.Sample;
import everyblade.session.drill.DrillRecord.Told;
import everyblade.session.drill.DrillText;
import everyblade.window.view.Practising;
import everyblade.window.view.ScopeEye;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;

/**
 * What came of a drill: line by line, the map of truth over that of the entries, and the whole drill again from the tip's eye,
 * with what was there ringed.
 */
final class DrillResultScreen {

    /** The first lines are the title and the sum; then each piece of damage has its line. */
    private static final int LINES_BEFORE = 2;

    private final Told told;
    private final Door eyeDoor;
    private final ScopeEye eye;
    private final ScopePanel scope;
    private final JSlider slider;
    private final DrillMaps maps;
    private final LineList<String> list = new LineList<>("drill.result", line -> line);
    private final JPanel panel = new JPanel(
            new MigLayout("insets 6 8 6 8, fill", "[400!, fill][grow, fill]", "[grow 65, fill][grow 35, fill]"));

    DrillResultScreen(Practising practising, Told told, Words words, MapStyle style, Door eyeDoor) {
        this.told = told;
        this.eyeDoor = eyeDoor;
        this.eye = practising.eye();
        this.scope = new ScopePanel(words);
        this.slider = new JSlider(0, Math.max(0, told.track().samples().size() - 1), 0);
        this.maps = new DrillMaps(told, words, style);
        list.show(new DrillText(words).result(practising.drill(), told));
        list.addListSelectionListener(chosen -> chosen(list.getSelectedIndex() - LINES_BEFORE));
        list.getAccessibleContext().setAccessibleName(words.say("drill.result.list"));
        slider.setName("drill.replay");
        slider.getAccessibleContext().setAccessibleName(words.say("drill.replay"));
        slider.addChangeListener(moved -> show(slider.getValue()));
        JPanel left = new JPanel(new MigLayout("insets 0, fill, wrap", "[grow, fill]", "[grow, fill][][]"));
        left.add(scope, "w 360, h 360, wmin 280, hmin 200");
        left.add(slider);
        left.add(new Paragraph(words.say("drill.replay")), "wmin 0");
        panel.add(left, "growy");
        panel.add(maps.component(), "grow, wmin 0, wrap");
        panel.add(list.scrolled(), "span, grow, wmin 0, h 160:240:");
        if (told.track().samples().isEmpty()) {
            scope.tell(words.say("drill.replay.none"));
        } else {
            show(0);
        }
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        list.setSelectedIndex(0);
        list.requestFocusInWindow();
    }

    /** Goes to where a piece of damage was in sight for the first time. */
    private void chosen(int index) {
        List<Outcome> outcomes = told.debrief().outcomes();
        if (index >= 0 && index < outcomes.size()) {
            maps.select(outcomes.get(index).harm());
            long first = outcomes.get(index).sighting().firstMillis();
            List<Sample> samples = told.track().samples();
            for (int i = 0; first >= 0 && i < samples.size(); i++) {
                if (samples.get(i).millis() >= first) {
                    slider.setValue(i);
                    return;
                }
            }
        }
    }

    private void show(int index) {
        List<Sample> samples = told.track().samples();
        if (index < samples.size()) {
            Sample sample = samples.get(index);
            eyeDoor.latest("replay", () -> eye.shot(sample.moment(), 640), shot -> {
                scope.show(shot);
                scope.ring(told.truth().damage().stream()
                        .map(harm -> eye.spot(sample.moment(), harm))
                        .flatMap(Optional::stream)
                        .toList());
            });
        }
    }
}
