package everyblade.testkit;

/** A rule and what became of it. */
public record Judged(Rule rule, Verdict verdict) {

    /** Whether the model must not be used for it. */
    public boolean refuses() {
        return rule.force() == Force.REQUIRED && verdict instanceof Verdict.Broken;
    }
}
