package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.coverage.Tally;
import everyblade.picture.scene.Scene;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MapWordsTest {

    private static String all(Scene scene) {
        return String.join(" ", Scenes.words(scene));
    }

    @Test
    void the_title_block_says_whose_map_it_is_and_that_the_engine_is_invented() {
        Job job = Jobs.larkspur();
        assertThat(all(Scenes.of(job)))
                .contains("Larkspur 4 turboprop", "LK4-0117", "Bird strike, left engine", "9f3ac01d77b2e4")
                .contains(job.facts().notice().orElseThrow());
    }

    @Test
    void the_direction_of_view_is_written_on_the_map() {
        assertThat(Scenes.words(Scenes.of(Jobs.tansy()))).contains("seen from aft looking forward");
        assertThat(Scenes.words(Scenes.of(Jobs.tansy(), "t"))).contains("seen from aft looking forward");
    }

    @Test
    void what_rests_on_windows_is_called_declared() {
        assertThat(all(Scenes.of(new Job(SmallEngines.divided(12, 2)))))
                .contains("declared, not computed: rests on stated windows")
                .doesNotContain("computed from shapes");
    }

    @Test
    void what_rests_on_stations_is_called_computed() {
        assertThat(all(Scenes.of(Jobs.larkspur())))
                .contains("computed from shapes and stations")
                .doesNotContain("declared");
    }

    @Test
    void a_lost_count_is_told_with_its_entries() {
        assertThat(all(Scenes.of(Jobs.larkspur())))
                .contains("Count lost by 18 blades of c3 between entries 26 and 30: what was watched between them is");
        assertThat(all(Scenes.of(Jobs.tansy()))).doesNotContain("Count lost");
    }

    @Test
    void a_share_is_never_rounded_up() {
        assertThat(Shares.percent(new Tally(9999, 0, 0, 1, 0, 0, 0, 0, 0))).isEqualTo(99);
        assertThat(Shares.percent(new Tally(10, 0, 0, 0, 0, 0, 0, 0, 0))).isEqualTo(100);
        assertThat(Shares.percent(Tally.NONE)).isZero();
    }

    @Test
    void the_legend_names_every_state_and_damage_in_plain_words() {
        assertThat(Scenes.words(Scenes.of(Jobs.tansy())))
                .contains(
                        "inspected",
                        "inspected in part",
                        "maybe",
                        "not inspected",
                        "not accessible",
                        "too fast",
                        "stated with a picture",
                        "damaged");
    }

    @Test
    void one_row_names_its_landmarks_views_findings_and_rechecks() {
        assertThat(Scenes.words(Scenes.of(Jobs.larkspur(), "c1")))
                .contains(
                        "blade 11: balance notch in the platform",
                        "p1-c1  118°",
                        "F5",
                        "F5  finding, blade 7, tip/suction/leading",
                        "R13",
                        "R13  look again, blade 12, trailing");
    }

    @Test
    void every_airfoil_and_cell_can_be_read_out() {
        assertThat(Scenes.of(Jobs.larkspur()).groups())
                .extracting(group -> group.title())
                .contains("blade 7 of c1: inspected tip/suction/middle and root/suction/leading; inspected in part"
                        + " tip/suction/leading and tip/suction/trailing; maybe tip/pressure; not inspected"
                        + " root/pressure and root/middle and root/trailing; damaged tip/suction/leading");
        assertThat(Scenes.of(Jobs.larkspur(), "gt").groups())
                .extracting(group -> group.title())
                .contains("blade 7 of gt, tip/pressure/leading: stated with a picture");
    }

    @Test
    void a_row_that_the_engine_lacks_is_named_with_those_it_has() {
        Job job = Jobs.tansy();
        assertThatThrownBy(() -> MapSvg.write(job.coverage(), job.facts(), Optional.of("c9")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("there is no row c9 in Tansy A1 auxiliary unit: its rows are"
                        + " iv, lc, i1, d1, i2, d2, comb, tv, t");
    }
}
