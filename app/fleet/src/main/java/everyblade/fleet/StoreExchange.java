package everyblade.fleet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.fleet.StoreRefusal.Reason;
import everyblade.record.JobFolder;
import everyblade.record.SealedLine;
import everyblade.record.SentJob;
import java.io.IOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Brings a job in a folder and the store to the same, in either direction. Wherever it is interrupted, the next time goes on
 * from there: nothing is lost and nothing kept twice. What was gone on with in two ways is left as it is, and refused.
 */
public final class StoreExchange {

    private static final String JOURNAL = "journal";
    private static final String REVIEW = "review";

    /** Others may add to a chain while we look at it; more often than this in a row nobody does. */
    private static final int TRIES = 5;

    private final Store store;
    private final Chains chains;
    private final Contents contents;
    private final String place;

    /**
     * Over a connection.
     *
     * @param place where the folders are, in words for people at other sites, such as the name of the machine
     */
    public StoreExchange(Store store, String place) {
        this.store = store;
        this.chains = new Chains(store);
        this.contents = new Contents(store);
        this.place = place;
    }

    /**
     * What came of it.
     *
     * @param job hash of the job's first line
     * @param entries as the store has it now
     * @param head as the store has it now
     * @param sent how many lines went to the store
     * @param brought how many lines came from the store
     * @param lacking how many entries the store has that the folder has not
     */
    public record Done(String job, int entries, String head, int sent, int brought, int lacking) {}

    /**
     * Sends to the store what it lacks.
     *
     * @param site at which a new job is to be kept; needed only by who works at several
     */
    public Done push(JobFolder folder, Optional<String> site) throws StoreRefusal {
        return exchange(folder, site, true, Optional.empty());
    }

    /** Brings to a folder what it lacks of this job; one that is not there yet is made by {@link StoreArrival}. */
    public Done pull(JobFolder folder, KeptChain wanted, String by, Instant now) throws StoreRefusal {
        String there = read(folder).journal().get(0).hash();
        if (!there.equals(wanted.first())) {
            throw new StoreRefusal(Reason.OTHER_JOB, there, wanted.first());
        }
        return exchange(folder, Optional.empty(), false, Optional.of(new Bringing(store, folder, by, now)));
    }

    /** Both. */
    public Done sync(JobFolder folder, Optional<String> site, String by, Instant now) throws StoreRefusal {
        return exchange(folder, site, true, Optional.of(new Bringing(store, folder, by, now)));
    }

    private Done exchange(JobFolder folder, Optional<String> site, boolean send, Optional<Bringing> bring)
            throws StoreRefusal {
        SentJob here = read(folder);
        String job = here.journal().get(0).hash();
        Optional<KeptChain> known = chains.find(job);
        Instant retired = known.isEmpty() ? null : chains.retired().get(job);
        if (retired != null) {
            throw new StoreRefusal(Reason.RETIRED, job, retired.truncatedTo(ChronoUnit.SECONDS));
        }
        if (known.isEmpty() && !send) {
            throw new StoreRefusal(Reason.NO_JOB, job);
        }
        Instant begun = begun(here.journal().get(0));
        if (known.isEmpty()) {
            chains.open(job, JOURNAL, job, store.site(site), begun);
        }
        boolean reviewed = !here.review().isEmpty();
        KeptChain journal = chains.find(job).orElseThrow();
        ChainDifference course = course(here.journal(), journal);
        // Before anything else of it: a job that was gone on with in two ways is left as it is.
        refuseParted(folder, journal, here.journal(), course, Reason.PARTED);
        Map<String, String> files = contents.of(job);
        if (send && !(course instanceof ChainDifference.Bring)) {
            sendFiles(folder, here, job, files);
        }
        int sent = send ? send(folder, journal, here.journal(), Reason.PARTED) : 0;
        int brought = 0;
        int entries = 0;
        if (bring.isPresent()) {
            brought += bring.get().files(here, contents.of(job));
            entries = bring.get()
                    .journal(journal, course(here.journal(), chains.find(job).orElseThrow()));
            brought += entries;
        }
        if (send && reviewed) {
            sent += sendReview(folder, here, job, journal, begun);
        }
        if (bring.isPresent()) {
            brought += bringReview(bring.get(), here, job);
        }
        KeptChain now = chains.find(job).orElseThrow();
        int lacking = Math.max(0, now.last() - (here.journal().size() - 1 + entries));
        return new Done(job, now.last(), now.head(), sent, brought, lacking);
    }

