package everyblade.testkit;

/**
 * One thing that is asked of an engine model.
 *
 * @param number chapter and place in it, such as {@code 2.1}; keeps its meaning from version to version
 * @param force how binding it is
 * @param sentence what is asked
 */
public record ModelRule(String number, Force force, String sentence) {}
