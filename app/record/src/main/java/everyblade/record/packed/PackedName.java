package everyblade.record.packed;

import everyblade.record.photo.PhotoFile;
import java.util.List;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/**
 * The names that the files of a job have in it, with / between folders; a packed job holds these and no others. So no name
 * leads out of the folder that it is unpacked into, whatever the system makes of odd names.
 */
public final class PackedName {

    /** Folders of a job in which its files stand; those of its own level, and of the record that it is compared with. */
    public static final List<String> FOLDERS =
            List.of("", "model", "limits", "photos", "signatures", "previous", "previous/model", "previous/limits");

    private static final long MEGABYTE = 1L << 20;

    private record Kind(Pattern pattern, long largest) {

        static Kind of(String pattern, long largest) {
            return new Kind(Pattern.compile(pattern), largest);
        }
    }

    private static final List<Kind> KINDS = List.of(
            Kind.of("(previous/)?journal\\.jsonl", 512 * MEGABYTE),
            Kind.of("review\\.jsonl", 64 * MEGABYTE),
            Kind.of("(previous/)?model/engine\\.json", 64 * MEGABYTE),
            Kind.of("(previous/)?model/[0-9a-f]{64}", 256 * MEGABYTE),
            Kind.of("(previous/)?limits/limits\\.json", 16 * MEGABYTE),
            Kind.of("signatures/[1-9][0-9]{0,4}\\.(json|tsr)", MEGABYTE),
            Kind.of(
                    "photos/(?![. ])[^/\\\\:*?\"<>|\\p{Cntrl}\\p{Cf}\\p{Zl}\\p{Zp}]{1,200}(?<![. ])",
                    PhotoFile.LARGEST));

    private PackedName() {}

    /** How many bytes a file of this name has at most; empty if a job has no file of this name. */
    public static OptionalLong largest(String name) {
        return KINDS.stream()
                .filter(kind -> kind.pattern().matcher(name).matches())
                .mapToLong(Kind::largest)
                .findFirst();
    }
}
