/**
 * How long the core takes: JMH benchmarks, compiled with the tests and run only by the Maven profile {@code bench}.
 *
 * <p>Inputs come from fixed seeds, so that two runs measure the same work.
 */
package everyblade.core.bench;
