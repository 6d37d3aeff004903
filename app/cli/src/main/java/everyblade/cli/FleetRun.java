package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.fleet.DerivedTables;
import everyblade.fleet.FleetAnswer;
import everyblade.fleet.FleetQuestion;
import everyblade.fleet.JobFacts;
import everyblade.fleet.KeptChain;
import everyblade.fleet.NotedHeads;
import everyblade.fleet.Store;
import everyblade.fleet.StoreAddress;
import everyblade.fleet.StoreArrival;
import everyblade.fleet.StoreCheck;
import everyblade.fleet.StoreExchange;
import everyblade.fleet.StoreExport;
import everyblade.fleet.StorePartings;
import everyblade.fleet.StoreRefusal;
import everyblade.fleet.StoreSchema;
import everyblade.fleet.StoreSecret;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Verification;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Does what the commands under {@code fleet} say, over one connection. */
record FleetRun(Surroundings around, StoreAddress address, StoreSecret secret) {

    private static final String STORE = "EVERYBLADE_STORE";
    private static final String JOURNAL = "journal.jsonl";
    private static final int SHORT = 12;
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    /** The store that was named, or that the environment names. */
    static FleetRun at(Surroundings around, Optional<String> store, Optional<Path> passwordFile) {
        String named = store.or(() -> around.variable(STORE))
                .orElseThrow(() -> new Failure("everyblade fleet: " + around.words().say("fleet.noStore")));
        try {
            return new FleetRun(
                    around,
                    StoreAddress.of(named),
                    new StoreSecret(around.environment(), passwordFile.map(around::path)));
        } catch (StoreRefusal refusal) {
            throw failure(around, "everyblade fleet", refusal);
        }
    }

    /** Something that is done with the store. */
    @FunctionalInterface
    private interface Work {

        int with(Store store) throws StoreRefusal;
    }

    private int inStore(Work work) {
        try (Store store = Store.open(address, secret)) {
            return work.with(store);
        } catch (StoreRefusal refusal) {
            throw failure(around, "everyblade fleet", refusal);
        }
    }

    private static Failure failure(Surroundings around, String where, StoreRefusal refusal) {
        return new Failure(where + ": " + told(around, refusal));
    }

    private static String told(Surroundings around, StoreRefusal refusal) {
        return around.words()
                .say("fleet.refused." + refusal.reason(), refusal.facts().toArray());
    }

    private void say(String key, Object... parts) {
        around.out().println(OneLine.of(around.words().say(key, parts)));
        around.out().flush();
    }

    int init(Optional<String> member, String site, Optional<StoreSchema.Role> role) {
        try {
            int steps = StoreSchema.make(address, secret);
            say(steps == 0 ? "fleet.upToDate" : "fleet.made", steps);
            if (member.isPresent()) {
                StoreSchema.admit(address, secret, member.get(), site, role.orElseThrow());
                say("fleet.admitted", member.get(), role.orElseThrow().word(), site);
            }
            return Commands.FINE;
        } catch (StoreRefusal refusal) {
            throw failure(around, "everyblade fleet init", refusal);
        }
    }

    int push(List<Path> jobs, Optional<String> site) {
        List<Path> folders = folders(jobs);
        return inStore(store -> each(folders, folder -> {
            StoreExchange.Done done = exchange(store).push(folder(folder), site);
            renew(store, folder, done.job());
            return done;
        }));
    }

    int sync(List<Path> jobs, Optional<String> site, boolean follow) {
        if (follow) {
            say("fleet.follows", PATIENCE.toSeconds());
        }
        int status = syncOnce(jobs, site, follow);
        while (follow && !Thread.currentThread().isInterrupted()) {
            status = syncOnce(jobs, site, true);
        }
        return status;
    }

