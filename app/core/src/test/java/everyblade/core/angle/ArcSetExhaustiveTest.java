package everyblade.core.angle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.ValueSource;

/** Every set, every pair of sets, every radius and every rotation on circles of one to ten ticks, against bit masks. */
@ParameterizedClass(name = "on a circle of {0} ticks")
@ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
class ArcSetExhaustiveTest {

    private final TinyCircle tiny;
    private final Circle circle;
    private final ArcSet[] sets;
    private final List<String> wrong = new ArrayList<>();
    private long compared;

    ArcSetExhaustiveTest(int ticks) {
        tiny = new TinyCircle(ticks);
        circle = tiny.circle();
        sets = tiny.sets(0);
    }

    private void same(Object expected, Object actual, String what, int first, int second) {
        compared++;
        if (!expected.equals(actual) && wrong.size() < 10) {
            wrong.add("%s of %s and %s: expected %s, got %s"
                    .formatted(what, Integer.toBinaryString(first), Integer.toBinaryString(second), expected, actual));
        }
    }

    @AfterEach
    void allAgree() {
        assertThat(wrong).isEmpty();
        assertThat(compared).isPositive();
    }

    @Test
    void aSetContainsTheTicksItWasMadeOfAnyNumberOfTurnsAway() {
        for (int mask = 0; mask < sets.length; mask++) {
            for (int tick = -2 * tiny.ticks(); tick <= 3 * tiny.ticks(); tick++) {
                same(tiny.has(mask, tick), sets[mask].contains(tick), "membership", mask, tick);
            }
        }
    }

    @Test
    void itsArcsAreSortedDisjointAndMaximal() {
        for (int mask = 0; mask < sets.length; mask++) {
            same(tiny.maximalArcs(mask), sets[mask].arcs(), "arcs", mask, 0);
        }
    }

    @Test
    void itsMeasureIsItsNumberOfTicks() {
        for (int mask = 0; mask < sets.length; mask++) {
            same((long) Integer.bitCount(mask), sets[mask].measure(), "measure", mask, 0);
            same(mask == 0, sets[mask].isEmpty(), "emptiness", mask, 0);
            same(mask == tiny.all(), sets[mask].isFull(), "fullness", mask, 0);
        }
    }

    @Test
    void equalSetsAreEqualObjectsHoweverTheyWereMadeAndDifferentOnesAreNot() {
        Set<ArcSet> different = new HashSet<>();
        for (int mask = 0; mask < sets.length; mask++) {
            different.add(sets[mask]);
            ArcSet again = ArcSet.of(circle, tiny.maximalArcs(mask));
            same(sets[mask], again, "the set of its arcs", mask, 0);
            same(sets[mask].hashCode(), again.hashCode(), "hash", mask, 0);
        }
        assertThat(different).hasSize(sets.length);
    }

    @Test
    void theUnionOfEveryTwoArcsIsTheUnionOfTheirTicks() {
        for (int a = 0; a < tiny.ticks(); a++) {
            for (int b = 0; b < tiny.ticks(); b++) {
                for (int aLong = 0; aLong <= tiny.ticks(); aLong++) {
                    for (int bLong = 0; bLong <= tiny.ticks(); bLong++) {
                        int first = tiny.mask(a, aLong);
                        int second = tiny.mask(b, bLong);
                        ArcSet both = ArcSet.of(new Arc(circle, a, aLong), new Arc(circle, b, bLong));
                        same(sets[first | second], both, "union of arcs", first, second);
                    }
                }
            }
        }
    }

    @Test
    void aComplementHoldsTheOtherTicks() {
        for (int mask = 0; mask < sets.length; mask++) {
            same(sets[tiny.all() & ~mask], sets[mask].complement(), "complement", mask, 0);
        }
    }

    @Test
    void unionIntersectionAndDifferenceOfEveryPairAreThoseOfTheTicks() {
        everyPair(sets);
    }

    @Test
    void theSamePairsTurnedByEveryRotationGiveTheSameResultsTurned() {
        for (int by = 1; by <= tiny.ticks(); by++) {
            everyPair(tiny.sets(by));
        }
    }

    private void everyPair(ArcSet[] of) {
        for (int a = 0; a < of.length; a++) {
            for (int b = 0; b < of.length; b++) {
                same(of[a | b], of[a].union(of[b]), "union", a, b);
                same(of[a & b], of[a].intersection(of[b]), "intersection", a, b);
                same(of[a & ~b], of[a].difference(of[b]), "difference", a, b);
            }
        }
    }

    @Test
    void everyShiftEitherWayTurnsTheTicks() {
        for (int mask = 0; mask < sets.length; mask++) {
            for (int by = -2 * tiny.ticks() - 1; by <= 2 * tiny.ticks() + 1; by++) {
                same(sets[tiny.rotate(mask, by)], sets[mask].shift(by), "shift", mask, by);
            }
        }
    }

    @Test
    void everyGrowthAndShrinkingIsThatOfTheTicksTurnedByEveryRotationToo() {
        for (int by = 0; by < tiny.ticks(); by++) {
            ArcSet[] turned = tiny.sets(by);
            for (int mask = 0; mask < sets.length; mask++) {
                for (int radius = 0; radius <= tiny.ticks() + 1; radius++) {
                    same(turned[tiny.grow(mask, radius)], turned[mask].grow(radius), "growth", mask, radius);
                    same(turned[tiny.shrink(mask, radius)], turned[mask].shrink(radius), "shrinking", mask, radius);
                }
            }
        }
    }

    @Test
    void aSetMeetsAnArcIfTheyShareATick() {
        for (int mask = 0; mask < sets.length; mask++) {
            for (int start = 0; start < tiny.ticks(); start++) {
                for (int length = 0; length <= tiny.ticks(); length++) {
                    int arc = tiny.mask(start, length);
                    boolean meets = sets[mask].meets(new Arc(circle, start, length));
                    same((mask & arc) != 0, meets, "meeting", mask, arc);
                }
            }
        }
    }

    @Test
    void anArcMeetsAnArcIfTheyShareATickAndContainsItsOwn() {
        for (Arc a : tiny.arcs()) {
            int first = tiny.mask((int) a.start(), (int) a.length());
            for (Arc b : tiny.arcs()) {
                int second = tiny.mask((int) b.start(), (int) b.length());
                same((first & second) != 0, a.meets(b), "meeting", first, second);
                same(first == second, a.equals(b), "equality", first, second);
            }
            for (int tick = -tiny.ticks(); tick <= 2 * tiny.ticks(); tick++) {
                same(tiny.has(first, tick), a.contains(tick), "membership", first, tick);
            }
        }
    }

    @Test
    void itsTextReadsBackAsTheSameSet() {
        for (int mask = 0; mask < sets.length; mask++) {
            same(sets[mask], ArcText.parse(circle, sets[mask].toString()), "text", mask, 0);
        }
    }
}
