package everyblade.testkit;

import everyblade.spi.EngineModel;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What became of every rule on a day, of a model that can be told from every other by its hash.
 *
 * @param at when it was judged
 * @param origin what was judged, as people know it
 * @param model empty if it was refused
 * @param judged every rule, in order
 */
public record RulesReport(Instant at, String origin, Optional<EngineModel> model, List<JudgedRule> judged) {

    public RulesReport {
        at = at.truncatedTo(ChronoUnit.SECONDS);
        judged = List.copyOf(judged);
    }

    /** Whether the model must not be used. */
    public boolean refuses() {
        return judged.stream().anyMatch(JudgedRule::refuses);
    }

    /** SHA-256 of the {@code engine.json} that the model is written as, in hexadecimal; empty without a model. */
    public Optional<String> hash() {
        return model.map(Evidence::text).map(RulesReport::sha256);
    }

    /** For people. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Rules for engine models, judged " + at);
        lines.add(origin
                + model.map(one -> ": " + one.name() + " (" + one.id() + "), SHA-256 of its engine.json "
                                + hash().orElseThrow())
                        .orElse(": refused"));
        for (JudgedRule one : judged) {
            ModelRule rule = one.rule();
            lines.add(String.format(
                    Locale.ROOT,
                    "%-4s %-8s  %-9s  %s",
                    rule.number(),
                    rule.force().word(),
                    one.verdict().word(),
                    rule.sentence()));
            one.verdict().lines().forEach(line -> lines.add("       " + line));
        }
        lines.add(kept(Force.REQUIRED) + "; " + kept(Force.OPTIONAL) + "; " + of(Force.UNTESTED)
                + " are for a person to look at");
        return lines;
    }

    private String kept(Force force) {
        long kept = judged.stream()
                .filter(one -> one.rule().force() == force && one.verdict() instanceof RuleVerdict.Kept)
                .count();
        return force.word() + ": " + kept + " of " + of(force) + " kept";
    }

    private long of(Force force) {
        return judged.stream().filter(one -> one.rule().force() == force).count();
    }

    private static String sha256(byte[] text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
