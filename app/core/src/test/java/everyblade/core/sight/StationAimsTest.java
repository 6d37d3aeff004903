package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Displaced;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.turning.Engine;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How exactly a blade can be put to the middle of a picture that is not exactly where its station says. */
class StationAimsTest {

    private static final int BLADES = 20;

    /** Looks straight aft at the front of the row, which stands at x = 0. */
    private final Station loose = ShapedEngine.station("loose", -30, 125, new Heading(1, 0, 0), 0.2, 5);

    private final Station exact = ShapedEngine.station("exact", -30, 125, new Heading(1, 0, 0), 0, 0);
    private final EngineModel model = new ShapedEngine()
            .row("r", RowKind.ROTOR, BLADES, 35, 0)
            .view("v", "r", loose, exact)
            .window("w", "r", 5)
            .model();
    private final Row row = model.rows().get(0);
    private final ViewScene engine = new ViewScene(model, Map.of(), Map.of());
    private final View view = model.views().get(0);
    private final Pose nominal = Pose.of(loose, model.scopeTips().get(0));
    private final List<Pose> family = PoseFamily.of(nominal, loose.within());

    /** The clock angle at which the optical axis meets the plane of the leading edges. */
    private static double middle(Pose pose) {
        double along = -pose.x() / pose.forward().axial();
        return pose.clock().degrees()
                + Math.toDegrees(Math.atan2(
                        along * pose.forward().tangential(),
                        pose.r() + along * pose.forward().radial()));
    }

    @Test
    void isAsFarAsTheMiddleOfThePictureMovesOnTheRow() {
        double farthest = family.stream()
                .mapToDouble(pose -> Math.abs(middle(pose)))
                .max()
                .orElseThrow();
        double aim = new StationAims(engine).at(view, loose);
        assertThat(aim).isCloseTo(farthest, within(0.02 * farthest));
        SplittableRandom random = new SplittableRandom(4);
        long within = random.ints(10_000)
                .filter(seed -> Math.abs(middle(Displaced.within(nominal, loose.within(), random))) <= aim)
                .count();
        assertThat(within).isGreaterThanOrEqualTo(9_500);
    }

    @Test
    void isNothingAtAnExactStation() {
        assertThat(new StationAims(engine).at(view, exact)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 100, 359})
    void isTheSameWhereverTheStationStandsAndItsAxisMayLeanOutward(double clock) {
        Station slanted = new Station(
                "slanted",
                -30,
                115,
                clock,
                new Heading(1, 0.2, 0.5),
                new Heading(0, 0, 1),
                new Station.Tolerance(0.2, 5));
        Blocks blocks =
                new Blocks().row("own", RowKind.ROTOR, 6, 0, 10, 3, 100, 150).view("v", "own", slanted);
        Pose straight = Pose.of(slanted, blocks.model().scopeTip("tip").orElseThrow());
        double farthest = PoseFamily.of(straight, slanted.within()).stream()
                .mapToDouble(pose -> Math.abs(Math.IEEEremainder(middle(pose) - middle(straight), 360)))
                .max()
                .orElseThrow();

        assertThat(new StationAims(blocks.scene()).at(blocks.model().views().get(0), slanted))
                .isCloseTo(farthest, within(1e-3))
                .isGreaterThan(1);
    }

    @Test
    void isNotKnownWithoutAShapeOrAScopeTip() {
        Blocks blocks = new Blocks()
                .row("own", RowKind.ROTOR, 6, 0, 10, 3, 120, 130)
                .shapeless("counted", RowKind.ROTOR, 5)
                .view("v", "own", loose)
                .view("tipless", "own", "unheard-of", loose)
                .view("c", "counted", loose);
        StationAims aims = new StationAims(blocks.scene());

        assertThat(blocks.model().views().stream().map(of -> aims.at(of, loose)))
                .satisfiesExactly(
                        own -> assertThat(own).isPositive(),
                        tipless -> assertThat(tipless).isZero(),
                        counted -> assertThat(counted).isZero());
    }

