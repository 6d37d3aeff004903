/**
 * The command line: one class for each command.
 *
 * <p>Takes arguments, streams, clock, environment and disk as {@link everyblade.session.around.Surroundings}; gives an
 * exit status: 0 fine, 1 the answer is "not complete", 2 wrong use or unreadable input, told in one line. Commands join
 * the record, which keeps, to the core, which computes; they compute nothing themselves.
 */
package everyblade.cli;
