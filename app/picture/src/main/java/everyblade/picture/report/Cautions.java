package everyblade.picture.report;

import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.PageWords;
import java.util.ArrayList;
import java.util.List;

/** The chapter of cautions: common practice, in plain words; the manual in force goes before all of it. */
final class Cautions {

    /** When, and how many there are then. */
    private record When(String key, int cautions) {}

    private static final List<When> ALL = List.of(
            new When("before", 4),
            new When("heat", 1),
            new When("turning", 2),
            new When("scope", 2),
            new When("end", 2));

    private Cautions() {}

    static List<Block> of(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("cautions")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("cautions.told"))));
        for (When when : ALL) {
            String key = "cautions." + when.key();
            blocks.add(new Block.Paragraph(PageWords.strong(job.say(key))));
            for (int i = 1; i <= when.cautions(); i++) {
                blocks.add(new Block.Item(PageWords.of(job.say(key + "." + i))));
            }
        }
        return blocks;
    }
}
