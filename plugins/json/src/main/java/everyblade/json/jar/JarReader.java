package everyblade.json.jar;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipFile;

/**
 * Opens jars, and runs nothing in them: what is data is handed over as it stands, what is code goes through the door.
 *
 * @param data name of the entry that makes a jar a data-only plugin
 * @param door what becomes of a jar of code
 */
public record JarReader(String data, CodeDoor door) {

    /** What the jar hands over, in its own order; at least one thing. */
    public List<Handed> open(Path jar) {
        try {
            Contents.requireSize(jar);
            CodeJar code;
            try (ZipFile zip = new ZipFile(jar.toFile())) {
                Contents.requireFit(zip);
                Optional<byte[]> text = Contents.bytes(zip, data);
                if (text.isPresent()) {
                    return List.of(new Handed.Model(jar + "!/" + data, text.get(), List.of()));
                }
                code = code(jar, zip);
            }
            return door.open(code);
        } catch (JarFault fault) {
            return List.of(new Handed.Failed(fault.complaint()));
        } catch (IOException | IllegalArgumentException e) {
            return List.of(new Handed.Failed(new Complaint(
                    Fault.BAD_JAR,
                    "this is no readable jar",
                    JarRefusal.of(e),
                    "copy it anew, or take it out of the folder")));
        }
    }

    private CodeJar code(Path jar, ZipFile zip) throws IOException, JarFault {
        Optional<Metadata> metadata = Metadata.of(zip);
        if (metadata.isPresent()) {
            metadata.get().requireOurs();
        }
        if (zip.getEntry(Sources.SERVICE) == null) {
            throw new JarFault(
                    Fault.NO_MODEL,
                    "the jar holds neither " + data + " nor a source of models",
                    "there is nothing to load",
                    "put " + data + " at its root, or name a class in " + Sources.SERVICE);
        }
        String name = metadata.map(Metadata::toString).orElse(JarRefusal.line(String.valueOf(jar.getFileName())));
        return new CodeJar(
                jar,
                Sha256.of(jar),
                name,
                JarSigner.of(jar, zip),
                jar + " as " + data,
                metadata.isPresent() ? List.of() : List.of(Metadata.missing(name)));
    }
}
