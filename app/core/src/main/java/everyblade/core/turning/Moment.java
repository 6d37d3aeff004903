package everyblade.core.turning;

import java.util.OptionalDouble;

/**
 * When an entry is judged.
 *
 * @param now the situation before it
 * @param number K of the entry
 * @param sinceBefore seconds since the entry before, if both were entered live
 */
record Moment(Situation now, int number, OptionalDouble sinceBefore) {}
