/**
 * A drill: an engine with invented damage, a scope tip that is moved in it, and what was in sight of it.
 */
package everyblade.practice.drill;