    /** What the store tells is a hint, so that we need not wait; what is there is found by looking. */
    private int syncOnce(List<Path> jobs, Optional<String> site, boolean wait) {
        List<Path> folders = folders(jobs);
        return inStore(store -> {
            int status = each(folders, folder -> {
                StoreExchange.Done done =
                        exchange(store).sync(folder(folder), site, address.user(), around.clock().instant());
                if (store.sites().stream().anyMatch(one -> !one.equals("*"))) {
                    renew(store, folder, done.job());
                }
                return done;
            });
            if (wait) {
                store.awaitNews(PATIENCE);
            }
            return status;
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
                say("fleet.kept", folder, shorter(done.job()), done.entries(), done.head(), done.sent(), done.brought());
            } catch (StoreRefusal refusal) {
                if (refusal.reason() == StoreRefusal.Reason.CUT) {
                    throw refusal;
                }
                around.err().println(OneLine.of(folder + ": " + told(around, refusal)));
                status = Commands.WRONG;
            }
        }
        return status;
    }

    private static String shorter(String job) {
        return job.substring(0, SHORT);
    }

    private StoreExchange exchange(Store store) {
        return new StoreExchange(store, machine());
    }

    private static String machine() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException nameless) {
            return "a machine without a name";
        }
    }

    private JobFolder folder(Path path) {
        return new JobFolder(around.disk(), around.path(path));
    }

    /** The job folders that are named, or lie in folders that are. */
    private List<Path> folders(List<Path> named) {
        List<Path> folders = new ArrayList<>();
        for (Path path : named) {
            OpenedJob.requireFolder(around, path);
            if (Files.exists(around.path(path).resolve(JOURNAL))) {
                folders.add(path);
                continue;
            }
            try (Stream<Path> within = Files.list(around.path(path))) {
                List<Path> jobs = within.filter(one -> Files.exists(one.resolve(JOURNAL)))
                        .map(one -> path.resolve(one.getFileName()))
                        .sorted()
                        .toList();
                folders.addAll(jobs);
                if (jobs.isEmpty()) {
                    throw noFolder(path);
                }
            } catch (IOException unreadable) {
                throw noFolder(path);
            }
        }
        return folders;
    }

    private Failure noFolder(Path path) {
        return new Failure(around.words().say("fleet.noFolder", path));
    }

    /** Computes what the store lacks of a job as it stands in this folder, and keeps it there. */
    private void renew(Store store, Path folder, String job) throws StoreRefusal {
        DerivedTables tables = new DerivedTables(store, Everyblade.Version.number());
        KeptChain kept = new StoreArrival(store).find(job);
        if (tables.has(job, kept.head())) {
            return;
        }
        OpenedJob opened = OpenedJob.read(around, folder);
        if (opened.journal().head().equals(kept.head())) {
            Coverage coverage = opened.coverage();
            try {
                tables.keep(job, JobFacts.of(kept.head(), opened.fold(), coverage, opened.closing(coverage)));
            } catch (StoreRefusal refusal) {
                // Who only reviews or reads leaves it to those who work at the site.
                if (refusal.reason() != StoreRefusal.Reason.NOT_ALLOWED) {
                    throw refusal;
                }
            }
        }
    }

    int pull(String job, Path place) {
        return inStore(store -> {
            StoreArrival arrival = new StoreArrival(store);
            KeptChain kept = arrival.find(job);
            JobFolder folder = folder(place);
            if (Files.exists(around.path(place).resolve(JOURNAL))) {
                return each(List.of(place), one -> exchange(store)
                        .pull(folder, kept.first(), address.user(), around.clock().instant()));
            }
            Verification found = arrival.into(folder, kept);
            if (found instanceof Sound sound) {
                say("fleet.broughtAs", place, shorter(kept.first()), sound.entries(), sound.head());
                return Commands.FINE;
            }
            throw new Failure(around.words().say("fleet.notBrought", place, problem(found)));
        });
    }

    private static String problem(Verification found) {
        return found instanceof Broken broken
                ? broken.problem().message()
                : ((JobFolder.Torn) found).problem().message();
    }

    int list(FleetTable.Form form) {
        return inStore(store -> {
            print("jobs", FleetAnswer.jobs(store), form);
            for (StorePartings.Parting parting : new StorePartings(store).all()) {
                around.err()
                        .println(OneLine.of(around.words()
                                .say(
                                        "fleet.parted",
                                        shorter(parting.chain()),
                                        parting.at(),
                                        parting.by(),
                                        parting.when(),
                                        parting.toldBy(),
                                        parting.place())));
            }
            return Commands.FINE;
        });
    }

    private void print(String name, FleetAnswer answer, FleetTable.Form form) {
        around.out().print(FleetTable.of(name, answer, form, around.words().say("fleet.nothing")));
    }

    int verify(List<String> asked, Optional<Path> heads, Optional<Path> note) {
        NotedHeads noted = heads.map(this::noted).orElse(NotedHeads.NONE);
        Optional<NewFile> file = note.map(named -> NewFile.at(around, "--note", named));
        return inStore(store -> {
            StoreArrival arrival = new StoreArrival(store);
            List<KeptChain> jobs = new ArrayList<>();
            if (asked.isEmpty()) {
                jobs.addAll(arrival.jobs());
            }
            for (String one : asked) {
                jobs.add(arrival.find(one));
            }
            int wrong = verified(store, jobs, noted);
            if (asked.isEmpty()) {
                for (String missing : noted.without(jobs)) {
                    around.out().println(OneLine.of(problem(StoreCheck.missing(missing))));
                    wrong++;
                }
            }
            if (wrong > 0) {
                say("fleet.jobsNotSound", wrong, jobs.size());
                return Commands.NOT_COMPLETE;
            }
            say("fleet.jobsSound", jobs.size());
            if (file.isPresent()) {
                file.get().write(NotedHeads.text(jobs).getBytes(StandardCharsets.US_ASCII));
                say("fleet.headsNoted", jobs.size(), note.orElseThrow());
            }
            return Commands.FINE;
        });
    }

    private int verified(Store store, List<KeptChain> jobs, NotedHeads noted) throws StoreRefusal {
        int wrong = 0;
        Path workshop = workshop();
        StoreCheck check = new StoreCheck(store, around.disk(), workshop);
        try {
            for (KeptChain job : jobs) {
                Verification found = check.verify(job, noted.of(job.first()));
                if (found instanceof Sound sound) {
                    say("fleet.sound", shorter(job.first()), sound.entries(), sound.head());
                } else {
                    around.out().println(OneLine.of(shorter(job.first()) + ": " + problem(found)));
                    wrong++;
                }
            }
            return wrong;
        } finally {
            remove(workshop);
        }
    }

    private NotedHeads noted(Path file) {
        try {
            return NotedHeads.read(Files.readAllLines(around.path(file), StandardCharsets.US_ASCII));
        } catch (IOException unreadable) {
            throw new Failure("--heads " + around.words().say("fleet.noHeads", file));
        } catch (StoreRefusal refusal) {
            throw failure(around, "--heads " + file, refusal);
        }
    }

    int ask(String word, FleetTable.Form form, boolean renew) {
        FleetQuestion question = FleetQuestion.of(word).orElseThrow(() -> new Failure("everyblade fleet ask: "
                + around.words()
                        .say(
                                "fleet.noQuestion",
                                word,
                                Arrays.stream(FleetQuestion.values())
                                        .map(FleetQuestion::word)
                                        .collect(Collectors.joining(", ")))));
        return inStore(store -> {
            if (renew) {
                renewAll(store);
            }
            print(question.word(), FleetAnswer.of(store, question), form);
            int behind = DerivedTables.behind(store).size();
            if (behind > 0) {
                around.err().println(around.words().say("fleet.behind", behind));
            }
            return Commands.FINE;
        });
    }

    /** What is missing is computed of the lines alone, each job brought into a folder for a moment. */
    private void renewAll(Store store) throws StoreRefusal {
        Path workshop = workshop();
        try {
            for (KeptChain job : DerivedTables.behind(store)) {
                Path place = workshop.resolve(job.first());
                if (new StoreArrival(store).into(new JobFolder(around.disk(), place), job) instanceof Sound) {
                    renew(store, place, job.first());
                }
            }
        } finally {
            remove(workshop);
        }
    }

    int export(Path out) {
        return inStore(store -> {
            say("fleet.exported", new StoreExport(store).into(around.path(out)), out);
            return Commands.FINE;
        });
    }
}
