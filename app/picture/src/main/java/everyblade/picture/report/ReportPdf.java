package everyblade.picture.report;

import everyblade.core.coverage.Coverage;
import everyblade.core.finding.Limits;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Margins;
import everyblade.picture.report.page.Pages;
import everyblade.words.Words;
import java.math.BigInteger;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The report of a job as a PDF, or as HTML: the same record always gives the same bytes, whatever the clock and the locale.
 *
 * <p>As long as anything is open, the word INCOMPLETE stands on every page.
 */
public final class ReportPdf {

    private static final int HEXADECIMAL = 16;
    private static final int SEED_DIGITS = 15;

    private ReportPdf() {}

    /**
     * Writes the report.
     *
     * @param fold of the whole journal
     * @param coverage of that fold's situation
     * @param facts of the same journal
     * @param exhibits that it shows
     * @param words in which it is told
     */
    public static byte[] write(Fold fold, Coverage coverage, ReportFacts facts, Exhibits exhibits, Words words) {
        return pages(fold, coverage, facts, exhibits, words).pdf();
    }

    /** The same before it is written in any format. */
    public static Pages pages(Fold fold, Coverage coverage, ReportFacts facts, Exhibits exhibits, Words words) {
        Reported job = Reported.of(fold, coverage, facts, exhibits, words);
        String engine = job.say("engine.of", job.model().name(), facts.serial());
        Margins margins = new Margins(
                job.say("head", engine),
                job.closing().any() ? job.say("incomplete") : "",
                notices(job),
                job.say("record", facts.head()),
                words);
        return new Pages(
                job.say("title", engine),
                language(words),
                dated(job),
                seed(facts.head()),
                margins,
                blocks(job, margins));
    }

    /** What the engine model and the limits say of themselves, such as that they are invented. */
    static String notices(Reported job) {
        return Stream.concat(
                        job.model().notice().stream(),
                        job
                                .exhibits()
                                .limits()
                                .flatMap(Limits::notice)
                                .map(notice -> job.say("limits.notice", notice))
                                .stream())
                .collect(Collectors.joining(" "));
    }

    private static List<Block> blocks(Reported job, Margins margins) {
        List<Block> blocks = new ArrayList<>(FirstPage.of(job, margins));
        blocks.add(new Block.NewPage());
        blocks.addAll(FindingPages.of(job));
        blocks.addAll(Since.of(job));
        blocks.addAll(Maps.rows(job));
        blocks.addAll(ShareTables.of(job));
        blocks.addAll(Maps.maps(job));
        blocks.addAll(Maps.charts(job));
        blocks.addAll(Count.of(job));
        blocks.addAll(Closing.of(job));
        blocks.addAll(Remaining.gaps(job));
        blocks.addAll(Remaining.questions(job));
        blocks.addAll(Reviewed.of(job));
        blocks.addAll(Remaining.notDone(job));
        blocks.addAll(Eyesight.of(job));
        blocks.addAll(Things.of(job));
        blocks.addAll(Cautions.of(job));
        blocks.addAll(Appendix.check(job));
        blocks.addAll(Appendix.log(job));
        return blocks;
    }

    /** The language of a document, as RFC 5646 writes it; English as it is written in Europe, for paper and dates. */
    static String language(Words words) {
        return words.locale().equals(Locale.ENGLISH) ? "en-GB" : words.locale().toLanguageTag();
    }

    /** The report bears the time of the last entry. */
    static Instant dated(Reported job) {
        return job.fold().entries().stream()
                .map(Logged::at)
                .max(Comparator.naturalOrder())
                .orElse(job.facts().at());
    }

    static long seed(String head) {
        String digits = head.substring(0, Math.min(SEED_DIGITS, head.length()));
        return new BigInteger(digits, HEXADECIMAL).longValueExact();
    }
}
