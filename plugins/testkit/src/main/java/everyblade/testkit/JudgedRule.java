package everyblade.testkit;

/** A rule and what became of it. */
public record JudgedRule(ModelRule rule, RuleVerdict verdict) {

    /** Whether the model must not be used for it. */
    public boolean refuses() {
        return rule.force() == Force.REQUIRED && verdict instanceof RuleVerdict.Broken;
    }
}
