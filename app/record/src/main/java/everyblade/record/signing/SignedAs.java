package everyblade.record.signing;

import java.util.Arrays;
import java.util.Optional;

/** What somebody says of a record by signing it. */
public enum SignedAs {
    /** They did the inspection that the record tells of. */
    INSPECTED("inspected", "inspected by", Role.INSPECTOR),
    /** They went through the record and accept it. */
    REVIEWED("reviewed", "reviewed by", Role.REVIEWER),
    /** They went through the record and send it back. */
    RETURNED("returned", "sent back by", Role.REVIEWER);

    /** Who may not be one person, or at least not one key, in one job. */
    public enum Role {
        INSPECTOR,
        REVIEWER
    }

    private final String word;
    private final String told;
    private final Role role;

    SignedAs(String word, String told, Role role) {
        this.word = word;
        this.told = told;
        this.role = role;
    }

    /** As it is typed and kept. */
    public String word() {
        return word;
    }

    /** Before a name, such as {@code inspected by}. */
    public String told() {
        return told;
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
