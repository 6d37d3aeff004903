package everyblade.json.jar;

import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What the manifest of a jar says of the plugin in it; known before any class of it is loaded.
 *
 * @param id letters, digits, hyphens and dots
 * @param version its own, semantic
 * @param spi the versions of the plugin interface that it works with
 */
record Metadata(String id, String version, SpiRange spi) {

    private static final Version OURS =
            Version.of(EngineModelSource.SPI_VERSION).orElseThrow();

    private static final long LARGEST_MANIFEST = 1 << 20;
    private static final Pattern ID = Pattern.compile("[A-Za-z][A-Za-z0-9.-]{0,63}");
    private static final Pattern VERSION = Pattern.compile("[0-9]{1,6}(\\.[0-9]{1,6}){1,2}([-+][A-Za-z0-9.+-]{1,32})?");
    private static final List<String> KEYS =
            List.of(EngineModelSource.MANIFEST_ID, EngineModelSource.MANIFEST_VERSION, EngineModelSource.MANIFEST_SPI);

    /** @return empty if the manifest says nothing of a plugin */
    static Optional<Metadata> of(ZipFile jar) throws JarFault {
        Attributes said = attributes(jar);
        if (said.containsKey(Attributes.Name.CLASS_PATH)) {
            throw bad(
                    "names other jars as " + Attributes.Name.CLASS_PATH,
                    "a plugin sees nothing outside its own jar",
                    "put every class that it needs into this one");
        }
        List<String> missing =
                KEYS.stream().filter(key -> said.getValue(key) == null).toList();
        if (missing.size() == KEYS.size()) {
            return Optional.empty();
        }
        if (!missing.isEmpty()) {
            throw bad(
                    "lacks " + String.join(" and ", missing), "a plugin says all three or nothing of itself", "add it");
        }
        String id = stated(said, EngineModelSource.MANIFEST_ID, ID, "letters, digits, hyphens and dots");
        String version = stated(said, EngineModelSource.MANIFEST_VERSION, VERSION, "a version such as 1.0.0");
        String range = said.getValue(EngineModelSource.MANIFEST_SPI).strip();
        SpiRange spi = SpiRange.of(range)
                .orElseThrow(() -> bad(
                        EngineModelSource.MANIFEST_SPI + " is " + JarRefusal.line(range),
                        "it is no range",
                        "write the first version it works with, such as 1.0, or a range such as [1.0,3.0)"));
        return Optional.of(new Metadata(id, version, spi));
    }

    /** The doubt about a plugin that says nothing of itself. */
    static Complaint missing(String jar) {
        return new Complaint(
                Fault.NO_METADATA,
                "the manifest of " + jar + " says nothing of the plugin",
                "so whether it fits this Everyblade shows only when it fails",
                "add " + String.join(", ", KEYS) + " to the manifest");
    }

    /** Refuses a plugin that was made for another plugin interface. */
    void requireOurs() throws JarFault {
        if (spi.isAbove(OURS)) {
            throw new JarFault(
                    Fault.NEWER_SPI,
                    "the plugin " + this + " needs version " + spi.from() + " of the plugin interface",
                    "this Everyblade has " + OURS,
                    "use a newer Everyblade, or ask the plugin's author for one that works with " + OURS);
        }
        if (spi.isBelow(OURS)) {
            throw new JarFault(
                    Fault.OLDER_SPI,
                    "the plugin " + this + " works with versions of the plugin interface before " + spi.before(),
                    "this Everyblade has " + OURS,
                    "ask the plugin's author for a newer one");
        }
    }

    @Override
    public String toString() {
        return id + " " + version;
    }

    private static String stated(Attributes said, String key, Pattern form, String expected) throws JarFault {
        String value = said.getValue(key).strip();
        if (!form.matcher(value).matches()) {
            throw bad(key + " is " + JarRefusal.line(value), "it must be " + expected, "correct it");
        }
        return value;
    }

    private static Attributes attributes(ZipFile jar) throws JarFault {
        ZipEntry entry = jar.getEntry("META-INF/MANIFEST.MF");
        if (entry == null) {
            return new Attributes();
        }
        if (entry.getSize() > LARGEST_MANIFEST) {
            throw bad("is larger than 1 MB", "it is a few lines", "build the jar again");
        }
        try (InputStream in = jar.getInputStream(entry)) {
            return new Manifest(in).getMainAttributes();
        } catch (IOException | IllegalArgumentException e) {
            throw bad("cannot be read", JarRefusal.of(e), "build the jar again");
        }
    }

    private static JarFault bad(String what, String why, String mend) {
        return new JarFault(Fault.BAD_MANIFEST, "the manifest: " + what, why, mend);
    }
}
