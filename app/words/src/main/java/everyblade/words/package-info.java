/**
 * Every sentence of the program, in the language of whoever reads it.
 *
 * <p>Takes facts ({@link everyblade.fact.Fact}), or keys and what goes into their texts. Gives the texts, from the bundles
 * beside this package's resources: one file a language, each text under one key, in the syntax that {@code Phrase} tells.
 */
package everyblade.words;
