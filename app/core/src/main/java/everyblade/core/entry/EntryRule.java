package everyblade.core.entry;

/** How the rest of a line is read once its verb is known. */
@FunctionalInterface
interface EntryRule {

    /**
     * The entry, not yet checked for words too many at its end.
     *
     * @throws Refusal if something is missing or does not belong
     */
    Entry read(Line line) throws Refusal;
}
