package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Ray;
import everyblade.core.surface.Mesh;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Vanes that are boxes 2 mm thick at a radius of 100 mm, ten of them 36° apart, and a scope tip of 5 mm radius half-way up: a
 * vane is off its middle by 100 mm times the sine of the clock angle between them, less 1 mm.
 */
class VaneRoomTest {

    private static final int COUNT = 10;
    private static final double PITCH = 2 * Math.PI / COUNT;
    private static final double STEP = PITCH / 96;
    private static final double RADIUS = 5;
    /** At which clock angle between them a vane touches the scope tip. */
    private static final double TOUCH = Math.asin((RADIUS + 1) / 100);

    private static final Offset<Double> ROUNDING = within(1e-9);

    private final VaneRoom room = new VaneRoom(Blocks.box(-10, 10, 1, 80, 120), COUNT);

    private static Pose tip(double x, double r, double clock) {
        return Plates.pose(x, r, clock, 1, 0, 0);
    }

    @Nested
    class WhereNothingIsKnown {

        /** Free from the touch on one side to that on the other, and a step more at each end. */
        @ParameterizedTest
        @ValueSource(doubles = {0, 0.1, 1, -3, 6})
        void vanesHaveRoomEverywhereButNearTheScopeTip(double clock) {
            List<Span> spans = room.of(Span.anywhere(COUNT), tip(0, 100, Math.toDegrees(clock)), RADIUS);

            assertThat(spans).hasSize(1);
            Span span = spans.get(0);
            double begins = Math.floor((clock + TOUCH) / STEP) * STEP;
            double ends = Math.ceil((clock + PITCH - TOUCH) / STEP) * STEP;
            assertThat(Math.sin((span.from() - begins) * COUNT / 2)).isCloseTo(0, within(1e-6));
            assertThat(span.width()).isCloseTo(ends - begins, ROUNDING);
        }

        @Test
        void theyMayStandAnywhereBesideAScopeTipAheadOfThem() {
            for (double x : new double[] {-15, 15}) {
                assertThat(room.of(Span.anywhere(COUNT), tip(x, 100, 7), RADIUS))
                        .containsExactly(Span.anywhere(COUNT));
            }
            assertThat(room.of(Span.anywhere(COUNT), tip(-14.9, 100, 7), RADIUS)
                            .get(0)
                            .width())
                    .isLessThan(PITCH - STEP);
        }

        @Test
        void theyMayStandAnywhereBesideAScopeTipAboveOrBelowThem() {
            assertThat(room.of(Span.anywhere(COUNT), tip(0, 126, 7), RADIUS)).containsExactly(Span.anywhere(COUNT));
            assertThat(room.of(Span.anywhere(COUNT), tip(0, 74, 7), RADIUS)).containsExactly(Span.anywhere(COUNT));
            assertThat(room.of(Span.anywhere(COUNT), tip(0, 78, 7), RADIUS)
                            .get(0)
                            .width())
                    .isLessThan(PITCH - STEP);
        }
    }

    @Nested
    class WhereSomethingIsKnown {

        private List<Span> rooms(double from, double to) {
            return room.of(new Span(from, to - from), tip(0, 100, 0), RADIUS);
        }

        @Test
        void allOfItHasRoomIfNothingComesNear() {
            assertThat(rooms(0.1, 0.2)).singleElement().satisfies(span -> {
                assertThat(span.from()).isCloseTo(0.1, ROUNDING);
                assertThat(span.width()).isCloseTo(0.1, ROUNDING);
            });
        }

