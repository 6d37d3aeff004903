/**
 * Signatures of a job: what a person says of it under their name, sealed with a key that only they have (Ed25519, RFC 8032),
 * in files beside the journal. Takes bytes and gives records; knows nothing of folders, screens and clocks.
 */
package everyblade.record.signing;
