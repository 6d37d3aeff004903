package everyblade.fleet;

import everyblade.record.JobFolder.NotedHead;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Heads of jobs as they were noted outside the store. Who owns a server can change and seal again whatever is in it; that
 * shows only by a head that was noted where they do not come.
 *
 * @param heads by the hash of the job's first line
 */
public record NotedHeads(Map<String, NotedHead> heads) {

    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64}) ([0-9]{1,7}) ([0-9a-f]{64})");

    /** None was noted. */
    public static final NotedHeads NONE = new NotedHeads(Map.of());

    public NotedHeads {
        heads = new LinkedHashMap<>(heads);
    }

    /** That of a job. */
    public Optional<NotedHead> of(KeptChain job) {
        return Optional.ofNullable(heads.get(job.first()));
    }

    /** The jobs that were noted and are not among these. */
    public List<String> without(List<KeptChain> jobs) {
        return heads.keySet().stream()
                .filter(noted -> jobs.stream().noneMatch(job -> job.first().equals(noted)))
                .toList();
    }

    /** As it stands in a file: a line for each job with the hash of its first line, the number of entries, and the head. */
    public static String text(List<KeptChain> jobs) {
        StringBuilder text = new StringBuilder();
        jobs.forEach(job -> text.append(job.first())
                .append(' ')
                .append(job.last())
                .append(' ')
                .append(job.head())
                .append('\n'));
        return text.toString();
    }

    /**
     * Reads such a file.
     *
     * @throws StoreRefusal if a line is none of these; tells it
     */
    public static NotedHeads read(List<String> lines) throws StoreRefusal {
        Map<String, NotedHead> heads = new LinkedHashMap<>();
        for (String line : lines) {
            Matcher matcher = LINE.matcher(line);
            if (!matcher.matches()) {
                throw new StoreRefusal(
                        StoreRefusal.Reason.UNSOUND, new StoreFlaw.NoHead(line.replaceAll("\\p{Cntrl}", "?")));
            }
            heads.put(
                    matcher.group(1),
                    new NotedHead(matcher.group(3), OptionalInt.of(Integer.parseInt(matcher.group(2)))));
        }
        return new NotedHeads(heads);
    }
}