        /** Between its bounds it is tried in steps of at most a 96th of a pitch. */
        @Test
        void itsEndsAreKeptWhereTheyHaveRoom() {
            double low = -0.2;
            double high = 0.3;
            List<Span> spans = rooms(low, high);

            int steps = (int) Math.ceil((high - low) / STEP);
            double step = (high - low) / steps;
            assertThat(spans).hasSize(2);
            assertThat(spans.get(0).from()).isCloseTo(low, ROUNDING);
            assertThat(spans.get(0).width()).isCloseTo(Math.ceil((-TOUCH - low) / step) * step, ROUNDING);
            double begins = low + Math.floor((TOUCH - low) / step) * step;
            assertThat(spans.get(1).from()).isCloseTo(begins, ROUNDING);
            assertThat(spans.get(1).width()).isCloseTo(high - begins, ROUNDING);
        }

        @Test
        void itsEndsAreLeftOutWhereTheyHaveNone() {
            assertThat(rooms(-0.01, 0.2)).singleElement().satisfies(span -> {
                assertThat(span.from()).isBetween(TOUCH - STEP, TOUCH);
                assertThat(span.from() + span.width()).isCloseTo(0.2, ROUNDING);
            });
            assertThat(rooms(-0.2, 0.01)).singleElement().satisfies(span -> {
                assertThat(span.from()).isCloseTo(-0.2, ROUNDING);
                assertThat(span.from() + span.width()).isBetween(-TOUCH, -TOUCH + STEP);
            });
        }

        @Test
        void anExactPlaceIsWhereItIs() {
            assertThat(rooms(0.15, 0.15)).containsExactly(new Span(0.15, 0));
        }

        @Test
        void moreThanAPitchIsAnywhere() {
            List<Span> spans = room.of(new Span(0, 3 * PITCH), tip(0, 100, Math.toDegrees(PITCH / 2)), RADIUS);

            assertThat(spans).hasSize(1);
            assertThat(spans.get(0).width()).isBetween(PITCH - 2 * TOUCH, PITCH - 2 * TOUCH + 2 * STEP);
        }
    }

    @Nested
    class WhereNoPlaceHasRoom {

        /** A scope tip of 40 mm radius among vanes 62 mm apart stands best half-way between two of them. */
        @Test
        void theRoomiestHasAndAStepOnEitherSide() {
            assertThat(room.of(Span.anywhere(COUNT), tip(0, 100, 0), 40))
                    .singleElement()
                    .satisfies(span -> {
                        assertThat(span.from()).isCloseTo(PITCH / 2 - STEP, ROUNDING);
                        assertThat(span.width()).isCloseTo(2 * STEP, ROUNDING);
                    });
        }

        /** All within the metal of a vane 10 mm thick: the place in which the scope tip's middle is nearest to its face. */
        @Test
        void withinTheMetalItIsWhereTheFaceIsNearest() {
            VaneRoom thick = new VaneRoom(Blocks.box(-10, 10, 5, 80, 120), COUNT);

            assertThat(thick.of(new Span(-0.01, 0.03), tip(0, 100, 0), RADIUS))
                    .singleElement()
                    .satisfies(span -> {
                        assertThat(span.from()).isBetween(0.01, 0.02);
                        assertThat(span.from() + span.width()).isCloseTo(0.02, ROUNDING);
                    });
        }
    }

    /** Slender, askew and off to one side, so that the nearest metal is mostly an edge, before one of its faces and behind another. */
    @Nested
    class OfVanesThatStandAskew {

        /** Points that are tried lie so near each other, mm, that the nearest metal is by less than this nearer. */
        private static final double GAP = 0.4;

        private final Mesh vane = wedge();

        /** Its edges lie at the ends of its chord; it leans, is bent, and its faces are 4 mm apart in the middle. */
        private Mesh wedge() {
            double[][] section = {{-12, -4}, {0, 8}, {12, 7}, {2, 4}};
            double[] points = new double[24];
            for (int i = 0; i < 8; i++) {
                boolean tip = i >= 4;
                points[3 * i] = section[i % 4][0] + (tip ? 2 : 0);
                points[3 * i + 1] = section[i % 4][1] + (tip ? 6 : 2);
                points[3 * i + 2] = tip ? 120 : 80;
            }
            int[] corners = {0, 1, 2, 3, 7, 6, 5, 4, 0, 4, 5, 1, 1, 5, 6, 2, 2, 6, 7, 3, 3, 7, 4, 0};
            return new Mesh(points, corners, new int[] {0, 4, 8, 12, 16, 20, 24}, new int[6]);
        }

