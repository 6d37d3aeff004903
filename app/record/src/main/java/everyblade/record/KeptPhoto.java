package everyblade.record;

import everyblade.record.photo.PhotoFacts;

/**
 * A picture as it was when an entry named it.
 *
 * @param file its name in the job's folder of pictures
 * @param sha256 of its bytes, 64 hexadecimal digits
 * @param bytes how many there are
 * @param facts what the picture says of itself
 */
public record KeptPhoto(String file, String sha256, long bytes, PhotoFacts facts) {}
