package everyblade.core.entry;

import java.util.List;

/** What may stand at a place of a line behind its verb, for those who help to type it. */
public sealed interface Slot {

    /** What depends on the engine, or on what was said before. */
    enum Named implements Slot {
        /** A number that nobody can guess, or free text. */
        UNTOLD,
        VIEW,
        SCOPE_TIP,
        STATION,
        /** A part of an airfoil that is watched or asked for. */
        PART,
        ZONE,
        ROW,
        PAD,
        /** How far a shaft turns. */
        TURNING,
        /** How far the scope tip goes round the annulus. */
        DRAWING,
        KIND_OF_FINDING,
        /** A port, or a pad whose cover comes off. */
        THING,
        THING_OPEN,
        /** A tool that is back, where the line says so. */
        TOOL,
        /** An entry that leaves a question. */
        QUESTION
    }

    /** One of these words. */
    record Words(List<String> words) implements Slot {

        public Words {
            words = List.copyOf(words);
        }
    }

    /** One of these words. */
    static Slot words(String... words) {
        return new Words(List.of(words));
    }
}
