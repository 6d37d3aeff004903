package everyblade.session.photo;

import everyblade.record.KeptPhoto;
import everyblade.record.photo.PhotoFacts;
import everyblade.record.photo.PhotoFile;
import everyblade.record.photo.Thumbnail;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A picture upright, ready to be shown. Places in it are told in picture elements of the whole upright picture, however
 * small the copy is that is shown.
 *
 * @param image to show, at most {@link #MOST} picture elements across or down
 * @param width of the whole picture, upright
 * @param height of the whole picture, upright
 */
public record PhotoImage(BufferedImage image, int width, int height) {

    /** More than a scope's camera has; larger pictures are shown smaller, so that they cost no more memory. */
    public static final int MOST = 4096;

    /** Reads a picture; empty if it is not there as it was kept, or cannot be shown. May take a second. */
    public static Optional<PhotoImage> of(Path job, KeptPhoto photo) {
        return PhotoBytes.of(job, photo)
                .filter(bytes -> PhotoFile.look(bytes) instanceof PhotoFile.Sound)
                .flatMap(bytes -> Thumbnail.of(bytes, MOST, photo.facts().orientation()))
                .map(image -> new PhotoImage(image, width(photo.facts()), height(photo.facts())));
    }

    /** Of the upright picture. */
    public static int width(PhotoFacts facts) {
        return lies(facts) ? facts.height() : facts.width();
    }

    /** Of the upright picture. */
    public static int height(PhotoFacts facts) {
        return lies(facts) ? facts.width() : facts.height();
    }

    /** EXIF 2.32, tag 0x0112: from 5 on rows and columns are exchanged. */
    private static boolean lies(PhotoFacts facts) {
        return facts.orientation() >= 5;
    }
}
