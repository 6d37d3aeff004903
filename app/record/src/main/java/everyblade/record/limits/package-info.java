/**
 * Limits for findings as a file of their own, {@code everyblade/limits/1}.
 *
 * <p>Takes bytes, and where it is known the engine that they are for. Gives {@link everyblade.core.finding.Limits}, or
 * the problems that stand in their way, each with line and column; never an exception.
 */
package everyblade.record.limits;
