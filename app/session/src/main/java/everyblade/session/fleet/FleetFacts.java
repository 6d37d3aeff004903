package everyblade.session.fleet;

import everyblade.core.coverage.Coverage;
import everyblade.fleet.DerivedTables;
import everyblade.fleet.JobFacts;
import everyblade.fleet.KeptChain;
import everyblade.fleet.Store;
import everyblade.fleet.StoreArrival;
import everyblade.fleet.StoreRefusal;
import everyblade.fleet.Workshop;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Sound;
import everyblade.session.around.ProgramVersion;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Computes of jobs what a store answers questions from.
 *
 * @param around the world outside
 * @param store in which it is kept
 */
public record FleetFacts(Surroundings around, Store store) {

    private DerivedTables tables() {
        return new DerivedTables(store, ProgramVersion.number());
    }

    /** Of a job as it stands in a folder; who only reviews leaves it to those who work at the site. */
    public void renew(Path folder, String job) throws StoreRefusal {
        try {
            renew(folder, new StoreArrival(store).find(job));
        } catch (StoreRefusal refusal) {
            if (refusal.reason() != StoreRefusal.Reason.NOT_ALLOWED) {
                throw refusal;
            }
        }
    }

    /** The same, unless that is kept already, or the store has another head. */
    private void renew(Path folder, KeptChain job) throws StoreRefusal {
        if (tables().has(job.first(), job.head())) {
            return;
        }
        OpenedJob opened = OpenedJob.read(around, folder);
        if (opened.journal().head().equals(job.head())) {
            Coverage coverage = opened.coverage();
            JobFacts facts = JobFacts.of(
                    job.head(), opened.fold(), coverage, opened.closing(coverage), Words.of(Locale.ENGLISH)::say);
            tables().keep(job.first(), facts);
        }
    }

    /** Of all jobs of which something is missing, of their lines alone: each is brought into a folder for a moment. */
    public void renewAll() throws StoreRefusal {
        try (Workshop workshop = Workshop.open(around.variable("TMPDIR").map(Path::of))) {
            for (KeptChain job : tables().behind()) {
                Path place = workshop.place(job);
                if (new StoreArrival(store).into(new JobFolder(around.disk(), place), job) instanceof Sound) {
                    renew(place, job);
                }
                workshop.clear(place);
            }
        }
    }
}
