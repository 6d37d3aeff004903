package everyblade.core.sight;

import static everyblade.core.sight.PastBoxes.AHEAD;
import static everyblade.core.sight.PastBoxes.AMONG;
import static everyblade.core.sight.PastBoxes.OTHER;
import static everyblade.core.sight.PastBoxes.OWN;
import static everyblade.core.sight.PastBoxes.phase;
import static everyblade.core.sight.PastBoxes.place;
import static everyblade.core.sight.PastBoxes.setting;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.surface.UnusableShape;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Tolerance;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Poses, each with the ways in which rows between may stand round airfoils of each kind. */
class StandingsTest {

    /** Six vanes past eight, off by 4°: three kinds, two ways each. */
    private final Blocks vanes = new Blocks()
            .row("own", RowKind.STATOR, 6, phase(5), OWN)
            .row("other", RowKind.STATOR, 8, OTHER)
            .known("other", place(10, 14));

    private final Blocks blades = new Blocks().row("own", RowKind.ROTOR, 6, OWN).row("other", RowKind.STATOR, 8, OTHER);

    @Test
    void areNumberedPoseByPoseAlikeForEachKind() throws UnusableShape {
        List<Pose> poses = PoseFamily.of(AHEAD, new Tolerance(1, 0)).subList(0, 4);
        Standings standings = Standings.of(poses, setting(vanes, AHEAD).others());

        assertThat(standings.kinds()).isEqualTo(3);
        assertThat(standings.size()).isEqualTo(8);
        assertThat(IntStream.range(0, 8).map(standings::pose)).containsExactly(0, 0, 1, 1, 2, 2, 3, 3);
        for (int kind = 0; kind < 3; kind++) {
            int of = kind;
            assertThat(IntStream.range(0, 8).map(standing -> standings.way(of, standing)))
                    .as("kind %d", kind)
                    .containsExactly(
                            2 * kind,
                            2 * kind + 1,
                            2 * kind,
                            2 * kind + 1,
                            2 * kind,
                            2 * kind + 1,
                            2 * kind,
                            2 * kind + 1);
        }
        assertThat(standings.poses()).isEqualTo(poses);
        assertThat(standings.ways(3)).hasSize(6);
    }

    /** Among vanes their room, and with it the number of ways, hangs on the pose. */
    @Test
    void mayBeMoreFromOnePoseThanFromAnother() throws UnusableShape {
        List<Pose> poses = List.of(AMONG, AHEAD, AMONG);
        Standings standings = Standings.of(poses, setting(blades, AMONG).others());
        int few = standings.ways(0).size();
        int many = standings.ways(1).size();

        assertThat(few).isLessThan(many);
        assertThat(standings.size()).isEqualTo(2 * few + many);
        for (int standing = 0; standing < standings.size(); standing++) {
            int pose = standing < few ? 0 : standing < few + many ? 1 : 2;
            assertThat(standings.pose(standing)).isEqualTo(pose);
            assertThat(standings.way(0, standing)).isEqualTo(standing - (pose == 0 ? 0 : pose == 1 ? few : few + many));
        }
    }

    @Test
    void areThePosesThemselvesPastNoSuchRow() {
        Standings standings = Standings.alone(List.of(AHEAD, AMONG));

        assertThat(standings.kinds()).isEqualTo(1);
        assertThat(standings.size()).isEqualTo(2);
        assertThat(standings.pose(1)).isEqualTo(1);
        assertThat(standings.way(0, 1)).isZero();
        assertThat(standings.ways(1)).hasSize(1);
    }

    @Test
    void eachPoseIsLookedFromByItself() {
        SightScene scene = SightScene.of(Blocks.box(0, 10, 3, 20, 30), 6, Plates.UNDIVIDED);
        List<Pose> poses = PoseFamily.of(AHEAD, new Tolerance(3, 0)).subList(0, 4);

        FacetSight[] sights = Standings.alone(poses).sights(scene, Plates.FACING);

        assertThat(sights).hasSize(4);
        for (int pose = 0; pose < 4; pose++) {
            assertThat(sights[pose].arcs(scene.facets(), Blocks.FRONT, Blocks.FRONT, null))
                    .containsExactly(
                            Plates.sight(scene, poses.get(pose), Plates.FACING).arcs(Blocks.FRONT));
        }
    }
}
