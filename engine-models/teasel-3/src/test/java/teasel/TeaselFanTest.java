package teasel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import everyblade.spi.Shape.Section;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What the sections of the fan do to the air is computed back from them, by other formulas than they came from. */
class TeaselFanTest {

    private static final double AXIAL_SPEED = 140;
    private static final double TURNING = 1885;
    private static final double CHORD_OF_BLADES = 42;

    private final EngineModel fan = new TeaselFan().models().get(0);

    private Row row(String id) {
        return fan.row(id).orElseThrow();
    }

    private List<Section> sections(String row) {
        return ((Shape.Axial) row(row).shape().orElseThrow()).sections();
    }

    private static double r(Section section) {
        return 70 + 70 * section.span();
    }

    private static double inlet(Section section) {
        return section.stagger() + section.camber() / 2;
    }

    /** Carter's rule solved for the outlet by trying again until nothing changes. */
    private double outlet(String row, Section section) {
        double pitch = 2 * Math.PI * r(section) / row(row).count();
        double metal = section.stagger() - section.camber() / 2;
        double outlet = metal;
        for (int i = 0; i < 50; i++) {
            double m = 0.23 + 0.1 * Math.abs(outlet) / 50;
            outlet = metal + m * section.camber() * Math.sqrt(pitch / section.chord());
        }
        return outlet;
    }

    private static double tan(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    @Nested
    class The_rotor {

        @Test
        void meets_air_without_swirl_along_its_camber_line() {
            assertThat(sections("r")).allSatisfy(section -> {
                double bladeSpeed = TURNING * r(section) / 1000;
                assertThat(inlet(section))
                        .isCloseTo(-Math.toDegrees(Math.atan(bladeSpeed / AXIAL_SPEED)), within(0.01));
            });
        }

        @Test
        void puts_the_same_work_into_the_air_at_every_radius() {
            assertThat(sections("r")).hasSize(5).allSatisfy(section -> {
                double bladeSpeed = TURNING * r(section) / 1000;
                double swirl = AXIAL_SPEED * (tan(outlet("r", section)) - tan(inlet(section)));
                assertThat(bladeSpeed * swirl).as("Euler's work, J/kg").isCloseTo(12_000, within(30.0));
            });
        }

        @Test
        void does_not_slow_the_air_down_too_much() {
            // de Haller's limit for compressor blades, relative speed out over in, is 0.72; from memory
            assertThat(sections("r"))
                    .allSatisfy(section -> assertThat(cos(inlet(section)) / cos(outlet("r", section)))
                            .isGreaterThan(0.72));
        }

        @Test
        void has_its_mid_chords_at_one_x() {
            assertThat(sections("r")).allSatisfy(section -> {
                assertThat(section.chord()).isEqualTo(CHORD_OF_BLADES);
                assertThat(section.x() + CHORD_OF_BLADES / 2 * cos(section.stagger()))
                        .isCloseTo(60, within(0.01));
            });
        }
    }

    @Nested
    class The_vanes {

        @Test
        void meet_the_swirl_that_the_rotor_leaves() {
            for (int i = 0; i < 5; i++) {
                Section blade = sections("r").get(i);
                double swirl = AXIAL_SPEED * (tan(outlet("r", blade)) - tan(inlet(blade)));
                assertThat(AXIAL_SPEED * tan(inlet(sections("v").get(i)))).isCloseTo(swirl, within(0.3));
            }
        }

        @Test
        void let_the_air_go_straight_on() {
            assertThat(sections("v"))
                    .allSatisfy(section -> assertThat(outlet("v", section)).isCloseTo(0, within(0.05)));
        }
    }

    @Test
    void is_the_same_each_time_and_says_that_it_is_invented() {
        assertThat(new TeaselFan().models()).containsExactly(fan);
        assertThat(fan.notice()).get().asString().startsWith("Invented for training");
        assertThat(fan.rows()).allSatisfy(row -> assertThat(row.source()).get().hasToString("INVENTED"));
    }
}
