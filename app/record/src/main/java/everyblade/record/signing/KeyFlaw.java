package everyblade.record.signing;

import everyblade.fact.Fact;

/** Why a key file gives no key to sign with. */
enum KeyFlaw implements Fact {
    NONE_IN_IT,
    OTHER_PASSPHRASE,
    NO_KEY_FILE,
    NOT_READ
}
