package everyblade.fact;

import java.util.List;

/**
 * A fact of the shell, which no computation asks for: what a person is told by the text of one key, with its places {0},
 * {1} … filled in.
 *
 * @param key of the text
 * @param parts what goes into its places
 */
public record Keyed(String key, List<Object> parts) implements Fact {

    public Keyed {
        parts = List.copyOf(parts);
    }
}
