package everyblade.cli;

import everyblade.fleet.DerivedTables;
import everyblade.fleet.FleetAnswer;
import everyblade.fleet.FleetQuestion;
import everyblade.fleet.KeptChain;
import everyblade.fleet.NotedHeads;
import everyblade.fleet.Store;
import everyblade.fleet.StoreArrival;
import everyblade.fleet.StoreCheck;
import everyblade.fleet.StoreExport;
import everyblade.fleet.StorePartings;
import everyblade.fleet.StoreRefusal;
import everyblade.fleet.Workshop;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Verification;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.fleet.FleetFacts;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tells what is in a store. */
record FleetView(FleetStore of) {

    private Surroundings around() {
        return of.around();
    }

    int list(FleetTable.Form form) {
        return of.open(store -> {
            print("jobs", of.asking(() -> FleetAnswer.jobs(store)), form);
            for (StorePartings.Parting parting : of.asking(() -> new StorePartings(store).all())) {
                around().err().println(OneLine.of(parting(parting)));
            }
            return Commands.FINE;
        });
    }

    private String parting(StorePartings.Parting parting) {
        return around().words()
                .say(
                        "fleet.parted",
                        FleetStore.shorter(parting.chain()),
                        parting.at(),
                        parting.by(),
                        parting.when(),
                        parting.toldBy(),
                        parting.place());
    }

    private void print(String name, FleetAnswer answer, FleetTable.Form form) {
        around().out().print(FleetTable.of(name, answer, form, around().words().say("fleet.nothing")));
    }

    int verify(List<String> asked, Optional<Path> heads, Optional<Path> note) {
        NotedHeads noted = heads.map(this::noted).orElse(NotedHeads.NONE);
        Optional<NewFile> file = note.map(named -> NewFile.at(around(), "--note", named));
        return of.open(store -> {
            List<KeptChain> jobs = jobs(store, asked);
            int wrong = verified(store, jobs, noted);
            Map<String, Instant> retired = new StoreArrival(store).retired();
            for (String missing : asked.isEmpty() ? noted.without(jobs) : List.<String>of()) {
                if (retired.containsKey(missing)) {
                    of.say(
                            "fleet.wasRetired",
                            FleetStore.shorter(missing),
                            retired.get(missing).truncatedTo(ChronoUnit.SECONDS));
                    continue;
                }
                around().out().println(OneLine.of(of.problem(StoreCheck.missing(missing))));
                wrong++;
            }
            if (wrong > 0) {
                of.say("fleet.notSound", wrong);
                return Commands.NOT_COMPLETE;
            }
            of.say("fleet.jobsSound", jobs.size());
            if (file.isPresent()) {
                file.get().write(NotedHeads.text(jobs).getBytes(StandardCharsets.US_ASCII));
                of.say("fleet.headsNoted", jobs.size(), note.orElseThrow());
            }
            return Commands.FINE;
        });
    }

    private static List<KeptChain> jobs(Store store, List<String> asked) throws StoreRefusal {
        StoreArrival arrival = new StoreArrival(store);
        if (asked.isEmpty()) {
            return arrival.jobs();
        }
        List<KeptChain> jobs = new ArrayList<>();
        for (String one : asked) {
            jobs.add(arrival.find(one));
        }
        return jobs;
    }

    /** Tells of each job whether it is sound; gives how many are not. */
    private int verified(Store store, List<KeptChain> jobs, NotedHeads noted) throws StoreRefusal {
        int wrong = 0;
        try (Workshop workshop = Workshop.open(around().variable("TMPDIR").map(Path::of))) {
            StoreCheck check = new StoreCheck(store, around().disk(), workshop);
            for (KeptChain job : jobs) {
                Verification found = of.asking(() -> check.verify(job, noted.of(job)));
                if (found instanceof Sound sound) {
                    of.say("fleet.sound", FleetStore.shorter(job.first()), sound.entries(), sound.head());
                } else {
                    around().out().println(OneLine.of(FleetStore.shorter(job.first()) + ": " + of.problem(found)));
                    wrong++;
                }
            }
        }
        return wrong;
    }

    private NotedHeads noted(Path file) {
        try {
            return NotedHeads.read(Files.readAllLines(around().path(file), StandardCharsets.US_ASCII));
        } catch (IOException unreadable) {
            throw new Failure("--heads " + around().words().say("fleet.noHeads", file));
        } catch (StoreRefusal refusal) {
            throw new Failure("--heads " + file + ": " + of.told(refusal));
        }
    }

    int ask(String word, FleetTable.Form form, boolean renew) {
        FleetQuestion question = FleetQuestion.of(word)
                .orElseThrow(() -> new Failure(
                        "everyblade fleet ask: " + around().words().say("fleet.noQuestion", word, questions())));
        return of.open(store -> {
            if (renew) {
                new FleetFacts(around(), store).renewAll();
            }
            print(question.word(), of.asking(() -> FleetAnswer.of(store, question)), form);
            int missing = DerivedTables.missing(store);
            if (missing > 0) {
                around().err().println(around().words().say("fleet.behind", missing));
            }
            return Commands.FINE;
        });
    }

    private static String questions() {
        return Arrays.stream(FleetQuestion.values()).map(FleetQuestion::word).collect(Collectors.joining(", "));
    }

    int export(Path out) {
        return of.open(store -> {
            of.say("fleet.exported", of.asking(() -> new StoreExport(store).into(around().path(out))), out);
            return Commands.FINE;
        });
    }
}
