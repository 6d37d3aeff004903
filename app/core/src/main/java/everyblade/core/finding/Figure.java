package everyblade.core.finding;

/**
 * One thing that was held against a limit, told in full.
 *
 * @param what such as {@code length} or {@code findings on this blade}
 * @param value as it is, with its uncertainty
 * @param limit what the rule allows
 * @param margin how far from the limit, and how near it may come; empty where that makes no sense
 * @param verdict of this alone
 */
public record Figure(String what, String value, String limit, String margin, Verdict verdict) {}
