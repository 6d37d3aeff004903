/**
 * The rules that an engine model is held to, each with a number, a force and a sentence.
 *
 * <p>Takes a model as it was handed over, with what reading and checking it said: {@link everyblade.testkit.Evidence}.
 * Gives a verdict for every rule: {@link everyblade.testkit.RuleBook} has the rules, {@link everyblade.testkit.RuleTrial} the
 * inspection that two of them try, {@link everyblade.testkit.RulesReport} tells the verdicts with the date. {@link
 * everyblade.testkit.EngineModelRules} is the same as a JUnit test of one method to write.
 */
package everyblade.testkit;
