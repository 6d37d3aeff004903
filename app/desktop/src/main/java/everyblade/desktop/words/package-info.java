/**
 * The window's texts in the person's language.
 *
 * <p>Takes a key and what goes into the text. Gives the text, from the bundles beside this package's resources.
 */
package everyblade.desktop.words;
