/**
 * Pictures as files: what they are, when they were taken, and small copies of them to show.
 *
 * <p>Takes bytes from anywhere; whatever they are, the answer is a value. Nothing is decoded whole that may be larger
 * than the machine bears: dimensions are read from the headers first.
 */
package everyblade.record.photo;
