package everyblade.json.jar;

/**
 * What is wrong with a jar, on one line.
 *
 * @param what is wrong
 * @param why it is, or why that is a problem
 * @param mend what to do
 */
public record Complaint(Fault fault, String what, String why, String mend) {}
