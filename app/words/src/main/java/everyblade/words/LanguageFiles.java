package everyblade.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/**
 * Which languages have a file of texts: those beside the English one, wherever that lies. To ask for the file of each
 * language that there is would have every jar of the program searched for it.
 */
final class LanguageFiles {

    private static final String ENGLISH = "words.properties";
    private static final Pattern OTHER = Pattern.compile("(?:.*/)?words_([a-z]{2,3})\\.properties");

    private LanguageFiles() {}

    /** English first, the others by their codes. */
    static List<Locale> languages() {
        return languages(LanguageFiles.class.getResource(ENGLISH));
    }

    /** The same of another place. */
    static List<Locale> languages(URL english) {
        try {
            return Stream.concat(Stream.of(Locale.ENGLISH), others(english)).toList();
        } catch (IOException | URISyntaxException unreadable) {
            throw new UncheckedIOException(new IOException("where " + english + " lies cannot be read", unreadable));
        }
    }

    private static Stream<Locale> others(URL english) throws IOException, URISyntaxException {
        URLConnection file = english.openConnection();
        if (file instanceof JarURLConnection inJar) {
            return others(inJar.getJarFile().stream().map(ZipEntry::getName));
        }
        try (Stream<Path> beside = Files.list(Path.of(english.toURI()).getParent())) {
            return others(beside.map(Path::toString).toList().stream());
        }
    }

    private static Stream<Locale> others(Stream<String> names) {
        return names.map(OTHER::matcher)
                .filter(Matcher::matches)
                .map(name -> name.group(1))
                .sorted()
                .map(Locale::new);
    }
}
