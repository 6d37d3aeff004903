package everyblade.cli;

import everyblade.fleet.KeptChain;
import everyblade.fleet.Store;
import everyblade.fleet.StoreArrival;
import everyblade.fleet.StoreExchange;
import everyblade.fleet.StoreRefusal;
import everyblade.fleet.StoreRetention;
import everyblade.fleet.StoreSchema;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Verification;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.fleet.FleetFacts;
import everyblade.session.job.OpenedJob;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes a store, and brings jobs there and back. */
record FleetExchange(FleetStore to) {

    private static final String JOURNAL = "journal.jsonl";
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final Duration SECOND = Duration.ofSeconds(1);

    private Surroundings around() {
        return to.around();
    }

    int init(Optional<String> member, String site, Optional<StoreSchema.Role> role) {
        try {
            int steps = StoreSchema.make(to.address(), to.secret());
            to.say(steps == 0 ? "fleet.upToDate" : "fleet.made", steps);
            if (member.isPresent()) {
                StoreSchema.admit(to.address(), to.secret(), member.get(), site, role.orElseThrow());
                to.say("fleet.admitted", member.get(), role.orElseThrow().word(), site);
            }
            return Commands.FINE;
        } catch (StoreRefusal refusal) {
            throw to.failure(refusal);
        }
    }

    int push(List<Path> jobs, Optional<String> site) {
        List<Path> folders = folders(jobs);
        return to.open(store -> each(folders, folder -> {
            StoreExchange.Done done = to.asking(() -> exchange(store).push(folder(folder), site));
            new FleetFacts(around(), store).renew(folder, done.job());
            return done;
        }));
    }

    int sync(List<Path> jobs, Optional<String> site, boolean follow) {
        if (!follow) {
            return to.open(store -> syncOnce(store, folders(jobs), site));
        }
        to.say("fleet.follows", PATIENCE.toSeconds());
        while (!Thread.currentThread().isInterrupted()) {
            try (Store store = Store.open(to.address(), to.secret())) {
                while (!Thread.currentThread().isInterrupted()) {
                    syncOnce(store, folders(jobs), site);
                    await(store);
                }
            } catch (StoreRefusal refusal) {
                around().err().println(OneLine.of(to.told(refusal)));
                around().err().flush();
                pause();
            }
        }
        return Commands.FINE;
    }

    /** What the store tells is a hint, so that we need not wait; what there is to do is found by looking. */
    private static void await(Store store) throws StoreRefusal {
        for (long second = 0; second < PATIENCE.toSeconds(); second++) {
            if (Thread.currentThread().isInterrupted()
                    || !store.awaitNews(SECOND).isEmpty()) {
                return;
            }
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PATIENCE.toMillis());
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private int syncOnce(Store store, List<Path> folders, Optional<String> site) throws StoreRefusal {
        boolean works = store.sites().stream().anyMatch(one -> !one.equals("*"));
        return each(folders, folder -> {
            StoreExchange.Done done = exchange(store)
                    .sync(
                            folder(folder),
                            site,
                            to.address().user(),
                            around().clock().instant());
            if (works) {
                new FleetFacts(around(), store).renew(folder, done.job());
            }
            return done;
        });
    }

    int pull(String job, Path place) {
        return to.open(store -> {
            StoreArrival arrival = new StoreArrival(store);
            KeptChain kept = arrival.find(job);
            if (Files.exists(around().path(place).resolve(JOURNAL))) {
                return each(
                        List.of(place),
                        folder -> exchange(store)
                                .pull(
                                        folder(folder),
                                        kept,
                                        to.address().user(),
                                        around().clock().instant()));
            }
            Verification found = to.asking(() -> arrival.into(folder(place), kept));
            if (found instanceof Sound sound) {
                to.say("fleet.broughtAs", place, FleetStore.shorter(kept.first()), sound.entries(), sound.head());
                return Commands.FINE;
            }
            throw new Failure(around().words().say("fleet.notBrought", place, to.problem(found)));
        });
    }

    /** Jobs of the year that it is are still worked on. */
    int retire(int year, Path out) {
        int now = around().clock().instant().atZone(ZoneOffset.UTC).getYear();
        if (year >= now) {
            throw new Failure("everyblade fleet retire: " + around().words().say("fleet.retire.early", year, now - 1));
        }
        return to.open(store -> {
            StoreRetention.Done done =
                    to.asking(() -> new StoreRetention(store, around().disk()).retire(year, around().path(out)));
            to.say("fleet.retired", done.jobs(), out, done.table());
            return Commands.FINE;
        });
    }

    /** Something that is done with one folder. */
    @FunctionalInterface
    private interface One {

        StoreExchange.Done with(Path folder) throws StoreRefusal;
    }

    /** One that is refused does not keep the others from it. */
    private int each(List<Path> folders, One one) throws StoreRefusal {
        int status = Commands.FINE;
        for (Path folder : folders) {
            try {
                StoreExchange.Done done = one.with(folder);
                to.say(
                        "fleet.kept",
                        folder,
                        FleetStore.shorter(done.job()),
                        done.entries(),
                        done.head(),
                        done.sent(),
                        done.brought());
                if (done.lacking() > 0) {
                    to.say("fleet.lacking", folder, done.lacking());
                }
            } catch (StoreRefusal refusal) {
                if (refusal.reason() == StoreRefusal.Reason.CUT) {
                    throw refusal;
                }
                around().err().println(OneLine.of(folder + ": " + to.told(refusal)));
                status = Commands.WRONG;
            }
        }
        return status;
    }

    private StoreExchange exchange(Store store) {
        return new StoreExchange(store, machine());
    }

    private String machine() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException nameless) {
            return around().words().say("fleet.place.nameless");
        }
    }

    private JobFolder folder(Path path) {
        return new JobFolder(around().disk(), around().path(path));
    }

    /** The job folders that are named, or lie in folders that are. */
    private List<Path> folders(List<Path> named) {
        List<Path> folders = new ArrayList<>();
        for (Path path : named) {
            OpenedJob.requireFolder(around(), path);
            if (Files.exists(around().path(path).resolve(JOURNAL))) {
                folders.add(path);
            } else {
                folders.addAll(within(path));
            }
        }
        return folders;
    }

    private List<Path> within(Path path) {
        try (Stream<Path> all = Files.list(around().path(path))) {
            List<Path> jobs = all.filter(one -> Files.exists(one.resolve(JOURNAL)))
                    .map(one -> path.resolve(one.getFileName()))
                    .sorted()
                    .toList();
            if (!jobs.isEmpty()) {
                return jobs;
            }
        } catch (IOException unreadable) {
            // said below
        }
        throw new Failure(around().words().say("fleet.noFolder", path));
    }
}
