package everyblade.picture.report.page;

import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** The headings, for readers who go by them. */
final class PdfOutline {

    private final PDDocumentOutline root = new PDDocumentOutline();
    private PDOutlineItem chapter;

    void add(Block.Heading heading, PDPage page, double y) {
        PDPageXYZDestination place = new PDPageXYZDestination();
        place.setPage(page);
        place.setTop((int) Math.ceil(y));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(heading.text());
        item.setDestination(place);
        if (heading.level() == 1 || chapter == null) {
            root.addLast(item);
            chapter = item;
        } else {
            chapter.addLast(item);
        }
    }

    /** All headings, the chapters shown at once. */
    PDDocumentOutline finished() {
        root.openNode();
        return root;
    }
}
