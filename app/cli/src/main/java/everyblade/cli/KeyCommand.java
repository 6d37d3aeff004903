package everyblade.cli;

import everyblade.json.PlainFile;
import everyblade.record.signing.Signer;
import everyblade.record.signing.SigningKey;
import everyblade.record.signing.Unsigned;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keys to sign with, and those of others. */
@Command(
        name = "key",
        description = "Keys to sign with: makes one, shows one, and keeps the list of those whose owner you know.")
final class KeyCommand implements Callable<Integer> {

    private static final long LARGEST = 1 << 20;

    @Spec
    private CommandSpec spec;

    private final Surroundings around;

    KeyCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "say what to do: new, show, trust, distrust or list");
    }

    @Command(name = "new", description = "Makes a key to sign with, in a file that only its passphrase opens.")
    int make(
            @Parameters(index = "0", paramLabel = "F.p12", description = "the file to make") Path file,
            @Option(names = "--name", required = true, paramLabel = "NAME", description = "whose key it is")
                    String name,
            @Option(names = "--licence", paramLabel = "KIND", description = "kind of licence or certificate")
                    String licence,
            @Option(names = "--number", paramLabel = "N", description = "number of the licence") String number,
            @Mixin Passphrase passphrase) {
        OutputFormat.PKCS12.require("key new", file);
        if (Files.exists(around.path(file))) {
            throw Failure.of("stopped.key.keyNewSomethingThereAlready", file);
        }
        Signer signer = new Signer(
                Given.words("--name", name),
                Optional.ofNullable(licence).map(kind -> Given.words("--licence", kind)),
                Optional.ofNullable(number).map(given -> Given.words("--number", given)));
        NewFile place = NewFile.at(around, "key new", file);
        char[] secret = passphrase.forNew(around, file);
        SigningKey key = SigningKey.make(signer);
        place.writeForOwner(key.kept(secret, around.clock().instant()));
        Arrays.fill(secret, ' ');
        around.out().println("made " + file + ": " + told(key));
        around.out()
                .println(
                        "Whoever checks your signatures puts it on their list, once you have told them these 64 digits in"
                                + " person: everyblade key trust " + key.fingerprint() + " --name \"" + signer.name()
                                + "\"");
        return Commands.FINE;
    }

    @Command(name = "show", description = "Shows whose key is in a file, and its fingerprint.")
    int show(
            @Parameters(index = "0", paramLabel = "F.p12", description = "a key file") Path file,
            @Mixin Passphrase passphrase) {
        around.out().println(told(open(around, file, passphrase)));
        return Commands.FINE;
    }

    @Command(name = "trust", description = "Puts a key on your list: you know that it is this person's.")
    int trust(
            @Parameters(index = "0", paramLabel = "FINGERPRINT", description = "64 digits, as its owner told them")
                    String fingerprint,
            @Option(names = "--name", required = true, paramLabel = "NAME", description = "whose it is") String name) {
        String digits = digits(fingerprint);
        new TrustedKeys(around).trust(digits, Given.words("--name", name));
        around.out().println("trusted: " + digits + "  " + Given.words("--name", name));
        return Commands.FINE;
    }

    @Command(name = "distrust", description = "Takes a key off your list.")
    int distrust(
            @Parameters(index = "0", paramLabel = "FINGERPRINT", description = "64 digits, as the list has them")
                    String fingerprint) {
        if (!new TrustedKeys(around).distrust(digits(fingerprint))) {
            throw Failure.of("stopped.key.keyDistrustKeyNotOn", OneLine.of(fingerprint));
        }
        around.out().println("no longer trusted: " + digits(fingerprint));
        return Commands.FINE;
    }

    @Command(name = "list", description = "Shows the keys that you trust.")
    int list() {
        new TrustedKeys(around)
                .all()
                .forEach((fingerprint, name) -> around.out().println(fingerprint + "  " + OneLine.of(name)));
        return Commands.FINE;
    }

    private static String digits(String fingerprint) {
        String digits = fingerprint.toLowerCase(Locale.ROOT);
        if (!digits.matches("[0-9a-f]{64}")) {
            throw Failure.of("stopped.key.keyNoFingerprintKeyWhich", OneLine.of(fingerprint));
        }
        return digits;
    }

    private static String told(SigningKey key) {
        return OneLine.of("key of " + key.signer().name()
                + key.signer().licenceAndNumber().map(licence -> ", " + licence).orElse(", no licence stated")
                + ", fingerprint " + key.fingerprint());
    }

    /** Opens a key file with the passphrase that comes with it. */
    static SigningKey open(Surroundings around, Path file, Passphrase passphrase) {
        byte[] bytes;
        try {
            bytes = PlainFile.read(around.path(file), LARGEST);
        } catch (IOException failure) {
            throw Failure.of("stopped.key.cannotBeReadAsKey", file);
        }
        char[] secret = passphrase.of(around, file);
        try {
            return SigningKey.open(bytes, secret);
        } catch (Unsigned unfit) {
            throw Failure.of("stopped.key.unfit", file, unfit.why());
        } finally {
            Arrays.fill(secret, ' ');
        }
    }
}
