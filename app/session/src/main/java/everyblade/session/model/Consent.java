package everyblade.session.model;

import everyblade.fact.Fact;
import everyblade.fact.Keyed;
import everyblade.json.ModelShelf;
import everyblade.json.jar.CodeDoor;
import everyblade.json.jar.CodeJar;
import everyblade.json.jar.Handed;
import everyblade.json.jar.Transcript;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.around.UserFolders;
import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which jars of code may run, each by the hash of its bytes, and what they told when they did. A person says yes on the
 * command line or in the window, and is not asked again on this machine, until the jar is another one. Jars that come
 * with the program have been run when it was built; what they told lies beside its libraries, and is their consent.
 *
 * @param around where the user's settings and cache are
 * @param given hashes that the command line names
 */
public record Consent(Surroundings around, Set<String> given) {

    private static final String OPTION = "--trust-jar";
    private static final String HASH = "[0-9a-f]{64}";
    private static final String KIND = "jar";
    private static final Path SHIPPED = Path.of("lib", "jars");

    public Consent {
        given = Set.copyOf(given);
    }

    public static Consent of(Surroundings around, List<String> hashes) {
        List<String> given =
                hashes.stream().map(hash -> hash.toLowerCase(Locale.ROOT)).toList();
        given.stream().filter(hash -> !hash.matches(HASH)).findFirst().ifPresent(hash -> {
            throw Failure.of("stopped.consent.noShaJarWhichHas", OPTION, OneLine.of(hash));
        });
        return new Consent(around, Set.copyOf(given));
    }

    /** Tells what is known of a jar's models, and runs nothing. */
    CodeDoor listing() {
        return jar -> told(jar).orElseGet(() -> CodeDoor.SHUT.open(jar));
    }

    /** Runs a jar that may, unless it is known what it tells. */
    CodeDoor using() {
        return jar -> told(jar)
                .filter(handed -> handed.stream().noneMatch(Handed.Failed.class::isInstance))
                .orElseGet(() -> anew().open(jar));
    }

    /** Runs a jar that may, whatever it has told before. */
    public CodeDoor anew() {
        return jar -> covers(jar) ? run(jar) : CodeDoor.SHUT.open(jar);
    }

    /** Whether somebody has agreed that this jar runs. */
    public boolean covers(CodeJar jar) {
        return given.contains(jar.sha256())
                || kept().contains(jar.sha256())
                || shipped(jar).isPresent();
    }

    /** Keeps that a person agrees; on a machine without a place for settings it holds for this time. */
    Consent give(CodeJar jar) {
        file().filter(file -> !kept().contains(jar.sha256())).ifPresent(file -> {
            try {
                Files.createDirectories(file.getParent());
                Files.writeString(
                        file,
                        jar.sha256() + "  " + OneLine.of(jar.plugin()) + "  "
                                + OneLine.of(jar.jar().toString()) + "\n",
                        StandardOpenOption.CREATE,
                        StandardOpenOption.APPEND);
            } catch (IOException refused) {
                // the person is asked again next time
            }
        });
        List<String> more = new ArrayList<>(given);
        more.add(jar.sha256());
        return new Consent(around, Set.copyOf(more));
    }

    /** Why a jar is not run, and what to do, on one line. */
    public static Failure refusal(CodeJar jar) {
        return Failure.of("stopped.consent.ifYouTrustWhereComes", describe(jar), OPTION, jar.sha256());
    }

    /** What is to be known of a jar before it is run, on one line. */
    public static Fact describe(CodeJar jar) {
        return new Keyed("code.describe", List.of(jar.jar(), jar.plugin(), jar.signer(), jar.sha256()));
    }

    /** Lets a jar that may run tell its models, for the program that it is to come with; gives what it told. */
    public List<Handed> ship(CodeJar jar, Path folder) throws IOException {
        List<Handed> handed = anew().open(jar);
        if (handed.stream().allMatch(Handed.Model.class::isInstance)) {
            Files.createDirectories(folder);
            Files.write(folder.resolve(jar.sha256()), Transcript.of(handed));
        }
        return handed;
    }

    private List<Handed> run(CodeJar jar) {
        if (given.contains(jar.sha256())) {
            give(jar);
        }
        List<Handed> handed = ModelShelf.OWN_PROCESS.open(jar);
        around.derived().keep(KIND, key(jar), Transcript.of(handed));
        return handed;
    }

    private Optional<List<Handed>> told(CodeJar jar) {
        return shipped(jar)
                .or(() -> around.derived().find(KIND, key(jar)))
                .map(bytes -> Transcript.read(jar, bytes))
                .filter(Transcript::whole)
                .map(Transcript::handed);
    }

    private static String key(CodeJar jar) {
        return "handed over 1, interface " + EngineModelSource.SPI_VERSION + ", jar " + jar.sha256();
    }

    private Set<String> kept() {
        return file().map(file -> {
                    try {
                        return Set.copyOf(Files.readAllLines(file).stream()
                                .map(line -> line.split(" ", 2)[0])
                                .filter(word -> word.matches(HASH))
                                .distinct()
                                .toList());
                    } catch (IOException none) {
                        return Set.<String>of();
                    }
                })
                .orElse(Set.of());
    }

    private Optional<Path> file() {
        return UserFolders.configuration(around)
                .map(folder -> folder.resolve("everyblade").resolve("trusted-jars.txt"));
    }

    /** What a jar told when the program was built that it comes with. */
    private Optional<byte[]> shipped(CodeJar jar) {
        return around.home()
                .map(home -> home.resolve(SHIPPED).resolve(jar.sha256()))
                .flatMap(file -> {
                    try {
                        return Optional.of(Files.readAllBytes(file));
                    } catch (IOException none) {
                        return Optional.empty();
                    }
                });
    }
}