        /** How far a point lies from the nearest triangle, by trying points all over each. */
        private double clearance(double[] point) {
            int[] points = vane.triangles();
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < points.length; i += 3) {
                for (int b = 0; b <= 40; b++) {
                    for (int c = 0; c + b <= 40; c++) {
                        double[] shares = {1 - (b + c) / 40.0, b / 40.0, c / 40.0};
                        double[] at = new double[3];
                        for (int k = 0; k < 3; k++) {
                            at[0] += shares[k] * vane.x(points[i + k]);
                            at[1] += shares[k] * vane.y(points[i + k]);
                            at[2] += shares[k] * vane.z(points[i + k]);
                        }
                        double[] off = Ray.minus(at, point);
                        least = Math.min(least, Ray.dot(off, off));
                    }
                }
            }
            return Math.sqrt(least);
        }

        /** Whether the line from a point far above meets the surface an odd number of times. */
        private boolean isWithin(double[] point) {
            int[] points = vane.triangles();
            int met = 0;
            for (int i = 0; i < points.length; i += 3) {
                double[][] at = new double[3][];
                for (int k = 0; k < 3; k++) {
                    at[k] = new double[] {vane.x(points[i + k]), vane.y(points[i + k]), vane.z(points[i + k])};
                }
                met += Double.isNaN(Ray.meets(new double[] {0.1, 0.2, 1e3}, point, at[0], at[1], at[2])) ? 0 : 1;
            }
            return met % 2 == 1;
        }

        @ParameterizedTest
        @CsvSource({
            "0, 100, 0, 3",
            "-14, 95, 2, 4",
            "13, 110, 3, 5",
            "-6, 122, 1, 4",
            "5, 78, 350, 4",
            "-12.5, 90, 30, 6",
            "14, 119, 34, 3",
            "0, 100, 0, 0.3",
            "4, 95, 10, 0.4",
            "-5, 110, 20, 0.4"
        })
        void theyHaveRoomWhereNoMetalIsNear(double x, double r, double clock, double radius) {
            Pose pose = tip(x, r, clock);
            List<Span> spans = new VaneRoom(vane, COUNT).of(Span.anywhere(COUNT), pose, radius);
            boolean[] free = new boolean[96];
            boolean[] shut = new boolean[96];
            for (int i = 0; i < 96; i++) {
                double least = Double.POSITIVE_INFINITY;
                for (int n = 0; n < COUNT; n++) {
                    double[] middle = Ray.turned(new double[] {x, 0, r}, Math.toRadians(clock) - i * STEP - n * PITCH);
                    if (Math.abs(middle[1]) < 30 && middle[2] > 0) {
                        least = Math.min(least, isWithin(middle) ? 0 : clearance(middle));
                    }
                }
                free[i] = least > radius + GAP;
                shut[i] = least < radius - 0.05;
            }
            int told = 0;
            for (int i = 0; i < 96; i++) {
                double at = i * STEP;
                boolean holds = spans.stream().anyMatch(span -> isIn(span, at));
                assertThat(free[i] && !holds).as("free at %d", i).isFalse();
                assertThat(shut[(i + 95) % 96] && shut[i] && shut[(i + 1) % 96] && holds)
                        .as("shut at %d", i)
                        .isFalse();
                told += shut[i] ? 1 : 0;
            }
            assertThat(told).isBetween(1, 95);
        }

        private static boolean isIn(Span span, double at) {
            double on = Math.IEEEremainder(at - span.from() - span.width() / 2, PITCH);
            return Math.abs(on) <= span.width() / 2 - STEP / 2;
        }
    }
}
