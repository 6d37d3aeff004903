package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CourseSearchTest {

    private static final int WALKS = Boolean.getBoolean("everyblade.campaign") ? 20_000 : 500;
    private static final int ENOUGH = 100_000;

    private static long degrees(double degrees) {
        return Math.round(degrees * 100_000);
    }

    private static Chance through(int view, double from, double to) {
        return new Chance(view, degrees(from), degrees(to), degrees(from), degrees(to), true);
    }

    private static Need need(Chance... chances) {
        return new Need(List.of(chances));
    }

    private static Walk walk(double start, int views, Need... needs) {
        return new Walk(degrees(start), true, true, false, OptionalInt.empty(), views, List.of(needs));
    }

    private static Course course(Walk walk) {
        return CourseSearch.of(walk, ENOUGH).orElseThrow();
    }

    @Nested
    class ByHand {

        @Test
        void nothingToSeeNeedsNoTurning() {
            assertThat(course(walk(12, 1))).isEqualTo(new Course(List.of(), 0, 0));
        }

        @Test
        void whatIsInSightAlreadyNeedsOnlyALook() {
            Course course = course(walk(12, 1, need(through(0, 10, 20)), need(through(0, 350, 372))));
            assertThat(course.turning()).isZero();
            assertThat(course.stays()).hasSize(1);
        }

        @Test
        void theShorterWayToOneGapIsTaken() {
            assertThat(course(walk(0, 1, need(through(0, 100, 110)))).turning()).isEqualTo(degrees(100));
            assertThat(course(walk(0, 1, need(through(0, 240, 250)))).turning()).isEqualTo(degrees(110));
        }

        /** 30° down and then 90° up, against 60° up and then 90° down. */
        @Test
        void ofTwoGapsTheNearerOneComesFirst() {
            Course course = course(walk(0, 1, need(through(0, 60, 70)), need(through(0, 320, 330))));
            assertThat(course.turning()).isEqualTo(degrees(30 + 90));
            assertThat(course.stays())
                    .singleElement()
                    .satisfies(stay -> assertThat(stay.endsUp()).isTrue());
        }

        @Test
        void aShaftThatTurnsOneWayGoesAllTheWayRound() {
            List<Need> needs = List.of(need(through(0, 60, 70)), need(through(0, 320, 330)));
            assertThat(course(new Walk(0, true, false, false, OptionalInt.empty(), 1, needs))
                            .turning())
                    .isEqualTo(degrees(320));
            assertThat(course(new Walk(0, false, true, false, OptionalInt.empty(), 1, needs))
                            .turning())
                    .isEqualTo(degrees(360 - 70));
        }

        @Test
        void whereTheDoubtIsWiderThanTheSightItIsSweptOver() {
            Chance doubtful = new Chance(0, degrees(100), degrees(104), degrees(105), degrees(99), false);
            assertThat(course(walk(0, 1, need(doubtful))).turning()).isEqualTo(degrees(105));
            assertThat(course(walk(102, 1, need(doubtful))).turning()).isEqualTo(degrees(3 + 6));
        }

        @Test
        void aStartThatIsNotKnownWellEnoughAsksForTheReadingToBeReadAnew() {
            Chance unread = new Chance(0, degrees(90), degrees(110), degrees(95), degrees(105), false);
            assertThat(course(walk(100, 1, need(unread))).turning()).isEqualTo(degrees(0.01));
        }

        /** Out with one view and back with the other: none is taken out to be put back. */
        @Test
        void eachViewIsSeatedOnce() {
            Course course = course(walk(
                    0,
                    2,
                    need(through(0, 0, 1)),
                    need(through(0, 90, 91)),
                    need(through(1, 0, 1)),
                    need(through(1, 90, 91))));
            assertThat(course.turning()).isEqualTo(degrees(90 + 89));
            assertThat(course.stays()).hasSize(2);
        }

        @Test
        void theViewInUseIsNoSeating() {
            List<Need> needs = List.of(need(through(0, 5, 9), through(1, 5, 9)));
            for (int seated = 0; seated < 2; seated++) {
                Walk walk = new Walk(0, true, true, false, OptionalInt.of(seated), 2, needs);
                assertThat(course(walk).stays().get(0).view()).isEqualTo(seated);
            }
        }
    }

    /**
     * Six views each show an arc of the circle, and nothing turns: the least course is the cover with the fewest arcs.
     * Arcs after Lee and Lee (1984), Information Processing Letters 18, 109–115 (from memory); the numbers by brute
     * force. Taking the arc that reaches farthest, from the first one on, finds four.
     */
    @Test
    void theFewestArcsCoverTheCircle() {
        int[][] arcs = {{0, 100}, {60, 130}, {150, 120}, {180, 130}, {260, 110}, {300, 130}};
        List<Need> needs = new ArrayList<>();
        for (int degree = 0; degree < 360; degree++) {
            int at = degree;
            needs.add(new Need(IntStream.range(0, arcs.length)
                    .filter(arc -> Math.floorMod(at - arcs[arc][0], 360) < arcs[arc][1])
                    .mapToObj(arc -> through(arc, 0, 0))
                    .toList()));
        }
        Course course = course(new Walk(0, true, true, false, OptionalInt.empty(), arcs.length, needs));
        assertThat(course.turning()).isZero();
        assertThat(course.proved()).isTrue();
        assertThat(course.stays()).extracting(Stay::view).containsExactlyInAnyOrder(1, 3, 5);
    }

    @Nested
    class AgainstTryingEverything {

        private static final int MARKS = 8;

        private Walk random(SplittableRandom random) {
            long mark = Steps.TURN / MARKS;
            int views = 1 + random.nextInt(3);
            List<Need> needs = new ArrayList<>();
            for (int i = random.nextInt(5); i >= 0; i--) {
                List<Chance> chances = new ArrayList<>();
                for (int j = random.nextInt(3); j >= 0; j--) {
                    long low = random.nextInt(2 * MARKS) * mark;
                    long high = low + (random.nextInt(5) - 2) * mark;
                    chances.add(new Chance(
                            random.nextInt(views), Math.min(low, high), Math.max(low, high), low, high, true));
                }
                needs.add(new Need(chances));
            }
            int ways = random.nextInt(4);
            OptionalInt seated = random.nextBoolean() ? OptionalInt.of(random.nextInt(views)) : OptionalInt.empty();
            return new Walk(
                    random.nextInt(MARKS) * mark, ways != 1, ways != 2, random.nextInt(5) == 0, seated, views, needs);
        }

        @Test
        void turningAndSeatingsAreLeast() {
            for (int seed = 0; seed < WALKS; seed++) {
                Walk walk = random(new SplittableRandom(seed));
                Course course = course(walk);
                int slow = SlowCourse.of(walk, MARKS);
                boolean sits = !walk.setBack()
                        && walk.seated().isPresent()
                        && course.stays().get(0).view() == walk.seated().getAsInt();
                assertThat(course.turning() / (Steps.TURN / MARKS) * 100
                                + course.stays().size()
                                - (sits ? 1 : 0))
                        .as("walk %d: %s", seed, walk)
                        .isEqualTo(slow);
                assertThat(course.proved()).as("walk %d", seed).isTrue();
            }
        }

        @Test
        void whatTheStaysTurnAddsUp() {
            for (int seed = 0; seed < WALKS; seed++) {
                Course course = course(random(new SplittableRandom(seed)));
                assertThat(course.stays().stream().mapToLong(Stay::turning).sum())
                        .isEqualTo(course.turning());
            }
        }

        @Test
        void aSearchThatIsCutShortGivesAnHonestBound() {
            int cut = 0;
            for (int seed = 0; seed < WALKS; seed++) {
                Walk walk = random(new SplittableRandom(seed));
                long least = course(walk).turning();
                Course early = CourseSearch.of(walk, 1).orElseThrow();
                assertThat(early.bound()).as("walk %d", seed).isLessThanOrEqualTo(least);
                assertThat(early.turning()).as("walk %d", seed).isGreaterThanOrEqualTo(least);
                cut += early.proved() ? 0 : 1;
            }
            assertThat(cut).isPositive();
        }
    }
}
