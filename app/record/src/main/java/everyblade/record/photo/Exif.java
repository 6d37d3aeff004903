package everyblade.record.photo;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.jpeg.JpegProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a camera wrote into a picture; what is damaged or makes no sense counts as not written.
 *
 * @param orientation 1 to 8
 * @param taken as in {@link PhotoFacts}
 */
record Exif(int orientation, Optional<String> taken) {

    static final Exif NONE = new Exif(1, Optional.empty());

    private static final DateTimeFormatter WRITTEN =
            DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final DateTimeFormatter TOLD = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);

    /** Of a JPEG picture. */
    static Exif of(byte[] jpeg) {
        try {
            Metadata metadata =
                    JpegMetadataReader.readMetadata(new ByteArrayInputStream(jpeg), List.of(new ExifReader()));
            return new Exif(orientation(metadata), taken(metadata));
        } catch (JpegProcessingException | IOException | RuntimeException damaged) {
            return NONE;
        }
    }

    private static int orientation(Metadata metadata) {
        Directory main = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
        Integer written = main == null ? null : main.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
        return written == null || written < 1 || written > 8 ? 1 : written;
    }

    private static Optional<String> taken(Metadata metadata) {
        Directory camera = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        Directory main = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
        Optional<String> offset = text(camera, ExifDirectoryBase.TAG_TIME_ZONE_ORIGINAL)
                .or(() -> text(camera, ExifDirectoryBase.TAG_TIME_ZONE));
        return text(camera, ExifDirectoryBase.TAG_DATETIME_ORIGINAL)
                .or(() -> text(camera, ExifDirectoryBase.TAG_DATETIME_DIGITIZED))
                .or(() -> text(main, ExifDirectoryBase.TAG_DATETIME))
                .flatMap(written -> told(written, offset));
    }

    private static Optional<String> text(Directory directory, int tag) {
        return Optional.ofNullable(directory).map(there -> there.getString(tag)).map(String::strip);
    }

    private static Optional<String> told(String written, Optional<String> offset) {
        try {
            String time = TOLD.format(LocalDateTime.parse(written, WRITTEN));
            return Optional.of(time + offset.flatMap(Exif::difference).orElse(""));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    private static Optional<String> difference(String offset) {
        try {
            return Optional.of(ZoneOffset.of(offset).getId());
        } catch (DateTimeException noDifference) {
            return Optional.empty();
        }
    }
}
