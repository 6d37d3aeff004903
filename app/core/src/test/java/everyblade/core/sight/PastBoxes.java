package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Row;
import everyblade.spi.RowBuilder;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A row of boxes at x from 0 to 10 and a row of others before it at x from −20 to −12, in the eye of a scope tip ahead of both
 * or among the others: what is in sight past them is what is in sight past a ring at each place where they may stand.
 */
final class PastBoxes {

    static final double[] OWN = {0, 10, 3, 20, 30};
    static final double[] OTHER = {-20, -12, 1.5, 19, 31};
    static final Mesh BETWEEN = Blocks.box(-20, -12, 1.5, 19, 31);
    static final double RADIUS = 2;
    static final Criteria CRITERIA = Plates.FACING;

    static final Pose AHEAD = Plates.cone(Plates.pose(-35, 26, 10, 1, 0, 0), 120);
    /** A scope tip half-way between two of eight vanes, one of which stands at clock 0. */
    static final Pose AMONG = Plates.cone(Plates.pose(-16, 25, 22.5, 1, 0, 0), 150);

    static UnaryOperator<RowBuilder> phase(double degrees) {
        return row -> row.phase(degrees);
    }

    static Place place(double low, double high) {
        return new Place(Turn.ofDegrees(low), Turn.ofDegrees(high), Turn.ofDegrees((low + high) / 2));
    }

    static Setting setting(Blocks blocks, Pose pose) throws UnusableShape {
        ViewScene engine = blocks.scene();
        Row row = engine.model().row("own").orElseThrow();
        return Setting.of(engine, engine.ring(row).orElseThrow(), row, pose, 0, RADIUS);
    }

    static SightScene alone(Blocks blocks) throws UnusableShape {
        ViewScene engine = blocks.scene();
        return engine.ring(engine.model().row("own").orElseThrow()).orElseThrow();
    }

    static List<ArcSet> arcs(SightScene scene, Pose pose) {
        SightArcs sight = Plates.sight(scene, pose, CRITERIA);
        return IntStream.range(0, sight.facetCount()).mapToObj(sight::arcs).toList();
    }

    /** What is in sight past each of these rings alike. */
    static List<ArcSet> pastEach(SightScene alone, List<Ring> rings, boolean turning, Pose pose) {
        List<ArcSet> left = null;
        for (Ring ring : rings) {
            List<ArcSet> past = arcs(turning ? alone.withMate(ring) : alone.withFixed(ring), pose);
            List<ArcSet> before = left == null ? past : left;
            left = IntStream.range(0, past.size())
                    .mapToObj(facet -> before.get(facet).intersection(past.get(facet)))
                    .toList();
        }
        return left;
    }

    /** Rings of all places in a piece, from these clock angles on, degrees. */
    static List<Ring> pieces(int count, double piece, double... from) {
        Mesh smear = Smear.of(BETWEEN, Math.toRadians(piece));
        return DoubleStream.of(from)
                .mapToObj(clock -> new Ring(smear, count, Turn.ofDegrees(clock).wrapped()))
                .toList();
    }

    static double measure(List<ArcSet> arcs) {
        return arcs.stream().mapToLong(ArcSet::measure).sum();
    }

    static void same(List<ArcSet> one, List<ArcSet> other) {
        assertThat(one).hasSameSizeAs(other);
        for (int facet = 0; facet < one.size(); facet++) {
            assertThat(one.get(facet).difference(other.get(facet)).measure()
                            + other.get(facet).difference(one.get(facet)).measure())
                    .as("facet %d: %s and %s", facet, one.get(facet), other.get(facet))
                    .isLessThan(100);
        }
    }

    private PastBoxes() {}
}
