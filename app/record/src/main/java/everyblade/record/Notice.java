package everyblade.record;

import everyblade.fact.Fact;

/** What a person should be told on opening a job, though it does not hinder reading. */
sealed interface Notice extends Fact {

    /** @param line of the journal, from 1, whose last bytes are left out */
    record Torn(int line, long bytes) implements Notice {}

    /**
     * @param line of the journal, from 1, that was torn
     * @param file that holds its bytes now
     */
    record SetAside(int line, String file) implements Notice {}

    record Newer(String version) implements Notice {}
}
