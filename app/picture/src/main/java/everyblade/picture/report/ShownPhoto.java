package everyblade.picture.report;

import java.awt.image.BufferedImage;
import java.util.Optional;

/**
 * A picture that an entry names, as the report shows it.
 *
 * @param entry that names it
 * @param file its name in the job
 * @param taken when, as the camera wrote it; empty if it wrote nothing
 * @param small copy, upright; empty if the picture is not there, or is not the one that was kept
 * @param damage what is wrong with the picture, as the end of a sentence
 */
public record ShownPhoto(
        int entry, String file, Optional<String> taken, Optional<BufferedImage> small, Optional<String> damage) {}
