package everyblade.core.finding.closing;

import everyblade.core.turning.Logged;
import everyblade.fact.Fact;

/** An entry as it was typed, with its number. */
record EntryLine(int number, String text) implements Fact {

    static EntryLine of(Logged logged) {
        return new EntryLine(logged.number(), logged.text().strip());
    }
}
