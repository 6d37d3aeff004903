package everyblade.record.photo;

import everyblade.fact.Fact;

/** Why a file is not kept as a picture, or not all of it can be shown. */
sealed interface PictureFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements PictureFlaw {
        EMPTY,
        NO_PICTURE,
        CANNOT_BE_SHOWN,
        CUT_OFF,
        ELEMENTS_LOST
    }

    record TooLarge(int megabytes) implements PictureFlaw {}

    record TooManyPixels(int width, int height) implements PictureFlaw {}

    record TooManyScans(int scans) implements PictureFlaw {}

    /** What to do about it. */
    enum Remedy implements Fact {
        SAVE_SMALLER,
        SAVE_AS_JPEG_OR_PNG,
        SAVE_ANEW,
        COPY_FROM_CAMERA
    }
}
