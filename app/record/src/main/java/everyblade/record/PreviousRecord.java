package everyblade.record;

import java.util.Optional;
import java.util.SortedMap;

/**
 * An earlier record as it is kept within a later one: all that is needed to fold it again, without its pictures.
 *
 * @param head hash of its last line, which the later journal names in its first
 * @param journal its sound lines
 * @param model its engine model
 * @param meshes files of shapes that the engine model names
 * @param limits that it was judged by
 */
public record PreviousRecord(
        String head,
        FrozenFile journal,
        FrozenFile model,
        SortedMap<String, FrozenFile> meshes,
        Optional<FrozenFile> limits) {}
