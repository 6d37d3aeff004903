package everyblade.core.move;

/**
 * A place on a shaft's line where one view serves a need: it is in sight while the reading lies from {@code from} to
 * {@code to}, ends included, and again at every further turn; it is surely seen if watching without a seam reaches down
 * to {@code high} and up to {@code low}.
 *
 * <p>Without errors {@code low} is {@code from} and {@code high} is {@code to}, and any place between serves. With errors
 * both move inward; where the doubt is wider than the sight, {@code low} is above {@code high}, and only a sweep over all
 * between serves. Something that must be swept whole is said the same way.
 *
 * <p>All are steps of {@link Steps}, unrolled.
 *
 * @param view index of the view in its walk
 * @param from least reading at which it is in sight
 * @param to greatest reading at which it is in sight
 * @param low watching must reach up to here
 * @param high watching must reach down to here
 * @param atStart whether a look at the walk's start serves, as surely as the start is known
 */
record Chance(int view, long from, long to, long low, long high, boolean atStart) {

    /**
     * How far above a place watching must reach if it reaches down to that place, at the next turn at which it can serve;
     * negative where less far down would do as well.
     */
    long above(long place) {
        long turns = -Math.floorDiv(high - place, Steps.TURN);
        return low + turns * Steps.TURN - place;
    }

    Chance moved(long by) {
        return new Chance(view, from + by, to + by, low + by, high + by, atStart);
    }
}