    @Test
    void isAFaultOfAShapeThatGivesNoSurface() {
        Blocks blocks =
                new Blocks().row("own", RowKind.ROTOR, 6, 0, 10, 3, 120, 130).view("v", "own", loose);
        StationAims aims = new StationAims(new ViewScene(blocks.model(), Map.of(), Map.of()));

        assertThatThrownBy(() -> aims.at(blocks.model().views().get(0), loose))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("own");
    }

    /** Then its own place is nearest to the row, off by 2 mm to the side where it stands 2 mm lower. */
    @Test
    void isWhereTheScopeTipStandsIfItLooksAway() {
        Station away = ShapedEngine.station("away", -30, 125, new Heading(-1, 0, 0), 2, 5);
        EngineModel of = new ShapedEngine()
                .row("r", RowKind.ROTOR, BLADES, 35, 0)
                .view("v", "r", away)
                .model();

        assertThat(new StationAims(new ViewScene(of, Map.of(), Map.of()))
                        .at(of.views().get(0), away))
                .isCloseTo(Math.toDegrees(Math.atan2(2, 123)), within(1e-6));
    }

    /** Through a gap between two blocks it is where the axis meets what they sweep: 30 mm on, tilted by 5°, 2.5 mm to the side. */
    @Test
    void isToldOfWhatTheRowSweepsNotOfABladeThatHappensToStandThere() {
        Station tilted = ShapedEngine.station("tilted", -30, 125, new Heading(1, 0, 0), 0, 5);
        Blocks blocks =
                new Blocks().row("own", RowKind.ROTOR, 3, 0, 10, 1, 100, 150).view("v", "own", tilted);

        assertThat(new StationAims(blocks.scene()).at(blocks.model().views().get(0), tilted))
                .isCloseTo(Math.toDegrees(Math.atan2(30 * Math.tan(Math.toRadians(5)), 125)), within(1e-3));
    }

    private RowCoverage swept(Engine of, double aim) {
        String said = aim > 0 ? " ±" + aim : "";
        return new Job(of)
                .enter("view v", "datum r 1" + said, "turn 6")
                .coverage()
                .row("r");
    }

    /** Said by hand, it comes to the same; a window has no station, and its view no aim. */
    @Test
    void isWhatAnIdentificationIsGoodToUnlessSomeoneSaysBetter() {
        StationAims aims = new StationAims(engine);
        double aim = Math.rint(1e5 * aims.at(view, loose)) / 1e5;
        Engine aimed = Engine.of(model).withAims((of, station) -> Math.rint(1e5 * aims.at(of, station)) / 1e5);
        RowCoverage unsaid = swept(aimed, 0);
        RowCoverage said = swept(Engine.of(model), aim);
        for (int n = 1; n <= BLADES; n++) {
            assertThat(unsaid.areas(n, 0)).isEqualTo(said.areas(n, 0));
        }
        assertThat(new Job(aimed)
                        .enter("view w", "datum r 1", "look")
                        .coverage()
                        .row("r")
                        .declaredCells())
                .isEqualTo(12);
    }

    /** Blade 1 truly stands where the middle of the picture is, not where it would be if the scope tip stood at its station. */
    @Test
    void keepsFromCallingSeenWhatWasNot() {
        assertThat(falsely(Engine.of(model))).isGreaterThan(0.01);
        assertThat(falsely(Engine.of(model).withAims(new StationAims(engine)))).isLessThan(0.001);
    }

    private double falsely(Engine of) {
        RowCoverage coverage = swept(of, 0);
        List<TrueSight> poses = family.stream()
                .map(pose -> new TrueSight(model, row, pose, Map.of(), Map.of()))
                .toList();
        double called = 0;
        double wrong = 0;
        for (int i = 0; i < poses.size(); i++) {
            for (int n = 1; n <= BLADES; n++) {
                double clock = middle(family.get(i)) + 360.0 * (n - 1) / BLADES;
                for (int facet = 0; facet < poses.get(i).facets(); facet++) {
                    if (coverage.seen(n, facet) > 0.999 * poses.get(i).area(facet)) {
                        called += poses.get(i).area(facet);
                        wrong += poses.get(i).sees(facet, clock, clock + 6)
                                ? 0
                                : poses.get(i).area(facet);
                    }
                }
            }
        }
        return called == 0 ? 1 : wrong / called;
    }
}
