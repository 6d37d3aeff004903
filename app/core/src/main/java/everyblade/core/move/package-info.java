/**
 * The moves that close all gaps with the least further turning.
 *
 * <p>Takes a fold, its coverage and its gaps. Gives entries that a person can do and type, with what they close, how far
 * the shafts turn, and a bound below which no plan can be.
 *
 * <p>A plan seats the scope tip at each view at most once: nobody takes a scope out of one port and into another for
 * every few degrees. Among all such plans, in any order and by any way that the pads allow, the one that turns least is
 * looked for, unwatched moves included; among equals the one that seats the scope tip least often.
 *
 * <p>{@link everyblade.core.move.Walk} is the bare problem: a shaft on its line, and what must be passed while which view
 * is in use. {@link everyblade.core.move.CourseSearch} solves it; {@link everyblade.core.move.Plans} makes walks of
 * coverage and entries of courses, and follows every plan through fold and coverage before it gives it away.
 */
package everyblade.core.move;
