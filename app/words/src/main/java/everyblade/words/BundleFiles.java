package everyblade.words;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** Where the texts of a language are: in a file beside the class of that name. */
final class BundleFiles extends ResourceBundle.Control {

    @Override
    public List<String> getFormats(String name) {
        return FORMAT_PROPERTIES;
    }

    /** None: what is not there in the person's language is there in English. */
    @Override
    public Locale getFallbackLocale(String name, Locale locale) {
        return null;
    }

    @Override
    public ResourceBundle newBundle(String name, Locale locale, String format, ClassLoader loader, boolean anew)
            throws IOException {
        try (InputStream file = loader.getResourceAsStream(toResourceName(toBundleName(name, locale), "properties"))) {
            return file == null ? null : new TextFile(file.readAllBytes());
        }
    }
}
