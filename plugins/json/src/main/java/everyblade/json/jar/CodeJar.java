package everyblade.json.jar;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A jar whose models only its code can tell, as far as it shows without any of it being run.
 *
 * @param jar where it lies
 * @param sha256 of its bytes, 64 hexadecimal digits in lower case; whoever agrees to run it agrees to exactly these
 * @param plugin what it calls itself, id and version; the name of its file if it says nothing
 * @param signer who has signed every entry, by the name in the certificate, which nobody vouches for
 * @param file what the models that its code tells are called in messages
 * @param doubts that refuse nothing
 */
public record CodeJar(
        Path jar, String sha256, String plugin, Optional<String> signer, String file, List<Complaint> doubts) {
    public CodeJar {
        doubts = List.copyOf(doubts);
    }
}
