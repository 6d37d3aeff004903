package everyblade.picture;

import java.util.Optional;

/**
 * What the title block says beside the coverage.
 *
 * @param model name of the engine model
 * @param notice what must be shown wherever the model is used, such as that it is invented
 * @param serial of the engine
 * @param task what was to be done
 * @param head hash of the journal's last line, or what else tells which state of the record is shown
 * @param words in which the map is told
 */
public record MapFacts(
        String model, Optional<String> notice, String serial, String task, String head, MapWords words) {}
