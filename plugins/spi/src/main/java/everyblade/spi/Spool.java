package everyblade.spi;

import java.util.List;

/**
 * Rows that turn together on one shaft.
 *
 * @param id unique within the engine model
 * @param name what people call it
 * @param normal the direction in which the shaft turns in service, and is usually turned by hand
 * @param pads where it can be turned; the first one is used until another is named
 */
public record Spool(String id, String name, Direction normal, List<Pad> pads) {

    public Spool {
        pads = List.copyOf(pads);
    }
}
