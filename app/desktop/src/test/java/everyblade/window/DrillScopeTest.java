package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.practice.drill.TipTrack;
import everyblade.window.view.Motion;
import everyblade.window.view.Practising;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Hands on the scope of a drill: what moves, what is seen, what is lost, and what is kept of it. */
class DrillScopeTest extends WithADrill {

    @Test
    void nothing_is_seen_before_a_view_is_entered_and_the_engine_after() {
        draws = true;
        pass(25);
        assertThat(practising.moment()).isEmpty();

        enter("view p-r");

        assertThat(practising.moment().orElseThrow().tip().station()).isEqualTo("far");
        assertThat(brightness()).isGreaterThan(3000);
        enter("at near");
        assertThat(practising.moment().orElseThrow().tip().station()).isEqualTo("near");
    }

    private int brightness() {
        return Offscreen.on(() -> {
            screen.scope().setSize(200, 200);
            BufferedImage image = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
            screen.scope().paint(image.createGraphics());
            int lit = 0;
            for (int x = 40; x < 160; x++) {
                for (int y = 60; y < 160; y++) {
                    lit += (image.getRGB(x, y) & 255) > 20 ? 1 : 0;
                }
            }
            return lit;
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"PAGE_DOWN", "UP", "LEFT", "COMMA", "ADD", "MINUS", "shift UP", "ctrl PERIOD"})
    void a_key_moves_for_as_long_as_it_is_held(String key) {
        enter("view p-r");
        enter("at near");
        var before = practising.moment().orElseThrow();

        hold(key, 200);

        var after = practising.moment().orElseThrow();
        assertThat(after).isNotEqualTo(before);
        pass(500);
        assertThat(practising.moment()).contains(after);
    }

    @Test
    void turning_among_the_blades_loses_the_tip_until_another_view_is_entered() {
        enter("view p-r");
        enter("at near");
        for (int i = 0; i < 50 && practising.struck().isEmpty(); i++) {
            practising.move(Motion.IN, 1);
            practising.move(Motion.CLOCKWISE, 0.01);
        }

        assertThat(practising.struck()).contains("r");
        assertThat(practising.moment()).isEmpty();
        enter("view p-r");
        assertThat(practising.struck()).isEmpty();
        assertThat(practising.moment()).isPresent();
    }

    @Test
    void losing_the_tip_is_in_the_track() {
        enter("view p-r");
        enter("at near");
        for (int i = 0; i < 50 && practising.struck().isEmpty(); i++) {
            practising.move(Motion.IN, 1);
            practising.move(Motion.CLOCKWISE, 0.01);
        }

        assertThat(new TipTrack(practising.take()).lost()).containsExactly("r");
    }

    @Test
    void the_tools_turns_are_counted_from_where_they_were_zeroed() {
        enter("view p-r");
        hold("ADD", 1000);
        double turned = practising.toolTurns(session.state()).orElseThrow();
        assertThat(turned).isBetween(0.04, 0.08); // 0.7 blades of 30° a second

        strike("0");

        assertThat(practising.toolTurns(session.state())).contains(0.0);
    }

    @Test
    void a_drill_goes_on_where_it_was_left() {
        enter("view p-r");
        hold("ADD", 1000);
        Offscreen.on(() -> {
            screen.stop();
            return null;
        });

        Practising again = new Practising(practising.drill(), practising.truth());
        again.follow(session.state());

        assertThat(again.moment().orElseThrow().shafts())
                .containsEntry(
                        "shaft", practising.moment().orElseThrow().shafts().get("shaft"));
        assertThat(again.toolTurns(session.state())).isEqualTo(practising.toolTurns(session.state()));
    }

    @Test
    void a_pad_that_turns_the_shaft_one_way_only_does_so_in_a_drill_too() {
        enter("view p-r");
        enter("pad crank");
        hold("ADD", 500);
        double turned = practising.toolTurns(session.state()).orElseThrow();
        assertThat(turned).isPositive();

        hold("MINUS", 500);

        assertThat(practising.toolTurns(session.state())).contains(turned);
        assertThat(onPicture())
                .isEqualTo("at pad crank the shaft may be turned cw only, and this move is ccw: turn it the other way"
                        + " round, or name another pad");
        hold("ADD", 100);
        assertThat(onPicture()).startsWith("Ctrl+K");
    }

    /** What is written over the picture; how it is handled while nothing is. */
    private String onPicture() {
        return Offscreen.on(() -> screen.scope().getAccessibleContext().getAccessibleDescription());
    }
}
