package everyblade.cli;

import everyblade.json.PlainFile;
import everyblade.record.signing.Signer;
import everyblade.record.signing.SigningKey;
import everyblade.record.signing.Unsigned;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.words.Words;
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
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Keys to sign with, and those of others. */
@Command(name = "key", description = "${bundle:help.key}")
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
        throw new Misuse(spec.commandLine(), "wrongUse.keyVerb");
    }

    @Command(name = "new", description = "${bundle:help.key.new}")
    int make(
            @Parameters(index = "0", paramLabel = "F.p12", description = "${bundle:help.key.file}") Path file,
            @Option(names = "--name", required = true, paramLabel = "NAME", description = "${bundle:help.key.new.name}")
                    String name,
            @Option(names = "--licence", paramLabel = "KIND", description = "${bundle:help.key.new.licence}")
                    String licence,
            @Option(names = "--number", paramLabel = "N", description = "${bundle:help.key.new.number}") String number,
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
        Words words = around.words();
        around.out().println(words.say("keys.made", file, told(key)));
        around.out().println(words.say("keys.tell", key.fingerprint(), signer.name()));
        return Commands.FINE;
    }

    @Command(name = "show", description = "${bundle:help.key.show}")
    int show(
            @Parameters(index = "0", paramLabel = "F.p12", description = "${bundle:help.key.show.file}") Path file,
            @Mixin Passphrase passphrase) {
        around.out().println(told(open(around, file, passphrase)));
        return Commands.FINE;
    }

    @Command(name = "trust", description = "${bundle:help.key.trust}")
    int trust(
            @Parameters(index = "0", paramLabel = "FINGERPRINT", description = "${bundle:help.key.trust.fingerprint}")
                    String fingerprint,
            @Option(
                            names = "--name",
                            required = true,
                            paramLabel = "NAME",
                            description = "${bundle:help.key.trust.name}")
                    String name) {
        String digits = digits(fingerprint);
        new TrustedKeys(around).trust(digits, Given.words("--name", name));
        around.out().println(around.words().say("keys.trusted", digits, Given.words("--name", name)));
        return Commands.FINE;
    }

    @Command(name = "distrust", description = "${bundle:help.key.distrust}")
    int distrust(
            @Parameters(
                            index = "0",
                            paramLabel = "FINGERPRINT",
                            description = "${bundle:help.key.distrust.fingerprint}")
                    String fingerprint) {
        if (!new TrustedKeys(around).distrust(digits(fingerprint))) {
            throw Failure.of("stopped.key.keyDistrustKeyNotOn", OneLine.of(fingerprint));
        }
        around.out().println(around.words().say("keys.distrusted", digits(fingerprint)));
        return Commands.FINE;
    }

    @Command(name = "list", description = "${bundle:help.key.list}")
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

    private String told(SigningKey key) {
        return OneLine.of(around.words()
                .say("keys.key", key.signer().name(), key.signer().licenceAndNumber(), key.fingerprint()));
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
