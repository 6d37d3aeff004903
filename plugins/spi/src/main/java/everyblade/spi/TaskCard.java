package everyblade.spi;

import java.util.List;

/**
 * A task that is done often on this engine: which parts of which rows it asks for.
 *
 * @param id unique within the engine model
 * @param name what people call it
 * @param asks what it asks for, in the order of the card, each row once; rows that are not named are not asked for
 */
public record TaskCard(String id, String name, List<Asked> asks) {

    /**
     * What is asked for of one row.
     *
     * @param row its id
     * @param parts in the words of the entry {@code ask}; {@code all} if everything
     */
    public record Asked(String row, List<String> parts) {

        public Asked {
            parts = List.copyOf(parts);
        }
    }

    public TaskCard {
        asks = List.copyOf(asks);
    }
}
