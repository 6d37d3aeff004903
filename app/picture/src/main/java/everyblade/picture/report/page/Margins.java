package everyblade.picture.report.page;

import everyblade.words.Words;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * What is said at the head and the foot of every page.
 *
 * @param head first line of the head, left
 * @param warning what must not be overlooked, right in the head; may be empty
 * @param notice under the head, as many lines as it needs; may be empty
 * @param foot left in the foot, before the number of the page
 * @param words in which pages are numbered
 */
public record Margins(String head, String warning, String notice, String foot, Words words) {

    static final PDRectangle SHEET = PDRectangle.A4;
    static final double LEFT = 48;
    static final double RIGHT = 48;
    /** From the sheet's upper edge to the first block, without the notice. */
    static final double TOP = 56;
    /** From the sheet's lower edge to the last block. */
    static final double BOTTOM = 48;

    static final double WIDTH = SHEET.getWidth() - LEFT - RIGHT;
}
