/**
 * What the program has to say, as data, before anybody chose a word for it.
 *
 * <p>Whatever is computed is told as a {@link everyblade.fact.Fact}: a record whose components are what the sentence is
 * about, or a constant of an enum. The module of words makes the sentence, in the language of whoever reads it.
 */
package everyblade.fact;