    /** What the folder holds, as it may be told of. */
    static SentJob read(JobFolder folder) throws StoreRefusal {
        JobFolder.Sending sending = folder.send();
        if (sending instanceof JobFolder.Ready ready) {
            return ready.sent();
        }
        throw new StoreRefusal(Reason.UNSOUND, ((JobFolder.Refused) sending).problem());
    }

    private ChainDifference course(List<SealedLine> here, KeptChain there) throws StoreRefusal {
        return ChainDifference.of(here, there.last(), n -> chains.hash(there.first(), n));
    }

    private void sendFiles(JobFolder folder, SentJob here, String job, Map<String, String> there) throws StoreRefusal {
        for (String name : here.files()) {
            if (!there.containsKey(name) || name.startsWith("signatures/")) {
                try {
                    contents.keep(job, name, folder.bytes(name));
                } catch (IOException failure) {
                    throw new StoreRefusal(Reason.UNSOUND, name + ": " + StoreRefusal.said(failure));
                }
            }
        }
    }

    /** Sends lines that the store lacks; gives how many. */
    private int send(JobFolder folder, KeptChain chain, List<SealedLine> here, Reason parted) throws StoreRefusal {
        for (int attempt = 1; attempt <= TRIES; attempt++) {
            KeptChain there = chains.find(chain.first()).orElseThrow();
            ChainDifference course = course(here, there);
            refuseParted(folder, there, here, course, parted);
            if (!(course instanceof ChainDifference.Send send)) {
                return 0;
            }
            List<SealedLine> lines = here.subList(send.from(), here.size());
            if (chains.add(there, lines)) {
                return lines.size();
            }
        }
        throw new StoreRefusal(Reason.REFUSED, new StoreFlaw.Crowded());
    }

    private int sendReview(JobFolder folder, SentJob here, String job, KeptChain journal, Instant begun)
            throws StoreRefusal {
        String first = here.review().get(0).hash();
        if (chains.find(first).isEmpty()) {
            chains.open(first, REVIEW, job, journal.site(), begun);
        }
        return send(folder, chains.find(first).orElseThrow(), here.review(), Reason.REVIEW_PARTED);
    }

    private int bringReview(Bringing bringing, SentJob here, String job) throws StoreRefusal {
        Optional<KeptChain> review = chains.review(job);
        if (review.isEmpty()) {
            return 0;
        }
        ChainDifference course = course(here.review(), review.get());
        refuseParted(bringing.folder(), review.get(), here.review(), course, Reason.REVIEW_PARTED);
        return bringing.review(review.get(), course, job);
    }

    private void refuseParted(
            JobFolder folder, KeptChain there, List<SealedLine> here, ChainDifference course, Reason reason)
            throws StoreRefusal {
        if (course instanceof ChainDifference.Parted parted) {
            JsonNode said = json(here.get(parted.at()));
            chains.parted(
                    there.first(),
                    parted.at(),
                    here.get(here.size() - 1),
                    cut(said.path("by").asText(""), 1000),
                    cut(said.path("at").asText(""), 40),
                    cut(place + ", " + folder.path(), 1000));
            List<String> facts = new ArrayList<>();
            facts.add(Integer.toString(parted.at()));
            facts.addAll(List.of(chains.said(there, parted.at())));
            throw new StoreRefusal(reason, facts.toArray());
        }
    }

    private static String cut(String text, int longest) {
        return text.length() > longest ? text.substring(0, longest) : text;
    }

    private static Instant begun(SealedLine first) {
        return Instant.parse(json(first).path("at").asText());
    }

    private static JsonNode json(SealedLine line) {
        try {
            return new ObjectMapper().readTree(line.bytes());
        } catch (IOException impossible) {
            throw new IllegalStateException("this line was just read and understood", impossible);
        }
    }
}
