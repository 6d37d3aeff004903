/**
 * Letters beyond those of the pictures' own font: which fonts of this machine have them ({@link
 * everyblade.picture.letter.FontsHere}), how Arabic letters join ({@link
 * everyblade.picture.letter.ArabicForms}), and in which order a line of both
 * directions stands ({@link everyblade.picture.letter.LineOrder}).
 */
package everyblade.picture.letter;
