/**
 * What to do next, and all that is to be done, so that it takes least time.
 *
 * <p>Takes a fold, its coverage and what steps cost. Gives moves as entries that a person can do and log as they stand,
 * with what they close, the minutes they take, and a bound that no plan can be under.
 *
 * <p>A row is small: a handful of {@link everyblade.core.move.ViewOption}s, and airfoils of few kinds. So
 * {@link everyblade.core.move.CoverSearch} tries all covers of it (set cover; Karp 1972, in Complexity of Computer
 * Computations, 85-103, from memory), and each way of sharing the airfoils out among them.
 * {@link everyblade.core.move.VisibilityWindow} says where an airfoil must pass, {@link everyblade.core.move.Sweeping} how
 * to pass all of them (hitting intervals on a circle; Lee and Lee 1984, Information Processing Letters 18, 109-115, from
 * memory), {@link everyblade.core.move.CourseSearch} in which order the stations of a
 * {@link everyblade.core.move.RotationProblem} come and which way to turn (dynamic programming over sets; Held and Karp 1962,
 * Journal of SIAM 10, 196-210, from memory). Rows meet only in ports:
 * {@link everyblade.core.move.PortChoice} finds those that cost least by branch and bound (Land and Doig 1960,
 * Econometrica 28, 497-520, from memory).
 *
 * <p>{@link everyblade.core.move.PlanBuilder} follows the plan through fold and coverage, move by move, and
 * {@link everyblade.core.move.Spoken} says each as entries. Declared and computed rows are the same to all of them.
 *
 * <p>The bound is over plans that enter no port twice, stand at no station twice, and turn a rotor whole where all or
 * nearly all its airfoils must pass a station and its moves have errors: only then the turn ends at the airfoil at which
 * it began, and closes the count. What other ends and beginnings of sweeps could save, moves at most, is taken off it.
 * Of a rotor of which nothing was seen {@link everyblade.core.move.EveryOrder} finds the least of all such plans, seams
 * included (A*; Hart, Nilsson and Raphael 1968, IEEE Transactions on Systems Science and Cybernetics 4, 100-107, from memory).
 */
package everyblade.core.move;
