package everyblade.record.signing;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a signature covers.
 *
 * @param as what the signer says of the record
 * @param signer who they are
 * @param at when, by the clock of the machine on which it was signed; UTC
 * @param journal hash of the journal's first line, which tells the job
 * @param entries how many entries the journal had
 * @param head hash of its last line, 64 hexadecimal digits
 * @param program that showed the signer what they signed: its version, and what tells its builds apart
 * @param figures what it showed, in words, each by its name, in the order in which they are told
 * @param because why, if they say so
 * @param before SHA-256 of the signature before this one, if there was one
 */
public record Statement(
        SignedAs as,
        Signer signer,
        Instant at,
        String journal,
        int entries,
        String head,
        String program,
        Map<String, String> figures,
        Optional<String> because,
        Optional<String> before) {

    public Statement {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }
}
