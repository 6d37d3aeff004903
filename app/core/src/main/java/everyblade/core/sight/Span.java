package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.turning.SmoothedTrack.Place;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Clock angles at which an airfoil may stand, radians.
 *
 * @param from the first of them, clockwise
 * @param width how far they go on from there; 0 if it is known exactly
 */
record Span(double from, double width) {

    /** Exactly at a clock angle. */
    static Span at(Turn clock) {
        return new Span(CriteriaCut.radians(clock), 0);
    }

    static Span of(Place place) {
        return new Span(
                CriteriaCut.radians(place.low()),
                CriteriaCut.radians(place.high().minus(place.low())));
    }

    /** A clock angle in radians as a turn. */
    static Turn turn(double clock) {
        return Turn.ofDegrees(Math.toDegrees(clock)).wrapped();
    }

    /** Anywhere: some airfoil of a ring of so many stands within each pitch. */
    static Span anywhere(int count) {
        return new Span(0, 2 * Math.PI / count);
    }

    boolean exact() {
        return width == 0;
    }

    /** How far on from the other it may be. */
    Span after(Span other) {
        return new Span(from - other.from - other.width, width + other.width);
    }

    /** Where pieces of this width begin that cover all of it; one that is wider lies over the middle of it. */
    List<Double> pieces(double piece) {
        int count = (int) Math.ceil(width / piece - 1e-9);
        if (count <= 1) {
            return List.of(from - (piece - width) / 2);
        }
        return IntStream.range(0, count)
                .mapToObj(i -> from + i * (width - piece) / (count - 1))
                .toList();
    }
}
