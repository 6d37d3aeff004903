package everyblade.record.photo;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The name under which a job keeps a picture: one that every system can hold, so that the folder can be copied anywhere.
 * A name that is one stays as it is; what cannot be in one is replaced by {@code _}. The entry keeps what was typed.
 *
 * <p>Beyond what POSIX forbids: the signs and device names of "Naming Files, Paths, and Namespaces" of Windows; characters
 * that are not seen or turn the direction of writing; accents in one piece (Unicode NFC), since some systems take them apart.
 */
public final class PhotoName {

    private static final Pattern UNFIT = Pattern.compile("[<>:\"/\\\\|?*\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]");
    private static final Pattern DEVICE =
            Pattern.compile("(CON|PRN|AUX|NUL|CLOCK\\$|CONIN\\$|CONOUT\\$|(COM|LPT)[0-9\u00b9\u00b2\u00b3])( *\\..*)?");
    private static final Pattern ENDS_BADLY = Pattern.compile("[. ]$");

    /** UTF-8 bytes: what encrypting file systems leave of 255. */
    private static final int LONGEST = 140;

    private static final int LONGEST_ENDING = 10;

    private PhotoName() {}

    /**
     * For a file of this name.
     *
     * @param file without folders before it
     */
    public static String of(String file) {
        String name =
                UNFIT.matcher(Normalizer.normalize(file, Normalizer.Form.NFC)).replaceAll("_");
        boolean taken = name.startsWith(".")
                || name.startsWith(" ")
                || DEVICE.matcher(name.toUpperCase(Locale.ROOT)).matches();
        String begun = name.isEmpty() || taken ? "_" + name : name;
        String ended = ENDS_BADLY.matcher(begun).replaceAll("_");
        return shortened(ended.endsWith(".part") ? ended + "_" : ended); // .part is what is still on its way
    }

    /** Cut in the middle, so that what tells its type stays. */
    private static String shortened(String name) {
        if (length(name) <= LONGEST) {
            return name;
        }
        int dot = name.lastIndexOf('.');
        String ending = dot > 0 && name.length() - dot <= LONGEST_ENDING ? name.substring(dot) : "";
        int end = name.length() - ending.length();
        while (length(name.substring(0, end)) + length(ending) + 1 > LONGEST) {
            end = name.offsetByCodePoints(end, -1);
        }
        return name.substring(0, end) + "_" + ending;
    }

    private static int length(String text) {
        return text.getBytes(StandardCharsets.UTF_8).length;
    }
}
