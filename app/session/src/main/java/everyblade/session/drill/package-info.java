/**
 * Drills: those of the course, how one is made, read and ended, and what is told of it.
 */
package everyblade.session.drill;
