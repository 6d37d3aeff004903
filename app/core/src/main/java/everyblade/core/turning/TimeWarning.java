package everyblade.core.turning;

import everyblade.fact.Fact;

/** What is odd about the time of an entry. Times are told to the second, UTC. */
sealed interface TimeWarning extends Fact {

    /** Before what was kept last. */
    record Earlier(String at, String before) implements TimeWarning {}

    /** Still to come, by this machine's clock. */
    record ToCome(String at, String now) implements TimeWarning {}

    /** Long before any such record. */
    record LongAgo(String at) implements TimeWarning {}
}
