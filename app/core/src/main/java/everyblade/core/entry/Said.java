package everyblade.core.entry;

/**
 * A value as it was said, and where in the line.
 *
 * @param value what was said
 * @param column of its first character, from 1
 */
public record Said<T>(T value, int column) {}
