package everyblade.record;

import java.util.Optional;

/**
 * An earlier record as it is kept within a later one: all that is needed to fold it again, without its pictures.
 *
 * @param head hash of its last line, which the later journal names in its first
 * @param journal its sound lines
 * @param model its engine model
 * @param limits that it was judged by
 */
public record PreviousRecord(String head, FrozenFile journal, FrozenFile model, Optional<FrozenFile> limits) {}
