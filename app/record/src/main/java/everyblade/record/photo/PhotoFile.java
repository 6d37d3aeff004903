package everyblade.record.photo;

import everyblade.fact.Fact;
import java.util.Optional;

/**
 * Looks at a file that is to be kept as a picture, and refuses what is none, is damaged, or would exhaust whoever shows
 * it. Cost: one pass over the bytes and the decoding of a small copy.
 */
public final class PhotoFile {

    /** Largest file, bytes. */
    public static final int LARGEST = 64 << 20;

    /** Most pixels: more than any camera behind a scope has. */
    static final long MOST_PIXELS = 64_000_000L;

    /** Longest side, pixels. */
    static final int LONGEST_SIDE = 20_000;

    /** Most passes over one picture; real ones have about ten, and each costs as much as the whole picture. */
    static final int MOST_SCANS = 64;

    private static final int SMALL = 64;

    private PhotoFile() {}

    /** What came of looking. */
    public sealed interface Looked {}

    /**
     * A picture that can be shown, or some of it.
     *
     * @param damage what is wrong with it, as the end of a sentence; empty if all of it can be shown
     */
    public record Sound(PhotoFacts facts, Optional<Fact> damage) implements Looked {}

    /**
     * Not to be kept.
     *
     * @param why as the end of a sentence
     * @param toDo what to do about it
     */
    public record Refused(Fact why, Fact toDo) implements Looked {}

    /** Looks at the bytes of a file. */
    public static Looked look(byte[] bytes) {
        if (bytes.length > LARGEST) {
            return new Refused(new PictureFlaw.TooLarge(LARGEST >> 20), PictureFlaw.Remedy.SAVE_SMALLER);
        }
        Optional<Header> header = Header.of(bytes);
        if (header.isEmpty()) {
            return new Refused(
                    bytes.length == 0 ? PictureFlaw.Whole.EMPTY : PictureFlaw.Whole.NO_PICTURE,
                    PictureFlaw.Remedy.SAVE_AS_JPEG_OR_PNG);
        }
        Header found = header.get();
        if (found.width() > LONGEST_SIDE
                || found.height() > LONGEST_SIDE
                || (long) found.width() * found.height() > MOST_PIXELS) {
            return new Refused(
                    new PictureFlaw.TooManyPixels(found.width(), found.height()), PictureFlaw.Remedy.SAVE_SMALLER);
        }
        if (found.scans() > MOST_SCANS) {
            return new Refused(new PictureFlaw.TooManyScans(found.scans()), PictureFlaw.Remedy.SAVE_ANEW);
        }
        Optional<Thumbnail.Decoded> decoded = Thumbnail.decoded(bytes, SMALL, 1);
        if (decoded.isEmpty()) {
            return new Refused(PictureFlaw.Whole.CANNOT_BE_SHOWN, PictureFlaw.Remedy.COPY_FROM_CAMERA);
        }
        Exif exif = found.type().equals("jpeg") ? Exif.of(bytes) : Exif.NONE;
        return new Sound(
                new PhotoFacts(found.type(), found.width(), found.height(), exif.orientation(), exif.taken()),
                decoded.get().damage());
    }
}
