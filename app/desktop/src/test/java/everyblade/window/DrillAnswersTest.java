package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Commands;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.harm.Harm;
import everyblade.record.drill.DrillFolder;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import everyblade.window.map.CellPanel;
import everyblade.window.view.Motion;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.JList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a drill answers: to each call of a burst, to what goes by without one, and at its end. */
class DrillAnswersTest extends WithADrill {

    @Test
    void each_call_of_a_burst_is_answered_at_once() {
        var damage = practising.truth().damage().get(0);
        enter("view p-r");
        enter("datum r 1");
        String line = damage.kind().called().orElseThrow().word() + " " + damage.airfoil() + " "
                + damage.zones().get(0);
        Offscreen.on(() -> {
            session.enter(line, true, Words.of(Locale.ENGLISH));
            job.show(Shown.of(session.state(), Words.of(Locale.ENGLISH), ZoneOffset.UTC));
            return null;
        });

        assertThat(texts(job.component())).anyMatch(text -> text.startsWith("Right. It is"));
    }

    @Test
    void what_goes_by_in_a_burst_without_a_call_is_told_once_and_counts_as_missed() {
        enter("view p-r");
        enter("datum r 1");
        looksOnly();
        List<String> told = new ArrayList<>();
        for (int i = 0; i < 240 && told.isEmpty(); i++) {
            practising.move(Motion.CLOCKWISE, 0.05);
            pass(250);
            texts(job.component()).stream()
                    .filter(text -> text.contains("Gone by without a call"))
                    .forEach(told::add);
        }

        assertThat(told).isNotEmpty();
        List<TipTrack.Sample> track = practising.take();
        assertThat(new TipTrack(track).told()).isNotEmpty();
    }

    @Test
    void what_was_before_the_tip_was_seated_was_not_in_sight() {
        for (int i = 0; i < 100; i++) {
            pass(250);
        }
        enter("view p-r");
        looksOnly();
        for (int i = 0; i < 4; i++) {
            pass(250);
        }
        for (int i = 0; i < 240 && !told("Gone by without a call"); i++) {
            practising.move(Motion.CLOCKWISE, 0.05);
            pass(250);
        }

        assertThat(texts(job.component()))
                .filteredOn(text -> text.contains("Gone by without a call"))
                .isNotEmpty()
                .allSatisfy(text -> assertThat(Double.parseDouble(text.replaceAll(".* for ([0-9.]+) s.*", "$1")))
                        .isLessThan(20));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void after_the_end_the_truth_is_told_and_the_drill_can_be_seen_again(String language) {
        speak(Locale.forLanguageTag(language));
        enter("view p-r");
        hold("ADD", 1500);

        Offscreen.on(() -> {
            drilling.endNow(session.state());
            return null;
        });

        DrillFolder ended = practising.drill().folder();
        assertThat(ended.ended()).isTrue();
        assertThat(ended.track().samples()).hasSizeGreaterThan(5);
        assertThat(texts(drilling.component()))
                .anyMatch(text -> text.contains(language.equals("en") ? "8 pieces of damage" : "8 Schäden"));
        CellPanel truly = Offscreen.find(drilling.component(), CellPanel.class, "drill.truly");
        CellPanel claimed = Offscreen.find(drilling.component(), CellPanel.class, "drill.claimed");
        JList<?> list = Offscreen.find(drilling.component(), JList.class, "drill.result");
        Offscreen.on(() -> {
            list.setSelectedIndex(2);
            return null;
        });
        Harm first = practising.truth().damage().get(0);
        assertThat(truly.selected().orElseThrow().airfoil()).isEqualTo(first.airfoil());
        assertThat(claimed.selected()).isEqualTo(truly.selected());
    }

    @Test
    void the_report_of_a_drill_is_written_and_says_what_it_is() {
        enter("view p-r");
        JobStarting commands =
                new JobStarting(around, new Shelf(around, List.of(), new Consent(around, Set.of())), Commands::run);
        Path page = folder.resolve("d-report.html");

        assertThat(commands.write(Papers.Paper.REPORT.command(true), folder.resolve("d"), page))
                .isEmpty();
        assertThat(page).content().contains("DRILL");
        assertThat(commands.write(Papers.Paper.REPORT.command(false), folder.resolve("d"), folder.resolve("e.html")))
                .hasValueSatisfying(problem -> assertThat(problem).startsWith("A drill, not a job"));
    }
}
