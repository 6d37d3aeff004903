package everyblade.record.signing;

import java.util.Optional;

/**
 * Who signs, as they say of themselves.
 *
 * @param name of the person
 * @param licence kind of licence or certificate, if they hold one
 * @param number of it
 */
public record Signer(String name, Optional<String> licence, Optional<String> number) {

    /** Kind and number, as far as they are stated. */
    public Optional<String> licenceAndNumber() {
        String both = (licence.orElse("") + " " + number.orElse("")).strip();
        return both.isEmpty() ? Optional.empty() : Optional.of(both);
    }
}
