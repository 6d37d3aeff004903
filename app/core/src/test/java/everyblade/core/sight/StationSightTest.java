package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.angle.Arc;
import everyblade.core.angle.ArcSet;
import everyblade.core.angle.Circle;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Facets;
import everyblade.core.turning.SmoothedTrack.Place;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a station shows of boxes, pose by pose and patch by patch, against each of these looked at by itself. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StationSightTest {

    private static Place place(double low, double high) {
        return new Place(Turn.ofDegrees(low), Turn.ofDegrees(high), Turn.ofDegrees(low));
    }

    private final Criteria criteria = new Criteria(Turn.ofDegrees(10), Map.of(), OptionalDouble.empty());
    private final Pose ahead = Plates.within(Plates.cone(Plates.pose(-24, 26, 10, 1, 0.2, 0.1), 50), 0, 60);

    private final Pose near = Plates.within(Plates.cone(Plates.pose(-12, 26, 10, 1, 0.2, 0.1), 40), 0, 16);

    private final Stated rotor = new Stated("a rotor alone", blades(), ahead, new Tolerance(1, 4), criteria);
    private final Stated exact = new Stated("an exact station", blades(), ahead, new Tolerance(0, 0), criteria);
    private final Stated past = new Stated(
            "blades past vanes of which it is not known quite where they stand",
            blades().row("other", RowKind.STATOR, 8, -20, -12, 0.8, 19, 24).known("other", place(10, 16)),
            ahead,
            new Tolerance(0.5, 2),
            criteria);
    private final Stated kinds = new Stated(
            "vanes past vanes of another count",
            new Blocks()
                    .row("own", RowKind.STATOR, 6, row -> row.phase(5), 0, 10, 3, 20, 30)
                    .row("other", RowKind.STATOR, 8, -20, -12, 1.5, 19, 31)
                    .known("other", place(10, 14)),
            ahead,
            new Tolerance(0.5, 2),
            criteria);

    private final Stated bulged = new Stated("a bulged sheet", sheets(), near, new Tolerance(0.5, 3), criteria);
    private final Stated bulgedPast = new Stated(
            "bulged sheets past vanes of which it is not known quite where they stand",
            sheets().row("other", RowKind.STATOR, 8, -9, -6, 1, 19, 25).known("other", place(8, 14)),
            near,
            new Tolerance(0.3, 0),
            criteria);

    private final Stated far = new Stated(
            "sheets past vanes, at the end of what a scope tip sees",
            sheets().row("other", RowKind.STATOR, 8, -9, -6, 1, 19, 25).known("other", place(8, 14)),
            Plates.within(near, 0, 12.7),
            new Tolerance(0, 0),
            criteria);

    private final Stated front = new Stated(
            "the front of a box and nothing else",
            blades(),
            Plates.cone(Plates.pose(-24, 26, 10, 1, 0, 0), 15),
            new Tolerance(0, 0),
            criteria);
    private final Stated covered = new Stated(
            "a sheet with a small plate close before the middle of a facet",
            new Blocks()
                    .row("own", RowKind.ROTOR, 5, row -> row.ring("stage", 0), Blocks.sheet())
                    .row("plate", RowKind.ROTOR, 5, row -> row.ring("stage", 0.0339), 0.1, 0.15, 0.5, 22.8, 24.2),
            Plates.cone(Plates.pose(-20, 25, 10, 1, 0, 0), 40),
            new Tolerance(0, 0),
            criteria);

    private final Stated most = new Stated(
            "the front of a box but for some of its corners",
            blades(),
            Plates.cone(Plates.pose(-24, 26, 10, 1, 0, 0), 17),
            new Tolerance(0, 0),
            criteria);
    private final Stated tilted = new Stated(
            "the front of a box, and its sides where the scope tip is tilted",
            blades(),
            Plates.cone(Plates.pose(-24, 26, 10, 1, 0, 0), 15),
            new Tolerance(0, 4),
            criteria);
    private final Stated alone = new Stated(
            "a facet amid a sheet, with plates close before those on either side of it",
            new Blocks()
                    .row("own", RowKind.ROTOR, 5, row -> row.ring("stage", 0), Blocks.sheet())
                    .row("one", RowKind.ROTOR, 5, row -> row.ring("stage", 0.9661), -0.6, -0.5, 0.9, 20, 28)
                    .row("other", RowKind.ROTOR, 5, row -> row.ring("stage", 0.1011), -0.6, -0.5, 0.9, 20, 28),
            Plates.cone(Plates.pose(-20, 23.5, 10, 1, 0, 0), 5.5),
            new Tolerance(0, 0),
            criteria);

    private static Blocks sheets() {
        return new Blocks().row("own", RowKind.ROTOR, 5, row -> row, Blocks.sheet());
    }

    private static Blocks blades() {
        return new Blocks().row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30);
    }

    private Stream<Stated> stations() {
        return Stream.of(rotor, exact, past, kinds, bulged, bulgedPast, far, front, covered, most, tilted, alone);
    }

    @Test
    void hasAsManyPosesAsItsFamilyInEachWay() {
        assertThat(exact.sight.poses()).isEqualTo(1);
        assertThat(rotor.sight.poses()).isEqualTo(27);
        assertThat(past.sight.poses()).isEqualTo(27 * 3);
        assertThat(kinds.sight.poses()).isEqualTo(27 * 2);
        assertThat(stations())
                .extracting(stated -> stated.sight.kinds())
                .containsExactly(1, 1, 1, 3, 1, 1, 1, 1, 1, 1, 1, 1);
        assertThat(stations())
                .extracting(stated -> stated.sight.facets())
                .containsExactly(6, 6, 6, 6, 16, 16, 16, 6, 16, 6, 6, 16);
        assertThat(bulgedPast.sight.poses()).isEqualTo(27 * 3);
    }

    @ParameterizedTest
    @MethodSource("stations")
    void showsOfEachFacetTheArcsOfEachPoseThatAreNotMarginal(Stated of) {
        int shown = 0;
        for (int kind = 0; kind < of.sight.kinds(); kind++) {
            for (int facet = 0; facet < of.facets; facet++) {
                Optional<Hindrance> why = Optional.empty();
                for (int pose = 0; pose < of.sight.poses(); pose++) {
                    ArcSet arcs = of.arcs(kind, pose).arcs(facet).withoutShorter(Circle.TICKS_PER_DEGREE / 5);
                    assertThat(of.sight.arcs(kind, pose, facet)).isEqualTo(arcs);
                    assertThat(of.sight.arcs(pose, facet)).isEqualTo(of.sight.arcs(0, pose, facet));
                    shown += arcs.isEmpty() ? 0 : 1;
                    if (arcs.isEmpty() && why.isEmpty()) {
                        why = Optional.of(of.arcs(kind, pose).why(facet).orElse(Hindrance.HIDDEN));
                    }
                }
                assertThat(of.sight.reaches(kind, facet)).isEqualTo(why.isEmpty());
            }
        }
        assertThat(shown).isGreaterThan(0);
    }

    @Test
    void countsKindsInTurnFromTheFirstAirfoil() {
        Row row = blades().model().row("own").orElseThrow();

        assertThat(IntStream.rangeClosed(1, 6).map(n -> kinds.sight.kind(row, n)))
                .containsExactly(0, 1, 2, 0, 1, 2);
        assertThat(IntStream.rangeClosed(1, 6).map(n -> rotor.sight.kind(row, n)))
                .containsOnly(0);
    }

    /** Of a facet that one way tells all of, some patches are in sight in one way and not in another. */
    @Test
    void patchesMayDifferByTheWayWhereTheirFacetDoesNot() {
        for (Stated of : List.of(past, bulgedPast)) {
            int differ = 0;
            for (int facet = 0; facet < of.facets; facet++) {
                for (int pose = 1; pose < of.sight.poses(); pose++) {
                    boolean sameFacet = of.standings.pose(pose) == of.standings.pose(pose - 1)
                            && of.sight.arcs(pose, facet).equals(of.sight.arcs(pose - 1, facet));
                    for (int patch = 0; patch < of.sight.patches(facet) && sameFacet; patch++) {
                        differ += of.sight.arcs(0, pose, facet, patch).equals(of.sight.arcs(0, pose - 1, facet, patch))
                                ? 0
                                : 1;
                    }
                }
            }
            assertThat(differ).as(of.name).isPositive();
        }
    }

    @Test
    void dividesAFacetOfWhichOnlyTheMiddleIsHiddenOrShown() {
        int hidden = 9;
        assertThat(covered.sight.arcs(0, hidden).isEmpty()).isTrue();
        assertThat(covered.grain.around()[hidden])
                .hasSize(8)
                .satisfies(around -> assertThat(IntStream.of(around)).allMatch(covered.sight::reaches));
        assertThat(IntStream.range(0, 32).filter(patch -> covered.sight.reaches(0, hidden, patch)))
                .hasSizeBetween(5, 31);

        assertThat(front.sight.reaches(Blocks.FRONT)).isTrue();
        assertThat(IntStream.range(1, 6)).noneMatch(front.sight::reaches);
        assertThat(IntStream.range(0, 32).filter(patch -> front.sight.reaches(0, Blocks.FRONT, patch)))
                .hasSizeBetween(5, 31);
    }

    @Test
    void dividesAFacetOfWhichTheMiddleIsShownAndNoneOfThoseRoundIt() {
        int shown = 9;
        assertThat(alone.sight.reaches(shown)).isTrue();
        assertThat(alone.grain.around()[shown])
                .hasSize(8)
                .satisfies(around -> assertThat(IntStream.of(around)).noneMatch(alone.sight::reaches));
        assertThat(IntStream.range(0, 32).filter(patch -> alone.sight.reaches(0, shown, patch)))
                .hasSizeBetween(5, 31);
    }

    /** The vanes end at a radius of 24, over which the scope tip at 26 looks at what is farther out. */
    @Test
    void oneWayTellsOfAllWhereTheVanesAreOutOfTheWay() {
        Arc arc = past.facet(0, 0, Blocks.FRONT).arcs().get(0);
        int beyond = 0;
        int behind = 0;
        for (int patch = 0; patch < past.patches.count(Blocks.FRONT); patch++) {
            int place = past.patches.first(Blocks.FRONT) + patch;
            boolean anyWay = past.looks[0]
                    .shows(
                            past.patches.facets(),
                            place,
                            Blocks.FRONT,
                            arc.start() + arc.length() / 2,
                            StationSight.LEAST_ARC,
                            0)
                    .anyWay();
            double z = past.patches.facets().centroid(place, 2);
            if (z > 26) {
                assertThat(anyWay).as("at %s", z).isTrue();
                beyond++;
            } else if (z < 21) {
                assertThat(anyWay).as("at %s", z).isFalse();
                behind++;
            }
        }
        assertThat(beyond).isPositive();
        assertThat(behind).isPositive();
    }

    /** Also those of a facet whose middle no way shows. */
    @Test
    void patchesMayDifferByTheWayWhereTheirFacetIsNotShown() {
        int differ = 0;
        for (int facet = 0; facet < 16; facet++) {
            for (int patch = 0; patch < far.sight.patches(facet); patch++) {
                differ += far.sight
                                        .why(facet)
                                        .filter(Hindrance.OUT_OF_RANGE::equals)
                                        .isPresent()
                                && far.sight.reaches(0, facet, patch)
                                && !far.sight.arcs(0, 0, facet, patch).equals(far.sight.arcs(0, 1, facet, patch))
                        ? 1
                        : 0;
            }
        }
        assertThat(differ).isPositive();
    }

    @ParameterizedTest
    @MethodSource("stations")
    void saysOfAFacetWhatHidesItFromTheFirstPoseAndKindThatDoesNotShowIt(Stated of) {
        for (int facet = 0; facet < of.facets; facet++) {
            int at = facet;
            Optional<Hindrance> why = IntStream.range(0, of.sight.kinds() * of.sight.poses())
                    .filter(i -> of.sight
                            .arcs(i / of.sight.poses(), i % of.sight.poses(), at)
                            .isEmpty())
                    .mapToObj(i -> of.arcs(i / of.sight.poses(), i % of.sight.poses())
                            .why(at)
                            .orElse(Hindrance.HIDDEN))
                    .findFirst();
            assertThat(of.sight.why(facet)).isEqualTo(why);
            assertThat(of.sight.reaches(facet)).isEqualTo(why.isEmpty());
        }
    }

    @ParameterizedTest
    @MethodSource("stations")
    void showsOfEachPatchWhatEveryPoseShows(Stated of) {
        int divided = 0;
        for (int kind = 0; kind < of.sight.kinds(); kind++) {
            for (int facet = 0; facet < of.facets; facet++) {
                boolean divides = of.sight.patches(facet) > 1;
                assertThat(of.sight.divides(facet)).isEqualTo(divides);
                for (int patch = 0; patch < of.patches.count(facet); patch++) {
                    List<ArcSet> each = new ArrayList<>();
                    for (int pose = 0; pose < of.sight.poses(); pose++) {
                        each.add(of.patch(kind, pose, facet, patch));
                    }
                    boolean every = each.stream().noneMatch(ArcSet::isEmpty);
                    assertThat(of.sight.reaches(kind, facet, divides ? patch : 0))
                            .as("kind %d, facet %d, patch %d", kind, facet, patch)
                            .isEqualTo(every);
                    for (int pose = 0; pose < of.sight.poses() && divides; pose++) {
                        assertThat(of.sight.arcs(kind, pose, facet, patch).isEmpty())
                                .isEqualTo(!every);
                        if (every) {
                            assertThat(of.sight.arcs(kind, pose, facet, patch)).isEqualTo(each.get(pose));
                        }
                    }
                    divided += divides && every ? 1 : 0;
                }
            }
        }
        assertThat(divided).as("patches of divided facets that are shown").isPositive();
    }

    @ParameterizedTest
    @MethodSource("stations")
    void allowsForWhatChangesTowardsTheBordersOnlyWhereAPatchIsAsItsFacet(Stated of) {
        List<Slack> slack = Slack.of(byFacet(of), of.grain);
        for (int kind = 0; kind < of.sight.kinds(); kind++) {
            for (int facet = 0; facet < of.facets; facet++) {
                for (int patch = 0; patch < of.sight.patches(facet); patch++) {
                    for (int pose = 0; pose < of.sight.poses(); pose++) {
                        boolean own = of.sight.arcs(kind, pose, facet, patch) != of.sight.arcs(kind, pose, facet);
                        assertThat(of.sight.startSlack(kind, pose, facet, patch))
                                .isEqualTo(own ? 0 : slack.get(kind).starts()[facet][pose]);
                        assertThat(of.sight.endSlack(kind, pose, facet, patch))
                                .isEqualTo(own ? 0 : slack.get(kind).ends()[facet][pose]);
                        assertThat(of.sight.shorter(kind, pose, facet, patch))
                                .isEqualTo(own ? 0 : slack.get(kind).shorter()[facet][pose]);
                    }
                }
            }
        }
    }

    @Test
    void changesSomewhatTowardsTheNextFacetOfABulge() {
        long most = IntStream.range(0, 16)
                .mapToLong(facet -> bulged.sight.startSlack(0, 0, facet, 0)
                        + bulged.sight.endSlack(0, 0, facet, 0)
                        + bulged.sight.shorter(0, 0, facet, 0))
                .max()
                .orElseThrow();

        assertThat(most).isPositive();
    }

    private static ArcSet[][][] byFacet(Stated of) {
        ArcSet[][][] arcs = new ArcSet[of.sight.kinds()][of.facets][of.sight.poses()];
        for (int kind = 0; kind < arcs.length; kind++) {
            for (int facet = 0; facet < of.facets; facet++) {
                for (int pose = 0; pose < of.sight.poses(); pose++) {
                    arcs[kind][facet][pose] = of.sight.arcs(kind, pose, facet);
                }
            }
        }
        return arcs;
    }

    /** Borders with patches that some pose does not show must be in sight together, in the middle of an arc or else anywhere. */
    @ParameterizedTest
    @MethodSource("stations")
    void showsAPatchWholeIfItShowsItsBordersWithThoseThatItDoesNotShow(Stated of) {
        int whole = 0;
        int not = 0;
        for (int kind = 0; kind < of.sight.kinds(); kind++) {
            for (int facet = 0; facet < of.facets; facet++) {
                boolean any = false;
                for (int patch = 0; patch < of.patches.count(facet); patch++) {
                    List<ArcSet> expected = whole(of, kind, facet, patch);
                    boolean shows = !expected.isEmpty();
                    any |= shows;
                    for (int pose = 0; pose < of.sight.poses() && of.sight.showsWhole(kind, facet); pose++) {
                        assertThat(of.sight.whole(kind, pose, facet, patch))
                                .as("kind %d, facet %d, patch %d, pose %d", kind, facet, patch, pose)
                                .isEqualTo(shows ? expected.get(pose) : ArcSet.empty(Circle.STANDARD));
                    }
                    whole += shows ? 1 : 0;
                    not += shows ? 0 : 1;
                }
                assertThat(of.sight.showsWhole(kind, facet)).isEqualTo(any);
            }
        }
        assertThat(not).isPositive();
        assertThat(whole).isPositive();
    }

    /** Of each standing; none if it is not so from every one. */
    private static List<ArcSet> whole(Stated of, int kind, int facet, int patch) {
        if (!of.sight.reaches(kind, facet, patch)) {
            return List.of();
        }
        int place = of.patches.first(facet) + patch;
        List<Facets> borders = IntStream.range(0, of.patches.edges(place))
                .filter(edge ->
                        of.patches.beyond(place, edge) >= 0 && !reaches(of, kind, of.patches.beyond(place, edge)))
                .mapToObj(edge -> of.patches.border(place, edge))
                .toList();
        List<ArcSet> each = new ArrayList<>();
        for (int pose = 0; pose < of.sight.poses() && !borders.isEmpty(); pose++) {
            int at = pose;
            ArcSet together = borders.stream()
                    .map(border -> of.own(kind, at, border, 0, facet))
                    .reduce(ArcSet::intersection)
                    .orElseThrow();
            ArcSet shown = of.sight.arcs(kind, pose, facet, patch).arcs().stream()
                    .filter(arc -> Stated.holdsMiddle(together, arc))
                    .map(Stated::middle)
                    .findFirst()
                    .orElse(StationSight.counted(together));
            if (shown.isEmpty()) {
                return List.of();
            }
            each.add(shown);
        }
        return each;
    }

    private static boolean reaches(Stated of, int kind, int place) {
        int facet = of.patches.facet(place);
        return of.sight.reaches(kind, facet, place - of.patches.first(facet));
    }

    @Test
    void stopsWhenCancelled() {
        for (int after = 0; after < 3; after++) {
            int calls = after;
            AtomicInteger asked = new AtomicInteger();
            Progress progress = new Progress() {
                @Override
                public boolean cancelled() {
                    return asked.getAndIncrement() >= calls;
                }
            };
            assertThatThrownBy(() -> EdgeOfSight.find(
                            rotor.scene, rotor.grain, rotor.standings, criteria, byFacet(rotor), progress))
                    .isInstanceOf(CancellationException.class);
            asked.set(0);
            assertThatThrownBy(() -> PatchBorders.find(
                            rotor.scene, rotor.grain, rotor.standings, criteria, rotor.sight, progress))
                    .isInstanceOf(CancellationException.class);
        }
    }
}
