package everyblade.core.sight;

import everyblade.core.sight.Environment.Way;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The poses that stand for a tolerance, each with the ways in which rows between may stand round airfoils of each kind. A pose in
 * one way is a standing; they are numbered pose by pose, alike for each kind. Never changes.
 */
final class Standings {

    private final List<Pose> poses;
    /** By pose, those of the first kind before those of the next. */
    private final List<List<Way>> ways;

    private final int kinds;
    private final Revolved swept;
    private final int[] pose;
    private final int[] first;

    private Standings(List<Pose> poses, List<List<Way>> ways, int kinds, Revolved swept) {
        this.poses = poses;
        this.ways = ways;
        this.kinds = kinds;
        this.swept = swept;
        this.pose = IntStream.range(0, poses.size())
                .flatMap(of -> IntStream.range(0, ways.get(of).size() / kinds).map(way -> of))
                .toArray();
        this.first = new int[poses.size()];
        for (int standing = pose.length - 1; standing >= 0; standing--) {
            first[pose[standing]] = standing;
        }
    }

    /** Among what stands round the airfoils of a row. */
    static Standings of(List<Pose> poses, Environment others) {
        List<List<Way>> ways = poses.stream().parallel().map(others::ways).toList();
        return new Standings(poses, ways, others.kinds(), others.swept());
    }

    /** Past no such row. */
    static Standings alone(List<Pose> poses) {
        List<Way> alone = List.of(new Way(List.of(), List.of()));
        return new Standings(poses, poses.stream().map(pose -> alone).toList(), 1, Revolved.of(List.of(), List.of()));
    }

    List<Pose> poses() {
        return poses;
    }

    /** The ways seen from a pose, those of the first kind before those of the next; as many for each. */
    List<Way> ways(int of) {
        return ways.get(of);
    }

    int kinds() {
        return kinds;
    }

    /** How many standings there are. */
    int size() {
        return pose.length;
    }

    /** The pose of a standing, by its number. */
    int pose(int standing) {
        return pose[standing];
    }

    /** Which of the ways of its pose a standing is for airfoils of a kind. */
    int way(int kind, int standing) {
        int of = pose[standing];
        return kind * (ways.get(of).size() / kinds) + standing - first[of];
    }

    /** What looks from a pose, one thread's. */
    FacetSight sight(SightScene scene, Criteria criteria, int of) {
        return new FacetSight(scene, poses.get(of), criteria, ways.get(of), swept);
    }

    /** What looks from each pose, one thread's. */
    FacetSight[] sights(SightScene scene, Criteria criteria) {
        return IntStream.range(0, poses.size())
                .mapToObj(of -> sight(scene, criteria, of))
                .toArray(FacetSight[]::new);
    }
}
