package everyblade.record.photo;

import java.util.Optional;

/**
 * What a picture says of itself.
 *
 * @param type {@code jpeg} or {@code png}
 * @param width in pixels, as stored
 * @param height in pixels, as stored
 * @param orientation how it is to be turned to be upright, 1 to 8 as in EXIF; 1 if it says nothing
 * @param taken when, by the camera's clock: an ISO 8601 date and time, with its difference from UTC where the camera
 *     says that
 */
public record PhotoFacts(String type, int width, int height, int orientation, Optional<String> taken) {}
