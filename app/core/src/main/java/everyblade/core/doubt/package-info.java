/**
 * Doubts: why a person should look twice at an entry before it is kept. Nothing here refuses.
 *
 * <p>Takes the folded journal before an entry and after it. Gives what is doubtful as kinds with values, so that the
 * window asks and the command line warns by one rule, each in its own words.
 */
package everyblade.core.doubt;
