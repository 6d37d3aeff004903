package everyblade.core.surface;

import everyblade.fact.Fact;

/** Why the contents of a mesh file cannot be read. */
sealed interface FileDamage extends Fact {

    /** What needs no particulars. */
    enum Plain implements FileDamage {
        UNKNOWN_BEGINNING,
        ENDS_EARLY,
        ENDS_WITHIN_POINT,
        STRAY_PROPERTY,
        NO_CORNERS,
        FEW_CORNERS,
        MANY_CORNERS,
        FEW_CORNERS_OF_FACET,
        NO_AREA
    }

    /** A point of this number whose coordinates are no numbers. */
    record PointNowhere(int point) implements FileDamage {}

    /** A face that names a point beyond the last. */
    record NoSuchPoint(int point, int points) implements FileDamage {}

    record NoNumber(String word) implements FileDamage {}

    record UnknownFormat(String format) implements FileDamage {}

    record UnknownType(String word) implements FileDamage {}

    /** More items of a kind than the file has bytes, or not a number of them. */
    record ManyItems(String word) implements FileDamage {}

    record LongList(String length) implements FileDamage {}

    /** A line of the header that ends after these words. */
    record ShortHeader(String words) implements FileDamage {}
}
