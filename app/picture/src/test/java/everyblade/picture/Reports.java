package everyblade.picture;

import everyblade.picture.report.Exhibits;
import everyblade.picture.report.ReportFacts;
import everyblade.picture.report.ReportPdf;
import everyblade.words.Words;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Reports of the jobs that are half done. */
public final class Reports {

    private static final String HEAD = "9f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e4559f3ac01d77b2e455";

    private Reports() {}

    /**
     * The report of a job on one of the engines that come with the program.
     *
     * @param more entries that the job goes on with, each a note
     */
    public static byte[] of(String engine, int more) {
        Job job = switch (engine) {
            case "larkspur-4" -> Jobs.larkspur();
            case "corncrake-12" -> Jobs.corncrake();
            case "tansy-a1" -> Jobs.tansy();
            default -> throw new AssertionError(engine);
        };
        IntStream.rangeClosed(1, more).forEach(i -> job.enter("note all as before, " + i));
        return ReportPdf.write(
                job.fold(),
                job.coverage(),
                new ReportFacts(
                        "LK4-0117",
                        "Bird strike, left engine",
                        "Test",
                        Instant.parse("2026-03-01T08:00:00Z"),
                        new TreeMap<>(),
                        Optional.empty(),
                        HEAD,
                        HEAD),
                Exhibits.NONE,
                Words.of(Locale.ENGLISH));
    }
}
