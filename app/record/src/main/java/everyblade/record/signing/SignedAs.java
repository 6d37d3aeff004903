package everyblade.record.signing;

import everyblade.fact.Fact;
import java.util.Arrays;
import java.util.Optional;

/** What somebody says of a record by signing it; as a fact it is what stands before their name. */
public enum SignedAs implements Fact {
    /** They did the inspection that the record tells of. */
    INSPECTED("inspected", Role.INSPECTOR),
    /** They went through the record and accept it. */
    REVIEWED("reviewed", Role.REVIEWER),
    /** They went through the record and send it back. */
    RETURNED("returned", Role.REVIEWER);

    /** Who may not be one person, or at least not one key, in one job. */
    public enum Role {
        INSPECTOR,
        REVIEWER
    }

    private final String word;
    private final Role role;

    SignedAs(String word, Role role) {
        this.word = word;
        this.role = role;
    }

    /** As it is typed and kept. */
    public String word() {
        return word;
    }

    public Role role() {
        return role;
    }

    /** What a word says; {@code sent back} is understood for {@code returned}. */
    public static Optional<SignedAs> of(String word) {
        String known = word.equals("sent back") ? RETURNED.word : word;
        return Arrays.stream(values()).filter(as -> as.word.equals(known)).findFirst();
    }
}
